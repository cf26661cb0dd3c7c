// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/theme/theme.hpp"

#include <QApplication>
#include <QFontDatabase>
#include <QPalette>
#include <QStyle>
#include <QStyleFactory>

#include <algorithm>

namespace fluewright {

namespace {

Theme& current() {
  static Theme now;
  return now;
}

QString family() {
  static const QString found = QFontDatabase::families().contains(QStringLiteral("Lato")) ? QStringLiteral("Lato")
                                                                                          : QStringLiteral("DejaVu Sans");
  return found;
}

QPalette palette_of(const Inks& inks) {
  QPalette palette;
  palette.setColor(QPalette::Window, inks.margin);
  palette.setColor(QPalette::WindowText, inks.ink);
  palette.setColor(QPalette::Base, inks.field);
  palette.setColor(QPalette::AlternateBase, inks.margin);
  palette.setColor(QPalette::Text, inks.ink);
  palette.setColor(QPalette::PlaceholderText, inks.faint_ink);
  palette.setColor(QPalette::Button, inks.margin);
  palette.setColor(QPalette::ButtonText, inks.ink);
  palette.setColor(QPalette::BrightText, inks.accent);
  palette.setColor(QPalette::ToolTipBase, inks.field);
  palette.setColor(QPalette::ToolTipText, inks.ink);
  palette.setColor(QPalette::Highlight, inks.accent);
  palette.setColor(QPalette::HighlightedText, inks.on_accent);
  palette.setColor(QPalette::Link, inks.accent);
  palette.setColor(QPalette::LinkVisited, inks.accent);
  palette.setColor(QPalette::Light, inks.paper);
  palette.setColor(QPalette::Midlight, inks.hairline);
  palette.setColor(QPalette::Mid, inks.hairline);
  palette.setColor(QPalette::Dark, inks.hairline);
  palette.setColor(QPalette::Shadow, inks.hairline);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
    palette.setColor(QPalette::Disabled, role, inks.faint_ink);
  }
  palette.setColor(QPalette::Disabled, QPalette::Highlight, inks.hairline);
  return palette;
}

}  // namespace

const Theme& theme() { return current(); }

QFont type(TypeRole role) {
  QFont font(family());
  font.setStyleHint(QFont::SansSerif);
  const double scale = theme().text_scale;
  switch (role) {
    case TypeRole::caption: font.setPointSizeF(8.5 * scale); break;
    case TypeRole::body: font.setPointSizeF(10.0 * scale); break;
    case TypeRole::heading:
      font.setPointSizeF(12.5 * scale);
      font.setWeight(QFont::Medium);
      break;
    case TypeRole::figure:
      font.setPointSizeF(28.0 * std::min(scale, 1.4));
      font.setWeight(QFont::Light);
      break;
  }
  return font;
}

void apply_theme(QApplication& application, Sheet sheet) { apply_theme(application, sheet, theme().text_scale); }

void apply_theme(QApplication& application, Sheet sheet, double text_scale) {
  current() = Theme{sheet, inks_of(sheet), text_scale};
  application.setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
  application.setFont(type(TypeRole::body));
  application.setPalette(palette_of(theme().inks));
  application.setStyleSheet(style_sheet(theme().inks));
}

Sheet sheet_of_system(const QApplication& application) {
  const QPalette palette = application.style()->standardPalette();
  return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness() ? Sheet::night
                                                                                                       : Sheet::day;
}

}  // namespace fluewright
