// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/flow.hpp"

#include "app/drawing/tr.hpp"
#include "app/paper/type.hpp"

#include <algorithm>

namespace fluewright::paper {

namespace {

constexpr double heading_space = 3.0;  // over a heading
constexpr double block_space = 2.0;    // under a block

/// Shares of the title block's width: what it is, of what, when, which page.
constexpr double document_share = 0.22;
constexpr double title_share = 0.46;
constexpr double date_share = 0.19;

}  // namespace

Flow::Flow(PaperSize size, TitleBlock block) : block_{std::move(block)} {
  if (size == PaperSize::letter) {
    paper_width_ = 215.9;
    paper_height_ = 279.4;
  }
  new_page();
}

double Flow::full_height() const { return page_height_ - 2.0 * margin - block_height(page_width_) - block_space; }

double Flow::left() const {
  const double heading = waiting_heading_.isEmpty() ? 0.0 : heading_space + line_height(Type::heading) + 1.0;
  return margin + full_height() - y_ - heading;
}

void Flow::new_page(bool landscape) {
  if (!sheets_.empty() && on_fresh_page() && waiting_heading_.isEmpty() && page().marks.empty()) sheets_.pop_back();
  page_width_ = landscape ? paper_height_ : paper_width_;
  page_height_ = landscape ? paper_width_ : paper_height_;
  sheets_.push_back({page_width_, page_height_, {}});
  y_ = margin;
}

void Flow::make_room(double height) {
  if (height > left() && !on_fresh_page()) new_page(page_width_ > page_height_);
  put_waiting_heading();
}

void Flow::put_waiting_heading() {
  if (waiting_heading_.isEmpty()) return;
  const QString text = std::exchange(waiting_heading_, {});
  if (!on_fresh_page()) y_ += heading_space;
  for (const QString& line : wrapped(text, Type::heading, width())) {
    page().words({margin, y_ + cap_height(Type::heading) + 0.8}, line, Type::heading);
    y_ += line_height(Type::heading);
  }
  y_ += 1.0;
}

void Flow::title(const QString& text) {
  const QStringList lines = wrapped(text, Type::title, width());
  make_room(static_cast<double>(lines.size()) * line_height(Type::title));
  put_lines(lines, Type::title, 0.0);
}

void Flow::heading(const QString& text) {
  put_waiting_heading();
  waiting_heading_ = text;
}

void Flow::put_lines(const QStringList& lines, Type type, double indent) {
  for (const QString& line : lines) {
    if (left() < line_height(type)) new_page(page_width_ > page_height_);
    page().words({margin + indent, y_ + cap_height(type) + 0.8}, line, type);
    y_ += line_height(type);
  }
}

void Flow::paragraph(const QString& text, Type type) {
  if (text.isEmpty()) return;
  const QStringList lines = wrapped(text, type, width());
  // No single line alone on a page.
  make_room(std::min<double>(static_cast<double>(lines.size()), 3.0) * line_height(type));
  put_lines(lines, type, 0.0);
  y_ += block_space;
}

void Flow::item(const QString& mark, const QString& text, Type type, double least_indent) {
  const double indent = std::max(least_indent, width_of(mark, type) + 2.0);
  const QStringList lines = wrapped(text, type, width() - indent);
  make_room(static_cast<double>(lines.size()) * line_height(type));
  page().words({margin, y_ + cap_height(type) + 0.8}, mark, type);
  put_lines(lines, type, indent);
  y_ += 0.6;
}

void Flow::table(const Table& table) {
  if (table.rows.empty()) return;
  const LaidTable laid(table, width());
  const auto rows_together = std::min<std::size_t>(laid.row_count(), 2);
  double first = laid.head_height();
  for (std::size_t i = 0; i < rows_together; ++i) first += laid.row_height(i);
  make_room(first);
  laid.put_head(page(), {margin, y_});
  y_ += laid.head_height();
  for (std::size_t row = 0; row < laid.row_count(); ++row) {
    // A row that heads others stays with the first of them.
    const bool heads = std::find(table.strong.begin(), table.strong.end(), row) != table.strong.end();
    const double with_next = heads && row + 1 < laid.row_count() ? laid.row_height(row + 1) : 0.0;
    if (laid.row_height(row) + with_next > left()) {
      new_page(page_width_ > page_height_);
      laid.put_head(page(), {margin, y_});
      y_ += laid.head_height();
    }
    laid.put_row(page(), {margin, y_}, row);
    y_ += laid.row_height(row);
  }
  y_ += block_space;
}

void Flow::figure(const Figure& figure) {
  const QRectF box = figure.bounds();
  make_room(box.height());
  page().put(figure, {margin + std::max(0.0, 0.5 * (width() - box.width())) - box.left(), y_ - box.top()});
  y_ += box.height() + block_space;
}

void Flow::beside(const Figure& left_one, const Figure& right_one) {
  constexpr double between = 8.0;
  const QRectF l = left_one.bounds();
  const QRectF r = right_one.bounds();
  if (l.width() + r.width() + between > width()) {
    figure(left_one);
    figure(right_one);
    return;
  }
  const double height = std::max(l.height(), r.height());
  make_room(height);
  const double spare = (width() - l.width() - r.width() - between) / 3.0;
  const double left_x = margin + spare;
  const double right_x = left_x + l.width() + between + spare;
  page().put(left_one, {left_x - l.left(), y_ + height - l.bottom()});
  page().put(right_one, {right_x - r.left(), y_ + height - r.bottom()});
  y_ += height + block_space;
}

void Flow::need(double height) {
  if (height > left() && !on_fresh_page()) new_page(page_width_ > page_height_);
}

void Flow::space(double height) { y_ += height; }

double Flow::block_height(double page_width) const {
  const double width = page_width - 2.0 * margin;
  const double pitch = line_height(Type::note);
  const auto lines_in = [&](const QString& text, double share) {
    return static_cast<double>(wrapped(text, Type::note, share * width - 3.0).size());
  };
  const double rows = std::max({1.0 + lines_in(block_.document, document_share),
                                lines_in(block_.title, title_share) + lines_in(block_.file, title_share),
                                lines_in(block_.date, date_share) + lines_in(block_.version, date_share)});
  return rows * pitch + 2.4 + static_cast<double>(wrapped(block_.caution, Type::note, width).size()) * pitch + 1.0;
}

void Flow::put_title_block(Sheet& sheet, std::size_t number, std::size_t count) const {
  Figure& to = sheet.content;
  const double width = sheet.width - 2.0 * margin;
  const double pitch = line_height(Type::note);
  const double cap = cap_height(Type::note);
  double y = sheet.height - margin - block_height(sheet.width);
  for (const QString& line : wrapped(block_.caution, Type::note, width)) {
    to.words({margin, y + cap}, line, Type::note);
    y += pitch;
  }
  y += 1.0;
  const QRectF frame(margin, y, width, sheet.height - margin - y);
  to.box(frame, Stroke::outline);
  double x = margin;
  const auto cell = [&](double share, const QStringList& texts, bool strong_first) {
    double line_y = y + 1.2 + cap;
    bool first = true;
    for (const QString& text : texts) {
      for (const QString& line : wrapped(text, Type::note, share * width - 3.0)) {
        to.words({x + 1.5, line_y + 0.4}, line, strong_first && first ? Type::table_head : Type::note);
        line_y += pitch;
      }
      first = false;
    }
    x += share * width;
    if (x < margin + width - 1.0) to.line({x, y}, {x, frame.bottom()}, Stroke::thin);
  };
  cell(document_share, {QStringLiteral("Fluewright"), block_.document}, true);
  cell(title_share, {block_.title, block_.file}, false);
  cell(date_share, {block_.date, block_.version}, false);
  cell(1.0 - document_share - title_share - date_share, {tr("page %1 of %2").arg(number).arg(count)},
       false);
}

std::vector<Sheet> Flow::finish() {
  put_waiting_heading();
  if (sheets_.size() > 1 && page().marks.empty()) sheets_.pop_back();
  for (std::size_t i = 0; i < sheets_.size(); ++i) {
    Sheet& sheet = sheets_[i];
    if (block_.draft) {
      const QPointF middle(0.5 * sheet.width, 0.45 * sheet.height);
      Words across{middle, tr("DRAFT"), Type::title, Anchor::middle, 52.0, Layer::frame, true};
      sheet.content.marks.insert(sheet.content.marks.begin(), across);
    }
    put_title_block(sheet, i + 1, sheets_.size());
  }
  return std::move(sheets_);
}

}  // namespace fluewright::paper
