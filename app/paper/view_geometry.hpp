// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/projection.hpp"
#include "app/paper/dossier.hpp"

#include <QPainterPath>
#include <QPolygonF>
#include <QString>

namespace fluewright::paper {

/// A scale with the name it goes by.
struct Scale {
  double denominator = 20.0;
  QString name;
};

/// The largest usual scale at which something of `metres` fits into `millimetres`: ISO 5455 with 1:25, or the
/// inch-to-the-foot scales.
[[nodiscard]] Scale fitting_scale(QSizeF metres, QSizeF millimetres, UnitSystem units);

/// World to paper at a scale [mm], the second axis pointing down.
class Board {
 public:
  Board(ViewKind view, double denominator) : projection_{view}, factor_{1000.0 / denominator} {}
  [[nodiscard]] const Projection& projection() const { return projection_; }
  [[nodiscard]] ViewKind view() const { return projection_.kind(); }
  /// Millimetres of paper for a metre.
  [[nodiscard]] double factor() const { return factor_; }
  [[nodiscard]] QPointF at(const Position& world) const { return on_paper(projection_.on_sheet(world)); }
  [[nodiscard]] QPointF on_paper(QPointF sheet) const { return {sheet.x() * factor_, -sheet.y() * factor_}; }
  [[nodiscard]] QPolygonF on_paper(const QPolygonF& sheet) const;
  [[nodiscard]] double on_paper(Length length) const { return in(length, metre) * factor_; }

 private:
  Projection projection_;
  double factor_;
};

/// What of a piece is seen: areas to fill and close, and lines upon them.
struct PieceOutline {
  std::size_t piece = 0;
  std::vector<QPolygonF> areas;
  std::vector<QPolygonF> edges;
  std::vector<QPolygonF> axes;
  double nearness = 0.0;
};

/// All pieces that can be drawn, from far to near.
[[nodiscard]] std::vector<PieceOutline> piece_outlines(const Dossier& dossier, const Board& board);

/// Around all benches as one body.
[[nodiscard]] QPainterPath mass_outline(const Dossier& dossier, const Board& board);
/// Their tops, for the isometric view.
[[nodiscard]] QPainterPath mass_tops(const Dossier& dossier, const Board& board);

/// A prism as seen.
[[nodiscard]] QPolygonF seen(const Prism& prism, const Board& board);

/// What all of it takes up, in metres on the sheet.
[[nodiscard]] QSizeF view_size(const Dossier& dossier, ViewKind view);

}  // namespace fluewright::paper
