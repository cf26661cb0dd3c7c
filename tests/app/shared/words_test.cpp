// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/words.hpp"

#include "app/shared/library_reader.hpp"

#include <gtest/gtest.h>

#include <set>

namespace fluewright {
namespace {

const std::string space = "\u00A0";

/// Two stove pipes, the second with a name of its own, and an elbow.
Design three_pieces() {
  Design design;
  design.pieces.push_back({"p1", "stovepipe", "", {}, {}, Turn::left, {}, ""});
  design.pieces.push_back({"p2", "stovepipe", "Upper pipe", {}, {}, Turn::left, {}, ""});
  design.pieces.push_back({"p3", "elbow_smooth", "", {}, {}, Turn::left, {}, ""});
  return design;
}

std::string said(const Finding& finding, UnitSystem units = UnitSystem::metric) {
  return sentence(finding, three_pieces(), *shipped_library(), units);
}

TEST(PieceNames, AreTheLabelOrTheTypeWithItsNumberWhereThereAreSeveral) {
  const Design design = three_pieces();
  const auto& library = *shipped_library();
  EXPECT_EQ(piece_name(design, library, std::size_t{0}), "Single-wall pipe 1");
  EXPECT_EQ(piece_name(design, library, std::size_t{1}), "Upper pipe");
  EXPECT_EQ(piece_name(design, library, "p3"), "Smooth elbow");
  EXPECT_EQ(piece_name(design, library, "p9"), "“p9”");
}

TEST(Sentences, NamePieceFieldValueAndRange) {
  Finding finding{FindingCode::out_of_range, Severity::fault,    "p1", "bore", Length{},
                  50.0 * millimetre,         500.0 * millimetre, ""};
  EXPECT_EQ(said(finding), "Single-wall pipe 1, Bore: 0" + space + "mm is not allowed; it must be from 50" + space +
                               "mm to 500" + space + "mm.");
  EXPECT_EQ(said(finding, UnitSystem::imperial), "Single-wall pipe 1, Bore: 0" + space +
                                                     "in is not allowed; it must be from 2" + space + "in to 19.7" +
                                                     space + "in.");
  finding.highest.reset();
  EXPECT_EQ(said(finding),
            "Single-wall pipe 1, Bore: 0" + space + "mm is not allowed; it must be at least 50" + space + "mm.");
}

TEST(Sentences, OfSiteRoomAndFireNameTheCondition) {
  EXPECT_EQ(
      said({FindingCode::out_of_range, Severity::fault, "", "fire.moisture", Ratio{0.7}, Ratio{0.0}, Ratio{0.6}, ""}),
      "Moisture: 70" + space + "% is not allowed; it must be from 0" + space + "% to 60" + space + "%.");
}

TEST(Sentences, OfTheDesignsOwnWallsNameTheWall) {
  EXPECT_EQ(said({FindingCode::unknown_material, Severity::fault, "", "walls", std::string("own"), {}, {}, "gold"}),
            "Wall “own”: there is no material “gold” in the library.");
  EXPECT_EQ(
      said({FindingCode::out_of_range, Severity::fault, "", "walls", 3.0 * metre, 0.01 * millimetre, 2.0 * metre,
            "own"}),
      "Wall “own”: 3000" + space + "mm is not allowed; it must be from 0.01" + space + "mm to 2000" + space + "mm.");
  EXPECT_EQ(said({FindingCode::duplicate_id, Severity::fault, "", "walls", {}, {}, {}, "own"}),
            "Wall “own”: the id stands twice; every wall needs one of its own.");
}

TEST(Sentences, EndWithOneFullStop) {
  EXPECT_EQ(
      said({FindingCode::can_run_backwards, Severity::note, "", "", -5.0 * pascal, {}, {}, ""}, UnitSystem::imperial),
      "On this day it can also run backwards, into the room; before anything burns the draft is \u22120.020" + space +
          "in w.c.");
}

TEST(Sentences, OfTheDrawingNameTheEnd) {
  EXPECT_EQ(said({FindingCode::open_end, Severity::fault, "p2", "out", {}, {}, {}, ""}),
            "Upper pipe: its end “out” is open; join a piece to it.");
  EXPECT_EQ(said({FindingCode::gap, Severity::fault, "p2", "out", 12.5 * millimetre, {}, {}, ""}),
            "Upper pipe: its end “out” and the piece it is joined to do not meet; they are 12.5" + space + "mm apart.");
}

TEST(Sentences, OfThePhysicsSayWhatFollows) {
  EXPECT_EQ(said({FindingCode::smoke_leak, Severity::caution, "p1", "", 1.25 * pascal, {}, {}, ""}),
            "Single-wall pipe 1: the flue is up to 1.2" + space +
                "Pa above the room here, so a leaky joint lets smoke into the room.");
  EXPECT_EQ(said({FindingCode::smoke_leak, Severity::caution, "p1", "", 1.25 * pascal, {}, {}, "p2"}),
            "From Single-wall pipe 1 to Upper pipe the flue is up to 1.2" + space +
                "Pa above the room, so a leaky joint lets smoke into the room.");
}

/// A value of the kind that a code's sentence speaks of.
FieldValue value_for(FindingCode code) {
  switch (code) {
    case FindingCode::will_not_draw: return -2.0 * pascal;
    case FindingCode::choke_inlet:
    case FindingCode::wrong_fall: return Ratio(0.3);
    case FindingCode::water_pools: return 0.2 * kilogram_per_hour;
    default: return 100.0 * millimetre;
  }
}

TEST(Sentences, ThereIsOneForEveryCodeAndNoTwoAreAlike) {
  std::set<std::string> all;
  const auto last = static_cast<int>(FindingCode::unsolved);
  for (int code = 0; code <= last; ++code) {
    const FieldValue value = value_for(static_cast<FindingCode>(code));
    const std::string text = said({static_cast<FindingCode>(code), Severity::note, "p1", "bore", value, value, value,
                                   code == static_cast<int>(FindingCode::choke_inlet) ? "" : "cob"});
    EXPECT_GT(text.size(), 20u) << code;
    EXPECT_EQ(text.back(), '.') << text;
    EXPECT_TRUE(all.insert(text).second) << text;
  }
}

TEST(Words, OfVerdictsAndAges) {
  EXPECT_EQ(word(Verdict::draws), "draws");
  EXPECT_EQ(word(Verdict::marginal), "marginal");
  EXPECT_EQ(word(Verdict::will_not_draw), "will not draw");
  EXPECT_EQ(word(BenchAge::cold_bench), "cold bench");
  EXPECT_EQ(word(BenchAge::one_hour), "one hour");
  EXPECT_EQ(word(BenchAge::charged), "charged");
}

TEST(TheCondensationSentence, SaysWhereOrNone) {
  Assessment assessment;
  const auto text = [&](UnitSystem units = UnitSystem::metric) {
    return condensation_sentence(assessment, three_pieces(), *shipped_library(), units);
  };
  EXPECT_EQ(text(), "not known");
  assessment.condensation.emplace();
  EXPECT_EQ(text(), "none");
  assessment.condensation->starts_at = 7.4 * metre;
  assessment.condensation->piece = 1;
  EXPECT_EQ(text(), "in Upper pipe, 7.40" + space + "m along");
  EXPECT_EQ(text(UnitSystem::imperial), "in Upper pipe, 24 ft 3.3 in along");
}

TEST(Cautions, NameAlarmClearanceFloorPermitAndInspection) {
  std::string all;
  for (const std::string& caution : cautions()) all += caution;
  for (const char* word : {"carbon-monoxide alarm", "clearances", "floor", "permit", "licensed", "estimates"}) {
    EXPECT_NE(all.find(word), std::string::npos) << word;
  }
}

}  // namespace
}  // namespace fluewright
