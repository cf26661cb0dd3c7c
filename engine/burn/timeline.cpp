// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/timeline.hpp"

#include "engine/site/house.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fluewright::kernel {
namespace {

double s(Time t) { return in(t, second); }

/// A day's cosine is followed by straight lines of this length.
constexpr double day_piece = 1800.0;  // [s]
/// Moments nearer than this are one.
constexpr double same_moment = 1e-6;  // [s]

double outdoor_at(double time, const BurnPlan& plan, const Design& design) {
  if (const auto* constant = std::get_if<Temperature>(&plan.outdoors)) return in_kelvin(*constant);
  if (const auto* day = std::get_if<OutdoorDay>(&plan.outdoors)) {
    const double hours = (time + s(plan.begins_at - day->warmest_at)) / 3600.0;
    return in_kelvin(day->mean) + in(day->swing, kelvin) * std::cos(2.0 * std::numbers::pi * hours / 24.0);
  }
  if (const auto* course = std::get_if<std::vector<OutdoorPoint>>(&plan.outdoors)) {
    const auto after = std::upper_bound(course->begin(), course->end(), time,
                                        [](double t, const OutdoorPoint& p) { return t < s(p.at); });
    if (after == course->begin()) return in_kelvin(course->front().temperature);
    if (after == course->end()) return in_kelvin(course->back().temperature);
    const OutdoorPoint& a = *(after - 1);
    const double along = (time - s(a.at)) / s(after->at - a.at);
    return in_kelvin(a.temperature) + along * (in_kelvin(after->temperature) - in_kelvin(a.temperature));
  }
  return in_kelvin(design.site.outdoor_temperature);
}

/// The last entry that has begun.
template <class Entry, class Applies>
const Entry* latest(const std::vector<Entry>& entries, double time, Applies applies) {
  const Entry* found = nullptr;
  for (const Entry& e : entries) {
    if (s(e.at) <= time + same_moment && applies(e)) found = &e;
  }
  return found;
}

template <class Entry>
bool within(const Entry& e, double time) {
  return s(e.at) <= time + same_moment && time + same_moment < s(e.at + e.lasts);
}

}  // namespace

Timeline::Timeline(const BurnPlan& plan, const Design& design) {
  set_cuts(plan);
  for (std::size_t i = 0; i + 1 < cuts_.size(); ++i) {
    Interval interval;
    interval.begin = cuts_[i];
    interval.end = cuts_[i + 1];
    fill(interval, plan, design);
    interval.goes_on = i > 0 && intervals_.back().alike(interval);
    intervals_.push_back(interval);
  }
}

void Timeline::set_cuts(const BurnPlan& plan) {
  const auto cut = [&](Time t) { cuts_.push_back(s(t)); };
  const auto span = [&](const auto& e) { cut(e.at), cut(e.at + e.lasts); };
  cut({});
  cut(plan.length);
  for (const WoodLoad& l : plan.loads) span(l);
  for (const SteadyFeed& f : plan.feeds) cut(f.from), cut(f.until);
  for (const PrimingFire& p : plan.priming) {
    span(p);
    aids_end_ = std::max(aids_end_, s(p.at + p.lasts));
  }
  for (const PieceMove& m : plan.moves) cut(m.at);
  for (std::size_t i = 0; i < plan.fans.size(); ++i) {
    const FanSwitch& f = plan.fans[i];
    cut(f.at);
    if (f.runs_for) cut(f.at + *f.runs_for);
    Time stops = f.speed > Ratio(0.0) ? (f.runs_for ? Time(f.at + *f.runs_for) : plan.length) : f.at;
    for (std::size_t k = i + 1; k < plan.fans.size(); ++k) {
      if (plan.fans[k].fan == f.fan) {
        stops = std::min(stops, plan.fans[k].at);
        break;
      }
    }
    aids_end_ = std::max(aids_end_, std::min(s(stops), s(plan.length)));
  }
  for (const HoodSwitch& h : plan.hoods) cut(h.at);
  for (const PowerCut& c : plan.cuts) span(c);
  if (const auto* course = std::get_if<std::vector<OutdoorPoint>>(&plan.outdoors)) {
    for (const OutdoorPoint& p : *course) cut(p.at);
  }
  if (std::holds_alternative<OutdoorDay>(plan.outdoors)) {
    for (double t = day_piece; t < s(plan.length); t += day_piece) cuts_.push_back(t);
  }
  const double end = s(plan.length);
  cuts_.erase(std::remove_if(cuts_.begin(), cuts_.end(), [&](double t) { return t < 0.0 || t > end; }), cuts_.end());
  std::sort(cuts_.begin(), cuts_.end());
  cuts_.erase(std::unique(cuts_.begin(), cuts_.end(), [](double a, double b) { return b - a < same_moment; }), cuts_.end());
}

void Timeline::fill(Interval& interval, const BurnPlan& plan, const Design& design) const {
  const double t = interval.begin;
  for (const WoodLoad& l : plan.loads) {
    if (within(l, t)) interval.wanted_burn += in(l.wood / l.lasts, kilogram_per_second);
  }
  for (const SteadyFeed& f : plan.feeds) {
    if (s(f.from) <= t + same_moment && t + same_moment < s(f.until)) interval.wanted_burn += in(f.rate, kilogram_per_second);
  }
  for (const PrimingFire& p : plan.priming) {
    if (within(p, t)) interval.priming = in(p.starter * p.heating_value / p.lasts, watt);
  }
  interval.outdoor_begin = outdoor_at(interval.begin, plan, design);
  interval.outdoor_end = outdoor_at(interval.end, plan, design);
  const bool powered = std::none_of(plan.cuts.begin(), plan.cuts.end(), [&](const PowerCut& c) { return within(c, t); });
  interval.powered = powered;
  const HoodSwitch* hood = latest(plan.hoods, t, [](const HoodSwitch&) { return true; });
  const VolumeFlow exhaust = !powered ? VolumeFlow{} : hood != nullptr ? hood->exhaust : design.room.exhaust_flow;
  Pressure drawn = design.room.extra_depressurisation;
  if (exhaust > VolumeFlow{}) {
    drawn += exhaust_depressurisation(exhaust, design.room.house_volume, design.room.air_changes_at_50_pascal);
  }
  interval.depressurisation = in(drawn, pascal);
  for (const Piece& piece : design.pieces) {
    const auto of_piece = [&](const FanSwitch& f) { return f.fan == piece.id; };
    if (const FanSwitch* f = latest(plan.fans, t, of_piece)) {
      const bool over = f->runs_for && s(f->at + *f->runs_for) <= t + same_moment;
      const double speed = over ? 0.0 : f->speed.value();
      interval.fan_speeds.emplace_back(static_cast<std::size_t>(&piece - design.pieces.data()), speed);
    }
    const auto moved = [&](const PieceMove& m) { return m.piece == piece.id; };
    if (const PieceMove* m = latest(plan.moves, t, moved)) {
      interval.openings.emplace_back(static_cast<std::size_t>(&piece - design.pieces.data()), m->open.value());
    }
  }
}

std::pair<double, double> Timeline::outdoor_range() const {
  double low = intervals_.front().outdoor_begin;
  double high = low;
  for (const Interval& i : intervals_) {
    low = std::min({low, i.outdoor_begin, i.outdoor_end});
    high = std::max({high, i.outdoor_begin, i.outdoor_end});
  }
  return {low, high};
}

}  // namespace fluewright::kernel
