// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/view_geometry.hpp"

namespace fluewright::paper {

/// A string of dimensions as printed: its parts add up to its total.
struct DimensionChain {
  std::vector<Length> parts;
  Length total{};
};

/// A view, drawn.
struct DrawnView {
  Figure figure;
  Scale scale;
  std::vector<DimensionChain> chains;
  QRectF scale_bar;  ///< the bar's box on the figure [mm]
  Length scale_bar_stands_for{};
};

struct ViewWish {
  bool dimensions = true;
  bool numbers = true;
  bool clearances = false;  ///< room to what burns, gauges, cleanouts and the alarm instead of dimensions
  bool title = true;
};

[[nodiscard]] DrawnView draw_view(const Dossier& dossier, ViewKind view, const Scale& scale, const ViewWish& wish = {});

// What a view is put together from.

/// Places already taken by words and marks; new ones keep clear.
class Taken {
 public:
  void take(const QRectF& rect) { rects_.push_back(rect); }
  void avoid(const QPolygonF& area) { areas_.push_back(area); }
  void cross(const QLineF& line) { lines_.push_back(line); }
  [[nodiscard]] bool is_free(const QRectF& rect) const;
  /// How much a mark there would be in the way of what is drawn.
  [[nodiscard]] double nuisance(const QRectF& rect, const QLineF& leader) const;

 private:
  std::vector<QRectF> rects_;
  std::vector<QPolygonF> areas_;
  std::vector<QLineF> lines_;
};

/// Dimensions along the bottom and the left, levels on the right.
void put_dimensions(DrawnView& drawn, const Dossier& dossier, const Board& board, const QRectF& around, Taken& taken);
/// A numbered circle with a leader for every piece.
void put_numbers(Figure& figure, const Dossier& dossier, const std::vector<PieceOutline>& outlines, Taken& taken);
/// Outlines that keep clear of what burns, gauges, cleanouts, the alarm's place.
void put_clearances(Figure& figure, const Dossier& dossier, const Board& board,
                    const std::vector<PieceOutline>& outlines, Taken& taken);
/// A bar of whole metres or feet with its numbers, at a place.
void put_scale_bar(DrawnView& drawn, UnitSystem units, QPointF at);

/// A circle with a word in it.
void put_balloon(Figure& figure, QPointF at, const QString& word, double radius);

/// Rounded as dimensions are: to the millimetre or the sixteenth of an inch.
[[nodiscard]] Length on_the_tape(Length length, UnitSystem units);

}  // namespace fluewright::paper
