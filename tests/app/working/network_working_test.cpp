// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The working of paths that branch: every relation holds to the printed digits, on every slice of every branch.

#include "engine/working/explain.hpp"
#include "tests/app/working/hand_calculator.hpp"
#include "tests/engine/layout/branched_drawings.hpp"

#include <gtest/gtest.h>

namespace fluewright::test {
namespace {

struct Answered {
  Chain chain;
  Assessment answer;

  explicit Answered(Chain drawn) : chain{std::move(drawn)} {
    chain.design.site.outdoor_temperature = celsius(-5.0);
    // Wind at the cap, so that no gauge is nothing to the last digit; a low neutral plane, so that no feed blows out.
    chain.design.site.wind_speed = 3.0 * metre_per_second;
    chain.design.site.wind_coefficient = -0.3;
    chain.design.room.neutral_plane = 0.5 * metre;
    answer = assess(chain.design, *shipped_library());
  }
  [[nodiscard]] std::unique_ptr<const Retrace> retraced(std::size_t piece) const {
    return retrace_piece(chain.design, *shipped_library(), answer, piece);
  }
};

TEST(ABranchWorkedByHand, GivesThePrintedDigitsInEveryPiece) {
  for (const Chain& chain : {tee_at_foot("off"), bypassed_bench(20.0 * degree), duct_beside_feed(), with_in_stack("leaky_joint")}) {
    const Answered a{chain};
    ASSERT_FALSE(a.answer.branches.empty());
    for (std::size_t piece = 0; piece < a.chain.design.pieces.size(); ++piece) {
      const auto run = a.retraced(piece);
      ASSERT_NE(run, nullptr) << a.chain.design.pieces[piece].type;
      const auto working = explain_piece(*run, piece);
      ASSERT_TRUE(working) << a.chain.design.pieces[piece].type;
      follow_by_digits(*working);
    }
  }
}

TEST(ABranchWorkedByHand, StandsBesideTheAnswersOwnRows) {
  const Answered a{bypassed_bench(20.0 * degree)};
  const auto run = a.retraced(0);
  ASSERT_NE(run, nullptr);
  ASSERT_EQ(run->rows.size(), a.answer.profile.size());
  for (std::size_t i = 0; i < run->rows.size(); ++i) {
    EXPECT_NEAR(in_kelvin(run->rows[i].gas), in_kelvin(a.answer.profile[i].gas), 1e-6);
    EXPECT_NEAR(in(run->rows[i].gauge, pascal), in(a.answer.profile[i].gauge, pascal), 1e-7);
  }
}

TEST(AHeadlineOfAPathThatBranches, GivesThePrintedDigits) {
  for (const Chain& chain : {tee_at_foot("off"), bypassed_bench(20.0 * degree), duct_beside_feed()}) {
    const Answered a{chain};
    for (const NamedHeadline& headline : headlines()) {
      const auto working = explain_headline(a.chain.design, *shipped_library(), a.answer, headline.headline);
      ASSERT_TRUE(working) << headline.name;
      SCOPED_TRACE(std::string(headline.name));
      follow_by_digits(*working);
    }
  }
}

TEST(AHeadlineOfAPathThatBranches, IsTheAnswersOwnNumber) {
  const Answered a{tee_at_foot("off")};
  const auto value = [&](HeadlineNumber number, std::string_view symbol) {
    const auto working = explain_headline(a.chain.design, *shipped_library(), a.answer, number);
    return working->step(symbol)->value;
  };
  const OperatingPoint& point = *a.answer.running_point();
  EXPECT_NEAR(in(std::get<Power>(value(HeadlineNumber::stack_loss, "Q_stack")) / point.heat.stack_loss, Ratio(1.0)), 1.0, 1e-6);
  EXPECT_NEAR(in(std::get<Power>(value(HeadlineNumber::heat_to_room, "Q_all")) / point.heat.to_room, Ratio(1.0)), 1.0, 1e-6);
  EXPECT_NEAR(in(std::get<Pressure>(value(HeadlineNumber::draft_margin_charged, "margin")), pascal),
              in(a.answer.design_flow.back().margin, pascal), 1e-9);
  EXPECT_NEAR(in_kelvin(std::get<Temperature>(value(HeadlineNumber::exit_temperature, "T_exit"))),
              in_kelvin(point.exit_temperature), 1e-6);
}

TEST(APieceWhoseGasRunsBackwards, IsNotWorked) {
  const Answered a{bypassed_stack()};
  ASSERT_LT(a.answer.branches[1].flow, MassFlow{});
  EXPECT_EQ(a.retraced(0), nullptr);
}

}  // namespace
}  // namespace fluewright::test
