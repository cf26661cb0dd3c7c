// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/theme/theme.hpp"

#include <QPair>
#include <QString>

#include <utility>

namespace fluewright {

namespace {

constexpr const char* rules = R"(
QToolTip { color: @ink; background: @field; border: 1px solid @hairline; padding: 4px 6px; }

QLabel[role="caption"] { color: @faint_ink; font-size: $caption; }
QLabel[role="heading"] { font-size: $heading; font-weight: 500; }
QLabel[role="figure"] { font-size: $figure; font-weight: 300; }
QLabel[tone="calm"] { color: @calm; }
QLabel[tone="caution"] { color: @caution; }
QLabel[tone="fault"] { color: @accent; }

QFrame[frameShape="4"] { border: none; background: @hairline; max-height: 1px; }

QMainWindow::separator, QSplitter::handle { background: @hairline; }
QSplitter::handle:horizontal { width: 1px; }
QSplitter::handle:vertical { height: 1px; }

QMenuBar { background: @margin; border-bottom: 1px solid @hairline; }
QMenuBar::item { padding: 5px 10px; background: transparent; }
QMenuBar::item:selected, QMenuBar::item:pressed { background: @accent_wash; color: @ink; }
QMenu { background: @field; border: 1px solid @hairline; padding: 4px 0; }
QMenu::item { padding: 5px 28px 5px 24px; }
QMenu::item:selected { background: @accent_wash; color: @ink; }
QMenu::item:disabled { color: @faint_ink; }
QMenu::separator { height: 1px; background: @hairline; margin: 4px 10px; }
QStatusBar { background: @margin; border-top: 1px solid @hairline; color: @ink; }
QStatusBar::item { border: none; }

QPushButton, QToolButton { border: 1px solid @hairline; border-radius: 3px; background: @field; padding: 4px 10px; }
QPushButton:hover, QToolButton:hover { border-color: @faint_ink; }
QPushButton:focus, QToolButton:focus { border-color: @accent; }
QPushButton:pressed, QToolButton:pressed, QToolButton:checked, QPushButton:checked {
  background: @accent_wash; border-color: @accent; }
QPushButton[prominent="true"] { background: @accent; color: @on_accent; border-color: @accent; }
QPushButton[link="true"] { border: none; background: transparent; color: @accent; padding: 2px 0; text-align: left; }
QPushButton[link="true"]:hover, QPushButton[link="true"]:focus { text-decoration: underline; }
QPushButton:disabled, QToolButton:disabled { color: @faint_ink; }

QLineEdit, QComboBox, QAbstractSpinBox, QPlainTextEdit, QTextEdit {
  background: @field; border: 1px solid @hairline; border-radius: 3px; padding: 3px 6px;
  selection-background-color: @accent; selection-color: @on_accent; }
QLineEdit:focus, QComboBox:focus, QAbstractSpinBox:focus, QPlainTextEdit:focus, QTextEdit:focus {
  border-color: @accent; }
QComboBox::drop-down { border: none; width: 18px; }
QComboBox QAbstractItemView { background: @field; border: 1px solid @hairline;
  selection-background-color: @accent_wash; selection-color: @ink; }

QTabBar::tab { padding: 5px 12px; border: none; border-bottom: 2px solid transparent; color: @faint_ink; }
QTabBar::tab:selected { color: @ink; border-bottom-color: @accent; }
QTabBar::tab:focus { color: @accent; }
QTabWidget::pane { border: none; border-top: 1px solid @hairline; }

QScrollArea { border: none; background: transparent; }
QScrollBar:vertical { width: 10px; background: transparent; margin: 0; }
QScrollBar:horizontal { height: 10px; background: transparent; margin: 0; }
QScrollBar::handle { background: @hairline; border-radius: 4px; margin: 2px; }
QScrollBar::handle:vertical { min-height: 28px; }
QScrollBar::handle:horizontal { min-width: 28px; }
QScrollBar::handle:hover { background: @faint_ink; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
)";

QString css(const QColor& colour) {
  return QStringLiteral("rgba(%1,%2,%3,%4)").arg(colour.red()).arg(colour.green()).arg(colour.blue()).arg(colour.alpha());
}

}  // namespace

QString style_sheet(const Inks& inks) {
  // Longer names first: "@accent" begins "@accent_wash".
  const QPair<const char*, QColor> roles[] = {
      {"@accent_wash", inks.accent_wash}, {"@on_accent", inks.on_accent}, {"@faint_ink", inks.faint_ink},
      {"@hairline", inks.hairline},       {"@margin", inks.margin},       {"@accent", inks.accent},
      {"@caution", inks.caution},         {"@calm", inks.calm},           {"@paper", inks.paper},             {"@field", inks.field},         {"@ink", inks.ink}};
  QString sheet = QString::fromLatin1(rules);
  for (const auto& [name, colour] : roles) sheet.replace(QLatin1String(name), css(colour));
  // The same sizes as type() has: what a style sheet sets, fonts set by hand do not reach.
  for (const auto& [name, role] : {std::pair{"$caption", TypeRole::caption}, std::pair{"$heading", TypeRole::heading}, std::pair{"$figure", TypeRole::figure}}) {
    sheet.replace(QLatin1String(name), QStringLiteral("%1pt").arg(type(role).pointSizeF()));
  }
  return sheet;
}

}  // namespace fluewright
