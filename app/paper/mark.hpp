// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What stands on paper, in millimetres from its upper left corner: lines, areas and words. Everything is laid out as
// such a list before anything is painted, so that PDF, SVG, PNG, DXF and the tests see the same.

#include <QPolygonF>
#include <QRectF>
#include <QString>

#include <variant>
#include <vector>

namespace fluewright::paper {

/// The one type scale.
enum class Type { title, heading, body, strong, table, table_head, note };

/// Strokes by their use; widths and dashes follow ISO 128-2, dark enough for a fax.
enum class Stroke {
  outline,    ///< 0.35, what is seen
  thin,       ///< 0.18, dimension and leader lines, hatches
  hidden,     ///< 0.25 dashed
  axis,       ///< 0.18 long-dashed dotted
  clearance,  ///< 0.35 dashed double-dotted
  bold,       ///< 0.5
  grid,       ///< 0.13 dotted, behind curves
  none
};

/// Areas by their use: told apart without any colour.
enum class Fill {
  none,
  white,
  slanted,  ///< the mass around the flue
  crossed,  ///< where smoke can leak
  dotted,   ///< ground
  black
};

/// What a mark belongs to; a DXF layer of its own.
enum class Layer { flue, mass, hidden, axis, dimensions, numbers, notes, clearances, frame };

struct Stroked {
  QPolygonF points;
  bool closed = false;
  Stroke stroke = Stroke::thin;
  Fill fill = Fill::none;
  Layer layer = Layer::frame;
};

enum class Anchor { left, middle, right };

/// One line of words on its baseline.
struct Words {
  QPointF at;
  QString text;
  Type type = Type::body;
  Anchor anchor = Anchor::left;
  double turn = 0.0;  ///< degrees, anticlockwise
  Layer layer = Layer::notes;
  bool ghost = false;  ///< pale outline letters behind everything: the word across a draft
};

using Mark = std::variant<Stroked, Words>;

/// Marks in an area of its own.
struct Figure {
  std::vector<Mark> marks;

  void line(QPointF from, QPointF to, Stroke stroke, Layer layer = Layer::frame);
  void poly(QPolygonF points, bool closed, Stroke stroke, Fill fill, Layer layer);
  void box(const QRectF& rect, Stroke stroke, Fill fill = Fill::none, Layer layer = Layer::frame);
  void circle(QPointF centre, double radius, Stroke stroke, Fill fill, Layer layer);
  void words(QPointF at, const QString& text, Type type, Anchor anchor = Anchor::left, double turn = 0.0,
             Layer layer = Layer::notes);
  /// Another figure's marks, moved.
  void put(const Figure& other, QPointF by);

  /// Around everything, words by their metrics.
  [[nodiscard]] QRectF bounds() const;
};

/// A page.
struct Sheet {
  double width = 210.0;
  double height = 297.0;
  Figure content;
};

}  // namespace fluewright::paper
