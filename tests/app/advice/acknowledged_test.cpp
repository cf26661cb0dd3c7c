// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/finding_report.hpp"
#include "tests/app/advice/advised.hpp"

namespace fluewright {
namespace {

using test::demo;
using test::find;
using test::findings_of;

TEST(AnAcknowledgement, IsKeptInTheFileAndReadBack) {
  DesignDocument document;
  document.design = demo("run_too_long");
  const auto findings = findings_of(document.design);
  const Finding& turn = *find(findings, FindingCode::missing_cleanout);
  document.design = acknowledged(document.design, turn, "the pipe can be taken apart there");
  document.design = acknowledged(document.design, *find(findings, FindingCode::no_alarm_note), "bought, not yet up");
  const std::string text = write_design_text(document, *shipped_library());
  const ReadResult read = read_design_text(text, *shipped_library());
  ASSERT_TRUE(std::holds_alternative<DesignDocument>(read));
  EXPECT_EQ(std::get<DesignDocument>(read).design, document.design);
  EXPECT_EQ(write_design_text(std::get<DesignDocument>(read), *shipped_library()), text);
}

TEST(AnAcknowledgement, IsOfOnePieceOnly) {
  const Design design = demo("run_too_long");
  const auto findings = findings_of(design);
  const Finding& turn = *find(findings, FindingCode::missing_cleanout);
  const Design settled = acknowledged(design, turn, "it comes apart");
  std::size_t open = 0;
  for (const Finding& finding : findings) {
    if (finding.code != FindingCode::missing_cleanout) continue;
    const Acknowledgement* reason = acknowledgement_of(finding, settled);
    EXPECT_EQ(reason != nullptr, finding.piece == turn.piece);
    open += reason == nullptr ? 1u : 0u;
  }
  EXPECT_GT(open, 0u);
}

TEST(AnAcknowledgement, IsReplacedByALaterReasonAndGoneWithoutOne) {
  const Design design = demo("run_too_long");
  const auto findings = findings_of(design);
  const Finding& alarm = *find(findings, FindingCode::no_alarm_note);
  const Design first = acknowledged(design, alarm, "one");
  const Design second = acknowledged(first, alarm, "two");
  ASSERT_EQ(second.acknowledged.size(), 1u);
  EXPECT_EQ(second.acknowledged.front().reason, "two");
  EXPECT_EQ(acknowledged(second, alarm, ""), design);
}

TEST(AnAcknowledgement, StandsOnTheListWithItsReason) {
  const Design design = demo("run_too_long");
  const auto findings = findings_of(design);
  const Design settled = acknowledged(design, *find(findings, FindingCode::no_alarm_note), "bought, not yet up");
  const std::string text = findings_text(findings, settled, *shipped_library(), UnitSystem::metric);
  EXPECT_NE(text.find("acknowledged: bought, not yet up"), std::string::npos);
}

TEST(AnAcknowledgement, TellsAnOutletThatIsLowOverTheRoofFromOneThatIsLowOverWhatStandsNear) {
  Design design = test::with_field(demo("run_too_long"), "p19", "length", Length(650.0 * millimetre));
  design.house.highest_near = 3.3 * metre;
  const auto findings = findings_of(design);
  std::vector<const Finding*> low;
  for (const Finding& finding : findings) {
    if (finding.code == FindingCode::low_outlet) low.push_back(&finding);
  }
  ASSERT_EQ(low.size(), 2u);
  ASSERT_EQ(low[0]->piece, low[1]->piece);
  DesignDocument document;
  document.design = acknowledged(design, *low[1], "the shed comes down in spring");
  EXPECT_EQ(acknowledgement_of(*low[0], document.design), nullptr);
  ASSERT_NE(acknowledgement_of(*low[1], document.design), nullptr);
  // In the file too.
  const ReadResult read = read_design_text(write_design_text(document, *shipped_library()), *shipped_library());
  ASSERT_TRUE(std::holds_alternative<DesignDocument>(read));
  const Design& again = std::get<DesignDocument>(read).design;
  EXPECT_EQ(acknowledgement_of(*low[0], again), nullptr);
  ASSERT_NE(acknowledgement_of(*low[1], again), nullptr);
  EXPECT_EQ(acknowledgement_of(*low[1], again)->reason, "the shed comes down in spring");
}

TEST(AnAcknowledgement, DoesNotPassToAPieceThatComesLater) {
  Design design = demo("run_too_long");
  const PieceId gone = design.pieces.back().id;
  Finding finding;
  finding.code = FindingCode::missing_cleanout;
  finding.piece = gone;
  design = acknowledged(design, finding, "seen");
  const EditResult without = remove_piece(design, *shipped_library(), gone);
  ASSERT_TRUE(without.design);
  EXPECT_NE(without.design->fresh_id(), gone);
}

TEST(AnAcknowledgement, WithoutAReasonIsNoGoodFile) {
  const std::string text = R"({"fluewright_design": 1, "acknowledged": [{"finding": "wet_wall", "reason": ""}]})";
  EXPECT_TRUE(std::holds_alternative<FileFault>(read_design_text(text, *shipped_library())));
}

TEST(TheHouse, IsWrittenOnlyWhereItDiffersFromTheUsual) {
  DesignDocument document;
  EXPECT_EQ(write_design_text(document, *shipped_library()).find("\"house\""), std::string::npos);
  document.design.house.brush_length = 3.0 * metre;
  const std::string text = write_design_text(document, *shipped_library());
  EXPECT_NE(text.find("\"brush_length_mm\": 3000"), std::string::npos);
  EXPECT_EQ(text.find("floor_capacity"), std::string::npos);
}

}  // namespace
}  // namespace fluewright
