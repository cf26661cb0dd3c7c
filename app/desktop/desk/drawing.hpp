// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/path_measure.hpp"
#include "app/desktop/desk/projection.hpp"
#include "app/desktop/desk/tint.hpp"

#include <QGradientStops>
#include <QPolygonF>
#include <QRectF>
#include <QString>

#include <optional>
#include <unordered_map>
#include <vector>

namespace fluewright {

// What one view shows, in sheet metres: made when the design changes, painted and pointed at as often as need be.

/// A centre line as seen.
struct DrawnLine {
  std::size_t line = 0;       ///< index in PieceGeometry::lines
  QPolygonF axis;
  QPolygonF outline;          ///< of a straight one, round; empty for a bent one, which is stroked along its axis
  QPolygonF near_end;         ///< the end that faces the viewer, where it shows
  double width = 0.0;
  bool body = false;          ///< a standing body
  bool seen_end_on = false;
  QGradientStops stops;       ///< colours along the axis; empty: gas unknown
  int flow = 0;               ///< 1 from first to last, -1 back, 0 unknown or none
  bool flow_toward_viewer = false;
  std::optional<Velocity> speed;  ///< of the gas at a moment that is played, along `flow`
};

/// A port as seen.
struct DrawnPort {
  PortRef ref;
  QPointF at;
  QPointF outward;            ///< on the sheet, per metre; short or zero where it points at the viewer
  QPolygonF seam;             ///< the visible half of the pipe's ring
  double width = 0.0;
  PortKind kind = PortKind::joint;
  bool joined = false;
  bool may_stay_shut = false;
};

struct DrawnPiece {
  std::size_t index = 0;      ///< in Design::pieces
  PieceId id;
  const PieceType* type = nullptr;
  std::vector<DrawnLine> lines;
  std::vector<DrawnPort> ports;
  std::vector<QPolygonF> mass;  ///< outlines of the bench around it, or of the ground's trench
  QRectF bounds;
  double nearness = 0.0;
  std::optional<Length> run_length;  ///< of a straight run: its dimension
};

class Drawing {
 public:
  Drawing() = default;
  /// The geometries are the measure's: those of the document, or rolled out.
  Drawing(const Document& document, const PathMeasure& measure, const Tint& tint, const Projection& projection);

  /// From far to near.
  [[nodiscard]] const std::vector<DrawnPiece>& pieces() const { return pieces_; }
  [[nodiscard]] const DrawnPiece* piece(const PieceId& id) const;
  [[nodiscard]] const DrawnPort* port(const PortRef& ref) const;
  /// Around everything, empty for an empty desk.
  [[nodiscard]] const QRectF& bounds() const { return bounds_; }

  /// One piece alone, as the rack shows it.
  [[nodiscard]] static Drawing of_one(const PieceGeometry& geometry, const PieceType& type, const Projection& projection);

 private:
  std::vector<DrawnPiece> pieces_;
  std::unordered_map<PieceId, std::size_t> places_;  ///< in `pieces_`
  QRectF bounds_;
};

}  // namespace fluewright
