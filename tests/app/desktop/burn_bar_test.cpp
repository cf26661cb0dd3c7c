// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "burn_hand.hpp"

#include "app/desktop/burn/plan_rows.hpp"
#include "app/desktop/fields/pick_field.hpp"
#include "app/shared/burn_file.hpp"

#include <QComboBox>
#include <QFile>
#include <QMenu>

namespace fluewright::test {
namespace {

const PlanRef first_load{PlanList::loads, 0};

TEST(TimeLineByMouse, ADoubleClickAddsToTheLaneAndOneUndoTakesItAway) {
  Burner hand;
  const BurnPlan before = hand.plan();
  QTest::mouseDClick(&hand.bar(), Qt::LeftButton, {}, hand.bar().place_of(Lane::power, 2.0 * hour));
  ASSERT_EQ(hand.plan().cuts.size(), 1U);
  EXPECT_NEAR(in(hand.plan().cuts[0].at, hour), 2.0, 0.1);
  EXPECT_EQ(hand.book().selected(), (PlanRef{PlanList::cuts, 0}));
  QTest::mouseDClick(&hand.bar(), Qt::LeftButton, {}, hand.bar().place_of(Lane::hood, 4.0 * hour));
  EXPECT_EQ(hand.plan().hoods.size(), 2U) << "on, and off again";
  QTest::mouseDClick(&hand.bar(), Qt::LeftButton, {}, hand.bar().place_of(Lane::priming, 6.0 * hour));
  EXPECT_EQ(hand.plan().priming.size(), 1U);
  QTest::mouseDClick(&hand.bar(), Qt::LeftButton, {}, hand.bar().place_of(Lane::wood, 7.0 * hour));
  EXPECT_EQ(hand.plan().loads.size(), before.loads.size() + 1);
  for (int i = 0; i < 4; ++i) hand.book().undo_stack().undo();
  EXPECT_EQ(hand.plan(), before);
}

TEST(TimeLineByMouse, DraggingInAnEmptyLaneDrawsAnEventOfThatLength) {
  Burner hand;
  hand.drag(hand.bar().place_of(Lane::power, 3.0 * hour), hand.bar().place_of(Lane::power, 5.0 * hour));
  ASSERT_EQ(hand.plan().cuts.size(), 1U);
  EXPECT_NEAR(in(hand.plan().cuts[0].at, hour), 3.0, 0.1);
  EXPECT_NEAR(in(hand.plan().cuts[0].lasts, hour), 2.0, 0.15);
  EXPECT_EQ(hand.book().undo_stack().count(), 1) << "one gesture, one step";
}

TEST(TimeLineByMouse, AnEventIsMovedByItsMiddleAndPulledByItsEnd) {
  Burner hand;
  QTest::mouseDClick(&hand.bar(), Qt::LeftButton, {}, hand.bar().place_of(Lane::power, 6.0 * hour));
  const PlanRef cut{PlanList::cuts, 0};
  const Time at = hand.plan().cuts[0].at;
  const Time lasts = hand.plan().cuts[0].lasts;
  const int two_hours = hand.bar().ruler_place(2.0 * hour).x() - hand.bar().ruler_place(Time{}).x();
  hand.drag(hand.middle(cut), hand.middle(cut) + QPoint(two_hours, 0));
  EXPECT_NEAR(Burner::minutes(hand.plan().cuts[0].at - at), 120.0, 6.0);
  EXPECT_DOUBLE_EQ(Burner::minutes(hand.plan().cuts[0].lasts), Burner::minutes(lasts));
  const Time moved = hand.plan().cuts[0].at;
  hand.drag(hand.end(cut), hand.end(cut) + QPoint(two_hours, 0));
  EXPECT_DOUBLE_EQ(Burner::minutes(hand.plan().cuts[0].at), Burner::minutes(moved));
  EXPECT_NEAR(Burner::minutes(hand.plan().cuts[0].lasts - lasts), 120.0, 6.0);
  hand.book().undo_stack().undo();
  EXPECT_DOUBLE_EQ(Burner::minutes(hand.plan().cuts[0].lasts), Burner::minutes(lasts));
}

TEST(TimeLineByMouse, AltLeavesTheWholeStepsAndEscapeForgetsTheDrag) {
  Burner hand;
  hand.drag(hand.bar().place_of(Lane::power, 3.0 * hour), hand.bar().place_of(Lane::power, 5.0 * hour), Qt::AltModifier);
  const double seconds = in(hand.plan().cuts[0].at, second);
  EXPECT_NEAR(seconds, std::round(seconds), 1e-6);
  const BurnPlan before = hand.plan();
  const QPoint from = hand.middle({PlanList::cuts, 0});
  QTest::mousePress(&hand.bar(), Qt::LeftButton, {}, from);
  QMouseEvent move(QEvent::MouseMove, from + QPoint(80, 0), hand.bar().mapToGlobal(from + QPoint(80, 0)), Qt::NoButton, Qt::LeftButton, {});
  QApplication::sendEvent(&hand.bar(), &move);
  EXPECT_NE(hand.plan(), before) << "the drag shows what it would do";
  hand.key(Qt::Key_Escape);
  QTest::mouseRelease(&hand.bar(), Qt::LeftButton, {}, from + QPoint(80, 0));
  EXPECT_EQ(hand.plan(), before);
}

TEST(TimeLineByMouse, AnEventMovedPastAnotherChangesPlacesWithIt) {
  Burner hand;
  QTest::mouseDClick(&hand.bar(), Qt::LeftButton, {}, hand.bar().place_of(Lane::power, 6.0 * hour));
  QTest::mouseDClick(&hand.bar(), Qt::LeftButton, {}, hand.bar().place_of(Lane::power, 9.0 * hour));
  hand.drag(hand.middle({PlanList::cuts, 1}), hand.bar().place_of(Lane::power, 3.0 * hour));
  ASSERT_EQ(hand.plan().cuts.size(), 2U);
  EXPECT_LT(hand.plan().cuts[0].at, hand.plan().cuts[1].at);
  EXPECT_EQ(hand.book().selected(), (PlanRef{PlanList::cuts, 0})) << "the moved one stays picked";
  EXPECT_TRUE(hand.book().faults().empty());
}

TEST(TimeLineByMouse, TheRulerAndEmptyLanesGoThroughTime) {
  Burner hand;
  QTest::mouseClick(&hand.bar(), Qt::LeftButton, {}, hand.bar().ruler_place(5.0 * hour));
  EXPECT_NEAR(in(hand.book().now(), hour), 5.0, 0.05);
  hand.drag(hand.bar().ruler_place(5.0 * hour), hand.bar().ruler_place(8.0 * hour));
  EXPECT_NEAR(in(hand.book().now(), hour), 8.0, 0.05);
  QTest::mouseClick(&hand.bar(), Qt::LeftButton, {}, hand.bar().place_of(Lane::power, 2.0 * hour));
  EXPECT_NEAR(in(hand.book().now(), hour), 2.0, 0.05);
  EXPECT_EQ(hand.book().undo_stack().count(), 0);
}

TEST(TimeLineByKeys, EverythingThatTheMouseDoes) {
  Burner hand;
  hand.bar().setFocus();
  hand.book().go_to(8.0 * hour);
  for (int i = 0; i < 5; ++i) hand.key(Qt::Key_Down, Qt::ControlModifier);
  EXPECT_EQ(hand.bar().lane(), Lane::power);
  hand.key(Qt::Key_Insert);
  ASSERT_EQ(hand.plan().cuts.size(), 1U);
  EXPECT_NEAR(in(hand.plan().cuts[0].at, hour), 8.0, 1e-9);
  const Time lasts = hand.plan().cuts[0].lasts;
  for (int i = 0; i < 3; ++i) hand.key(Qt::Key_Right, Qt::ControlModifier);
  EXPECT_GT(hand.plan().cuts[0].at, 8.0 * hour);
  const Time moved = hand.plan().cuts[0].at;
  hand.key(Qt::Key_Right, Qt::ShiftModifier);
  EXPECT_GT(hand.plan().cuts[0].lasts, lasts);
  EXPECT_EQ(hand.plan().cuts[0].at, moved);
  hand.key(Qt::Key_Delete);
  EXPECT_TRUE(hand.plan().cuts.empty());
  hand.book().undo_stack().undo();
  EXPECT_EQ(hand.plan().cuts.size(), 1U);
  hand.key(Qt::Key_Home);
  EXPECT_EQ(hand.book().now(), Time{});
  hand.key(Qt::Key_End);
  EXPECT_EQ(hand.book().now(), hand.plan().length);
  hand.key(Qt::Key_Escape);
  hand.key(Qt::Key_Down);
  EXPECT_EQ(hand.book().selected(), first_load);
  EXPECT_FALSE(hand.bar().accessibleDescription().isEmpty());
}

TEST(TimeLineByKeys, StepsOfOneGoAreOneUndo) {
  Burner hand;
  QTest::mouseDClick(&hand.bar(), Qt::LeftButton, {}, hand.bar().place_of(Lane::power, 6.0 * hour));
  const BurnPlan before = hand.plan();
  for (int i = 0; i < 4; ++i) hand.key(Qt::Key_Left, Qt::ControlModifier);
  EXPECT_NE(hand.plan(), before);
  hand.book().undo_stack().undo();
  EXPECT_EQ(hand.plan(), before);
}

TEST(TimeLineFaults, StandAtTheEventInWords) {
  Burner hand;
  ASSERT_GE(hand.plan().loads.size(), 2U);
  hand.book().select(first_load);
  PlanField* lasts = plan_field(hand.panel, QStringLiteral("lasts"));
  ASSERT_NE(lasts, nullptr);
  type_into(*lasts, QStringLiteral("2 h"));
  ASSERT_FALSE(hand.book().faults().empty()) << "now it overlaps the next load";
  EXPECT_FALSE(hand.book().fault_of({PlanList::loads, 1}).isEmpty());
  EXPECT_TRUE(hand.book().fault_of({PlanList::loads, 0}).isEmpty());
  EXPECT_NE(words_of(hand.panel, QStringLiteral("burn_warning")).indexOf(QStringLiteral("Load 2")), -1);
  hand.book().select(PlanRef{PlanList::loads, 1});
  EXPECT_EQ(words_of(hand.panel, QStringLiteral("event_fault")).indexOf(QStringLiteral("▲")), 0);
  EXPECT_FALSE(hand.book().running()) << "nothing is computed from a faulty time line";
  hand.book().undo_stack().undo();
  EXPECT_TRUE(words_of(hand.panel, QStringLiteral("event_fault")).isEmpty());
}

TEST(TimeLineEditor, TakesExactValuesInEitherUnits) {
  Burner hand;
  hand.book().select(first_load);
  type_into(*plan_field(hand.panel, QStringLiteral("wood")), QStringLiteral("10 lb"));
  EXPECT_NEAR(in(hand.plan().loads[0].wood, kilogram), 4.5359237, 1e-6);  // international pound
  hand.document.set_units(UnitSystem::imperial);
  EXPECT_EQ(plan_field(hand.panel, QStringLiteral("wood"))->text(), QString::fromUtf8("10\u00A0lb"));
  type_into(*plan_field(hand.panel, QStringLiteral("wood")), QStringLiteral("5"));
  EXPECT_NEAR(in(hand.plan().loads[0].wood, kilogram), 5.0 * 0.45359237, 1e-9);
  type_into(*plan_field(hand.panel, QStringLiteral("wood")), QStringLiteral("plenty"));
  EXPECT_FALSE(plan_field(hand.panel, QStringLiteral("wood"))->explanation().isEmpty());
  EXPECT_NEAR(in(hand.plan().loads[0].wood, kilogram), 5.0 * 0.45359237, 1e-9);
}

TEST(TimeLineEditor, ChoosesTheWeatherOutdoors) {
  Burner hand;
  hand.book().select(std::nullopt);
  const auto choose = [&](const char* id) {
    auto* pick = plan_field<PickField>(hand.panel, QStringLiteral("outdoors"));
    ASSERT_NE(pick, nullptr);
    emit pick->asked(FieldValue{std::string{id}}, {});
  };
  choose("day");
  ASSERT_TRUE(std::holds_alternative<OutdoorDay>(hand.plan().outdoors));
  type_into(*plan_field(hand.panel, QStringLiteral("swing")), QStringLiteral("6 K"));
  EXPECT_NEAR(in(std::get<OutdoorDay>(hand.plan().outdoors).swing, kelvin), 6.0, 1e-9);
  choose("points");
  QTest::mouseDClick(&hand.bar(), Qt::LeftButton, {}, hand.bar().place_of(Lane::outdoors, 6.0 * hour));
  EXPECT_EQ(std::get<std::vector<OutdoorPoint>>(hand.plan().outdoors).size(), 3U);
  EXPECT_TRUE(hand.book().faults().empty());
}

TEST(TimeLineFiles, AreSavedAndReadBackTheSame) {
  Burner hand;
  QTemporaryDir folder;
  QTest::mouseDClick(&hand.bar(), Qt::LeftButton, {}, hand.bar().place_of(Lane::power, 6.0 * hour));
  const BurnPlan saved = hand.plan();
  const QString path = folder.filePath(QStringLiteral("evening.fluburn"));
  ASSERT_TRUE(hand.panel.save_plan(path));
  hand.take_short_plan();
  ASSERT_TRUE(hand.panel.open_plan(path));
  EXPECT_EQ(hand.plan(), saved);
  hand.book().undo_stack().undo();
  EXPECT_EQ(hand.plan().name, "Short");
}

TEST(TimeLineFiles, BadOnesAreNamedAndChangeNothing) {
  Burner hand;
  QTemporaryDir folder;
  const BurnPlan before = hand.plan();
  const QString path = folder.filePath(QStringLiteral("gaps.csv"));
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write("time,temperature_C\n2024-04-06T17:00,5\n2024-04-06T18:00,\n2024-04-06T19:00,4\n");
  file.close();
  EXPECT_FALSE(hand.panel.open_weather(path));
  EXPECT_NE(words_of(hand.panel, QStringLiteral("burn_refusal")).indexOf(QStringLiteral("line 3")), -1);
  EXPECT_FALSE(hand.panel.open_plan(folder.filePath(QStringLiteral("nowhere.fluburn"))));
  EXPECT_EQ(hand.plan(), before);
}

TEST(TimeLinePresets, AreOfferedWhereTheDesignHasWhatTheyNeed) {
  Burner hand;
  ASSERT_TRUE(hand.book().take_preset("three_day_charge"));
  EXPECT_NEAR(in(hand.plan().length, hour), 72.0, 1e-9);
  EXPECT_FALSE(hand.book().take_preset("top_fan_start")) << "the demo has no fan";
  EXPECT_NEAR(in(hand.plan().length, hour), 72.0, 1e-9);
  hand.book().undo_stack().undo();
  EXPECT_NEAR(in(hand.plan().length, hour), 12.0, 1e-9);
}

TEST(TimeLinePresets, FollowTheDesignUntilTheyAreTouched) {
  Burner hand;
  Design design = hand.document.design();
  design.fire.burn_rate = 2.0 * design.fire.burn_rate;
  const Mass before = hand.plan().loads[0].wood;
  hand.document.commit(design, QStringLiteral("Twice the fire"));
  EXPECT_NEAR(in(hand.plan().loads[0].wood, kilogram), 2.0 * in(before, kilogram), 1e-9);
}

TEST(PlanNumbers, ReadBackWhatTheyShow) {
  const std::pair<PlanNumber, PlanMeaning> numbers[] = {
      {PlanNumber{95.0 * minute}, PlanMeaning::duration}, {PlanNumber{30.0 * second}, PlanMeaning::duration},
      {PlanNumber{3675.0 * second}, PlanMeaning::moment}, {PlanNumber{17.5 * hour}, PlanMeaning::clock},
      {PlanNumber{4.5 * kilogram}, PlanMeaning::wood},    {PlanNumber{400.0 * gram}, PlanMeaning::starter},
      {PlanNumber{Ratio(0.35)}, PlanMeaning::share},      {PlanNumber{celsius(-3.5)}, PlanMeaning::temperature}};
  for (const auto& [number, meaning] : numbers) {
    const std::string text = show(number, meaning, UnitSystem::metric).text();
    const auto back = parse_plan_number(text, meaning, UnitSystem::metric);
    ASSERT_TRUE(back.value) << text << ": " << back.failure.message;
    EXPECT_TRUE(same(*back.value, number)) << text;
  }
  EXPECT_FALSE(parse_plan_number("soon", PlanMeaning::moment, UnitSystem::metric).value);
  EXPECT_NEAR(std::get<Time>(*parse_plan_number("90", PlanMeaning::moment, UnitSystem::metric).value).value(), 5400.0, 1e-9);
}

}  // namespace
}  // namespace fluewright::test
