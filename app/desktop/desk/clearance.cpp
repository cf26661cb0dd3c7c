// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/clearance.hpp"

#include "app/desktop/desk/motifs.hpp"
#include "app/desktop/desk/piece_painter.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace fluewright {

namespace {

constexpr double cell_pixels = 48.0;

/// Every cell a box touches.
template <class Visit>
void each_cell(const QRectF& box, Visit visit) {
  const auto cell = [](double pixel) { return static_cast<long long>(std::floor(pixel / cell_pixels)); };
  for (long long x = cell(box.left()); x <= cell(box.right()); ++x) {
    for (long long y = cell(box.top()); y <= cell(box.bottom()); ++y) {
      if (!visit((x << 24) ^ (y & 0xffffff))) return;
    }
  }
}

}  // namespace

void Clearance::put(Taken taken, const QRectF& reach) {
  // What is out of sight takes no room; zoomed in, a piece may be a hundred screens long.
  const QRectF screen = QRectF(QPointF(), camera_.size()).adjusted(-cell_pixels, -cell_pixels, cell_pixels, cell_pixels);
  const QRectF seen = reach.intersected(screen);
  if (seen.width() < 0.0 || seen.height() < 0.0 || !reach.adjusted(-1.0, -1.0, 1.0, 1.0).intersects(screen)) return;
  each_cell(seen, [&](long long cell) {
    cells_[cell].push_back(taken_.size());
    return true;
  });
  taken_.push_back(std::move(taken));
}

void Clearance::take(const QPolygonF& place) {
  const QRectF bounds = place.boundingRect();
  put({place, bounds, nullptr}, bounds);
}

void Clearance::lay_out_pieces() {
  pieces_laid_out_ = true;
  for (const DrawnPiece& piece : drawing_.pieces()) {
    const QRectF around = motif_bounds(camera_, piece);
    for (const DrawnLine& line : piece.lines) {
      QPolygonF outline = to_screen(camera_, line.outline.isEmpty() ? line.axis : line.outline);
      const QRectF bounds = outline.boundingRect();
      put({std::move(outline), bounds, &piece}, bounds.intersected(around));
    }
  }
}

bool Clearance::is_clear(const QPolygonF& place, const PieceId& own) {
  if (!pieces_laid_out_) lay_out_pieces();
  const QRectF around = place.boundingRect();
  bool clear = true;
  each_cell(around, [&](long long cell) {
    const auto here = cells_.find(cell);
    if (here == cells_.end()) return true;
    clear = std::none_of(here->second.begin(), here->second.end(), [&](std::size_t index) {
      const Taken& taken = taken_[index];
      if (taken.piece != nullptr && (taken.piece->id == own || !taken.bounds.intersects(around))) return false;
      return taken.outline.intersects(place);
    });
    return clear;
  });
  return clear;
}

}  // namespace fluewright
