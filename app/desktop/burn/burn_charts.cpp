// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/burn_charts.hpp"

#include "app/drawing/tr.hpp"
#include "app/shared/unit_table.hpp"
#include "app/shared/words.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

namespace fluewright {

namespace {

constexpr double nothing = std::numeric_limits<double>::quiet_NaN();
/// Beyond this much excess air a number says no more than "far too much".
constexpr double most_excess = 10.0;


QString unit_of(Meaning meaning, UnitSystem units) { return QString::fromStdString(unit_name(meaning, units)); }

BurnCurve curve(const BurnRecord& record, CurveRole role, const QString& label, const std::function<double(const BurnRow&)>& value) {
  BurnCurve made{role, label, {}};
  made.y.reserve(record.rows.size());
  for (const BurnRow& row : record.rows) made.y.push_back(value(row));
  return made;
}

/// Whether something goes on from one row to the next, and the spans of that.
template <class On>
void add_spans(std::vector<TroubleSpan>& spans, const BurnRecord& record, TroubleSpan::Kind kind, On on) {
  for (std::size_t i = 0; i + 1 < record.rows.size(); ++i) {
    const BurnRow& row = record.rows[i];
    const BurnRow& next = record.rows[i + 1];
    if (!(next.at > row.at) || !on(row, next)) continue;
    const double from = in(row.at, second);
    const double to = in(next.at, second);
    const bool goes_on = !spans.empty() && spans.back().kind == kind && spans.back().to >= from - 1e-6;
    if (goes_on) {
      spans.back().to = to;
    } else {
      spans.push_back({kind, from, to});
    }
  }
}

/// Less than this in a second is what any feed breathes, no smoke worth marking.
const MassFlow breath = 2e-6 * kilogram_per_second;

BurnChart draft_chart(const BurnRecord& record, UnitSystem units) {
  BurnChart chart{tr("Draft"), unit_of(Meaning::pressure, units), units == UnitSystem::metric ? 1 : 3, {}, {}, true, std::nullopt};
  chart.curves.push_back(curve(record, CurveRole::first, tr("to spare"), [units](const BurnRow& r) { return in_shown_unit(r.margin, units); }));
  chart.curves.push_back(curve(record, CurveRole::second, tr("at the stack's foot"), [units](const BurnRow& r) { return in_shown_unit(r.foot_draft, units); }));
  using Kind = TroubleSpan::Kind;
  add_spans(chart.troubles, record, Kind::starved, [](const BurnRow& a, const BurnRow& b) { return a.short_of_air && b.short_of_air; });
  add_spans(chart.troubles, record, Kind::backwards, [](const BurnRow& a, const BurnRow& b) { return a.wanted > MassFlow{} && !a.forward && !b.forward; });
  add_spans(chart.troubles, record, Kind::smoke, [](const BurnRow& a, const BurnRow& b) { return (b.smoke - a.smoke) / (b.at - a.at) > breath; });
  return chart;
}

BurnChart exit_chart(const BurnRecord& record, const Design& design, const Library& library, UnitSystem units) {
  BurnChart chart{tr("Exit gas, motor"), unit_of(Meaning::temperature, units), 0, {}, {}, false, std::nullopt};
  chart.curves.push_back(curve(record, CurveRole::first, tr("at the exit"), [units](const BurnRow& r) { return in_shown_unit(r.exit, units); }));
  const std::size_t motors = record.rows.empty() ? 0 : record.rows.front().motors.size();
  for (std::size_t i = 0; i < motors; ++i) {
    const std::size_t piece = record.rows.front().motors[i].first;
    chart.curves.push_back(curve(record, i == 0 ? CurveRole::second : CurveRole::third,
                                 tr("motor of %1").arg(QString::fromStdString(piece_name(design, library, piece))),
                                 [units, i](const BurnRow& r) { return i < r.motors.size() ? in_shown_unit(r.motors[i].second, units) : nothing; }));
  }
  return chart;
}

/// The warmest and the coolest of the seat's outer faces, slice by slice.
BurnChart seat_chart(const BurnRecord& record, UnitSystem units) {
  BurnChart chart{tr("Seat surface"), unit_of(Meaning::temperature, units), 0, {}, {}, false, std::nullopt};
  const auto seat = [&record, units](bool warmest) {
    return [&record, units, warmest](const BurnRow& row) {
      std::optional<Temperature> found;
      for (std::size_t i = 0; i < record.slices.size() && i < row.surface.size(); ++i) {
        if (record.slices[i].place != Place::mass) continue;
        if (!found || (row.surface[i] > *found) == warmest) found = row.surface[i];
      }
      return found ? in_shown_unit(*found, units) : nothing;
    };
  };
  const bool any = std::any_of(record.slices.begin(), record.slices.end(), [](const BurnSlice& s) { return s.place == Place::mass; });
  if (!any) return chart;
  chart.curves.push_back(curve(record, CurveRole::first, tr("warmest"), seat(true)));
  chart.curves.push_back(curve(record, CurveRole::second, tr("coolest"), seat(false)));
  return chart;
}

}  // namespace

BurnPicture burn_picture(const BurnRecord& record, const Design& design, const Library& library, UnitSystem units) {
  BurnPicture picture;
  picture.seconds.reserve(record.rows.size());
  for (const BurnRow& row : record.rows) picture.seconds.push_back(in(row.at, second));
  picture.charts.push_back(draft_chart(record, units));
  picture.charts.push_back(exit_chart(record, design, library, units));
  picture.charts.push_back(seat_chart(record, units));
  const UnitRow& energy = unit_row(Meaning::energy, units);
  BurnChart stored{tr("Stored heat"), unit_of(Meaning::energy, units), energy.decimals, {}, {}, true, std::nullopt};
  stored.curves.push_back(curve(record, CurveRole::first, tr("in walls and bench"), [&energy](const BurnRow& r) { return energy.from_si(in(r.stored, joule)); }));
  picture.charts.push_back(std::move(stored));
  BurnChart excess{tr("Excess air"), QString(), 1, {}, {}, true, most_excess};
  excess.curves.push_back(curve(record, CurveRole::first, tr("ratio"), [](const BurnRow& r) { return r.wanted > MassFlow{} ? r.excess_air_ratio.value() : nothing; }));
  picture.charts.push_back(std::move(excess));
  return picture;
}

QString trouble_words(TroubleSpan::Kind kind) {
  switch (kind) {
    case TroubleSpan::Kind::smoke: return tr("smoke into the room");
    case TroubleSpan::Kind::backwards: return tr("runs backwards");
    case TroubleSpan::Kind::starved: return tr("short of air");
  }
  return {};
}

double value_at(const BurnPicture& picture, const BurnCurve& curve, double seconds) {
  const auto& x = picture.seconds;
  if (x.empty() || curve.y.size() != x.size()) return nothing;
  const auto after = std::upper_bound(x.begin(), x.end(), seconds);
  if (after == x.begin()) return curve.y.front();
  if (after == x.end()) return curve.y.back();
  const auto i = static_cast<std::size_t>(after - x.begin());
  const double part = (seconds - x[i - 1]) / (x[i] - x[i - 1]);
  return curve.y[i - 1] + part * (curve.y[i] - curve.y[i - 1]);
}

}  // namespace fluewright
