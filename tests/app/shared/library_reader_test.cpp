// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/library_reader.hpp"

#include "app/shared/data_entry.hpp"
#include "app/shared/field_spec_reader.hpp"
#include "app/shared/file_units.hpp"
#include "app/shared/library_check.hpp"
#include "engine/layout/conditions.hpp"

#include <gtest/gtest.h>

#include <stdexcept>

namespace fluewright {
namespace {

using nlohmann::ordered_json;

template <class Act>
std::string thrown_by(Act act) {
  try {
    act();
  } catch (const std::runtime_error& error) {
    return error.what();
  }
  return "nothing was thrown";
}

TEST(ShippedLibrary, ReadsWithoutAFault) {
  const auto library = shipped_library();
  EXPECT_NE(library->material("cob"), nullptr);
  EXPECT_NE(library->wall("pipe_insulated_25"), nullptr);
  EXPECT_NE(library->wood("mixed_hardwood"), nullptr);
  EXPECT_NE(library->piece_type("stovepipe"), nullptr);
  EXPECT_EQ(library->moisture_states.size(), 4u);
  EXPECT_EQ(library->burn_rates.size(), 5u);
}

TEST(ShippedLibrary, NamesASourceForEveryValue) {
  const auto library = shipped_library();
  for (const Material& material : library->materials) {
    EXPECT_FALSE(material.thermal_citation.source.empty()) << material.id;
    EXPECT_FALSE(material.roughness_citation.source.empty()) << material.id;
    EXPECT_FALSE(material.emissivity_citation.source.empty()) << material.id;
  }
  for (const PieceType& type : library->piece_types) {
    for (const FieldSpec& field : type.fields)
      EXPECT_FALSE(field.citation.source.empty()) << type.id << ' ' << field.key;
  }
}

TEST(ShippedLibrary, HasTheFallbacksOfAnEmptyDesign) {
  const Design empty;
  for (const Condition& condition : conditions()) {
    EXPECT_EQ(shipped_library()->condition(condition.key)->fallback, condition.get(empty)) << condition.key;
  }
}

TEST(ShippedSchema, HasTheRangesOfTheConditions) {
  const auto schema = ordered_json::parse(design_schema());
  std::size_t compared = 0;
  for (const FieldSpec& spec : shipped_library()->conditions) {
    const std::string section = spec.key.substr(0, spec.key.find('.'));
    const std::string key = file_key(spec.kind, spec.key.substr(spec.key.find('.') + 1));
    const auto& properties = schema["properties"][section]["properties"];
    ASSERT_TRUE(properties.contains(key)) << spec.key;
    EXPECT_EQ(properties[key]["description"], spec.help);
    if (is_word_kind(spec.kind)) continue;
    EXPECT_EQ(properties[key]["minimum"], to_file_value(*spec.lowest, spec.kind, spec.key)) << spec.key;
    EXPECT_EQ(properties[key]["maximum"], to_file_value(*spec.highest, spec.kind, spec.key)) << spec.key;
    ++compared;
  }
  EXPECT_EQ(compared, 23u);
}

ordered_json bore_field() {
  return ordered_json::parse(R"({"key": "bore", "label": "Bore", "kind": "length", "unit": "mm", "help": "Inside.",
    "fallback": 150, "allowed": [50, 500], "usual": [100, 200], "source": {"source": "s", "standing": "chosen"}})");
}

TEST(AFieldOfTheData, ReadsInTheFilesUnits) {
  const FieldSpec spec = read_field_spec(bore_field(), "x.json");
  EXPECT_EQ(spec.fallback, FieldValue{150.0 * millimetre});
  EXPECT_EQ(spec.highest, FieldValue{500.0 * millimetre});
  EXPECT_EQ(spec.usual_low, FieldValue{100.0 * millimetre});
}

TEST(AFieldOfTheData, IsRefusedWithEntryAndReason) {
  const auto told = [](const char* key, ordered_json value) {
    ordered_json field = bore_field();
    field[key] = std::move(value);
    return thrown_by([&] { (void)read_field_spec(field, "x.json"); });
  };
  EXPECT_EQ(told("fallback", 20), "x.json, bore: “fallback” is not allowed by its own range or choices");
  EXPECT_EQ(told("usual", {10, 200}), "x.json, bore: “usual” lies outside “allowed”");
  EXPECT_EQ(told("allowed", {500, 50}), "x.json, bore: “allowed” must be two numbers, the lower first");
  EXPECT_EQ(told("unit", "m"), "x.json, bore: “unit” must be “mm”");
  EXPECT_EQ(told("kind", "weight"), "x.json, bore: “kind” is not known");
  EXPECT_EQ(told("colour", "red"), "x.json, bore: “colour” is no key that is known here");
  EXPECT_EQ(told("label", ""), "x.json, bore: “label” must be a text");
  EXPECT_EQ(told("source", {{"source", "s"}, {"standing", "rumour"}}),
            "x.json, bore, source: “standing” must be published, from_memory, common_practice or chosen");
}

TEST(AnEntryOfTheData, NamesANumberOutOfBounds) {
  const ordered_json json = {{"id", "cob"}, {"density", -1}};
  EXPECT_EQ(thrown_by([&] { (void)DataEntry(json, "materials.json, cob").number("density", 1.0, 9000.0); }),
            "materials.json, cob: “density” is -1; it must lie from 1 to 9000");
  EXPECT_EQ(thrown_by([&] { (void)DataEntry(json, "materials.json, cob").text("name"); }),
            "materials.json, cob: “name” is missing");
}

TEST(ALibrary, MustGoTogether) {
  const auto told = [](auto spoil) {
    Library library = *shipped_library();
    spoil(library);
    return thrown_by([&] { check_library(library); });
  };
  EXPECT_EQ(told([](Library&) {}), "nothing was thrown");
  EXPECT_EQ(told([](Library& l) { l.materials.push_back(l.materials.front()); }),
            "materials: the id “cob” stands twice");
  EXPECT_EQ(told([](Library& l) { l.walls.back().layers[0].material = "gold"; }),
            "half_barrel_steel: “gold” is no material");
  EXPECT_EQ(told([](Library& l) { l.conditions.pop_back(); }), "conditions: “house.co_alarm” is missing");
  EXPECT_EQ(told([](Library& l) { l.piece_types[0].shape = "klein_bottle"; }),
            "feed_tube: the shape “klein_bottle” is not known");
  EXPECT_EQ(told([](Library& l) { l.piece_types[0].fields.clear(); }).rfind("feed_tube: its shape needs the field", 0),
            0u);
  EXPECT_EQ(told([](Library& l) { l.piece_types[0].family = "toys"; }), "feed_tube: the family “toys” is not known");
  EXPECT_EQ(told([](Library& l) { l.walls.clear(); }),
            "feed_tube: the fallback “brick_60” of wall is not in the library");
}

}  // namespace
}  // namespace fluewright
