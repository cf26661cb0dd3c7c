// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A hand at the burn's panel, with a small demo on the desk and a short run.

#include "app/desktop/burn/burn_panel.hpp"
#include "app/desktop/burn/burn_plot.hpp"
#include "app/desktop/burn/lane_bar.hpp"
#include "app/desktop/burn/plan_field.hpp"
#include "app/desktop/theme/theme.hpp"
#include "panels_support.hpp"

#include <QCoreApplication>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QWindow>

namespace fluewright::test {

struct Burner {
  /// Hidden, nothing is computed.
  explicit Burner(bool shown = true) : document(shipped_library()), panel(document) {
    apply_theme(*qApp, fluewright::Sheet::day);
    open_demo(document, shipped_demos().front());
    panel.resize(1100, 620);
    if (!shown) return;
    panel.show();
    panel.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&panel));
  }

  BurnBook& book() { return panel.book(); }
  LaneBar& bar() { return panel.bar(); }
  const BurnPlan& plan() { return book().plan(); }
  static double minutes(Time t) { return in(t, minute); }

  void drag(QPoint from, QPoint to, Qt::KeyboardModifiers keys = {}) {
    QTest::mousePress(&bar(), Qt::LeftButton, keys, from);
    for (int i = 1; i <= 5; ++i) {
      const QPoint at = from + (to - from) * i / 5;
      QMouseEvent move(QEvent::MouseMove, at, bar().mapToGlobal(at), Qt::NoButton, Qt::LeftButton, keys);
      QApplication::sendEvent(&bar(), &move);
    }
    QTest::mouseRelease(&bar(), Qt::LeftButton, keys, to);
  }
  QPoint middle(const PlanRef& ref) { return bar().place_of(ref).center().toPoint(); }
  QPoint end(const PlanRef& ref) {
    const QRectF box = bar().place_of(ref);
    return QPointF(box.right() - 1.0, box.center().y()).toPoint();
  }
  void key(int code, Qt::KeyboardModifiers keys = {}) { QTest::keyClick(&bar(), static_cast<Qt::Key>(code), keys); }
  void undo() { document.undo_group().undo(); }

  /// A run short enough for a test: one load in a quarter of an hour.
  void take_short_plan() {
    BurnPlan short_plan;
    short_plan.name = "Short";
    short_plan.length = 15.0 * minute;
    short_plan.loads = {{Time{}, 0.5 * kilogram, 10.0 * minute}};
    book().adopt(short_plan, QStringLiteral("Short"));
  }
  bool wait_for_run() {
    return QTest::qWaitFor([this] { return book().kept() != nullptr && !book().stale() && !book().running(); }, 60000);
  }

  Document document;
  BurnPanel panel;
};

/// A field of the sheet that stands there now: it comes, and those of the sheet before go, with the next turn of the event
/// loop.
template <class Kind = PlanField>
Kind* plan_field(QWidget& in, const QString& key) {
  QCoreApplication::processEvents();
  for (auto* field : in.findChildren<Kind*>(QStringLiteral("field:") + key)) {
    if (!field->isHidden() && !field->parentWidget()->isHidden()) return field;
  }
  return nullptr;
}

inline QString words_of(QWidget& in, const QString& label) {
  const auto* found = in.findChild<QLabel*>(label);
  return found == nullptr || found->isHidden() ? QString() : found->text();
}

}  // namespace fluewright::test
