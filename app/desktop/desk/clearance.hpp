// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/camera.hpp"
#include "app/desktop/desk/drawing.hpp"

#include <QPolygonF>
#include <QRectF>

#include <cstddef>
#include <unordered_map>
#include <vector>

namespace fluewright {

/// Where on the screen there is room for a mark: clear of the pieces and of what has been put there already. It looks only
/// at what lies near the place asked about, so a thousand marks among a thousand pieces cost a thousand times as much as
/// one, and not a million times.
class Clearance {
 public:
  Clearance(const Camera& camera, const Drawing& drawing) : camera_{camera}, drawing_{drawing} {}

  void take(const QPolygonF& place);
  /// `own`: the piece the mark belongs to may lie under it.
  [[nodiscard]] bool is_clear(const QPolygonF& place, const PieceId& own);

 private:
  struct Taken {
    QPolygonF outline;
    QRectF bounds;
    const DrawnPiece* piece = nullptr;  ///< of a piece, else of a mark
  };
  void lay_out_pieces();
  void put(Taken taken, const QRectF& reach);

  const Camera& camera_;
  const Drawing& drawing_;
  bool pieces_laid_out_ = false;
  std::vector<Taken> taken_;
  std::unordered_map<long long, std::vector<std::size_t>> cells_;  ///< what reaches into each cell of the screen
};

}  // namespace fluewright
