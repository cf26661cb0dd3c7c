// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/slice_picture.hpp"

#include "app/desktop/desk/tint.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/shared/words.hpp"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fluewright {

namespace {

bool has_section(const BurnSlice& slice) { return slice.node_count > 0; }

/// The stretch a slice was cut from: its section and what lies around it.
const Stretch* stretch_of(const Document& document, const BurnSlice& slice) {
  const auto& branches = document.assessment().path.network.branches;
  if (slice.branch >= branches.size()) return nullptr;
  for (const Stretch& stretch : branches[slice.branch].stretches) {
    if (stretch.piece == slice.piece && stretch.place == slice.place) return &stretch;
  }
  return nullptr;
}

QString text(Temperature t, UnitSystem units) { return QString::fromStdString(show(t, units).text()); }

/// From the circle of the bore to the outline of the mass: `part` 0 to 1 by area.
QPainterPath outline_at(double part, double bore, QSizeF mass, QPointF centre) {
  QPainterPath path;
  const double inner = std::numbers::pi * bore * bore;
  const double area = inner + part * (mass.width() * mass.height() - inner);
  // A circle while it has room, then a rounded box that grows into the corners.
  const double radius = std::sqrt(area / std::numbers::pi);
  const double least = 0.5 * std::min(mass.width(), mass.height());
  if (radius <= 0.92 * least) {
    path.addEllipse(centre, radius, radius);
    return path;
  }
  const double share = std::sqrt(area / (mass.width() * mass.height()));
  const QSizeF size(std::min(mass.width(), std::max(mass.width() * share, 2.0 * std::min(radius, 0.5 * mass.width()))),
                    std::min(mass.height(), std::max(mass.height() * share, 2.0 * std::min(radius, 0.5 * mass.height()))));
  const double corner = std::clamp((1.0 - part) * least, 0.0, 0.5 * std::min(size.width(), size.height()));
  path.addRoundedRect(QRectF(centre - QPointF(0.5 * size.width(), 0.5 * size.height()), size), corner, corner);
  return path;
}

}  // namespace

SlicePicture::SlicePicture(BurnBook& book, QWidget* parent) : QWidget(parent), book_(book) {
  setObjectName(QStringLiteral("slice_picture"));
  setFont(type(TypeRole::caption));
  const auto refresh = [this] {
    describe();
    update();
  };
  Document& document = book_.document();
  connect(&document, &Document::moment_changed, this, refresh);
  connect(&document, &Document::pointed_changed, this, refresh);
  connect(&document, &Document::selection_changed, this, refresh);
  connect(&document, &Document::units_changed, this, refresh);
  describe();
}

std::optional<std::size_t> SlicePicture::slice() const {
  const Document& document = book_.document();
  if (!document.moment()) return std::nullopt;
  const std::vector<BurnSlice>& slices = document.moment()->burn().slices;
  const auto first_of = [&](const PieceId& id) -> std::optional<std::size_t> {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < slices.size(); ++i) {
      if (has_section(slices[i]) && document.design().pieces.at(slices[i].piece).id == id) found.push_back(i);
    }
    return found.empty() ? std::nullopt : std::optional(found[found.size() / 2]);
  };
  const Document::Pointed& pointed = document.pointed();
  if (pointed.s) {
    for (std::size_t i = 0; i < slices.size(); ++i) {
      const bool here = slices[i].branch == 0 && slices[i].from_s <= *pointed.s && *pointed.s <= slices[i].to_s;
      if (here && has_section(slices[i])) return i;
    }
  }
  if (const auto slice = first_of(pointed.piece)) return slice;
  if (const auto slice = first_of(document.selected())) return slice;
  const auto first = std::find_if(slices.begin(), slices.end(), has_section);
  return first == slices.end() ? std::nullopt : std::optional(static_cast<std::size_t>(first - slices.begin()));
}

void SlicePicture::describe() {
  const auto index = slice();
  const Document& document = book_.document();
  if (!index) {
    setAccessibleName(tr("Cut through the bench"));
    return;
  }
  const Moment& moment = *document.moment();
  const BurnSlice& shown = moment.burn().slices[*index];
  setAccessibleName(tr("Cut through %1: gas %2, wall %3, surface %4")
                        .arg(QString::fromStdString(piece_name(document.design(), document.library(), shown.piece)), text(moment.gas(*index), document.units()),
                             text(moment.wall(*index), document.units()), text(moment.surface(*index), document.units())));
}

void SlicePicture::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const Inks& inks = theme().inks;
  painter.setPen(inks.faint_ink);
  const auto index = slice();
  const Document& document = book_.document();
  const Stretch* stretch = index ? stretch_of(document, document.moment()->burn().slices[*index]) : nullptr;
  if (!index || stretch == nullptr) {
    const QString words = document.moment() ? tr("No bench to cut through.") : tr("A cut through the bench appears once there is a run.");
    painter.drawText(rect().adjusted(12, 8, -12, -8), Qt::AlignCenter | Qt::TextWordWrap, words);
    return;
  }
  const Moment& moment = *document.moment();
  const BurnSlice& shown = moment.burn().slices[*index];
  const UnitSystem units = document.units();
  const int line = painter.fontMetrics().height();
  const QString name = tr("Cut through %1").arg(QString::fromStdString(piece_name(document.design(), document.library(), shown.piece)));
  painter.drawText(QRect(12, 4, width() - 24, line), Qt::AlignLeft, painter.fontMetrics().elidedText(name, Qt::ElideRight, width() - 24));

  // The ground has no outline of its own: as wide and high as the bench of the same cross-section.
  double whole = 0.0;
  for (std::size_t k = 0; k < shown.node_count; ++k) whole += in(moment.burn().nodes[shown.first_node + k].section, square_metre);
  const double bore_area = in(stretch->section.area(), square_metre);
  double width_m = in(stretch->embedding.width, metre);
  double height_m = in(stretch->embedding.height, metre);
  if (shown.place == Place::ground || !(width_m * height_m > bore_area)) width_m = height_m = std::sqrt(whole + bore_area);
  const QRectF room(12.0, line + 8.0, width() - 24.0 - 96.0, height() - line - 16.0);
  const double scale = std::min(room.width() / width_m, room.height() / height_m);
  const QPointF centre = room.center();
  const QSizeF mass(width_m * scale, height_m * scale);
  const double bore = std::sqrt(bore_area / std::numbers::pi) * scale;

  const Tint tint(moment);
  double done = whole;
  painter.setPen(Qt::NoPen);
  for (std::size_t k = shown.node_count; k-- > 0;) {
    const std::size_t node = shown.first_node + k;
    painter.setBrush(tint.colour_of(moment.node(node)));
    painter.drawPath(outline_at(whole > 0.0 ? done / whole : 1.0, bore, mass, centre));
    done -= in(moment.burn().nodes[node].section, square_metre);
  }
  painter.setBrush(tint.colour_of(moment.gas(*index)));
  painter.setPen(QPen(inks.ink, 1.0));
  painter.drawEllipse(centre, bore, bore);
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(QRectF(centre - QPointF(0.5 * mass.width(), 0.5 * mass.height()), mass));

  const double left = room.right() + 8.0;
  double y = room.top() + 2.0;
  const auto write = [&](const QString& what, Temperature t) {
    painter.setPen(inks.faint_ink);
    painter.drawText(QPointF(left, y + line - 3.0), what);
    painter.setPen(inks.ink);
    painter.drawText(QPointF(left + 44.0, y + line - 3.0), text(t, units));
    y += line + 2.0;
  };
  write(tr("gas"), moment.gas(*index));
  write(tr("wall"), moment.wall(*index));
  write(shown.place == Place::mass ? tr("seat") : tr("top"), moment.surface(*index));
}

}  // namespace fluewright
