// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// What is said of gas and fire as the heater runs: a design that raises each finding and a near twin that does not.

#include "engine/advice/practice.hpp"
#include "tests/app/advice/advised.hpp"
#include "app/shared/words.hpp"

#include <cmath>
#include <functional>

namespace fluewright {
namespace {

using test::demo;
using test::find;
using test::findings_of;
using test::first;
using test::has;
using test::with_field;

/// Two designs a thousandth of the way apart, one that raises the finding and one that does not, looked for between
/// values of which the first does not and the second does; the finding of the one that does.
Finding raised_between_twins(const std::function<Design(double)>& design_at, double without, double with, FindingCode code) {
  EXPECT_FALSE(has(design_at(without), code)) << finding_name(code);
  const double apart = std::abs(with - without) / 1000.0;
  std::optional<Finding> raised;
  if (const auto all = findings_of(design_at(with)); find(all, code) != nullptr) raised = *find(all, code);
  EXPECT_TRUE(raised) << finding_name(code);
  while (std::abs(with - without) > apart) {
    const double middle = 0.5 * (with + without);
    const auto findings = findings_of(design_at(middle));
    const Finding* finding = find(findings, code);
    (finding != nullptr ? with : without) = middle;
    if (finding != nullptr) raised = *finding;
  }
  return raised.value_or(Finding{});
}

TEST(FanDependent, IsSaidWhereTheDraftGoesWithTheFanAndNotWhereItHoldsWithout) {
  const Design held = demo("kept_by_a_fan");
  const auto findings = findings_of(held);
  const Finding* finding = find(findings, FindingCode::fan_dependent);
  ASSERT_NE(finding, nullptr);
  EXPECT_EQ(&findings.front(), finding) << "nothing is more serious";
  EXPECT_LT(std::get<Pressure>(finding->value), Pressure{});
  // The same heater on a hard frost, with nothing that pulls at the house.
  Design frost = held;
  frost.site.outdoor_temperature = celsius(-25.0);
  frost.room.exhaust_flow = {};
  EXPECT_GE(assess(frost, *shipped_library()).worst_margin, Pressure{});
  EXPECT_FALSE(has(frost, FindingCode::fan_dependent));
}

// The fan at the foot of the chimney gets hotter gas the shorter the bench before it is.
TEST(AFanOverItsRating, IsSaidBehindABenchThatIsTooShortOfItsGasAndOfItsMotor) {
  const Design design = demo("kept_by_a_fan");
  const auto with_share = [&design](double share) {
    Design changed = design;
    for (const Piece& piece : design.pieces) {
      if (piece.type != "bench_pipe") continue;
      const Length length = std::get<Length>(piece.fields.at("length"));
      changed = with_field(changed, piece.id, "length", Length(share * length));
    }
    changed.fire.burn_rate = 5.0 * kilogram_per_hour;
    return changed;
  };
  for (const FindingCode code : {FindingCode::fan_gas_too_hot, FindingCode::fan_motor_too_hot}) {
    const Finding finding = raised_between_twins(with_share, 1.0, 0.02, code);
    ASSERT_TRUE(finding.highest) << finding_name(code);
    const TemperatureDifference over = std::get<Temperature>(finding.value) - std::get<Temperature>(*finding.highest);
    EXPECT_GE(over, TemperatureDifference{}) << finding_name(code);
    EXPECT_LT(in(over, kelvin), 2.0) << finding_name(code);
  }
}

TEST(SmokeLeak, IsSaidOfStretchesFromPieceToPieceWithTheMostThatTheyLieAboveTheRoom) {
  Design calm = demo("bench_small_150");
  calm.room.exhaust_flow = {};
  EXPECT_FALSE(has(calm, FindingCode::smoke_leak));
  Design pulled = calm;
  pulled.room.extra_depressurisation = 12.0 * pascal;
  const Assessment answer = assess(pulled, *shipped_library());
  const auto findings = all_findings(pulled, *shipped_library(), answer);
  // By the profile, row by row.
  struct Leak {
    PieceId from;
    PieceId to;
    Pressure most{};
  };
  std::vector<Leak> by_rows;
  bool inside = false;
  for (const SliceState& row : answer.profile) {
    const Pressure above = row.beside_room ? Pressure(row.gauge - row.room_gauge) : Pressure{};
    const PieceId& piece = pulled.pieces[row.piece].id;
    if (above > Pressure{}) {
      if (!inside) by_rows.push_back({piece, piece, above});
      by_rows.back().to = piece;
      by_rows.back().most = std::max(by_rows.back().most, above);
    }
    inside = above > Pressure{};
  }
  std::vector<const Finding*> said;
  for (const Finding& finding : findings) {
    if (finding.code == FindingCode::smoke_leak) said.push_back(&finding);
  }
  ASSERT_EQ(said.size(), by_rows.size());
  bool over_several = false;
  for (std::size_t i = 0; i < said.size(); ++i) {
    EXPECT_EQ(said[i]->piece, by_rows[i].from);
    EXPECT_EQ(said[i]->text.empty() ? said[i]->piece : said[i]->text, by_rows[i].to);
    EXPECT_EQ(std::get<Pressure>(said[i]->value), by_rows[i].most);
    if (said[i]->text.empty()) continue;
    over_several = true;
    EXPECT_EQ(sentence(*said[i], pulled, *shipped_library(), UnitSystem::metric).find("From "), 0u);
  }
  EXPECT_TRUE(over_several) << "a stretch reaches over more than one piece";
}

TEST(WetWall, IsSaidBehindALongBenchAndNotBehindAShortOne) {
  Design design = demo("run_too_long");
  design.fire.moisture = 0.12;
  design.fire.burn_rate = 4.0 * kilogram_per_hour;
  const Finding finding = raised_between_twins(
      [&](double share) {
        Design changed = design;
        for (const Piece& piece : design.pieces) {
          if (piece.type != "bench_pipe") continue;
          const Length length = std::get<Length>(piece.fields.at("length"));
          changed = with_field(changed, piece.id, "length", Length(share * length));
        }
        return changed;
      },
      0.02, 1.0, FindingCode::wet_wall);
  EXPECT_FALSE(finding.piece.empty());
}

TEST(ShortOfAir, IsSaidOfAMouthThatIsNearlyShutAndOverdrawnOfOneThatIsNot) {
  const Design design = demo("bench_small_150");
  EXPECT_FALSE(has(design, FindingCode::short_of_air));
  EXPECT_FALSE(has(design, FindingCode::overdrawn));
  const PieceId feed = first(design, "feed_tube");
  EXPECT_TRUE(has(with_field(design, feed, "free_share", Ratio(0.05)), FindingCode::short_of_air));
  Design small = with_field(design, feed, "free_share", Ratio(1.0));
  small.fire.burn_rate = 0.6 * kilogram_per_hour;
  EXPECT_TRUE(has(small, FindingCode::overdrawn));
}

TEST(CanRunBackwards, IsACautionInAHouseUnderSuctionAndANoteWithoutIt) {
  Design design = demo("bench_small_150");
  design.room.exhaust_flow = {};
  const auto calm = findings_of(design);
  const Finding* finding = find(calm, FindingCode::can_run_backwards);
  EXPECT_TRUE(finding == nullptr || finding->severity == Severity::note);
  design.room.extra_depressurisation = 15.0 * pascal;
  const auto pulled = findings_of(design);
  finding = find(pulled, FindingCode::can_run_backwards);
  ASSERT_NE(finding, nullptr);
  EXPECT_EQ(finding->severity, Severity::caution);
}

TEST(ExitTooHot, IsSaidOverAHundredAndFiftyDegrees) {
  Design design = demo("bench_small_150");
  EXPECT_FALSE(has(design, FindingCode::exit_too_hot));
  for (const Piece& piece : demo("bench_small_150").pieces) {
    if (piece.type == "bench_pipe") design = with_field(design, piece.id, "length", Length(100.0 * millimetre));
  }
  const Finding finding = raised_between_twins(
      [&](double rate) {
        Design fired = design;
        fired.fire.burn_rate = rate * kilogram_per_hour;
        return fired;
      },
      1.0, 5.0, FindingCode::exit_too_hot);
  EXPECT_NEAR(in_celsius(std::get<Temperature>(finding.value)), 150.0, 0.5);
}

TEST(GasTooFast, IsSaidOverSixMetresASecond) {
  // A strong chimney on a hard frost, a mouth wide open, and one short length of the bench drawn in.
  Design design = demo("bench_small_150");
  design.site.outdoor_temperature = celsius(-30.0);
  design.fire.burn_rate = 8.0 * kilogram_per_hour;
  design = with_field(design, first(design, "feed_tube"), "free_share", Ratio(1.0));
  design = with_field(design, first(design, "stack_insulated"), "length", Length(12.0 * metre));
  const PieceId pipe = first(design, "bench_pipe");
  EXPECT_FALSE(has(design, FindingCode::gas_too_fast));
  design = with_field(design, pipe, "length", Length(100.0 * millimetre));
  const Finding finding = raised_between_twins(
      [&](double bore) { return with_field(design, pipe, "bore", Length(bore * millimetre)); }, 150.0, 80.0,
      FindingCode::gas_too_fast);
  EXPECT_NEAR(in(std::get<Velocity>(finding.value), metre_per_second), 6.0, 0.05);
}

TEST(GasTooSlow, IsSaidUnderAThirdOfAMetreASecond) {
  Design design = demo("bench_small_150");
  EXPECT_FALSE(has(design, FindingCode::gas_too_slow));
  const PieceId pipe = first(design, "bench_pipe");
  design = with_field(design, pipe, "mass_width", Length(700.0 * millimetre));
  design = with_field(design, pipe, "mass_height", Length(700.0 * millimetre));
  const Finding finding = raised_between_twins(
      [&](double bore) { return with_field(design, pipe, "bore", Length(bore * millimetre)); }, 150.0, 400.0,
      FindingCode::gas_too_slow);
  EXPECT_NEAR(in(std::get<Velocity>(finding.value), metre_per_second), 0.3, 0.01);
}

TEST(SeatTooHot, IsSaidOverFortyThreeDegreesOfAThinBenchNextToTheDrum) {
  const Design thick = demo("bench_small_150");
  const PieceId pipe = first(thick, "bench_pipe");
  Design thin = with_field(thick, pipe, "mass_height", Length(180.0 * millimetre));
  thin = with_field(thin, pipe, "mass_width", Length(200.0 * millimetre));
  const Finding finding = raised_between_twins(
      [&](double rate) {
        Design fired = thin;
        fired.fire.burn_rate = rate * kilogram_per_hour;
        return fired;
      },
      0.2, 4.0, FindingCode::seat_too_hot);
  EXPECT_NEAR(in_celsius(std::get<Temperature>(finding.value)), 43.0, 0.2);
}

}  // namespace
}  // namespace fluewright
