// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/plot/plot_picture.hpp"

#include <QWidget>

#include <memory>

namespace fluewright {

/// Draws a PlotPicture on paper: lines with their names beside them, hatched bands, light ticks between pieces, and a
/// marker. The plotting library stays behind this wall.
class LinePlot : public QWidget {
  Q_OBJECT

 public:
  explicit LinePlot(QWidget* parent = nullptr);
  ~LinePlot() override;

  void show_picture(PlotPicture picture);
  [[nodiscard]] const PlotPicture& picture() const;
  /// Light up a piece's stretch and put the marker; either may be missing.
  void mark(const PieceId& piece, std::optional<double> x);
  void mark_selected(const PieceId& piece);
  /// What stands in the middle while there is nothing to draw.
  void set_empty_words(const QString& words);
  /// Where a distance along the path stands in this widget.
  [[nodiscard]] QPoint place_of(double x) const;
  [[nodiscard]] std::optional<double> marked() const;

 signals:
  void pointed(double x);
  void left();
  void chosen(double x);
  /// One slice back (-1) or on (+1) by keyboard, or many (page).
  void stepped(int slices);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  struct Drawing;
  std::unique_ptr<Drawing> drawing_;
};

}  // namespace fluewright
