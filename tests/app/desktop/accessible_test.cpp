// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// What a screen reader is told, window by window: whatever one can act on has a name and a role. And what a keyboard
// is told: no key stands for two things.

#include "engine/layout/edit.hpp"
#include "panels_window.hpp"

#include <QAccessible>
#include <QAction>
#include <QDialog>
#include <QMap>
#include <QSet>

namespace fluewright {
namespace {

bool acted_on(QAccessible::Role role) {
  static const QSet<int> roles{QAccessible::PushButton, QAccessible::ButtonMenu,   QAccessible::ButtonDropDown, QAccessible::CheckBox,
                               QAccessible::RadioButton, QAccessible::ComboBox,    QAccessible::EditableText,   QAccessible::SpinBox,
                               QAccessible::Slider,      QAccessible::List,        QAccessible::Table,          QAccessible::Tree,
                               QAccessible::PageTab,     QAccessible::MenuItem,    QAccessible::ListItem,       QAccessible::Dial,
                               QAccessible::Chart,       QAccessible::ProgressBar};
  return roles.contains(role);
}

/// Everything under a window, in words; what has no name or no role is kept.
class Walk {
 public:
  void through(QAccessibleInterface* at, const QString& way, int depth = 0) {
    constexpr int deepest = 30;
    if (at == nullptr || !at->isValid() || depth > deepest || at->state().invisible) return;
    ++seen_;
    const QString name = at->text(QAccessible::Name);
    const QString kind = QString::number(at->role()) + (at->object() != nullptr ? QLatin1String(at->object()->metaObject()->className()) : QStringLiteral("-"));
    const QString here = way + QLatin1Char('/') + (name.isEmpty() ? kind : name);
    if (acted_on(at->role())) {
      ++acted_on_;
      if (name.trimmed().isEmpty()) faults_ << here;
    }
    // A widget that takes the keyboard must say what it is for, whatever its role.
    const auto* widget = qobject_cast<const QWidget*>(at->object());
    if (widget != nullptr && (widget->focusPolicy() & Qt::TabFocus) != 0 && widget->isEnabled()) {
      if (at->role() == QAccessible::NoRole) faults_ << here + QStringLiteral(" (no role)");
      if (name.trimmed().isEmpty()) faults_ << here + QStringLiteral(" (takes the keyboard)");
    }
    for (int i = 0; i < at->childCount(); ++i) through(at->child(i), here, depth + 1);
  }
  void through(QWidget& window) { through(QAccessible::queryAccessibleInterface(&window), window.objectName()); }
  void expect_all_named(const char* where, int least) {
    faults_.removeDuplicates();
    EXPECT_TRUE(faults_.isEmpty()) << where << ", without a name:\n" << faults_.join('\n').toStdString();
    EXPECT_GE(acted_on_, least) << where << ": " << seen_ << " things";
  }

 private:
  QStringList faults_;
  int seen_ = 0;
  int acted_on_ = 0;
};

struct Shown : test::Desk {
  void key(Qt::Key key, Qt::KeyboardModifiers with = {}) { QTest::keyClick(&window, key, with); }
  /// The dialog that a key brings up.
  void expect_dialog_named(const char* what, int least, Qt::Key with_key, Qt::KeyboardModifiers with = {}) {
    bool came = false;
    QTimer look;
    look.setInterval(10);
    QObject::connect(&look, &QTimer::timeout, &look, [&] {
      for (QWidget* top : QApplication::topLevelWidgets()) {
        auto* dialog = qobject_cast<QDialog*>(top);
        if (dialog == nullptr || !dialog->isVisible()) continue;
        look.stop();
        came = true;
        EXPECT_FALSE(dialog->windowTitle().isEmpty()) << what;
        Walk walk;
        walk.through(*dialog);
        walk.expect_all_named(what, least);
        dialog->reject();
        return;
      }
    });
    look.start();
    window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window)) << what;
    key(with_key, with);
    QTest::qWait(60);
    EXPECT_TRUE(came) << what;
  }
};

TEST(AScreenReader, FindsANameOnEverythingOfTheStartPage) {
  Shown shown;
  Walk walk;
  walk.through(shown.window);
  walk.expect_all_named("start page", 8);
}

TEST(AScreenReader, FindsANameOnEverythingAtWork) {
  Shown shown;
  shown.open(shown.first_demo());
  shown.document.fork_variant(QStringLiteral("Other"));
  for (const char* field : {"bore", "length", "wall"}) {
    shown.document.select(test::piece_with(shown.document, field));
    QTest::qWait(20);
    Walk walk;
    walk.through(shown.window);
    walk.expect_all_named("window at work", 50);
  }
  auto* tabs = shown.find<EditorTabs>("editors");
  for (int page = 0; page < tabs->count(); ++page) {
    tabs->setCurrentIndex(page);
    QTest::qWait(20);
    Walk walk;
    walk.through(*tabs);
    walk.expect_all_named("editors", 3);
  }
  for (const Qt::Key place : {Qt::Key_6, Qt::Key_7, Qt::Key_8, Qt::Key_9}) {
    shown.key(place, Qt::ControlModifier);
    QTest::qWait(20);
    Walk walk;
    walk.through(shown.window);
    walk.expect_all_named("advice and burn", 50);
  }
}

TEST(AScreenReader, FindsANameOnEverythingInTheDialogs) {
  Shown shown;
  shown.open(QStringLiteral("bench_small_150"));
  shown.expect_dialog_named("five questions", 6, Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
  shown.document.fork_variant(QStringLiteral("Other"));
  shown.document.commit(*remove_piece(shown.document.design(), shown.document.library(), "p15").design, "cap off");
  shown.document.select("p6");
  shown.expect_dialog_named("house", 4, Qt::Key_H, Qt::ControlModifier | Qt::ShiftModifier);
  shown.expect_dialog_named("keys", 1, Qt::Key_F1);
  shown.expect_dialog_named("what is this", 1, Qt::Key_F1, Qt::ShiftModifier);
  shown.expect_dialog_named("variants", 2, Qt::Key_F7);
  shown.expect_dialog_named("passes", 4, Qt::Key_G, Qt::ControlModifier);
  shown.expect_dialog_named("paper", 4, Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
}

TEST(AScreenReader, FindsANameOnEverythingInTheWindowsOfTheirOwn) {
  Shown shown;
  shown.open(shown.first_demo());
  shown.key(Qt::Key_F9);
  shown.key(Qt::Key_E, Qt::ControlModifier);
  QTest::qWait(50);
  for (QWidget* top : QApplication::topLevelWidgets()) {
    if (!top->isVisible() || top->windowType() != Qt::Window) continue;
    Walk walk;
    walk.through(*top);
    walk.expect_all_named(top->windowTitle().toUtf8().constData(), 3);
  }
}

TEST(AKey, StandsForOneThing) {
  Shown shown;
  shown.open(shown.first_demo());
  QMap<QString, QString> taken;
  for (const auto* action : shown.window.findChildren<QAction*>()) {
    for (const QKeySequence& keys : action->shortcuts()) {
      const QString words = keys.toString();
      EXPECT_FALSE(taken.contains(words)) << words.toStdString() << ": " << taken.value(words).toStdString() << " and "
                                          << action->text().toStdString();
      taken.insert(words, action->text());
    }
  }
  EXPECT_GT(taken.size(), 30);
}

}  // namespace
}  // namespace fluewright
