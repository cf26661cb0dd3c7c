// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/design_file.hpp"
#include "app/shared/file_units.hpp"
#include "app/shared/library_reader.hpp"
#include "engine/layout/conditions.hpp"
#include "tests/app/shared/sample_design.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <string>

namespace fluewright {
namespace {

DesignDocument read(std::string_view text) {
  const ReadResult result = read_design_text(text, *shipped_library());
  const auto* fault = std::get_if<FileFault>(&result);
  if (fault != nullptr) {
    ADD_FAILURE() << fault->text();
    return {};
  }
  return std::get<DesignDocument>(result);
}

std::string write(const DesignDocument& document) { return write_design_text(document, *shipped_library()); }

TEST(DesignText, OfTheMarkerAloneIsAnEmptyDesign) {
  const DesignDocument document = read(R"({"fluewright_design": 1})");
  EXPECT_EQ(document.design, Design{});
  EXPECT_FALSE(document.read_only);
  EXPECT_TRUE(document.remarks.empty());
}

TEST(DesignText, OfAWholeDesignReadsBackToTheSameDesign) {
  DesignDocument document;
  document.design = sample_design();
  const DesignDocument again = read(write(document));
  EXPECT_EQ(again.design, document.design);
  EXPECT_EQ(write(again), write(document));
}

TEST(DesignText, IsLaidOutForLineByLineComparison) {
  DesignDocument document;
  document.design.title = "Two pieces";
  document.design.pieces = {sample_design().pieces[0], sample_design().pieces[1]};
  document.design.joints = {{{"p1", "out"}, {"p2", "in"}}};
  EXPECT_EQ(write(document), R"({
  "fluewright_design": 1,
  "title": "Two pieces",
  "site": {
    "altitude_m": 0,
    "outdoor_temperature_C": 5,
    "outdoor_humidity_share": 0.7,
    "ground_temperature_C": 10,
    "wind_speed_m_s": 0,
    "wind_coefficient": 0,
    "wind_allowance_Pa": 0
  },
  "room": {
    "temperature_C": 18,
    "humidity_share": 0.5,
    "house_height_mm": 5000,
    "neutral_plane_mm": 2500,
    "exhaust_flow_m3_h": 0,
    "house_volume_m3": 300,
    "air_changes_at_50_pascal": 5,
    "extra_depressurisation_Pa": 0
  },
  "fire": {
    "burn_rate_kg_h": 3,
    "wood": "mixed_hardwood",
    "moisture_share": 0.18,
    "wanted_excess_air": 2.5,
    "unburned_share": 0.03,
    "flow_safety": 1.5
  },
  "pieces": [
    {
      "id": "p1",
      "type": "feed_tube",
      "label": "Mouth",
      "at": {"x_mm": 0, "y_mm": 25.4, "z_mm": 900},
      "heading": "down",
      "facing": "east",
      "fields": {"length_mm": 400, "free_share": 0.3}
    },
    {
      "id": "p2",
      "type": "elbow_segmented",
      "at": {"x_mm": 0, "y_mm": 0, "z_mm": -1250.5},
      "heading": {"azimuth_deg": 30, "elevation_deg": -2.5},
      "turn": "right",
      "fields": {"gores": 5, "wall": "own"},
      "notes": "Two lines\nof notes"
    }
  ],
  "joints": [
    {"a": "p1.out", "b": "p2.in"}
  ]
}
)");
}

constexpr const char* full_of_unknown = R"({
  "fluewright_design": 1,
  "title": "t",
  "weather_station": {"name": "x", "series": [1, 2.5, null, true]},
  "site": {"altitude_m": 10, "slope": "steep"},
  "fire": {"bark_share": 0.1},
  "pieces": [
    {"id": "p1", "type": "stovepipe", "at": {"x_mm": 1, "y_mm": 2, "z_mm": 3, "survey": "gps"},
     "heading": {"azimuth_deg": 10, "elevation_deg": 0, "magnetic": true}, "fields": {"length_mm": 500, "seam": "welded"},
     "colour": "black"},
    {"id": "p2", "type": "stovepipe_of_tomorrow", "at": {"x_mm": 0, "y_mm": 0, "z_mm": 0}, "heading": "up",
     "fields": {"length_mm": 500, "glow": 3}}
  ],
  "joints": [{"a": "p1.out", "b": "p2.in", "sealed": "clay"}],
  "walls": [{"id": "w", "layers": [{"material": "cob", "thickness_mm": 100, "mix": "3:1"}], "built": 1998}]
})";

TEST(UnknownKeys, AtEveryLevelSurviveLoadingAndSaving) {
  const std::string once = write(read(full_of_unknown));
  for (const char* kept : {"\"weather_station\"", "\"series\"", "\"slope\": \"steep\"", "\"bark_share\": 0.1",
                           "\"survey\": \"gps\"", "\"magnetic\": true", "\"seam\": \"welded\"", "\"colour\": \"black\"",
                           "\"glow\": 3", "\"sealed\": \"clay\"", "\"mix\": \"3:1\"", "\"built\": 1998"}) {
    EXPECT_NE(once.find(kept), std::string::npos) << kept;
  }
  EXPECT_EQ(write(read(once)), once);
}

TEST(UnknownKeys, FollowTheirPieceWhenOthersGo) {
  DesignDocument document = read(full_of_unknown);
  document.design.pieces.erase(document.design.pieces.begin());
  document.design.joints.clear();
  const std::string text = write(document);
  EXPECT_NE(text.find("\"glow\": 3"), std::string::npos);
  EXPECT_EQ(text.find("\"colour\""), std::string::npos);
}

TEST(UnknownKeys, OfAPieceAreRemarkedOn) {
  const auto remarks = read(full_of_unknown).remarks;
  ASSERT_EQ(remarks.size(), 2u);
  EXPECT_EQ(remarks[0],
            "Piece “p1” has a field “seam” that Single-wall pipe does not have here; it is kept and not used.");
  EXPECT_EQ(
      remarks[1],
      "Piece “p2” is of a type “stovepipe_of_tomorrow” that is not in the catalogue; it is kept and not calculated.");
}

TEST(NewerFiles, OpenForReadingOnlyWithAClearWord) {
  const DesignDocument document = read(R"({"fluewright_design": 2, "title": "from tomorrow", "holograms": []})");
  EXPECT_TRUE(document.read_only);
  EXPECT_EQ(document.file_version, 2);
  EXPECT_EQ(document.design.title, "from tomorrow");
  ASSERT_EQ(document.remarks.size(), 1u);
  EXPECT_NE(document.remarks[0].find("from a newer version"), std::string::npos);
}

TEST(NewerFiles, ThatCannotBeMadeOutSayThatTheyAreNewer) {
  const ReadResult result = read_design_text(R"({"fluewright_design": 2, "pieces": {}})", *shipped_library());
  const auto* fault = std::get_if<FileFault>(&result);
  ASSERT_NE(fault, nullptr);
  EXPECT_EQ(fault->messages[0],
            "This file is from a newer version of the program, and this version cannot make it out:");
}

TEST(Numbers, AreWrittenAsShortAsTheyReadBack) {
  DesignDocument document;
  document.design.fire.moisture = 0.1 + 0.2;
  document.design.site.outdoor_temperature = celsius(-7.1);
  document.design.site.altitude = 1234.5 * foot;
  const std::string text = write(document);
  EXPECT_NE(text.find("\"moisture_share\": 0.30000000000000004"), std::string::npos);
  EXPECT_NE(text.find("\"outdoor_temperature_C\": -7.1,"), std::string::npos);
  EXPECT_EQ(read(text).design, document.design);
}

/// A value that the field allows.
FieldValue some_value(const FieldSpec& spec) {
  if (spec.kind == FieldKind::choice) return *rc::gen::elementOf(spec.choices);
  if (is_word_kind(spec.kind)) return *rc::gen::element<std::string>("cob", "own", "of my own make \u00FC");
  const double low = to_file_value(*spec.lowest, spec.kind, spec.key).get<double>();
  const double high = to_file_value(*spec.highest, spec.kind, spec.key).get<double>();
  const double number = low + (high - low) * (*rc::gen::inRange(0, 1'000'001) / 1e6);
  return *from_file_number(spec.kind == FieldKind::count ? std::round(number) : number, spec.kind, spec.key);
}

Piece some_piece(const std::string& id) {
  const PieceType type = *rc::gen::elementOf(shipped_library()->piece_types);
  Piece piece{id, type.id, *rc::gen::element<std::string>("", "A \"name\"", "\u706B"), {}, {}, Turn::left, {}, ""};
  const auto coordinate = [] { return static_cast<std::int32_t>(*rc::gen::inRange(-99'999'999, 99'999'999)); };
  piece.at = {coordinate(), coordinate(), coordinate()};
  piece.turn = *rc::gen::element(Turn::left, Turn::right, Turn::up, Turn::down);
  piece.heading = *rc::gen::element(heading_east, heading_south, heading_up(heading_west.azimuth),
                                    heading_down(12.3 * degree), Heading{-45.0 * degree, 1.75 * degree});
  for (const FieldSpec& spec : type.fields) {
    if (*rc::gen::arbitrary<bool>()) piece.fields[spec.key] = some_value(spec);
  }
  return piece;
}

RC_GTEST_PROP(AnyDesign, ReadsBackToTheSameDesign, ()) {
  DesignDocument document;
  for (const Condition& condition : conditions()) {
    condition.set(document.design, some_value(*shipped_library()->condition(condition.key)));
  }
  const auto count = *rc::gen::inRange(0, 6);
  for (int i = 0; i < count; ++i) {
    document.design.pieces.push_back(some_piece("p" + std::to_string(i)));
    if (i > 0)
      document.design.joints.push_back({{"p" + std::to_string(i - 1), "out"}, {"p" + std::to_string(i), "in"}});
  }
  const std::string text = write(document);
  const ReadResult again = read_design_text(text, *shipped_library());
  RC_ASSERT(std::holds_alternative<DesignDocument>(again));
  RC_ASSERT(std::get<DesignDocument>(again).design == document.design);
  RC_ASSERT(write(std::get<DesignDocument>(again)) == text);
}

}  // namespace
}  // namespace fluewright
