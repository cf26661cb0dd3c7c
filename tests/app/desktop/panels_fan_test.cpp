// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/editors/fan_panel.hpp"
#include "app/desktop/editors/fan_plot.hpp"
#include "app/desktop/editors/piece_editor.hpp"
#include "panels_support.hpp"

#include <QLabel>
#include <QPushButton>
#include <QSlider>
#include <QTableWidget>

#include <algorithm>

namespace fluewright {
namespace {

constexpr VolumeFlow hourly = cubic_metre / hour;

/// The piece editor on the demo that a fan keeps going, the fan selected.
struct Bench {
  Bench() : document(shipped_library()), editor(document) {
    for (const Demo& demo : shipped_demos()) {
      if (demo.id == "kept_by_a_fan") test::open_demo(document, demo);
    }
    editor.resize(420, 900);
    editor.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&editor));
    document.select(test::piece_with(document, "fan"));
  }
  template <class Widget>
  Widget* find(const char* name) {
    auto* found = editor.findChild<Widget*>(QString::fromUtf8(name));
    EXPECT_NE(found, nullptr) << name;
    return found;
  }
  QTableWidget* points() { return find<QTableWidget>("fan_points"); }
  QString complaint() {
    auto* label = find<QLabel>("fan_complaint");
    return label->isHidden() ? QString() : label->text();
  }
  const FanSheet& sheet() { return document.design().fans.front(); }
  const Piece& piece() { return *document.design().piece(document.selected()); }
  void write(int row, int column, const char* text) { points()->item(row, column)->setText(QString::fromUtf8(text)); }
  QPushButton* button(const QString& words) {
    for (auto* b : editor.findChildren<QPushButton*>()) {
      if (b->text() == words) return b;
    }
    ADD_FAILURE() << words.toStdString();
    return nullptr;
  }

  Document document;
  PieceEditor editor;
};

TEST(TheFanPanel, IsThereForAPieceWithAFanOnly) {
  Bench bench;
  EXPECT_TRUE(bench.find<FanPanel>("fan_panel")->isVisibleTo(&bench.editor));
  bench.document.select(bench.document.design().pieces.front().id);
  EXPECT_FALSE(bench.find<FanPanel>("fan_panel")->isVisibleTo(&bench.editor));
}

TEST(TheFanPanel, SaysWhereTheFanRunsToday) {
  Bench bench;
  const FanAnswer& fan = bench.document.assessment().fans.front();
  const QString today = bench.find<QLabel>("fan_today")->text();
  EXPECT_TRUE(today.contains(QString::fromStdString(show(fan.state.flow, UnitSystem::metric).text()))) << today.toStdString();
  EXPECT_TRUE(today.contains(QString::fromStdString(show(fan.motor, UnitSystem::metric).text()))) << today.toStdString();
  bench.document.set_units(UnitSystem::imperial);
  EXPECT_TRUE(bench.find<QLabel>("fan_today")->text().contains("cfm"));
}

TEST(TheFanPanel, PulledSpeedIsOneStepAndTheAnswerFollows) {
  Bench bench;
  const int before = bench.document.undo_stack().count();
  auto* slider = bench.find<QSlider>("fan_speed");
  EXPECT_EQ(slider->value(), 60);
  for (const int percent : {70, 80, 90}) slider->setValue(percent);
  EXPECT_EQ(bench.document.undo_stack().count(), before + 1);
  EXPECT_EQ(std::get<Ratio>(bench.piece().fields.at("speed")), 0.9);
  EXPECT_EQ(bench.document.assessment().fans.front().state.speed, 0.9);
  slider->setValue(0);
  EXPECT_FALSE(bench.document.assessment().worst_margin_with_fans);
  bench.document.undo_stack().undo();
  EXPECT_EQ(slider->value(), 60);
}

TEST(TheFansPoints, AreWrittenInTheTableCellByCell) {
  Bench bench;
  EXPECT_EQ(bench.points()->rowCount(), 5);
  EXPECT_EQ(bench.points()->item(1, 0)->text(), "60");
  EXPECT_FALSE(bench.points()->item(0, 0)->flags() & Qt::ItemIsEditable);  // no flow is no flow
  const Pressure before = bench.document.assessment().fans.front().state.effect.head;
  bench.write(1, 1, "44,5");
  EXPECT_NEAR(in(bench.sheet().points[1].head, pascal), 44.5, 1e-9);
  EXPECT_NEAR(in(bench.sheet().points[1].flow, hourly), 60.0, 1e-9);
  EXPECT_GT(bench.document.assessment().fans.front().state.effect.head, before);
  EXPECT_EQ(bench.complaint(), "");
}

TEST(TheFansPoints, ThatAreWrongStayToBeReadAndAreNotUsed) {
  Bench bench;
  const FanSheet before = bench.sheet();
  bench.write(2, 1, "much");
  EXPECT_TRUE(bench.complaint().contains(QStringLiteral("much"))) << bench.complaint().toStdString();
  EXPECT_EQ(bench.points()->item(2, 1)->text(), "much");
  EXPECT_EQ(bench.sheet(), before);
  bench.write(2, 1, "32");
  bench.write(2, 0, "9999");
  EXPECT_TRUE(bench.complaint().contains(QStringLiteral("Point 3, flow"))) << bench.complaint().toStdString();
  bench.write(2, 0, "40");
  EXPECT_TRUE(bench.complaint().contains(QStringLiteral("is not above the 60"))) << bench.complaint().toStdString();
  EXPECT_EQ(bench.sheet(), before);
  bench.write(2, 0, "110");
  EXPECT_EQ(bench.complaint(), "");
  EXPECT_NEAR(in(bench.sheet().points[2].flow, hourly), 110.0, 1e-9);
}

TEST(TheFansPoints, ComeAndGo) {
  Bench bench;
  QTest::mouseClick(bench.button("Add point"), Qt::LeftButton);
  ASSERT_EQ(bench.sheet().points.size(), 6u);
  EXPECT_NEAR(in(bench.sheet().points[5].flow, hourly), 300.0, 1e-9);
  bench.points()->setCurrentCell(1, 0);
  QTest::mouseClick(bench.button("Remove point"), Qt::LeftButton);
  ASSERT_EQ(bench.sheet().points.size(), 5u);
  EXPECT_NEAR(in(bench.sheet().points[1].flow, hourly), 120.0, 1e-9);
  for (int i = 0; i < 3; ++i) {
    bench.points()->setCurrentCell(1, 0);
    QTest::mouseClick(bench.button("Remove point"), Qt::LeftButton);
  }
  EXPECT_EQ(bench.sheet().points.size(), 2u);
  EXPECT_FALSE(bench.button("Remove point")->isEnabled());  // two make a curve
  bench.document.undo_stack().undo();
  EXPECT_EQ(bench.points()->rowCount(), 3);
}

TEST(AGenericFan, BecomesTheDesignsOwnAndCanBeWritten) {
  Bench bench;
  Design design = bench.document.design();
  design.piece(bench.document.selected())->fields["fan"] = std::string("side_inducer");
  bench.document.commit(design, "Take the generic fan");
  EXPECT_FALSE(bench.points()->isVisibleTo(&bench.editor));
  QTest::mouseClick(bench.find<QPushButton>("fan_own"), Qt::LeftButton);
  ASSERT_EQ(bench.document.design().fans.size(), 2u);
  const FanSheet& own = bench.document.design().fans.back();
  EXPECT_EQ(std::get<std::string>(bench.piece().fields.at("fan")), own.id);
  EXPECT_EQ(own.points, shipped_library()->fan("side_inducer")->points);
  EXPECT_TRUE(bench.points()->isVisibleTo(&bench.editor));
  test::type_into(*test::field_named(bench.editor, "rated_gas"), "180");
  EXPECT_NEAR(in_celsius(bench.document.design().fans.back().rated_gas), 180.0, 1e-9);
  bench.document.undo_stack().undo();
  bench.document.undo_stack().undo();
  EXPECT_EQ(bench.document.design().fans.size(), 1u);
}

}  // namespace
}  // namespace fluewright
