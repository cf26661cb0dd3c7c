// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Every finding of practice has a design that raises it and a near twin, one value away, that does not.

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

TEST(WillNotDraw, IsSaidOfARunThatIsTooLongWithItsAgeAndWhatIsMissing) {
  const Design design = demo("run_too_long");
  const Assessment answer = assess(design, *shipped_library());
  const auto findings = all_findings(design, *shipped_library(), answer);
  const Finding* finding = find(findings, FindingCode::will_not_draw);
  ASSERT_NE(finding, nullptr);
  EXPECT_EQ(std::get<Pressure>(finding->value), answer.worst_margin);
  EXPECT_EQ(finding->text, "one_hour");  // the demo's least margin, as its own numbers say
  EXPECT_EQ(&findings.front(), finding) << "nothing is more serious";
  EXPECT_FALSE(has(demo("bench_small_150"), FindingCode::will_not_draw));
}

TEST(Marginal, IsSaidUnderTwoPascalsAndNotOverThem) {
  Design design = demo("bench_small_150");
  EXPECT_FALSE(has(design, FindingCode::marginal));
  design.site.wind_allowance = assess(design, *shipped_library()).worst_margin - 1.9 * pascal;
  EXPECT_TRUE(has(design, FindingCode::marginal));
  design.site.wind_allowance -= 0.2 * pascal;
  EXPECT_FALSE(has(design, FindingCode::marginal));
}

TEST(ChokeInlet, IsSaidOfAWideMouthAndNotOfOneThatIsChokedAsTold) {
  const Design wide = with_field(demo("bench_small_150"), first(demo("bench_small_150"), "feed_tube"), "free_share", Ratio(0.6));
  const auto findings = findings_of(wide);
  const Finding* finding = find(findings, FindingCode::choke_inlet);
  ASSERT_NE(finding, nullptr);
  EXPECT_DOUBLE_EQ(std::get<Ratio>(finding->value), 0.6);
  EXPECT_FALSE(has(with_field(wide, finding->piece, "free_share", *finding->highest), FindingCode::choke_inlet));
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

TEST(HouseSuction, IsSaidFromFivePascalsOn) {
  Design design = demo("bench_small_150");
  design.room.exhaust_flow = {};
  design.room.extra_depressurisation = 4.9 * pascal;
  EXPECT_FALSE(has(design, FindingCode::house_suction));
  design.room.extra_depressurisation = 5.0 * pascal;
  EXPECT_TRUE(has(design, FindingCode::house_suction));
}

TEST(WaterPools, IsSaidWhereTheLowestPlaceHasNoLid) {
  const Design wet = demo("chimney_outside");
  EXPECT_GT(assess(wet, *shipped_library()).condensation->rate, MassFlow{});
  EXPECT_FALSE(has(wet, FindingCode::water_pools)) << "its foot has a cleanout";
  // The same chimney with every lid gone and every tee shut for good.
  Design closed = wet;
  for (const Piece& piece : wet.pieces) {
    if (piece.type == "cleanout_cap") {
      const auto tee = wet.joined_to({piece.id, "in"});
      closed = *remove_piece(closed, *shipped_library(), piece.id).design;
      ASSERT_TRUE(tee);
      const EditResult elbow = set_type(closed, *shipped_library(), tee->piece, "elbow_smooth");
      ASSERT_TRUE(elbow.design);
      closed = *elbow.design;
    }
  }
  ASSERT_TRUE(assess(closed, *shipped_library()).path.complete);
  EXPECT_TRUE(has(closed, FindingCode::water_pools));
}

TEST(WrongFall, IsSaidOfARunThatFallsToAPlaceWithoutADrain) {
  const Design flat = demo("run_too_long");
  EXPECT_FALSE(has(flat, FindingCode::wrong_fall));
  // The first run falls along the flow; the turn after it has no lid, and then the way is level: the water stays there.
  Design falling = with_field(flat, "p6", "slope", Ratio(-0.02));
  falling = with_field(falling, "p9", "slope", Ratio(0.01));
  const auto findings = findings_of(falling);
  const Finding* finding = find(findings, FindingCode::wrong_fall);
  ASSERT_NE(finding, nullptr);
  EXPECT_EQ(finding->piece, "p6");
  EXPECT_NEAR(std::get<Ratio>(finding->value), -0.02, 1e-4);
  // The same fall with the way falling on to the foot, which has a cleanout.
  Design drained = with_field(flat, "p6", "slope", Ratio(-0.02));
  drained = with_field(drained, "p9", "slope", Ratio(-0.01));
  EXPECT_FALSE(has(drained, FindingCode::wrong_fall));
}

TEST(Narrowing, IsSaidOfAPipeUnderTheRisersSectionAndNotOfOneOfItsSize) {
  const Design even = demo("bench_small_150");
  EXPECT_FALSE(has(even, FindingCode::narrowing));
  const Design narrow = with_field(even, first(even, "bench_pipe"), "bore", Length(125.0 * millimetre));
  const auto findings = findings_of(narrow);
  const Finding* finding = find(findings, FindingCode::narrowing);
  ASSERT_NE(finding, nullptr);
  EXPECT_NEAR(in(std::get<Length>(finding->value), millimetre), 125.0, 1e-6);
  EXPECT_NEAR(in(std::get<Length>(*finding->lowest), millimetre), 150.0, 1e-6);
}

TEST(LowOutlet, IsSaidUnderThreeFeetOverTheRoof) {
  const Design low = demo("run_too_long");  // 0.8 m of chimney and a cap of 0.2 m over the roof: just enough
  EXPECT_FALSE(has(low, FindingCode::low_outlet));
  const auto findings = findings_of(with_field(low, "p19", "length", Length(650.0 * millimetre)));
  const Finding* finding = find(findings, FindingCode::low_outlet);
  ASSERT_NE(finding, nullptr);
  EXPECT_NEAR(in(std::get<Length>(finding->value), millimetre), 850.0, 1.0);
  EXPECT_TRUE(finding->field.empty());
}

TEST(LowOutlet, IsSaidUnderTwoFeetOverWhatStandsNear) {
  Design design = demo("run_too_long");
  const Length outlet = 3.9 * metre;
  design.house.highest_near = outlet - 0.62 * metre;
  EXPECT_FALSE(has(design, FindingCode::low_outlet));
  design.house.highest_near = outlet - 0.60 * metre;
  EXPECT_TRUE(has(design, FindingCode::low_outlet));
}

TEST(NearCombustibles, IsSaidOfASingleWallUnderEighteenInchesOnly) {
  const Design design = demo("run_too_long");
  EXPECT_FALSE(has(design, FindingCode::near_combustibles));
  EXPECT_TRUE(has(with_field(design, "p17", "to_combustibles", Length(450.0 * millimetre)), FindingCode::near_combustibles));
  EXPECT_FALSE(has(with_field(design, "p17", "to_combustibles", Length(458.0 * millimetre)), FindingCode::near_combustibles));
  // An insulated wall has a clearance of its own, from its maker.
  Design insulated = with_field(design, "p17", "to_combustibles", Length(100.0 * millimetre));
  insulated = with_field(insulated, "p17", "wall", std::string("pipe_insulated_25"));
  EXPECT_FALSE(has(insulated, FindingCode::near_combustibles));
}

TEST(NearCombustibles, AsksMoreOfADrum) {
  const Design design = demo("run_too_long");
  EXPECT_TRUE(has(with_field(design, "p4", "to_combustibles", Length(900.0 * millimetre)), FindingCode::near_combustibles));
  EXPECT_FALSE(has(with_field(design, "p4", "to_combustibles", Length(915.0 * millimetre)), FindingCode::near_combustibles));
}

TEST(HiddenSingleWall, IsSaidOfPlainPipeInTheAttic) {
  const Design design = demo("run_too_long");
  EXPECT_FALSE(has(design, FindingCode::hidden_single_wall));
  EXPECT_TRUE(has(with_field(design, "p18", "wall", std::string("pipe_single_0_7")), FindingCode::hidden_single_wall));
}

TEST(MissingCleanout, IsSaidOfTheTurnsThatABrushDoesNotReach) {
  Design design = demo("run_too_long");
  design.house.brush_length = 5.0 * metre;
  const auto findings = findings_of(design);
  const auto missing = std::count_if(findings.begin(), findings.end(),
                                     [](const Finding& f) { return f.code == FindingCode::missing_cleanout; });
  EXPECT_EQ(missing, 6) << "six quarter turns, each behind 6.5 m of pipe";
  design.house.brush_length = 8.0 * metre;
  const auto left = findings_of(design);
  // From the ash pit through the first run to the first turn, from the foot back to the last: one quarter of each turn
  // is met straight on, the other round one corner.
  EXPECT_EQ(std::count_if(left.begin(), left.end(), [](const Finding& f) { return f.code == FindingCode::missing_cleanout; }), 2);
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

TEST(FloorOverloaded, ComparesTheBenchWithWhatTheFloorIsSaidToCarry) {
  Design design = demo("bench_small_150");
  const auto findings = findings_of(design);
  const Finding* finding = find(findings, FindingCode::floor_overloaded);
  ASSERT_NE(finding, nullptr);
  // Worked by hand for the heaviest run: density times gravity times height, less the pipe's own room.
  const Piece& piece = *design.piece(finding->piece);
  const PieceView view(design, *shipped_library(), piece, *shipped_library()->piece_type(piece.type));
  const double width = in(view.length("mass_width"), metre);
  const double bore = in(view.length("bore"), metre);
  const double density = in(view.material("mass_material")->density, kilogram_per_cubic_metre);
  const double by_hand =
      density * 9.80665 * (in(view.length("mass_height"), metre) - 3.14159265358979 * bore * bore / 4.0 / width);
  EXPECT_NEAR(in(std::get<Pressure>(finding->value), pascal), by_hand, 1e-6 * by_hand);
  design.house.floor_capacity = std::get<Pressure>(finding->value) + 1.0 * pascal;
  EXPECT_FALSE(has(design, FindingCode::floor_overloaded));
}

TEST(NoAlarmNote, GoesAwayWhenTheDesignSaysThatThereIsOne) {
  Design design = demo("bench_small_150");
  EXPECT_TRUE(has(design, FindingCode::no_alarm_note));
  design.house.co_alarm = "yes";
  EXPECT_FALSE(has(design, FindingCode::no_alarm_note));
}

TEST(Findings, StandMostSeriousFirst) {
  for (const Demo& shipped : shipped_demos()) {
    const auto findings = findings_of(demo(shipped.id));
    EXPECT_TRUE(std::is_sorted(findings.begin(), findings.end(),
                               [](const Finding& a, const Finding& b) { return a.severity > b.severity; }))
        << shipped.id;
  }
}

// Nothing that the gas would have to say: no number of a path that leads nowhere.
TEST(Findings, OfAPathThatIsNotFinishedSayNothingOfTheGas) {
  const Design design = demo("run_too_long");
  for (const Piece& piece : design.pieces) {
    const EditResult without = remove_piece(design, *shipped_library(), piece.id);
    if (!without.design) continue;
    const Assessment answer = assess(*without.design, *shipped_library());
    if (answer.path.complete) continue;
    for (const Finding& finding : all_findings(*without.design, *shipped_library(), answer)) {
      const bool of_gas = std::holds_alternative<Temperature>(finding.value) || std::holds_alternative<Velocity>(finding.value) ||
                          std::holds_alternative<MassFlow>(finding.value);
      EXPECT_FALSE(of_gas) << piece.id << ' ' << finding_name(finding.code);
    }
  }
}

TEST(Findings, OfADesignWithGapsAreAboutTheGaps) {
  const Design design = test::with_gap(demo("bench_small_150"));
  const auto findings = findings_of(design);
  EXPECT_EQ(findings.front().severity, Severity::fault);
  for (const FindingCode code : {FindingCode::will_not_draw, FindingCode::marginal, FindingCode::gas_too_slow,
                                 FindingCode::low_outlet, FindingCode::water_pools, FindingCode::exit_too_hot}) {
    EXPECT_EQ(find(findings, code), nullptr) << finding_name(code);
  }
}

TEST(Findings, AllHaveAName_ASentence_AReasonAndASource) {
  const Design design = demo("run_too_long");
  std::size_t named = 0;
  for (int i = 0; i < 1000 && !finding_name(static_cast<FindingCode>(i)).empty(); ++i) {
    const auto code = static_cast<FindingCode>(i);
    ++named;
    EXPECT_FALSE(why_it_matters(code).empty()) << finding_name(code);
    EXPECT_FALSE(finding_source(code).source.empty()) << finding_name(code);
  }
  EXPECT_GE(named, 47u);
  for (const Demo& shipped : shipped_demos()) {
    const Design shown = demo(shipped.id);
    for (const Finding& finding : findings_of(shown)) {
      for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        EXPECT_FALSE(sentence(finding, shown, *shipped_library(), units).empty()) << finding_name(finding.code);
      }
    }
  }
}

}  // namespace
}  // namespace fluewright
