// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/type.hpp"

#include "app/drawing/tr.hpp"

#include <QFontDatabase>
#include <QFontMetricsF>
#include <QTransform>

#include <algorithm>
#include <cmath>

namespace fluewright::paper {

namespace {

struct Size {
  double points;
  QFont::Weight weight;
};

Size size_of(Type type) {
  switch (type) {
    case Type::title:
      return {18.0, QFont::Normal};
    case Type::heading:
      return {12.0, QFont::DemiBold};
    case Type::strong:
      return {9.5, QFont::Bold};
    case Type::table:
      return {8.5, QFont::Normal};
    case Type::table_head:
      return {8.5, QFont::DemiBold};
    case Type::note:
      return {7.5, QFont::Normal};
    case Type::body:
      break;
  }
  return {9.5, QFont::Normal};
}

QString family() {
  static const QString found = QFontDatabase::families().contains(QStringLiteral("Lato"))
                                   ? QStringLiteral("Lato")
                                   : QStringLiteral("DejaVu Sans");
  return found;
}

QFontMetricsF metrics(Type type) { return QFontMetricsF(font_of(type)); }

constexpr double point_mm = 25.4 / 72.0;

QString fitting(const QString& word, Type type, double width) {
  qsizetype count = word.size();
  while (count > 1 && width_of(word.left(count), type) > width) --count;
  return word.left(count);
}

}  // namespace

QFont font_of(Type type) {
  const Size size = size_of(type);
  QFont font(family());
  // Spacing that nobody sees: Qt then sets no ligatures, and the text can be searched and copied letter by letter.
  font.setLetterSpacing(QFont::PercentageSpacing, 100.01);
  font.setStyleHint(QFont::SansSerif);
  font.setHintingPreference(QFont::PreferNoHinting);
  font.setPixelSize(static_cast<int>(std::lround(size.points * point_mm * font_units)));
  font.setWeight(size.weight);
  font.setKerning(true);
  return font;
}

double line_height(Type type) { return 1.32 * size_of(type).points * point_mm; }
double cap_height(Type type) { return metrics(type).capHeight() / font_units; }
double descent(Type type) { return metrics(type).descent() / font_units; }
double width_of(const QString& text, Type type) { return metrics(type).horizontalAdvance(text) / font_units; }

QRectF extent(const Words& words) {
  const double width = width_of(words.text, words.type);
  const double shift = words.anchor == Anchor::left ? 0.0 : words.anchor == Anchor::right ? -width : -0.5 * width;
  const double cap = cap_height(words.type);
  const QRectF flat(shift, -cap, width, cap + 0.4 * cap);
  return QTransform().translate(words.at.x(), words.at.y()).rotate(-words.turn).mapRect(flat);
}

QStringList wrapped(const QString& text, Type type, double width) {
  QStringList lines;
  QString whole = text;
  whole.replace(QStringLiteral("in w.c."), QStringLiteral("in\u00A0w.c."));  // a unit stays on its line
  for (const QString& part : whole.split(QLatin1Char('\n'))) {
    QString line;
    for (QString word : part.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
      const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
      if (width_of(longer, type) <= width) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) lines << line;
      while (width_of(word, type) > width && word.size() > 1) {
        const QString head = fitting(word, type, width);
        lines << head;
        word = word.mid(head.size());
      }
      line = word;
    }
    lines << line;
  }
  return lines;
}

}  // namespace fluewright::paper
