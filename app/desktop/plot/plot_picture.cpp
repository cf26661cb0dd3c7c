// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plot/plot_picture.hpp"

#include "app/drawing/tr.hpp"
#include "app/shared/words.hpp"

#include <algorithm>

namespace fluewright {

namespace {

bool metric(UnitSystem units) { return units == UnitSystem::metric; }

double plotted(Pressure p, UnitSystem units) { return metric(units) ? in(p, pascal) : in(p, inch_of_water); }
double plotted(Temperature t, UnitSystem units) { return metric(units) ? in_celsius(t) : in_fahrenheit(t); }

QString unit(Meaning meaning, UnitSystem units) { return QString::fromStdString(unit_name(meaning, units)); }

PlotPicture empty_picture(const Assessment& assessment, const Design& design, const Library& library,
                          UnitSystem units) {
  PlotPicture picture;
  picture.x_title =
      tr("along the path, %1").arg(metric(units) ? QStringLiteral("m") : QStringLiteral("ft"));
  for (const SliceState& slice : assessment.profile) {
    if (slice.piece >= design.pieces.size()) continue;
    const PieceId& id = design.pieces[slice.piece].id;
    const double to = plotted(slice.s, units);
    if (picture.pieces.empty() || picture.pieces.back().id != id) {
      picture.pieces.push_back({id, QString::fromStdString(piece_name(design, library, slice.piece)),
                                plotted(slice.s - slice.length, units), to});
    }
    picture.pieces.back().to = to;
  }
  return picture;
}

/// The stretches in which `over` lies above `under`, cut at the crossings.
std::vector<PlotBand> bands_between(const PlotLine& over, const PlotLine& under, const QString& label) {
  std::vector<PlotBand> bands;
  bool open = false;
  const auto put = [&bands](double x, double top, double bottom) {
    bands.back().x.push_back(x);
    bands.back().top.push_back(top);
    bands.back().bottom.push_back(bottom);
  };
  for (std::size_t i = 0; i < over.x.size(); ++i) {
    const double gap = over.y[i] - under.y[i];
    const double before = i > 0 ? over.y[i - 1] - under.y[i - 1] : gap;
    if (i > 0 && (gap > 0.0) != (before > 0.0)) {
      const double share = before / (before - gap);
      const double x = over.x[i - 1] + share * (over.x[i] - over.x[i - 1]);
      const double y = over.y[i - 1] + share * (over.y[i] - over.y[i - 1]);
      if (!open) bands.push_back({over.role, label, {}, {}, {}});
      put(x, y, y);
      open = !open;
    } else if (gap > 0.0 && !open) {
      bands.push_back({over.role, label, {}, {}, {}});
      open = true;
    }
    if (gap > 0.0) put(over.x[i], over.y[i], under.y[i]);
  }
  return bands;
}

}  // namespace

const PlotPiece* PlotPicture::piece_at(double x) const {
  const auto found =
      std::find_if(pieces.begin(), pieces.end(), [x](const PlotPiece& p) { return x >= p.from && x <= p.to; });
  return found == pieces.end() ? nullptr : &*found;
}

const PlotPiece* PlotPicture::piece(const PieceId& id) const {
  const auto found = std::find_if(pieces.begin(), pieces.end(), [&id](const PlotPiece& p) { return p.id == id; });
  return found == pieces.end() ? nullptr : &*found;
}

double plotted(Length s, UnitSystem units) { return metric(units) ? in(s, metre) : in(s, foot); }
Length from_plotted(double x, UnitSystem units) { return x * (metric(units) ? metre : foot); }

PlotPicture pressure_picture(const Assessment& assessment, const Design& design, const Library& library,
                             UnitSystem units) {
  PlotPicture picture = empty_picture(assessment, design, library, units);
  picture.y_title = tr("against outdoor air, %1").arg(unit(Meaning::pressure, units));
  picture.from_zero = true;
  PlotLine flue{LineRole::flue_pressure, tr("in the flue"), {}, {}};
  PlotLine room{LineRole::room_pressure, tr("in the room, same height"), {}, {}};
  for (const SliceState& slice : assessment.profile) {
    flue.x.push_back(plotted(slice.s, units));
    flue.y.push_back(plotted(slice.gauge, units));
    room.x.push_back(plotted(slice.s, units));
    room.y.push_back(plotted(slice.room_gauge, units));
  }
  // Outdoors and in the attic a crack does not open to the room: no band there, whatever the pressures.
  PlotLine leaking = flue;
  for (std::size_t i = 0; i < assessment.profile.size(); ++i) {
    if (!assessment.profile[i].beside_room) leaking.y[i] = room.y[i];
  }
  picture.bands = bands_between(leaking, room, tr("smoke can leak into the room"));
  picture.lines = {std::move(room), std::move(flue)};
  return picture;
}

PlotPicture temperature_picture(const Assessment& assessment, const Design& design, const Library& library,
                                UnitSystem units) {
  PlotPicture picture = empty_picture(assessment, design, library, units);
  picture.y_title = tr("temperature, %1").arg(unit(Meaning::temperature, units));
  PlotLine gas{LineRole::gas, tr("gas"), {}, {}};
  PlotLine wall{LineRole::wall, tr("inner wall"), {}, {}};
  PlotLine dew{LineRole::dew_point, tr("dew point"), {}, {}};
  for (const SliceState& slice : assessment.profile) {
    for (PlotLine* line : {&gas, &wall, &dew}) line->x.push_back(plotted(slice.s, units));
    gas.y.push_back(plotted(slice.gas, units));
    wall.y.push_back(plotted(slice.wall, units));
    dew.y.push_back(plotted(slice.dew_point, units));
  }
  picture.bands = bands_between(dew, wall, QStringLiteral("wet"));
  picture.lines = {std::move(dew), std::move(wall), std::move(gas)};
  return picture;
}

const SliceState* slice_at(const Assessment& assessment, Length s) {
  const auto& profile = assessment.profile;
  const auto found = std::lower_bound(profile.begin(), profile.end(), s,
                                      [](const SliceState& slice, Length at) { return slice.s < at; });
  if (found != profile.end()) return &*found;
  return profile.empty() ? nullptr : &profile.back();
}

}  // namespace fluewright
