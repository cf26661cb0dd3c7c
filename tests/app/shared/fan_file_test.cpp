// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/design_file.hpp"
#include "app/shared/file_units.hpp"
#include "app/shared/library_reader.hpp"

#include <gtest/gtest.h>

#include <string>

namespace fluewright {
namespace {

constexpr VolumeFlow hourly = cubic_metre / hour;

std::string with_fan(const std::string& fan) { return R"({"fluewright_design": 1, "fans": [)" + fan + "]}"; }

std::string complaint(const std::string& fan) {
  const ReadResult result = read_design_text(with_fan(fan), *shipped_library());
  const auto* fault = std::get_if<FileFault>(&result);
  return fault != nullptr ? fault->text() : std::string{};
}

/// A sheet with points and something more.
std::string sheet(const std::string& points, const std::string& more = {}) {
  return R"({"id": "own", "points": [)" + points + "]" + more + "}";
}

constexpr const char* two_points = R"({"flow_m3_h": 0, "head_Pa": 40}, {"flow_m3_h": 200, "head_Pa": 0})";

DesignDocument read(const std::string& text) {
  ReadResult result = read_design_text(text, *shipped_library());
  if (const auto* fault = std::get_if<FileFault>(&result)) {
    ADD_FAILURE() << fault->text();
    return {};
  }
  return std::get<DesignDocument>(std::move(result));
}

TEST(AFanInTheFile, TakesFallbacksForWhatItsSheetDoesNotSay) {
  const Design design = read(with_fan(sheet(two_points))).design;
  ASSERT_EQ(design.fans.size(), 1u);
  const FanSheet& fan = design.fans[0];
  EXPECT_EQ(fan.id, "own");
  ASSERT_EQ(fan.points.size(), 2u);
  EXPECT_NEAR(in(fan.points[1].flow, hourly), 200.0, 1e-9);
  for (const FanField& field : fan_fields()) {
    EXPECT_EQ(field.get(fan), shipped_library()->fan_field(field.key)->fallback) << field.key;
  }
}

TEST(AFanInTheFile, ReadsBackToTheSameSheetAndKeepsKeysThatNobodyKnows) {
  const std::string text = with_fan(R"({"id": "own", "name": "Mine", "colour": "green",
    "points": [{"flow_m3_h": 0, "head_Pa": 61.5, "read": "badly"}, {"flow_m3_h": 33.3, "head_Pa": 70}, {"flow_m3_h": 180, "head_Pa": 0}],
    "reference_density_kg_m3": 0.83, "off_loss": 0.3, "motor": "outside", "rated_gas_C": 251.5, "rated_motor_C": 77,
    "power_W": 18.5, "source": "a label", "standing": "published"})");
  const DesignDocument document = read(text);
  const FanSheet& fan = document.design.fans.at(0);
  EXPECT_FALSE(fan.motor_in_stream);
  EXPECT_EQ(fan.citation, (Citation{"a label", Standing::published}));
  const std::string written = write_design_text(document, *shipped_library());
  const DesignDocument again = read(written);
  EXPECT_EQ(again.design, document.design);
  EXPECT_EQ(write_design_text(again, *shipped_library()), written);
  EXPECT_NE(written.find(R"("colour": "green")"), std::string::npos);
  EXPECT_NE(written.find(R"({"flow_m3_h": 0, "head_Pa": 61.5, "read": "badly"})"), std::string::npos);
  EXPECT_NE(written.find(R"("reference_density_kg_m3": 0.83)"), std::string::npos);
}

TEST(AFanOfAFile, ThatIsWrongNamesFanEntryValueAndWhatIsAllowed) {
  EXPECT_EQ(complaint(sheet(two_points, R"(, "rated_gas_C": 900)")),
            "Fan “own”, rated_gas_C: 900 is not allowed; it must be a number from 20 to 600.");
  EXPECT_EQ(complaint(sheet(two_points, R"(, "motor": "on the roof")")),
            "Fan “own”, motor: “on the roof” is not allowed; it must be one of in the stream, outside.");
  EXPECT_EQ(complaint(sheet(R"({"flow_m3_h": 0, "head_Pa": 40})")),
            "Fan “own”, points: a list is not allowed; it must be a list of 2 to 60.");
  EXPECT_EQ(complaint(sheet(R"({"flow_m3_h": 0, "head_Pa": -4}, {"flow_m3_h": 200, "head_Pa": 0})")),
            "Fan “own”, points.0.head_Pa: -4 is not allowed; it must be a number from 0 to 2000.");
  EXPECT_EQ(complaint(sheet(R"({"flow_m3_h": 0}, {"flow_m3_h": 200, "head_Pa": 0})")),
            "Fan “own”, points.0: “head_Pa” is missing.");
}

TEST(APointOfAFan, MustStandBehindTheOneBeforeAndTheFirstAtNoFlow) {
  EXPECT_EQ(complaint(sheet(R"({"flow_m3_h": 10, "head_Pa": 40}, {"flow_m3_h": 200, "head_Pa": 0})")),
            "Fan “own”, points.0.flow_m3_h: 10 is not allowed; it must be 0: the first point is the head at no flow.");
  EXPECT_EQ(complaint(sheet(R"({"flow_m3_h": 0, "head_Pa": 40}, {"flow_m3_h": 80, "head_Pa": 9}, {"flow_m3_h": 50, "head_Pa": 0})")),
            "Fan “own”, points.2.flow_m3_h: 50 is not allowed; it must be a number above 80, the flow of the point before.");
  EXPECT_EQ(complaint(sheet(R"({"flow_m3_h": 0, "head_Pa": 0}, {"flow_m3_h": 80, "head_Pa": 0})")),
            "Fan “own”, points: every head is 0; at least one must be more.");
}

TEST(AFanOfAFile, HasAnIdOfItsOwn) {
  EXPECT_EQ(complaint(sheet(two_points) + "," + sheet(two_points)),
            "Fan “own”, id: “own” stands twice; every fan needs an id of its own.");
}

TEST(ShippedSchema, HasTheRangesOfAFansSheet) {
  using nlohmann::ordered_json;
  const auto schema = ordered_json::parse(design_schema());
  const auto& fan = schema["definitions"]["fan"]["properties"];
  const auto& point = schema["definitions"]["fan_point"]["properties"];
  for (const FieldSpec& spec : shipped_library()->fan_fields) {
    const std::string key = file_key(spec.kind, spec.key);
    const auto& properties = spec.key == "flow" || spec.key == "head" ? point : fan;
    ASSERT_TRUE(properties.contains(key)) << key;
    EXPECT_EQ(properties[key]["description"], spec.help);
    if (is_word_kind(spec.kind)) {
      EXPECT_EQ(properties[key]["enum"], ordered_json(spec.choices));
      continue;
    }
    EXPECT_EQ(properties[key]["minimum"], to_file_value(*spec.lowest, spec.kind, spec.key)) << key;
    EXPECT_EQ(properties[key]["maximum"], to_file_value(*spec.highest, spec.kind, spec.key)) << key;
  }
}

TEST(TheShippedFans, AreThreeInventedOnesAndSaySo) {
  ASSERT_EQ(shipped_library()->fans.size(), 3u);
  for (const FanSheet& fan : shipped_library()->fans) {
    EXPECT_EQ(fan.citation.source.rfind("invented", 0), 0u) << fan.id;
    EXPECT_EQ(fan.citation.standing, Standing::chosen) << fan.id;
    EXPECT_TRUE(makes_a_curve(fan.points)) << fan.id;
  }
}

}  // namespace
}  // namespace fluewright
