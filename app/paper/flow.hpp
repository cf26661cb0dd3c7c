// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/paper.hpp"
#include "app/paper/table.hpp"

namespace fluewright::paper {

/// What stands in every page's title block.
struct TitleBlock {
  QString document;  ///< "Build sheet"
  QString title;     ///< of the design
  QString file;
  QString date;
  QString version;
  QString caution;  ///< the line that defers to local code
  bool draft = false;
};

/// Blocks set one under the other; what does not fit goes onto the next page, headings with what follows them.
class Flow {
 public:
  Flow(PaperSize size, TitleBlock block);

  /// The area between the margins and over the title block [mm].
  [[nodiscard]] double width() const { return page_width_ - 2.0 * margin; }
  [[nodiscard]] double full_height() const;
  /// What is left of this page under what stands on it, a waiting heading taken off.
  [[nodiscard]] double left() const;

  void title(const QString& text);
  void heading(const QString& text);
  void paragraph(const QString& text, Type type = Type::body);
  /// A line with a mark in front: a step, a caution. The text stands in by so much, or by the mark's width.
  void item(const QString& mark, const QString& text, Type type = Type::body, double least_indent = 6.0);
  void table(const Table& table);
  /// Centred; a figure higher than a page is laid out too large by whoever made it.
  void figure(const Figure& figure);
  /// Side by side, as far as they fit; else one under the other.
  void beside(const Figure& left, const Figure& right);
  void space(double height);
  /// Begins a page where less than that is left: for what should not be torn apart.
  void need(double height);
  void new_page(bool landscape = false);
  [[nodiscard]] bool on_fresh_page() const { return y_ <= margin + 0.01; }

  /// The pages with their title blocks and numbers.
  [[nodiscard]] std::vector<Sheet> finish();

  static constexpr double margin = 15.0;

 private:
  void make_room(double height);
  void put_waiting_heading();
  void put_lines(const QStringList& lines, Type type, double indent);
  void put_title_block(Sheet& sheet, std::size_t number, std::size_t count) const;
  [[nodiscard]] double block_height(double page_width) const;
  [[nodiscard]] Figure& page() { return sheets_.back().content; }

  TitleBlock block_;
  double paper_width_ = 210.0;
  double paper_height_ = 297.0;
  double page_width_ = 210.0;
  double page_height_ = 297.0;
  double y_ = margin;
  QString waiting_heading_;
  std::vector<Sheet> sheets_;
};

}  // namespace fluewright::paper
