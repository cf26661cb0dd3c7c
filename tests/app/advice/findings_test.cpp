// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Every finding of practice has a design that raises it and a near twin, one value away, that does not.

#include "engine/advice/practice.hpp"
#include "tests/app/advice/advised.hpp"
#include "app/shared/words.hpp"

namespace fluewright {
namespace {

using test::demo;
using test::find;
using test::findings_of;
using test::first;
using test::has;
using test::with_field;

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
