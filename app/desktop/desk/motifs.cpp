// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/motifs.hpp"

#include "app/desktop/desk/piece_painter.hpp"
#include "app/desktop/theme/theme.hpp"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

namespace fluewright {

namespace {

/// A piece's first line in pixels, with its own directions: forward along the line, aside to its left.
struct Stand {
  QPainter& painter;
  const Camera& camera;
  const DrawnPiece& piece;
  const DrawnLine& line;
  QPointF start;
  QPointF end;
  QPointF forward;
  QPointF aside;
  double length = 0.0;
  double width = 0.0;
  QColor ink;        ///< readable on the piece's fill
  QPen outline;

  [[nodiscard]] QPointF at(double along, double across) const { return start + forward * along + aside * across; }
  [[nodiscard]] QPointF middle() const { return 0.5 * (start + end); }
};

/// Small enough that nobody could read it: then nothing is drawn.
constexpr double least_width = 6.0;

void flame(const Stand& s) {
  const double size = std::clamp(0.5 * s.width, 5.0, 22.0);
  const QPointF foot = s.camera.to_screen(s.line.axis[s.line.axis.size() / 2]) + QPointF(0.0, 0.8 * size);
  QPainterPath path(foot);
  path.cubicTo(foot + QPointF(-1.1 * size, -0.2 * size), foot + QPointF(-0.5 * size, -0.9 * size), foot + QPointF(-0.1 * size, -1.7 * size));
  path.cubicTo(foot + QPointF(0.1 * size, -1.1 * size), foot + QPointF(0.45 * size, -1.2 * size), foot + QPointF(0.4 * size, -0.8 * size));
  path.cubicTo(foot + QPointF(0.9 * size, -0.4 * size), foot + QPointF(0.6 * size, 0.0), foot);
  s.painter.setPen(QPen(theme().inks.paper, 1.0));
  s.painter.setBrush(theme().inks.accent);
  s.painter.drawPath(path);
}

/// Sticks that stand in the mouth.
void sticks(const Stand& s) {
  if (s.line.seen_end_on) {
    s.painter.setPen(Qt::NoPen);
    s.painter.setBrush(s.ink);
    for (const QPointF at : {QPointF(-0.18, -0.12), QPointF(0.2, -0.05), QPointF(-0.02, 0.2)}) {
      s.painter.drawEllipse(s.middle() + at * s.width, 0.09 * s.width, 0.09 * s.width);
    }
    return;
  }
  s.painter.setPen(QPen(s.outline.color(), std::clamp(0.09 * s.width, 1.4, 4.0), Qt::SolidLine, Qt::RoundCap));
  s.painter.drawLine(s.at(0.45 * s.width, 0.22 * s.width), s.at(-0.42 * s.width, 0.30 * s.width));
  s.painter.drawLine(s.at(0.50 * s.width, 0.00), s.at(-0.55 * s.width, -0.04 * s.width));
  s.painter.drawLine(s.at(0.45 * s.width, -0.24 * s.width), s.at(-0.34 * s.width, -0.26 * s.width));
}

/// Three bars: a slot or a grille that air comes in by.
void bars(const Stand& s) {
  if (s.line.seen_end_on) return;
  s.painter.setPen(QPen(s.ink, 1.3));
  for (const double across : {-0.25, 0.0, 0.25}) {
    s.painter.drawLine(s.at(0.0, across * s.width), s.at(0.4 * s.length, across * s.width));
  }
}

/// The blade of a damper at a slant, its pin in the middle (ISO 14617).
void blade(const Stand& s) {
  const QPointF m = s.middle();
  const double arm = 0.46 * s.width;
  const QPointF slant = s.line.seen_end_on ? QPointF(0.0, arm) : s.forward * (0.55 * arm) + s.aside * (0.8 * arm);
  s.painter.setPen(QPen(s.ink, 2.0, Qt::SolidLine, Qt::RoundCap));
  s.painter.drawLine(m - slant, m + slant);
  s.painter.setBrush(s.ink);
  s.painter.drawEllipse(m, 2.2, 2.2);
}

/// A flap with its weight: the draft regulator.
void flap(const Stand& s) {
  blade(s);
  const QPointF weight = s.middle() + s.aside * (0.5 * s.width + 6.0);
  s.painter.setPen(QPen(s.outline.color(), 1.2));
  s.painter.drawLine(s.middle() + s.aside * (0.46 * s.width), weight);
  s.painter.setBrush(s.outline.color());
  s.painter.drawRect(QRectF(weight - QPointF(3.5, 3.5), QSizeF(7.0, 7.0)));
}

/// A wheel with a triangle that points the way it blows (ISO 14617, fan).
void wheel(const Stand& s) {
  const double radius = 0.42 * s.width;
  const QPointF m = s.middle();
  s.painter.setPen(QPen(s.outline.color(), 1.5));
  s.painter.setBrush(theme().inks.paper);
  s.painter.drawEllipse(m, radius, radius);
  const QPointF forward = s.line.seen_end_on ? QPointF(0.0, -1.0) : s.forward;
  const QPointF aside{-forward.y(), forward.x()};
  s.painter.setBrush(s.outline.color());
  s.painter.drawPolygon(QPolygonF{m + forward * radius, m - forward * (0.5 * radius) + aside * (0.82 * radius),
                                  m - forward * (0.5 * radius) - aside * (0.82 * radius)});
}

/// A cap's hat above the stack's top.
void hat(const Stand& s) {
  if (s.line.seen_end_on) {
    s.painter.setPen(QPen(s.outline.color(), 1.2));
    s.painter.setBrush(Qt::NoBrush);
    s.painter.drawEllipse(s.middle(), 0.72 * s.width, 0.72 * s.width);
    return;
  }
  const double rise = 0.3 * s.width;
  const QPointF eaves = s.end + s.forward * (0.28 * s.width);
  s.painter.setPen(QPen(s.outline.color(), 1.1));
  s.painter.drawLine(s.end + s.aside * (0.4 * s.width), eaves + s.aside * (0.4 * s.width));
  s.painter.drawLine(s.end - s.aside * (0.4 * s.width), eaves - s.aside * (0.4 * s.width));
  s.painter.setPen(s.outline);
  s.painter.setBrush(theme().inks.paper);
  s.painter.drawPolygon(QPolygonF{eaves + s.aside * (0.78 * s.width), eaves + s.forward * rise, eaves - s.aside * (0.78 * s.width)});
}

void wheel_and_hat(const Stand& s) {
  wheel(s);
  hat(s);
}

/// A shut end: a thick lid with a knob.
void lid(const Stand& s) {
  if (s.line.seen_end_on) return;
  s.painter.setPen(QPen(s.outline.color(), 3.2, Qt::SolidLine, Qt::FlatCap));
  s.painter.drawLine(s.end + s.aside * (0.55 * s.width), s.end - s.aside * (0.55 * s.width));
  s.painter.setBrush(s.outline.color());
  s.painter.setPen(Qt::NoPen);
  s.painter.drawEllipse(s.end + s.forward * 4.5, 2.6, 2.6);
}

/// A steel drum: hoops at the thirds, and the riser inside as hidden lines (ISO 128-2, type 02).
void drum(const Stand& s) {
  if (s.line.outline.isEmpty()) return;
  s.painter.setBrush(Qt::NoBrush);
  if (s.line.seen_end_on) {
    s.painter.setPen(QPen(s.ink, 1.0));
    s.painter.drawEllipse(s.middle(), 0.46 * s.width, 0.46 * s.width);
  } else {
    // The near half of a ring, as the drum's own lid shows it.
    const QRectF top = s.line.near_end.boundingRect();
    const double sag = 0.5 * top.height() * s.camera.scale();
    QColor faint = s.ink;
    faint.setAlphaF(0.6F);
    s.painter.setPen(QPen(faint, 1.1));
    for (const double part : {1.0 / 3.0, 2.0 / 3.0}) {
      const QPointF m = s.at(part * s.length, 0.0);
      const QRectF hoop(m - QPointF(0.5 * s.width, sag), QSizeF(s.width, 2.0 * sag));
      if (sag < 0.5) {
        s.painter.drawLine(m - QPointF(0.5 * s.width, 0.0), m + QPointF(0.5 * s.width, 0.0));
      } else {
        s.painter.drawArc(hoop, 180 * 16, 180 * 16);
      }
    }
  }
  const auto in = std::find_if(s.piece.ports.begin(), s.piece.ports.end(), [](const DrawnPort& p) { return p.ref.port == "in"; });
  if (in == s.piece.ports.end()) return;
  const QPointF rim = s.camera.to_screen(in->at);
  const double half = 0.5 * in->width * s.camera.scale();
  QPen hidden(s.ink, 1.0);
  hidden.setDashPattern({5.0, 3.0});
  s.painter.setPen(hidden);
  if (s.line.seen_end_on) {
    s.painter.drawEllipse(rim, half, half);
  } else {
    s.painter.drawPolyline(QPolygonF{s.start + QPointF(-half, 0.0), rim + QPointF(-half, 0.0), rim + QPointF(half, 0.0), s.start + QPointF(half, 0.0)});
  }
}

/// Brick courses.
void courses(const Stand& s) {
  if (s.line.seen_end_on) return;
  QColor faint = s.ink;
  faint.setAlphaF(0.45F);
  s.painter.setPen(QPen(faint, 0.9));
  const int count = std::clamp(static_cast<int>(s.length / 16.0), 2, 12);
  const double sag = 0.5 * s.line.near_end.boundingRect().height() * s.camera.scale();
  for (int i = 1; i < count; ++i) {
    const QPointF m = s.at(s.length * i / count, 0.0);
    if (sag < 0.5) {
      s.painter.drawLine(m - s.aside * (0.5 * s.width), m + s.aside * (0.5 * s.width));
    } else {
      s.painter.drawArc(QRectF(m - QPointF(0.5 * s.width, sag), QSizeF(s.width, 2.0 * sag)), 180 * 16, 180 * 16);
    }
  }
}

struct Motif {
  std::string_view shape;
  void (*paint)(const Stand&);
};

/// One line a shape that has something to show.
constexpr std::array motifs{Motif{"feed", sticks},      Motif{"door_slot", bars},  Motif{"intake", bars},
                            Motif{"regulator", flap},   Motif{"burn_tunnel", flame}, Motif{"batch_box", flame},
                            Motif{"barrel", drum},      Motif{"bell", courses},    Motif{"chamber", courses},
                            Motif{"end_cap", lid},      Motif{"damper", blade},    Motif{"stack_head", hat},
                            Motif{"fan", wheel},        Motif{"fan_head", wheel_and_hat}};

/// A shut port shows the lid on it.
void paint_lids(QPainter& painter, const Camera& camera, const DrawnPiece& piece, const QPen& pen) {
  for (const DrawnPort& port : piece.ports) {
    if (!port.may_stay_shut || port.joined) continue;
    painter.setPen(QPen(pen.color(), 3.0, Qt::SolidLine, Qt::FlatCap));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(to_screen(camera, port.seam));
  }
}

/// The arrow of air in and gas out, at a port that opens to the room or the sky.
struct AirArrow {
  QPointF tip;
  QPointF tail;
  bool shown = false;
};

AirArrow air_arrow(const Camera& camera, const DrawnPort& port) {
  const double reach = std::hypot(port.outward.x(), port.outward.y());
  if (port.kind == PortKind::joint || reach < 0.2) return {};
  const QPointF outward(port.outward.x() / reach, -port.outward.y() / reach);
  const double clear = 0.72 * port.width * camera.scale();
  const double shaft = std::clamp(0.8 * port.width * camera.scale(), 10.0, 20.0);
  const QPointF near = camera.to_screen(port.at) + outward * (clear + 4.0);
  const QPointF far = near + outward * shaft;
  return port.ref.port != "top" ? AirArrow{near, far, true} : AirArrow{far, near, true};
}

void paint_airs(QPainter& painter, const Camera& camera, const DrawnPiece& piece) {
  for (const DrawnPort& port : piece.ports) {
    const AirArrow arrow = air_arrow(camera, port);
    if (!arrow.shown) continue;
    const QPointF shaft = arrow.tail - arrow.tip;
    const QPointF back = shaft / std::hypot(shaft.x(), shaft.y());
    const QPointF aside(-back.y(), back.x());
    painter.setPen(QPen(theme().inks.calm, 1.4));
    painter.drawLine(arrow.tip, arrow.tail);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme().inks.calm);
    painter.drawPolygon(QPolygonF{arrow.tip, arrow.tip + back * 7.0 + aside * 3.2, arrow.tip + back * 7.0 - aside * 3.2});
  }
}

bool has_hat(const DrawnPiece& piece) {
  return piece.type != nullptr && (piece.type->shape == "stack_head" || piece.type->shape == "fan_head");
}

}  // namespace

QRectF motif_bounds(const Camera& camera, const DrawnPiece& piece) {
  QRectF box = QRectF(camera.to_screen(piece.bounds.topLeft()), camera.to_screen(piece.bounds.bottomRight())).normalized();
  for (const DrawnPort& port : piece.ports) {
    const AirArrow arrow = air_arrow(camera, port);
    if (arrow.shown) box |= QRectF(arrow.tip, arrow.tail).normalized().adjusted(-4.0, -4.0, 4.0, 4.0);
  }
  if (has_hat(piece) && !piece.lines.empty()) {
    const double eaves = 0.3 * piece.lines.front().width * camera.scale();
    box.adjust(-eaves, -eaves, eaves, eaves);
  }
  return box;
}

void paint_motif(QPainter& painter, const Camera& camera, const DrawnPiece& piece, const QPen& pen) {
  paint_lids(painter, camera, piece, pen);
  paint_airs(painter, camera, piece);
  if (piece.type == nullptr || piece.lines.empty()) return;
  const auto motif = std::find_if(motifs.begin(), motifs.end(), [&](const Motif& m) { return m.shape == piece.type->shape; });
  if (motif == motifs.end()) return;
  const DrawnLine& line = piece.lines.front();
  const double width = line.width * camera.scale();
  if (width < least_width) return;
  const QPointF start = camera.to_screen(line.axis.front());
  const QPointF end = camera.to_screen(line.axis.back());
  const double length = std::hypot(end.x() - start.x(), end.y() - start.y());
  const QPointF forward = length > 0.5 ? (end - start) / length : QPointF(0.0, -1.0);
  motif->paint({painter, camera, piece, line, start, end, forward, {-forward.y(), forward.x()}, length, width,
                ink_on(fill_at(line, 0.5)), pen});
}

}  // namespace fluewright
