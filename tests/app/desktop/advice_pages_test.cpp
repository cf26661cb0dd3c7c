// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The pages under the drawing: findings one can let stand, remedies one can see and make, limits with their curve.

#include "app/desktop/advice/findings_page.hpp"
#include "app/desktop/advice/limit_plot.hpp"
#include "app/desktop/advice/limits_page.hpp"
#include "app/desktop/advice/remedies_page.hpp"
#include "engine/layout/edit.hpp"
#include "panels_window.hpp"

#include <QTableWidget>

#include <algorithm>

namespace fluewright::test {
namespace {

constexpr int patience = 120'000;  // ms; other builds may have the processors

struct AdviceDesk : Desk {
  explicit AdviceDesk(const QString& demo, MainWindow::Advice page) {
    open(demo);
    window.show_advice(page);
  }
  void make_gap() {
    Design gap = document.design();
    gap.joints.erase(gap.joints.begin());
    document.commit(gap, QStringLiteral("gap"));
  }
  QString tab_with(const QString& beginning) {
    for (auto* bar : window.findChildren<QTabBar*>()) {
      for (int i = 0; i < bar->count(); ++i) {
        if (bar->tabText(i).startsWith(beginning)) return bar->tabText(i);
      }
    }
    return {};
  }
};

TEST(TheFindingsPage, ListsEverythingThatIsFoundMostSeriousFirst) {
  AdviceDesk desk(QStringLiteral("run_too_long"), MainWindow::Advice::findings);
  auto* list = desk.find<QListWidget>(QStringLiteral("all_findings"));
  ASSERT_EQ(static_cast<std::size_t>(list->count()), desk.document.findings().size());
  EXPECT_TRUE(list->item(0)->text().contains(QStringLiteral("will not draw"))) << list->item(0)->text().toStdString();
}

TEST(TheFindingsPage, LetsAFindingStandWithAReasonAndUndoesIt) {
  AdviceDesk desk(QStringLiteral("run_too_long"), MainWindow::Advice::findings);
  auto* page = desk.find<FindingsPage>(QStringLiteral("findings_page"));
  auto* list = desk.find<QListWidget>(QStringLiteral("all_findings"));
  const int open = page->open_count();
  EXPECT_EQ(desk.tab_with(QStringLiteral("Findings")), QStringLiteral("Findings (%1)").arg(open));
  list->setCurrentRow(0);
  EXPECT_FALSE(desk.find<QPushButton>(QStringLiteral("let_stand"))->isEnabled()) << "not without a reason";
  QTest::keyClicks(desk.find<QLineEdit>(QStringLiteral("reason")), QStringLiteral("only to show it"));
  QTest::mouseClick(desk.find<QPushButton>(QStringLiteral("let_stand")), Qt::LeftButton);
  ASSERT_EQ(desk.document.design().acknowledged.size(), 1u);
  EXPECT_EQ(desk.document.design().acknowledged.front().reason, "only to show it");
  EXPECT_EQ(page->open_count(), open - 1);
  desk.document.undo_stack().undo();
  EXPECT_TRUE(desk.document.design().acknowledged.empty());
  EXPECT_EQ(page->open_count(), open);
}

TEST(TheFindingsPage, OfADesignWithAGapIsAboutTheGap) {
  AdviceDesk desk(QStringLiteral("run_too_long"), MainWindow::Advice::findings);
  desk.make_gap();
  auto* list = desk.find<QListWidget>(QStringLiteral("all_findings"));
  ASSERT_GT(list->count(), 0);
  EXPECT_TRUE(list->item(0)->text().contains(QStringLiteral("is open"))) << list->item(0)->text().toStdString();
  for (int i = 0; i < list->count(); ++i) {
    for (const char* unit : {"°C", "Pa above", "Pa to spare", "m/s", "g/h"}) {
      EXPECT_FALSE(list->item(i)->text().contains(QString::fromUtf8(unit))) << list->item(i)->text().toStdString();
    }
  }
  EXPECT_FALSE(desk.find<QPushButton>(QStringLiteral("what_helps"))->isEnabled());
}

TEST(TheFindingsPage, LetsTheTwoKindsOfLowOutletStandEachForItself) {
  AdviceDesk desk(QStringLiteral("run_too_long"), MainWindow::Advice::findings);
  Design low = *set_field(desk.document.design(), desk.document.library(), "p19", "length", Length(650.0 * millimetre)).design;
  low.house.highest_near = 3.3 * metre;
  desk.document.commit(low, QStringLiteral("low"));
  auto* list = desk.find<QListWidget>(QStringLiteral("all_findings"));
  const auto open_rows = [list] {
    int rows = 0;
    for (int i = 0; i < list->count(); ++i) rows += list->item(i)->text().contains(QStringLiteral("the outlet stands")) ? 1 : 0;
    return rows;
  };
  ASSERT_EQ(open_rows(), 2);
  for (int i = 0; i < list->count(); ++i) {
    if (list->item(i)->text().contains(QStringLiteral("highest within"))) list->setCurrentRow(i);
  }
  QTest::keyClicks(desk.find<QLineEdit>(QStringLiteral("reason")), QStringLiteral("a bush"));
  QTest::mouseClick(desk.find<QPushButton>(QStringLiteral("let_stand")), Qt::LeftButton);
  std::size_t standing = 0;
  for (const Finding& finding : desk.document.findings()) {
    if (finding.code != FindingCode::low_outlet) continue;
    standing += acknowledgement_of(finding, desk.document.design()) != nullptr ? 1 : 0;
  }
  EXPECT_EQ(standing, 1u);
}

TEST(TheFindingsPage, SelectsThePieceOfAFinding) {
  AdviceDesk desk(QStringLiteral("run_too_long"), MainWindow::Advice::findings);
  auto* list = desk.find<QListWidget>(QStringLiteral("all_findings"));
  const auto& findings = desk.document.findings();
  const auto with_piece = std::find_if(findings.begin(), findings.end(), [](const Finding& f) { return !f.piece.empty(); });
  ASSERT_NE(with_piece, findings.end());
  const int row = static_cast<int>(with_piece - findings.begin());
  list->scrollToItem(list->item(row));
  QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualItemRect(list->item(row)).center());
  EXPECT_EQ(desk.document.selected(), with_piece->piece);
}

TEST(TheRemediesPage, ShowsAChangeOnTheDrawingAndMakesItWithTheSameNumbers) {
  AdviceDesk desk(QStringLiteral("run_too_long"), MainWindow::Advice::remedies);
  auto* page = desk.find<RemediesPage>(QStringLiteral("remedies_page"));
  ASSERT_TRUE(QTest::qWaitFor([page] { return page->done(); }, patience));
  ASSERT_FALSE(page->remedies().empty());
  auto* table = desk.find<QTableWidget>(QStringLiteral("remedies"));
  ASSERT_EQ(static_cast<std::size_t>(table->rowCount()), page->remedies().size() + 1);
  const Design before = desk.document.design();
  const TriedRemedy tried = page->remedies().front();

  table->selectRow(1);
  QTest::mouseClick(desk.find<QPushButton>(QStringLiteral("preview_remedy")), Qt::LeftButton);
  EXPECT_TRUE(desk.document.in_preview());
  EXPECT_EQ(desk.document.assessment().worst_margin, tried.after.margin);
  QTest::mouseClick(desk.find<QPushButton>(QStringLiteral("preview_remedy")), Qt::LeftButton);
  EXPECT_FALSE(desk.document.in_preview());
  EXPECT_EQ(desk.document.design(), before);

  QTest::mouseClick(desk.find<QPushButton>(QStringLiteral("apply_remedy")), Qt::LeftButton);
  EXPECT_EQ(desk.document.assessment().worst_margin, tried.after.margin);
  EXPECT_EQ(desk.document.assessment().exit_temperature, tried.after.exit);
  desk.document.undo_stack().undo();
  EXPECT_EQ(desk.document.design(), before);
}

TEST(TheRemediesPage, GoesBackToTheDrawingWhenOneLeavesIt) {
  AdviceDesk desk(QStringLiteral("run_too_long"), MainWindow::Advice::remedies);
  auto* page = desk.find<RemediesPage>(QStringLiteral("remedies_page"));
  ASSERT_TRUE(QTest::qWaitFor([page] { return page->done(); }, patience));
  desk.find<QTableWidget>(QStringLiteral("remedies"))->selectRow(1);
  QTest::mouseClick(desk.find<QPushButton>(QStringLiteral("preview_remedy")), Qt::LeftButton);
  ASSERT_TRUE(desk.document.in_preview());
  desk.window.show_advice(MainWindow::Advice::findings);
  EXPECT_FALSE(desk.document.in_preview());
}

TEST(TheRemediesPage, SaysThatAGapComesFirst) {
  AdviceDesk desk(QStringLiteral("bench_small_150"), MainWindow::Advice::findings);
  desk.make_gap();
  desk.window.show_advice(MainWindow::Advice::remedies);
  auto* page = desk.find<RemediesPage>(QStringLiteral("remedies_page"));
  ASSERT_TRUE(QTest::qWaitFor([page] { return page->done(); }, patience));
  EXPECT_TRUE(page->remedies().empty());
  EXPECT_TRUE(desk.find<QLabel>(QStringLiteral("remedies_state"))->text().contains(QStringLiteral("faults come first")));
}

TEST(TheLimitsPage, DrawsTheCurveWithTodaysPointAndSaysTheLimit) {
  AdviceDesk desk(QStringLiteral("run_too_long"), MainWindow::Advice::limits);
  auto* page = desk.find<LimitsPage>(QStringLiteral("limits_page"));
  ASSERT_TRUE(QTest::qWaitFor([page] { return page->has_estimate(); }, patience));
  const auto* plot = page->findChild<LimitPlot*>();
  ASSERT_NE(plot, nullptr);
  ASSERT_TRUE(plot->answer());
  EXPECT_GE(plot->answer()->curve.size(), 40u);
  EXPECT_FALSE(desk.find<QLabel>(QStringLiteral("limit_words"))->text().isEmpty());
}

TEST(TheLimitsPage, FollowsTheDrawing) {
  AdviceDesk desk(QStringLiteral("run_too_long"), MainWindow::Advice::limits);
  auto* page = desk.find<LimitsPage>(QStringLiteral("limits_page"));
  ASSERT_TRUE(QTest::qWaitFor([page] { return page->has_estimate(); }, patience));
  const auto* plot = page->findChild<LimitPlot*>();
  const FieldValue today = plot->answer()->scale.today;
  const EditResult shorter = set_field(desk.document.design(), desk.document.library(), "p6", "length", Length(2.0 * metre));
  ASSERT_TRUE(shorter.design);
  desk.document.commit(*shorter.design, QStringLiteral("shorter"));
  ASSERT_TRUE(QTest::qWaitFor([&] { return page->has_estimate() && plot->answer()->scale.today != today; }, patience));
  EXPECT_NEAR(limit_number(plot->answer()->scale.today), limit_number(today) - 4.5, 1e-9);
}

TEST(TheLimitsPage, WorksItsPointsOutInTimeOneByOneUntilItIsStopped) {
  AdviceDesk desk(QStringLiteral("run_too_long"), MainWindow::Advice::limits);
  auto* page = desk.find<LimitsPage>(QStringLiteral("limits_page"));
  const auto* plot = page->findChild<LimitPlot*>();
  auto* stop = desk.find<QPushButton>(QStringLiteral("stop_limit"));
  ASSERT_TRUE(QTest::qWaitFor([&] { return !plot->refined().empty(); }, patience));
  EXPECT_TRUE(stop->isVisible());
  EXPECT_TRUE(desk.find<QLabel>(QStringLiteral("limit_state"))->text().contains(QStringLiteral("of %1 points").arg(plot->answer()->curve.size())));
  // The point that came is today's or lies next to the limit, and is the one worked out in time.
  const LimitPoint& point = plot->refined().front();
  const auto in_time = margin_at({LimitKind::longest_bench, desk.document.design(), desk.document.library()},
                                 point.x, AssessOptions{}.slice, MarginBy::steps_in_time);
  ASSERT_TRUE(in_time && point.margin);
  EXPECT_EQ(*in_time, *point.margin);
  QTest::mouseClick(stop, Qt::LeftButton);
  EXPECT_TRUE(page->done());
  const std::size_t kept = plot->refined().size();
  QTest::qWait(50);
  EXPECT_EQ(plot->refined().size(), kept) << "nothing comes after a stop";
  EXPECT_LT(kept, plot->answer()->curve.size());
  EXPECT_FALSE(desk.find<QLabel>(QStringLiteral("limit_words"))->text().isEmpty()) << "the estimate's limit stays";
}

TEST(TheLimitsPage, SaysThatAGapComesFirst) {
  AdviceDesk desk(QStringLiteral("bench_small_150"), MainWindow::Advice::findings);
  desk.make_gap();
  desk.window.show_advice(MainWindow::Advice::limits);
  auto* page = desk.find<LimitsPage>(QStringLiteral("limits_page"));
  ASSERT_TRUE(QTest::qWaitFor([page] { return page->done(); }, patience));
  EXPECT_FALSE(page->findChild<LimitPlot*>()->answer());
  EXPECT_TRUE(desk.find<QLabel>(QStringLiteral("limit_words"))->text().contains(QStringLiteral("faults come first")));
}

}  // namespace
}  // namespace fluewright::test
