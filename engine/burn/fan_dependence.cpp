// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/fan_dependence.hpp"

#include "engine/burn/timeline.hpp"

#include <algorithm>

namespace fluewright {
namespace {

constexpr Pressure usual_suction = 5.0 * pascal;  // of a tight house with its exhausts on (chosen)
constexpr Time longest_watch = 60.0 * minute;     // what has held so long without current holds (chosen)
/// The oxygen limits the fire for so long before it counts as starving: a load's first seconds do not.
constexpr Time starving_counts = 1.0 * minute;

struct Spell {
  double begin = 0.0;
  double end = 0.0;
};

/// The longest unbroken time in which a fan runs while something burns [s].
std::optional<Spell> longest_spell(const BurnPlan& plan, const Design& design) {
  std::optional<Spell> longest;
  std::optional<Spell> now;
  const kernel::Timeline timeline(plan, design);
  for (const kernel::Interval& interval : timeline.intervals()) {
    const bool fan = std::any_of(interval.fan_speeds.begin(), interval.fan_speeds.end(), [](const auto& f) { return f.second > 0.0; });
    if (!fan || !(interval.wanted_burn > 0.0)) {
      now.reset();
      continue;
    }
    now = Spell{now ? now->begin : interval.begin, interval.end};
    if (!longest || now->end - now->begin > longest->end - longest->begin) longest = now;
  }
  return longest;
}

struct Watch {
  Time cut_at{};
  Time until{};
};

/// Reads what happened after the cut off the rows.
PowerCutOutcome outcome_of(const BurnRecord& record, const Watch& watch, Pressure suction) {
  PowerCutOutcome outcome;
  outcome.suction = suction;
  Mass smoke_before{};
  bool short_before = false;
  Time short_since{};
  for (const BurnRow& row : record.rows) {
    if (row.at <= watch.cut_at) smoke_before = row.smoke;
    if (row.at <= watch.cut_at || row.at > watch.until) continue;
    outcome.smoke = row.smoke - smoke_before;
    if (!(row.wanted > MassFlow{})) continue;
    const Time since = row.at - watch.cut_at;
    if (!row.forward && !outcome.reverses_after) outcome.reverses_after = since;
    if (row.short_of_air && !short_before) short_since = since;
    short_before = row.short_of_air;
    const bool starves = row.short_of_air && since - short_since >= starving_counts;
    if (starves && !outcome.starves_after) outcome.starves_after = short_since;
  }
  return outcome;
}

std::optional<PowerCutOutcome> cut(const Design& design, const Library& library, const BurnPlan& plan, const Watch& watch,
                                   Pressure suction, const std::function<bool(Ratio)>& go_on) {
  Design house = design;
  house.room.exhaust_flow = {};
  house.room.extra_depressurisation = suction;
  BurnPlan dark = plan;
  dark.hoods.clear();
  dark.cuts = {{watch.cut_at, plan.length - watch.cut_at}};
  bool wanted = true;
  BurnOptions options;
  options.cadence = 10.0 * second;
  options.keep_slices = false;
  options.go_on = [&](Ratio share) {
    wanted = !go_on || go_on(std::min(Ratio(1.0), Ratio(share * plan.length / watch.until)));
    return wanted && share * plan.length < watch.until;
  };
  const BurnRecord record = run_burn(house, library, dark, options);
  const bool to_the_end = record.end == BurnEnd::done || record.end == BurnEnd::cancelled;
  if (!wanted || !to_the_end) return std::nullopt;
  return outcome_of(record, watch, suction);
}

}  // namespace

bool switches_fans(const BurnPlan& plan, const Design& design, const Library& library) {
  if (plan.fans.empty() || !check_plan(plan, design, library).empty()) return false;
  return longest_spell(plan, design).has_value();
}

std::optional<FanDependence> fan_dependence(const Design& design, const Library& library, const BurnPlan& plan,
                                            const BurnRecord& record, const std::function<bool(Ratio)>& go_on) {
  const auto spell = longest_spell(plan, design);
  if (!spell || record.end != BurnEnd::done) return std::nullopt;
  FanDependence found;
  found.cut_at = 0.5 * (spell->begin + spell->end) * second;
  const Watch watch{found.cut_at, std::min(Time(found.cut_at + longest_watch), plan.length)};
  found.watched = watch.until - watch.cut_at;
  const auto half = [&](double from) -> std::function<bool(Ratio)> {
    if (!go_on) return {};
    return [from, go_on](Ratio share) { return go_on(Ratio(from + 0.5 * share.value())); };
  };
  const auto neutral = cut(design, library, plan, watch, Pressure{}, half(0.0));
  if (!neutral) return std::nullopt;
  const Pressure suction = std::max(usual_suction, design.room.extra_depressurisation);
  const auto depressurised = cut(design, library, plan, watch, suction, half(0.5));
  if (!depressurised) return std::nullopt;
  found.neutral = *neutral;
  found.depressurised = *depressurised;
  found.only_with_fan = !record.summary.holds_from && !(found.neutral.holds() && found.depressurised.holds());
  return found;
}

}  // namespace fluewright
