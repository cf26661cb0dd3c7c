// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/house_painter.hpp"

#include "app/desktop/theme/theme.hpp"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace fluewright {

namespace {

/// The outline's lengths as metres, for drawing.
struct Faces {
  double west, east, south, north, wall, ceiling, slab, eaves, ridge;
};

Faces faces_of(const HouseOutline& house) {
  return {in(house.west, metre),    in(house.east, metre),    in(house.south, metre),
          in(house.north, metre),   in(house.wall, metre),    in(house.ceiling, metre),
          in(house.ceiling_thickness, metre), in(house.eaves, metre), in(house.ridge, metre)};
}

class HousePainter {
 public:
  HousePainter(QPainter& painter, const Camera& camera, const Projection& projection, const HouseOutline& house)
      : painter_{painter}, camera_{camera}, projection_{projection}, house_{house}, f_{faces_of(house)} {
    QColor hatch = theme().inks.faint_ink;
    hatch.setAlphaF(0.30F);
    cut_ = QBrush(hatch, Qt::FDiagPattern);
    line_ = QPen(theme().inks.faint_ink, 1.1);
    painter_.setRenderHint(QPainter::Antialiasing, true);
  }

  void paint() {
    switch (projection_.kind()) {
      case ViewKind::plan: return plan();
      case ViewKind::front: return section(f_.west, f_.east, ridge_runs_east(house_));
      case ViewKind::side: return section(f_.south, f_.north, !ridge_runs_east(house_));
      case ViewKind::isometric: return room();
      case ViewKind::unrolled: return;
    }
  }

 private:
  [[nodiscard]] QPointF at(double x, double y) const { return camera_.to_screen({x, y}); }
  [[nodiscard]] QPolygonF box(double x0, double y0, double x1, double y1) const {
    return {{at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1)}};
  }
  void fill(const QPainterPath& path) {
    painter_.setPen(line_);
    painter_.setBrush(cut_);
    painter_.drawPath(path);
  }

  void plan() {
    QPainterPath walls;
    walls.addPolygon(box(f_.west - f_.wall, f_.south - f_.wall, f_.east + f_.wall, f_.north + f_.wall));
    walls.closeSubpath();
    walls.addPolygon(box(f_.west, f_.south, f_.east, f_.north));
    walls.closeSubpath();
    fill(walls);  // odd-even: the room stays bare
  }

  /// Cut through the two walls that an elevation looks along; `along_ridge`: the roof's slope is not seen.
  void section(double low, double high, bool along_ridge) {
    const double out_low = low - f_.wall;
    const double out_high = high + f_.wall;
    const double half = 0.5 * f_.wall;
    for (const auto& [from, to] : {std::pair{out_low, low}, std::pair{high, out_high}}) {
      QPainterPath wall;
      wall.addPolygon(box(from, 0.0, to, along_ridge ? f_.ridge : f_.eaves));
      wall.closeSubpath();
      fill(wall);
    }
    QPainterPath slab;
    slab.addPolygon(box(low, f_.ceiling, high, f_.ceiling + f_.slab));
    slab.closeSubpath();
    fill(slab);
    QPainterPath roof;
    if (along_ridge) {
      roof.addPolygon(box(out_low, f_.ridge - half, out_high, f_.ridge + half));
    } else {
      const double middle = 0.5 * (low + high);
      roof.addPolygon(QPolygonF{at(out_low, f_.eaves - half), at(middle, f_.ridge - half), at(out_high, f_.eaves - half),
                                at(out_high, f_.eaves + half), at(middle, f_.ridge + half), at(out_low, f_.eaves + half)});
    }
    roof.closeSubpath();
    fill(roof);
  }

  /// The floor and the two far walls as fine lines: a box one looks into.
  void room() {
    const auto point = [&](double x, double y, double z) { return camera_.to_screen(projection_.on_sheet(Metres{x, y, z})); };
    QPen pen(theme().inks.faint_ink, 1.0);
    painter_.setPen(pen);
    painter_.setBrush(Qt::NoBrush);
    painter_.drawPolygon(QPolygonF{point(f_.west, f_.south, 0), point(f_.east, f_.south, 0), point(f_.east, f_.north, 0), point(f_.west, f_.north, 0)});
    pen.setStyle(Qt::DotLine);
    painter_.setPen(pen);
    painter_.drawPolygon(QPolygonF{point(f_.east, f_.south, 0), point(f_.east, f_.south, f_.ceiling), point(f_.east, f_.north, f_.ceiling), point(f_.east, f_.north, 0)});
    painter_.drawPolygon(QPolygonF{point(f_.west, f_.north, 0), point(f_.west, f_.north, f_.ceiling), point(f_.east, f_.north, f_.ceiling), point(f_.east, f_.north, 0)});
  }

  QPainter& painter_;
  const Camera& camera_;
  const Projection& projection_;
  const HouseOutline& house_;
  Faces f_;
  QBrush cut_;
  QPen line_;
};

}  // namespace

void paint_house(QPainter& painter, const Camera& camera, const Projection& projection, const HouseOutline& house) {
  HousePainter(painter, camera, projection, house).paint();
}

}  // namespace fluewright
