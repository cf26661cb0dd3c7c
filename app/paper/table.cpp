// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/table.hpp"

#include "app/paper/type.hpp"

#include <algorithm>
#include <numeric>

namespace fluewright::paper {

namespace {

constexpr double gap = 3.5;        // between columns
constexpr double row_space = 1.1;  // above and below a row's words
constexpr Type cell_type = Type::table;
constexpr double most_heading = 26.0;  // wider headings go onto two lines

/// "−0.7" is "−0" and ".7"; what has no point is whole up to its last digit: "12", "none"; feet and inches are too,
/// "6 ft 4.5 in".
struct Split {
  QString whole;
  QString rest;
};
Split split(const QString& number) {
  if (number.endsWith(QStringLiteral("in")) || number.endsWith(QStringLiteral("ft"))) return {number, {}};
  const qsizetype point = number.indexOf(QLatin1Char('.'));
  if (point < 0) return {number, {}};
  return {number.left(point), number.mid(point)};
}

double widest_word(const QString& text, Type type) {
  double widest = 0.0;
  for (const QString& word : text.split(QLatin1Char(' '))) widest = std::max(widest, width_of(word, type));
  return widest;
}

QStringList head_lines(const Column& column, double width) {
  QStringList lines = wrapped(column.heading, Type::table_head, width);
  if (!column.unit.isEmpty()) lines << wrapped(column.unit, Type::note, width);
  return lines;
}

}  // namespace

LaidTable::LaidTable(const Table& table, double width) : table_{table}, columns_(table.columns.size()) {
  measure_numbers();
  share_out(width);
  const double pitch = line_height(cell_type);
  for (std::size_t c = 0; c < columns_.size(); ++c) {
    const double lines = static_cast<double>(head_lines(table_.columns[c], columns_[c].width).size());
    head_height_ = std::max(head_height_, lines * pitch + 2.0 * row_space);
  }
  for (const QStringList& row : table_.rows) {
    qsizetype lines = 1;
    for (std::size_t c = 0; c < columns_.size() && static_cast<qsizetype>(c) < row.size(); ++c) {
      if (table_.columns[c].kind == ColumnKind::words) {
        lines = std::max(lines, wrapped(row[static_cast<qsizetype>(c)], cell_type, columns_[c].width).size());
      }
    }
    heights_.push_back(static_cast<double>(lines) * pitch + 2.0 * row_space);
  }
}

void LaidTable::measure_numbers() {
  for (std::size_t c = 0; c < columns_.size(); ++c) {
    if (table_.columns[c].kind != ColumnKind::number) continue;
    for (const QStringList& row : table_.rows) {
      const Split parts = split(row.value(static_cast<qsizetype>(c)));
      columns_[c].whole = std::max(columns_[c].whole, width_of(parts.whole, Type::table_head));
      columns_[c].rest = std::max(columns_[c].rest, width_of(parts.rest, Type::table_head));
    }
  }
}

/// Numbers take what they need; words share what is left by what they would like, but none gets less than its longest
/// word unless there is no other way.
void LaidTable::share_out(double width) {
  const double free = width - gap * static_cast<double>(columns_.size() - 1);
  double taken = 0.0;
  double widened = 0.0;  // what number columns would take with their headings on one line
  double wishes = 0.0;
  std::vector<double> wish(columns_.size(), 0.0);
  std::vector<double> least(columns_.size(), 0.0);
  for (std::size_t c = 0; c < columns_.size(); ++c) {
    const Column& column = table_.columns[c];
    least[c] = std::max(widest_word(column.heading, Type::table_head), widest_word(column.unit, Type::note));
    if (column.kind == ColumnKind::number) {
      columns_[c].width = std::max(least[c], columns_[c].whole + columns_[c].rest);
      taken += columns_[c].width;
      wish[c] = std::max(columns_[c].width, std::min(most_heading, width_of(column.heading, Type::table_head) + 0.2));
      widened += wish[c];
      continue;
    }
    wish[c] = std::max(least[c], std::min(most_heading, width_of(column.heading, Type::table_head) + 0.2));
    for (const QStringList& row : table_.rows) {
      const QString& text = row.value(static_cast<qsizetype>(c));
      wish[c] = std::max(wish[c], width_of(text, cell_type) + 0.2);
      least[c] = std::max(least[c], std::min(widest_word(text, cell_type) + 0.2, 0.4 * free));
    }
    wishes += wish[c];
  }
  if (wishes + widened <= free) {
    for (std::size_t c = 0; c < columns_.size(); ++c)
      columns_[c].width = std::max(columns_[c].width, table_.columns[c].kind == ColumnKind::number ? wish[c] : 0.0);
    taken = widened;
  }
  const double for_words = free - taken;
  double short_of = 0.0;
  double spare = 0.0;
  for (std::size_t c = 0; c < columns_.size(); ++c) {
    if (table_.columns[c].kind == ColumnKind::number) continue;
    const double share = wishes > for_words ? wish[c] * for_words / wishes : wish[c];
    columns_[c].width = std::max(share, least[c]);
    short_of += std::max(0.0, least[c] - share);
    spare += std::max(0.0, share - least[c]);
  }
  if (wishes > for_words && short_of > 0.0 && spare > 0.0) {
    const double part = std::min(1.0, short_of / spare);
    for (std::size_t c = 0; c < columns_.size(); ++c) {
      if (table_.columns[c].kind == ColumnKind::words) columns_[c].width -= part * (columns_[c].width - least[c]);
    }
  }
  double left = 0.0;
  for (Laid& column : columns_) {
    column.left = left;
    left += column.width + gap;
  }
  width_ = left - gap;
}

void LaidTable::put_head(Figure& figure, QPointF at) const {
  // Rules, no grey: a fax would make dots of it.
  figure.line(at, at + QPointF(width_, 0.0), Stroke::outline);
  const double pitch = line_height(cell_type);
  for (std::size_t c = 0; c < columns_.size(); ++c) {
    const Column& column = table_.columns[c];
    const bool number = column.kind == ColumnKind::number;
    double y = at.y() + row_space + cap_height(cell_type) + 0.3;
    const double x = at.x() + columns_[c].left + (number ? columns_[c].width : 0.0);
    const Anchor anchor = number ? Anchor::right : Anchor::left;
    for (const QString& line : wrapped(column.heading, Type::table_head, columns_[c].width)) {
      figure.words({x, y}, line, Type::table_head, anchor);
      y += pitch;
    }
    if (column.unit.isEmpty()) continue;
    for (const QString& line : wrapped(column.unit, Type::note, columns_[c].width)) {
      figure.words({x, y}, line, Type::note, anchor);
      y += pitch;
    }
  }
  const double bottom = at.y() + head_height_;
  figure.line({at.x(), bottom}, {at.x() + width_, bottom}, Stroke::outline);
}

void LaidTable::put_row(Figure& figure, QPointF at, std::size_t row) const {
  const bool strong = std::find(table_.strong.begin(), table_.strong.end(), row) != table_.strong.end();
  const Type type = strong ? Type::table_head : cell_type;
  const double pitch = line_height(cell_type);
  const double baseline = at.y() + row_space + cap_height(cell_type) + 0.3;
  for (std::size_t c = 0; c < columns_.size(); ++c) {
    const QString& text = table_.rows[row].value(static_cast<qsizetype>(c));
    const Laid& column = columns_[c];
    if (table_.columns[c].kind == ColumnKind::number) {
      const double point = at.x() + column.left + column.width - column.rest;
      const Split parts = split(text);
      // One piece of text, so that it is found and copied as one number.
      figure.words({point - width_of(parts.whole, type), baseline}, text, type);
      continue;
    }
    double y = baseline;
    for (const QString& line : wrapped(text, type, column.width)) {
      figure.words({at.x() + column.left, y}, line, type);
      y += pitch;
    }
  }
  const double bottom = at.y() + heights_[row];
  figure.line({at.x(), bottom}, {at.x() + width_, bottom}, Stroke::thin);
}

}  // namespace fluewright::paper
