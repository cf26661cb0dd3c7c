// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/plot_figure.hpp"

#include "app/drawing/tr.hpp"
#include "app/paper/type.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace fluewright::paper {

namespace {

struct Curve {
  std::vector<double> x;
  std::vector<double> y;
};

/// 1, 2 or 5 times a power of ten, so that about `wanted` of them fill the span.
double nice_step(double span, int wanted) {
  const double raw = span / wanted;
  const double power = std::pow(10.0, std::floor(std::log10(raw)));
  for (const double m : {1.0, 2.0, 5.0}) {
    if (m * power >= raw) return m * power;
  }
  return 10.0 * power;
}

/// A field with two axes: values to millimetres.
class Field {
 public:
  Field(QSizeF size, const QString& x_title, const QString& y_title, std::pair<double, double> xs,
        std::pair<double, double> ys)
      : size_{size}, xs_{xs}, ys_{ys} {
    if (xs_.second - xs_.first < 1e-9) xs_.second = xs_.first + 1.0;
    const double step = nice_step(std::max(1e-6, ys_.second - ys_.first), 5);
    ys_.first = std::floor(ys_.first / step - 1e-9) * step;
    ys_.second = std::ceil(ys_.second / step + 1e-9) * step;
    if (ys_.second <= ys_.first) ys_.second = ys_.first + step;
    put_y_axis(step, y_title);
    put_x_axis(x_title);
  }

  [[nodiscard]] QPointF at(double x, double y) const {
    return {left + (x - xs_.first) / (xs_.second - xs_.first) * (size_.width() - left - right),
            top + (ys_.second - y) / (ys_.second - ys_.first) * (size_.height() - top - bottom)};
  }
  void curve(const Curve& c, Stroke stroke) {
    QPolygonF points;
    for (std::size_t i = 0; i < c.x.size(); ++i) points << at(c.x[i], c.y[i]);
    figure.poly(points, false, stroke, Fill::none, Layer::flue);
  }
  [[nodiscard]] double y_low() const { return ys_.first; }
  [[nodiscard]] double y_high() const { return ys_.second; }

  Figure figure;

  static constexpr double left = 13.0;

 private:
  static constexpr double right = 4.0;
  static constexpr double top = 9.5;
  static constexpr double bottom = 9.5;

  void put_y_axis(double step, const QString& title) {
    const int decimals = step < 0.01 ? 3 : step < 0.1 ? 2 : step < 1.0 ? 1 : 0;
    for (double y = ys_.first; y < ys_.second + 0.5 * step; y += step) {
      const QPointF p = at(xs_.first, y);
      const bool zero = std::abs(y) < 1e-9 * std::max(1.0, std::abs(step));
      figure.line(p, at(xs_.second, y), zero ? Stroke::outline : Stroke::grid, Layer::axis);
      QString label = digits(zero ? 0.0 : y, decimals);
      label.replace(QLatin1Char('-'), QChar(0x2212));
      figure.words(p + QPointF(-1.5, 0.5 * cap_height(Type::note)), label, Type::note, Anchor::right);
    }
    figure.words({0.0, cap_height(Type::note)}, title, Type::note);
  }
  void put_x_axis(const QString& title) {
    const double step = nice_step(xs_.second - xs_.first, 8);
    const double y = ys_.first;
    for (double x = std::ceil(xs_.first / step - 1e-9) * step; x < xs_.second + 1e-6 * step; x += step) {
      const QPointF p = at(x, y);
      figure.line(p, p + QPointF(0, 1.2), Stroke::thin, Layer::axis);
      figure.words(p + QPointF(0, 1.8 + cap_height(Type::note)), digits(x), Type::note, Anchor::middle);
    }
    figure.words(at(xs_.second, y) + QPointF(0, 2.4 + 2.0 * cap_height(Type::note) + 1.6), title, Type::note,
                 Anchor::right);
  }

  QSizeF size_;
  std::pair<double, double> xs_;
  std::pair<double, double> ys_;
};

std::pair<double, double> span(const std::vector<const Curve*>& curves) {
  double low = 0.0;
  double high = 0.0;
  for (const Curve* c : curves) {
    for (const double y : c->y) {
      low = std::min(low, y);
      high = std::max(high, y);
    }
  }
  return {low, high};
}

double shown(Length length, UnitSystem units) {
  return units == UnitSystem::metric ? in(length, metre) : in(length, foot);
}

QString along_unit(UnitSystem units) {
  return units == UnitSystem::metric ? QStringLiteral("m") : QStringLiteral("ft");
}

void put_leaks(Field& field, const Assessment& answer, const Curve& flue, const Curve& room) {
  QPolygonF upper;
  QPolygonF lower;
  const auto close = [&] {
    if (upper.size() > 1) {
      std::reverse(lower.begin(), lower.end());
      field.figure.poly(upper + lower, true, Stroke::none, Fill::crossed, Layer::notes);
    }
    upper.clear();
    lower.clear();
  };
  for (std::size_t i = 0; i < flue.x.size(); ++i) {
    const bool leaks = answer.profile[i].beside_room && flue.y[i] > room.y[i];
    if (!leaks) {
      close();
      continue;
    }
    upper << field.at(flue.x[i], flue.y[i]);
    lower << field.at(room.x[i], room.y[i]);
  }
  close();
}

/// The pieces' numbers over the stretches that are theirs, as far as they have room.
void put_pieces(Field& field, const Dossier& dossier) {
  const auto& profile = dossier.answer().profile;
  double free_from = -1e9;
  std::size_t i = 0;
  while (i < profile.size()) {
    std::size_t last = i;
    while (last + 1 < profile.size() && profile[last + 1].piece == profile[i].piece) ++last;
    const double from = shown(profile[i].s - profile[i].length, dossier.units());
    const double to = shown(profile[last].s, dossier.units());
    const QPointF end = field.at(to, field.y_low());
    field.figure.line(end, field.at(to, field.y_high()), Stroke::grid, Layer::axis);
    const QPointF middle = 0.5 * (field.at(from, field.y_high()) + field.at(to, field.y_high()));
    const QString number = QString::number(dossier.number(profile[i].piece));
    const double width = width_of(number, Type::note);
    if (middle.x() - 0.5 * width > free_from + 0.8) {
      field.figure.words(middle + QPointF(0.0, -1.0), number, Type::note, Anchor::middle, 0.0, Layer::numbers);
      free_from = middle.x() + 0.5 * width;
    }
    i = last + 1;
  }
}

void put_key(Figure& figure, QPointF at, Stroke stroke, const QString& words) {
  figure.line(at, at + QPointF(8.0, 0.0), stroke);
  figure.words(at + QPointF(9.5, 0.5 * cap_height(Type::note)), words, Type::note);
}

}  // namespace

Figure pressure_plot(const Dossier& dossier, QSizeF size) {
  Curve flue;
  Curve room;
  for (const SliceState& slice : dossier.answer().profile) {
    flue.x.push_back(shown(slice.s, dossier.units()));
    flue.y.push_back(in_shown_unit(slice.gauge, dossier.units()));
    room.y.push_back(in_shown_unit(slice.room_gauge, dossier.units()));
  }
  room.x = flue.x;
  if (flue.x.size() < 2) return {};
  Field field({size.width(), size.height() - 6.0},
              tr("along the gas's way, %1").arg(along_unit(dossier.units())),
              tr("pressure against outdoor air, %1; numbers above: pieces")
                  .arg(text(unit_name(Meaning::pressure, dossier.units()))),
              {0.0, flue.x.back()}, span({&flue, &room}));
  put_pieces(field, dossier);
  put_leaks(field, dossier.answer(), flue, room);
  field.curve(room, Stroke::hidden);
  field.curve(flue, Stroke::bold);
  put_key(field.figure, {13.0, size.height() - 2.0}, Stroke::bold, tr("in the flue"));
  put_key(field.figure, {48.0, size.height() - 2.0}, Stroke::hidden, tr("in the room at the same height"));
  field.figure.box(QRectF(104.0, size.height() - 3.5, 8.0, 3.0), Stroke::thin, Fill::crossed);
  field.figure.words({113.5, size.height() - 2.0 + 0.5 * cap_height(Type::note)},
                     tr("smoke can leak into the room"), Type::note);
  return field.figure;
}

Figure length_plot(const LengthCurve& curve, UnitSystem units, QSizeF size) {
  Curve margin;
  for (const LengthPoint& p : curve.points) {
    margin.x.push_back(shown(p.bench, units));
    margin.y.push_back(in_shown_unit(p.margin, units));
  }
  if (margin.x.size() < 2) return {};
  Field field(size, tr("length of the bench's flue, %1").arg(along_unit(units)),
              tr("draft to spare at the worst moment, %1; under 0 it does not draw")
                  .arg(text(unit_name(Meaning::pressure, units))),
              {0.0, margin.x.back()}, span({&margin}));
  field.curve(margin, Stroke::bold);
  // The curve falls to the right: over it on the right and under it on the left a label hides nothing.
  const auto label = [&](QPointF p, const QString& name, Length bench, bool under) {
    const QString said = QStringLiteral("%1: %2").arg(name, text(show(bench, units, Meaning::run_length).text()));
    const double width = width_of(said, Type::table_head);
    if (under && p.x() - 2.2 - width > Field::left + 1.0)
      return Words{p + QPointF(-2.2, 2.6 + cap_height(Type::table_head)), said, Type::table_head, Anchor::right, 0.0, Layer::notes, false};
    const bool fits = p.x() + 3.0 + width < size.width() - 2.0;
    return Words{p + QPointF(fits ? 2.2 : -2.2, under ? -7.0 : -2.4), said, Type::table_head,
                 fits ? Anchor::left : Anchor::right, 0.0, Layer::notes, false};
  };
  std::optional<QRectF> taken;
  const auto mark = [&](Length bench, Pressure pressure, const QString& name, bool own) {
    const QPointF p = field.at(shown(bench, units), in_shown_unit(pressure, units));
    Words said = label(p, name, bench, false);
    if (taken && extent(said).adjusted(-2.0, -1.0, 2.0, 1.0).intersects(*taken)) said = label(p, name, bench, true);
    taken = extent(said) | QRectF(p.x() - 1.2, p.y() - 1.2, 2.4, 2.4);
    field.figure.box(extent(said), Stroke::none, Fill::white, Layer::notes);
    field.figure.marks.emplace_back(said);
    field.figure.circle(p, 1.1, Stroke::outline, own ? Fill::black : Fill::white, Layer::notes);
  };
  mark(curve.yours.bench, curve.yours.margin, tr("yours"), true);
  if (curve.longest) mark(*curve.longest, Pressure{}, tr("longest that draws"), false);
  return field.figure;
}

}  // namespace fluewright::paper
