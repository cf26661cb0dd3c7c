// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// What the answer and the plots say about a given assessment. The assessments here are written down by hand.

#include "app/desktop/answer/answer_panel.hpp"
#include "app/desktop/answer/answer_words.hpp"
#include "app/desktop/answer/follower.hpp"
#include "app/desktop/plot/plot_picture.hpp"
#include "panels_support.hpp"

#include <QLabel>

#include <algorithm>
#include <ctime>

namespace fluewright {
namespace {

struct Case {
  std::shared_ptr<const Library> library = shipped_library();
  Design design;
  Assessment assessment;
  UnitSystem units = UnitSystem::metric;

  Case() {
    for (const char* id : {"p1", "p2"}) {
      Piece piece;
      piece.id = id;
      piece.type = library->piece_types.front().id;
      piece.label = id;
      design.pieces.push_back(piece);
    }
  }
  [[nodiscard]] AnswerContext context() const { return {assessment, design, *library, units}; }

  /// Gauge pressures along the path in pascal, one slice of a metre each, the room at a level.
  void profile(const std::vector<double>& gauge, double room) {
    for (std::size_t i = 0; i < gauge.size(); ++i) {
      SliceState slice;
      slice.piece = i < gauge.size() / 2 ? 0 : 1;
      slice.length = 1.0 * metre;
      slice.s = static_cast<double>(i + 1) * metre;
      slice.gauge = gauge[i] * pascal;
      slice.room_gauge = room * pascal;
      slice.gas = celsius(100.0);
      slice.wall = celsius(80.0 - 10.0 * static_cast<double>(i));
      slice.dew_point = celsius(45.0);
      assessment.profile.push_back(slice);
    }
  }
};

DesignFlow flow(BenchAge age, double margin, bool quick) {
  DesignFlow result;
  result.age = age;
  result.margin = margin * pascal;
  result.quick_estimate = quick;
  return result;
}

TEST(Branches, AreSaidTheWayTheirGasRuns) {
  Case c;
  EXPECT_TRUE(branch_lines(c.context()).isEmpty());
  FlueNetwork& network = c.assessment.path.network;
  network.nodes.push_back({1, {}, {}});
  Branch lid;
  lid.from.kind = EndKind::room_air;
  lid.to.kind = EndKind::node;
  network.branches = {lid, lid};
  c.assessment.path.ways = {{{0, "in", "out"}}, {{0, "lid", "in"}}};
  BranchState main;
  main.on_main_path = true;
  BranchState side;
  side.branch = 1;
  side.flow = -2.0 * gram / second;
  side.share = 0.25;
  side.leaving = celsius(80.0);
  c.assessment.branches = {main, side};
  const QStringList lines = branch_lines(c.context());
  ASSERT_EQ(lines.size(), 1);
  EXPECT_EQ(lines[0].toStdString(), "p1: 2.0\u00a0g/s from p2 to room, 25 % of the cap's, leaves at 80\u00a0°C");
}

TEST(MarginHeadline, NamesTheWorstAgeAndSaysTheVerdictWithASymbol) {
  Case c;
  c.assessment.verdict = Verdict::marginal;
  c.assessment.worst_age = BenchAge::one_hour;
  c.assessment.worst_margin = 1.2 * pascal;
  const HeadlineWords said = margin_headline(c.context());
  EXPECT_TRUE(said.figure.contains("1.2")) << said.figure.toStdString();
  EXPECT_TRUE(said.state.contains("marginal"));
  EXPECT_TRUE(said.state.startsWith(symbol(Tone::caution)));
  EXPECT_TRUE(said.note.contains("one hour"));
}

TEST(MarginHeadline, SaysWhatIsMissingInsteadOfANumber) {
  Case c;
  const HeadlineWords said = margin_headline(c.context());
  EXPECT_EQ(said.figure, "–");
  EXPECT_FALSE(said.note.isEmpty());
}

TEST(Tones, HaveEachTheirOwnSymbol) {
  EXPECT_NE(symbol(Tone::calm), symbol(Tone::caution));
  EXPECT_NE(symbol(Tone::caution), symbol(Tone::fault));
  EXPECT_NE(symbol(Tone::calm), symbol(Tone::fault));
}

TEST(AgeRows, MarkQuickEstimatesAndMarginsBelowZero) {
  Case c;
  c.assessment.design_flow = {flow(BenchAge::cold_bench, -0.5, true), flow(BenchAge::one_hour, 1.0, true),
                              flow(BenchAge::charged, 4.0, false)};
  const auto rows = age_rows(c.context());
  ASSERT_EQ(rows.size(), 3u);
  EXPECT_TRUE(rows[0][1].contains(symbol(Tone::fault)));
  EXPECT_TRUE(rows[1][1].startsWith("≈"));
  EXPECT_FALSE(rows[2][1].contains("≈"));
  EXPECT_TRUE(estimate_words(c.assessment, false).contains("cold bench"));
  EXPECT_FALSE(estimate_words(c.assessment, false).contains("charged"));
  EXPECT_TRUE(estimate_words(c.assessment, true).contains("being followed in time"));
  for (DesignFlow& d : c.assessment.design_flow) d.quick_estimate = false;
  EXPECT_FALSE(estimate_words(c.assessment, false).contains("estimate")) << "says which of the two is shown";
  EXPECT_TRUE(estimate_words(c.assessment, false).contains("followed in time"));
}

TEST(PowerCutRemark, StandsWhereAFanRunsAndSaysMinutes) {
  Case c;
  c.assessment.verdict = Verdict::draws;
  EXPECT_TRUE(power_cut_remark(c.context(), std::nullopt).words.isEmpty()) << "no fan, no words";
  c.assessment.worst_margin_with_fans = 4.0 * pascal;
  c.assessment.verdict = Verdict::unsafe;
  const Remark waiting = power_cut_remark(c.context(), std::nullopt);
  EXPECT_EQ(waiting.tone, Tone::fault) << "known to be unsafe before the run has told the minutes";
  EXPECT_TRUE(waiting.detail.contains("being worked out"));
  LateAnswer late;
  late.complete = true;
  EXPECT_TRUE(power_cut_remark(c.context(), late).detail.contains("take it for unsafe"));
  late.power_cut.emplace();
  late.power_cut->neutral.drew_before = late.power_cut->depressurised.drew_before = true;
  late.power_cut->neutral.starves = 30.0 * second;
  late.power_cut->depressurised.reverses = 45.0 * second;
  const Remark said = power_cut_remark(c.context(), late);
  EXPECT_EQ(said.tone, Tone::fault);
  EXPECT_TRUE(said.words.startsWith("UNSAFE"));
  EXPECT_TRUE(said.detail.contains("0:30 min") && said.detail.contains("0:45 min"));
  // Both runs hold, yet without the fan the margin falls short: never "no harm" under an unsafe verdict.
  late.power_cut->neutral.holds = late.power_cut->depressurised.holds = true;
  EXPECT_EQ(power_cut_remark(c.context(), late).tone, Tone::fault);
  c.assessment.verdict = Verdict::draws;
  EXPECT_EQ(power_cut_remark(c.context(), late).tone, Tone::calm);
}

TEST(OperatingRemarks, SayWhenItCanAlsoRunBackwards) {
  Case c;
  Finding backwards;
  backwards.code = FindingCode::can_run_backwards;
  backwards.severity = Severity::caution;
  backwards.value = 1.0 * pascal;
  Finding wet;
  wet.code = FindingCode::wet_wall;
  wet.piece = "p1";
  c.assessment.findings = {wet, backwards};
  const auto remarks = operating_remarks(c.context());
  ASSERT_EQ(remarks.size(), 1u);
  EXPECT_TRUE(remarks[0].words.contains("can also run backwards"));
  EXPECT_EQ(remarks[0].tone, Tone::caution);
}

TEST(Condensation, NamesThePieceAndTheDistance) {
  Case c;
  Condensation wet;
  wet.starts_at = 7.4 * metre;
  wet.piece = 1;
  wet.dew_point = celsius(44.0);
  c.assessment.condensation = wet;
  const HeadlineWords said = condensation_headline(c.context());
  EXPECT_TRUE(said.figure.startsWith("7.4")) << said.figure.toStdString();
  EXPECT_TRUE(said.note.contains("p2"));
  c.assessment.condensation->starts_at.reset();
  EXPECT_EQ(condensation_headline(c.context()).figure, "none");
}

TEST(PressurePicture, FillsExactlyWhereTheFlueIsAboveTheRoom) {
  Case c;
  c.profile({-2.0, 2.0, 2.0, -2.0}, 0.0);
  const PlotPicture picture = pressure_picture(c.assessment, c.design, *c.library, c.units);
  ASSERT_EQ(picture.bands.size(), 1u);
  // Straight between slices: the crossings lie halfway.
  EXPECT_NEAR(picture.bands[0].x.front(), 1.5, 1e-12);
  EXPECT_NEAR(picture.bands[0].x.back(), 3.5, 1e-12);
  EXPECT_EQ(picture.bands[0].label, "smoke can leak into the room");
  ASSERT_EQ(picture.pieces.size(), 2u);
  EXPECT_EQ(picture.piece_at(0.5)->id, "p1");
  EXPECT_EQ(picture.piece_at(3.2)->id, "p2");
}

TEST(PressurePicture, HasNoBandWhereTheFlueIsBelowTheRoomThroughout) {
  Case c;
  c.profile({-2.0, -3.0, -1.0}, 0.0);
  EXPECT_TRUE(pressure_picture(c.assessment, c.design, *c.library, c.units).bands.empty());
}

TEST(PressurePicture, SpeaksFeetAndInchesOfWater) {
  Case c;
  c.units = UnitSystem::imperial;
  c.profile({-249.08891}, 0.0);  // one inch of water, ISO 80000-4
  const PlotPicture picture = pressure_picture(c.assessment, c.design, *c.library, c.units);
  EXPECT_NEAR(picture.lines.back().y.front(), -1.0, 1e-9);
  EXPECT_NEAR(picture.lines.back().x.front(), 1.0 / 0.3048, 1e-9);
  EXPECT_TRUE(picture.x_title.contains("ft"));
  EXPECT_NEAR(in(from_plotted(plotted(3.0 * metre, c.units), c.units), metre), 3.0, 1e-12);
}

TEST(TemperaturePicture, MarksTheWetWallsFromTheCrossingOn) {
  Case c;
  c.profile({0.0, 0.0, 0.0, 0.0, 0.0}, 0.0);  // walls 80, 70, 60, 50, 40 degC, dew point 45 degC
  const PlotPicture picture = temperature_picture(c.assessment, c.design, *c.library, c.units);
  ASSERT_EQ(picture.bands.size(), 1u);
  EXPECT_NEAR(picture.bands[0].x.front(), 4.5, 1e-12);
  EXPECT_NEAR(picture.bands[0].x.back(), 5.0, 1e-12);
}

const Demo& demo_named(std::string_view id) {
  const auto& demos = shipped_demos();
  return *std::find_if(demos.begin(), demos.end(), [&](const Demo& d) { return d.id == id; });
}

/// The panel over a demo, seen.
struct Seen {
  Document document{shipped_library()};
  AnswerPanel panel;
  explicit Seen(std::string_view demo) : panel{document} {
    panel.resize(340, 900);
    panel.show();
    test::open_demo(document, demo_named(demo));
  }
  [[nodiscard]] QString label(const char* name) const { return panel.findChild<QLabel*>(QString::fromUtf8(name))->text(); }
  [[nodiscard]] bool settled() {
    return QTest::qWaitFor([this] { return !panel.follower().busy(); }, 20000);
  }
};

TEST(LateAnswer, ReplacesTheEstimateOfTheYoungAgesAndSaysWhichIsShown) {
  Seen seen("bench_small_150");
  EXPECT_TRUE(seen.label("estimate").contains("quick estimate"));
  const Pressure estimate = seen.document.followed().worst_margin;
  ASSERT_TRUE(seen.settled());
  EXPECT_TRUE(seen.label("estimate").contains("followed in time"));
  EXPECT_FALSE(seen.label("estimate").contains("quick"));
  for (const DesignFlow& flow : seen.document.followed().design_flow) EXPECT_FALSE(flow.quick_estimate);
  EXPECT_NE(seen.document.followed().worst_margin, estimate);
  EXPECT_EQ(seen.document.assessment().worst_margin, estimate) << "the quick one stays what it was";
  // The next edit: the estimate again, until it has been followed too.
  Design warmer = seen.document.design();
  warmer.site.outdoor_temperature += 3.0 * kelvin;
  seen.document.commit(warmer, "warmer");
  EXPECT_TRUE(seen.label("estimate").contains("quick estimate"));
  ASSERT_TRUE(seen.settled());
  EXPECT_TRUE(seen.label("estimate").contains("followed in time"));
}

TEST(LateAnswer, IsThatOfABranchedDesignToo) {
  Seen seen("bench_bypass_150");
  ASSERT_TRUE(seen.settled());
  EXPECT_TRUE(seen.label("estimate").contains("followed in time"));
  const auto& quick = seen.document.assessment().design_flow;
  const auto& followed = seen.document.followed().design_flow;
  ASSERT_EQ(quick.size(), followed.size());
  for (std::size_t i = 0; i < 2; ++i) {
    // Both count the same pressures; the ages differ by what the estimate flatters, as on the plain path.
    EXPECT_NEAR(in(followed[i].margin, pascal), in(quick[i].margin, pascal), 3.0);
    EXPECT_NEAR(in(followed[i].room_gauge, pascal), in(quick[i].room_gauge, pascal), 1e-9);
  }
}

TEST(LateAnswer, SaysThePowerCutsMinutesAboveAllElse) {
  Seen seen("kept_by_a_fan");
  EXPECT_TRUE(seen.label("power_cut").startsWith(symbol(Tone::fault))) << "unsafe before the run has told the minutes";
  ASSERT_TRUE(seen.settled());
  EXPECT_TRUE(seen.label("power_cut").contains("UNSAFE"));
  const QString detail = seen.label("power_cut_detail");
  EXPECT_TRUE(detail.contains("neutral house") && detail.contains(" min") && detail.contains("smoke")) << detail.toStdString();
  QApplication::processEvents();
  const auto* words = seen.panel.findChild<QLabel*>("power_cut");
  const auto* margin = seen.panel.findChild<QWidget*>("headline_margin");
  EXPECT_LT(words->mapTo(&seen.panel, QPoint()).y(), margin->mapTo(&seen.panel, QPoint()).y());
  Design without = seen.document.design();
  for (Piece& piece : without.pieces) {
    if (piece.type == "fan_side") piece.fields["speed"] = Ratio(0.0);
  }
  seen.document.commit(without, "off");
  EXPECT_TRUE(seen.label("power_cut").isEmpty()) << "no fan runs";
}

TEST(LateAnswer, IsCalledOffByTheNextEditWithinFiftyMilliseconds) {
  Document document{shipped_library()};
  test::open_demo(document, demo_named("kept_by_a_fan"));
  Follower follower(document);
  for (int i = 0; i < 5; ++i) {
    Design changed = document.design();
    changed.site.outdoor_temperature += 0.5 * kelvin;
    document.commit(changed, "milder");
    EXPECT_FALSE(document.late_answer()) << "what was called off by the edit is never handed over";
    ASSERT_TRUE(QTest::qWaitFor([&] { return follower.threads() > 0; }, 5000));
    QTest::qWait(5 * i);
    // The program's own processor time: a busy machine does not count.
    const std::clock_t before = std::clock();
    follower.call_off();
    EXPECT_FALSE(follower.busy()) << "the hand is free at once";
    ASSERT_TRUE(QTest::qWaitFor([&] { return follower.threads() == 0; }, 5000));
    EXPECT_LT(static_cast<double>(std::clock() - before) / CLOCKS_PER_SEC, 0.050);
  }
}

}  // namespace
}  // namespace fluewright
