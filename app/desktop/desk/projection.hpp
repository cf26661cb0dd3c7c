// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/space.hpp"

#include <QPointF>
#include <QString>

#include <array>
#include <optional>
#include <span>

namespace fluewright {

/// From where one looks at the drawing.
enum class ViewKind {
  plan,      ///< from above, north up
  front,     ///< from the south
  side,      ///< from the east
  unrolled,  ///< the path rolled out into one upright plane
  isometric  ///< from the south-west and above, lengths true along the three axes (ISO 5456-3)
};

/// A direction or point in metres for the arithmetic of drawing: east, north, up.
struct Metres {
  double x = 0.0;
  double y = 0.0;
  double z = 0.0;
};

[[nodiscard]] Metres metres(const Position& position);
[[nodiscard]] Position position(const Metres& m);
/// Unit vector of a heading.
[[nodiscard]] Metres unit_of(const Heading& heading);
[[nodiscard]] double dot(const Metres& a, const Metres& b);

/// World to sheet: the sheet is in metres, first axis to the right, second upwards.
class Projection {
 public:
  explicit Projection(ViewKind kind);
  /// The rolled-out elevation as it is true at one port: the upright plane along the way out of it, with the port where
  /// it is drawn. Drawing on from there lands where it is drawn.
  [[nodiscard]] static Projection unrolled_at(const Position& world, const Heading& outward, double drawn_at);

  [[nodiscard]] ViewKind kind() const { return kind_; }
  [[nodiscard]] QPointF on_sheet(const Metres& world) const;
  [[nodiscard]] QPointF on_sheet(const Position& world) const { return on_sheet(metres(world)); }
  /// Larger is nearer to the viewer.
  [[nodiscard]] double nearness(const Metres& world) const { return dot(world, toward_viewer_); }
  /// Unit vector out of the sheet.
  [[nodiscard]] const Metres& toward_viewer() const { return toward_viewer_; }
  /// How much wider a ball looks than its diameter is long on the axes: 1, or sqrt(3/2) in the isometric view.
  [[nodiscard]] double widening() const { return widening_; }

  /// The grid directions one can draw along in this view.
  [[nodiscard]] std::span<const Heading> directions() const;
  /// The world point under a point of the sheet. An orthographic view keeps the depth of `like`; the isometric one
  /// keeps its height, as if drawing on a floor at that level.
  [[nodiscard]] Metres in_world(QPointF sheet, const Metres& like) const;
  /// How far along `heading` from `from` a point of the sheet is, in metres; nothing if the heading points at the viewer.
  [[nodiscard]] std::optional<double> along(const Heading& heading, const Metres& from, QPointF sheet) const;

 private:
  ViewKind kind_;
  Metres right_;
  Metres up_;
  Metres toward_viewer_;
  double widening_ = 1.0;
  double shift_ = 0.0;      ///< of the rolled-out plane
  std::array<Heading, 4> own_directions_{};
};

/// "Plan", "Elevation from the south", ...
[[nodiscard]] QString title_of(ViewKind kind);

}  // namespace fluewright
