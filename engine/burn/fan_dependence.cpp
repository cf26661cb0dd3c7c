// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/fan_dependence.hpp"

#include "engine/burn/cut_watch.hpp"
#include "engine/burn/fan_fitting.hpp"
#include "engine/burn/timeline.hpp"

#include <algorithm>

namespace fluewright {
namespace {

constexpr Time longest_watch = 60.0 * minute;  // what has held so long without current holds (chosen)

struct Spell {
  double begin = 0.0;
  double end = 0.0;
};

/// A fan of the design: its piece, and how fast it runs until somebody switches it.
struct OwnFan {
  std::size_t piece = 0;
  double speed = 0.0;
};

std::vector<OwnFan> own_fans(const Design& design, const Library& library) {
  std::vector<OwnFan> found;
  for (const PieceId& id : fans_of(design, library)) {
    const Piece& piece = *design.piece(id);
    const PieceView view{design, library, piece, *library.piece_type(piece.type)};
    found.push_back({static_cast<std::size_t>(&piece - design.pieces.data()), view.ratio("speed")});
  }
  return found;
}

bool blows(const OwnFan& fan, const kernel::Interval& interval) {
  double speed = fan.speed;
  for (const auto& [piece, switched] : interval.fan_speeds) {
    if (piece == fan.piece) speed = switched;
  }
  return interval.powered && speed > 0.0;
}

/// The longest unbroken time in which a fan runs while something burns [s].
std::optional<Spell> longest_spell(const BurnPlan& plan, const Design& design, const Library& library) {
  const std::vector<OwnFan> fans = own_fans(design, library);
  if (fans.empty()) return std::nullopt;
  std::optional<Spell> longest;
  std::optional<Spell> now;
  const kernel::Timeline timeline(plan, design);
  for (const kernel::Interval& interval : timeline.intervals()) {
    const bool fan = std::any_of(fans.begin(), fans.end(), [&](const OwnFan& f) { return blows(f, interval); });
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

std::optional<PowerCutRun> cut(const Design& design, const Library& library, const BurnPlan& plan, const Watch& watch,
                               Pressure suction, const std::function<bool(Ratio)>& go_on) {
  Design house = design;
  house.room.exhaust_flow = {};
  house.room.extra_depressurisation = suction;
  BurnPlan dark = plan;
  dark.hoods.clear();
  dark.cuts = {{watch.cut_at, plan.length - watch.cut_at}};
  const PowerCutRules rules;
  PowerCutRun run;
  run.suction = suction;
  CutWatch looker{watch.cut_at, rules, run};
  bool wanted = true;
  BurnOptions options;
  options.keep_slices = false;
  options.watch = [&](const BurnRow& row) {
    looker.see(row);
    return row.at < watch.until;
  };
  options.go_on = [&](Ratio share) {
    wanted = !go_on || go_on(std::min(Ratio(1.0), Ratio(share * plan.length / watch.until)));
    return wanted;
  };
  const BurnRecord record = run_burn(house, library, dark, options);
  const bool seen = record.end == BurnEnd::done || record.end == BurnEnd::cancelled;
  if (!wanted || !seen) return std::nullopt;
  looker.conclude();
  return run;
}

}  // namespace

bool switches_fans(const BurnPlan& plan, const Design& design, const Library& library) {
  return check_plan(plan, design, library).empty() && longest_spell(plan, design, library).has_value();
}

std::optional<FanDependence> fan_dependence(const Design& design, const Library& library, const BurnPlan& plan,
                                            const BurnRecord& record, const std::function<bool(Ratio)>& go_on) {
  const auto spell = longest_spell(plan, design, library);
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
  const Pressure suction = std::max(PowerCutRules{}.suction, design.room.extra_depressurisation);
  const auto depressurised = cut(design, library, plan, watch, suction, half(0.5));
  if (!depressurised) return std::nullopt;
  found.cut = {*neutral, *depressurised};
  found.only_with_fan = !record.summary.holds_from && !found.holds();
  return found;
}

}  // namespace fluewright
