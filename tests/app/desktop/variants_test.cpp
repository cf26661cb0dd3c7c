// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Several ideas in one file, and conditions tried out without touching the design.

#include "app/desktop/variants/variants_words.hpp"
#include "engine/layout/edit_run.hpp"
#include "panels_window.hpp"

#include <QDialog>
#include <QSlider>
#include <QTableWidget>

namespace fluewright {
namespace {

using test::Desk;

struct Forked : Desk {
  Forked() {
    open(first_demo());
    first = document.design();
    QTest::keyClick(&window, Qt::Key_F6, Qt::ControlModifier);
    PieceId run;
    for (const Piece& piece : document.design().pieces) {
      if (run.empty() && piece.type == "bench_pipe") run = piece.id;
    }
    const EditResult longer = stretch_bench(document.design(), document.library(), run, 1.0 * metre);
    EXPECT_TRUE(longer.design);
    document.commit(*longer.design, "longer");
    second = document.design();
  }
  Design first;
  Design second;
};

TEST(Variants, AForkIsACopyAndAKeyChangesOver) {
  Forked desk;
  EXPECT_EQ(desk.document.variant_count(), 2U);
  EXPECT_EQ(desk.document.active_variant(), 1U);
  const QString of_second = desk.margin();
  QTest::keyClick(&desk.window, Qt::Key_F6);
  EXPECT_EQ(desk.document.design(), desk.first);
  EXPECT_NE(desk.margin(), of_second);
  QTest::keyClick(&desk.window, Qt::Key_F6);
  EXPECT_EQ(desk.document.design(), desk.second);
  EXPECT_EQ(desk.margin(), of_second);
}

TEST(Variants, UndoGoesBackInTheVariantThatWasEditedAndTakesTheForkBackLast) {
  Forked desk;
  QTest::keyClick(&desk.window, Qt::Key_F6);
  QTest::keyClick(&desk.window, Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(desk.document.active_variant(), 1U);
  EXPECT_EQ(desk.document.design(), desk.first);
  QTest::keyClick(&desk.window, Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(desk.document.variant_count(), 1U);
  EXPECT_EQ(desk.document.design(), desk.first);
  EXPECT_FALSE(desk.document.modified());
  desk.document.undo_stack().redo();
  desk.document.undo_stack().redo();
  EXPECT_EQ(desk.document.design(), desk.second);
}

TEST(Variants, AreSavedInOneFileAndComeBackInTheirPlaces) {
  Forked desk;
  desk.document.name_variant(0, "Short");
  desk.document.change_over(0);
  desk.document.fork_variant("Third");
  desk.document.change_over(1);
  const QString path = desk.saved_path("three.fluepath");
  const auto fault = desk.document.save_to(path);
  ASSERT_FALSE(fault) << fault->text();
  ASSERT_TRUE(desk.window.files().start_new());
  EXPECT_EQ(desk.document.variant_count(), 1U);
  ASSERT_TRUE(desk.window.files().open_path(path));
  ASSERT_EQ(desk.document.variant_count(), 3U);
  EXPECT_EQ(desk.document.active_variant(), 1U);
  EXPECT_EQ(desk.document.variant(0), desk.first);
  EXPECT_EQ(desk.document.variant(1), desk.second);
  EXPECT_EQ(desk.document.variant(2), desk.first);
  EXPECT_EQ(desk.document.variant_name(0), "Short");
  EXPECT_EQ(desk.document.variant_name(2), "Third");
}

TEST(Variants, ATableShowsWhatMattersOfEachWithItsDifference) {
  Forked desk;
  const auto lines = compared_variants(desk.document);
  ASSERT_GE(lines.size(), 6U);
  for (const ComparedLine& line : lines) {
    EXPECT_EQ(line.values.size(), 2) << line.what.toStdString();
    EXPECT_TRUE(line.differences.front().isEmpty());
  }
  EXPECT_FALSE(lines.front().differences.back().isEmpty())
      << "a longer bench has another margin: " << lines.front().values.join(" ").toStdString();
  EXPECT_EQ(parts_words(desk.document, 1), "the same pieces");
  QTest::keyClick(&desk.window, Qt::Key_F7);
  const auto* dialog = desk.window.findChild<QDialog*>(QStringLiteral("variants"));
  ASSERT_NE(dialog, nullptr);
  auto* table = dialog->findChild<QTableWidget*>();
  ASSERT_NE(table, nullptr);
  EXPECT_EQ(table->columnCount(), 2);
  EXPECT_EQ(table->item(0, 1)->text().section("   ", 0, 0), lines.front().values.back());
}

TEST(Variants, TheOthersCurvesLieBehindTheOneOnTheDesk) {
  Forked desk;
  const auto& lines = desk.find<LinePlot>("pressure_plot")->picture().lines;
  ASSERT_FALSE(lines.empty());
  EXPECT_EQ(lines.back().role, LineRole::other_variant);
  EXPECT_EQ(lines.back().label, desk.document.variant_name(0));
}

TEST(Variants, TakingOneOutLeavesTheOthersAndCanBeUndone) {
  Forked desk;
  desk.document.remove_variant(1);
  EXPECT_EQ(desk.document.variant_count(), 1U);
  EXPECT_EQ(desk.document.design(), desk.first);
  desk.document.undo_stack().undo();
  EXPECT_EQ(desk.document.design(), desk.second);
  EXPECT_EQ(desk.document.variant(0), desk.first);
}

TEST(WhatIf, AHandleMovesTheAnswerAndNotTheDesign) {
  Desk desk;
  desk.open(desk.first_demo());
  const Design before = desk.document.design();
  const QString margin = desk.margin();
  desk.tab(EditorTabs::trial);
  auto* outdoors = desk.find<QSlider>("trial:site.outdoor_temperature");
  outdoors->setFocus();
  for (int i = 0; i < 10; ++i) QTest::keyClick(outdoors, Qt::Key_PageUp);
  ASSERT_TRUE(desk.document.trial());
  EXPECT_NE(desk.margin(), margin) << "a warm day draws less";
  EXPECT_EQ(desk.document.design(), before);
  EXPECT_FALSE(desk.document.modified());
  QTest::mouseClick(desk.find<QPushButton>("trial_back"), Qt::LeftButton);
  EXPECT_EQ(desk.margin(), margin);
  EXPECT_FALSE(desk.document.trial());
}

}  // namespace
}  // namespace fluewright
