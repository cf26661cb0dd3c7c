// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/power_cut.hpp"

#include "engine/burn/cut_watch.hpp"
#include "engine/burn/fan_fitting.hpp"

#include <algorithm>

namespace fluewright {
namespace {

/// A fan and how fast it runs.
struct Running {
  PieceId fan;
  Ratio speed;
};

BurnPlan plan_of(const Design& design, const std::vector<Running>& fans, const PowerCutRules& rules) {
  BurnPlan plan;
  const Time full_from = rules.fan_before_match + rules.kindling_lasts;
  plan.length = rules.cut_after + rules.load_lasts;
  plan.feeds.push_back({rules.fan_before_match, full_from, rules.kindling_share * design.fire.burn_rate});
  plan.feeds.push_back({full_from, plan.length, design.fire.burn_rate});
  for (const Running& r : fans) plan.fans.push_back({{}, r.fan, r.speed, {}});
  plan.cuts.push_back({rules.cut_after, rules.load_lasts});
  return plan;
}

std::optional<PowerCutRun> run_in_house(Design design, const Library& library, const std::vector<Running>& fans,
                                        Pressure suction, const PowerCutRules& rules, const std::function<bool()>& go_on) {
  design.room.exhaust_flow = VolumeFlow{};
  design.room.extra_depressurisation = suction;
  PowerCutRun run;
  run.suction = suction;
  CutWatch watch{rules.cut_after, rules, run};
  BurnOptions options;
  options.grid = rules.grid;
  options.accuracy = rules.accuracy;
  options.keep_slices = false;
  options.watch = [&watch](const BurnRow& row) {
    watch.see(row);
    return true;
  };
  if (go_on) options.go_on = [&go_on](Ratio) { return go_on(); };
  const BurnRecord record = run_burn(design, library, plan_of(design, fans, rules), options);
  if (record.end != BurnEnd::done) return std::nullopt;
  watch.conclude();
  return run;
}

std::optional<PowerCutAnswer> in_both(const Design& design, const Library& library, const std::vector<Running>& fans,
                                      const PowerCutRules& rules, const std::function<bool()>& go_on) {
  const auto neutral = run_in_house(design, library, fans, Pressure{}, rules, go_on);
  if (!neutral) return std::nullopt;
  const Pressure suction = std::max(rules.suction, design.room.extra_depressurisation);
  const auto drawn = run_in_house(design, library, fans, suction, rules, go_on);
  if (!drawn) return std::nullopt;
  return PowerCutAnswer{*neutral, *drawn};
}

}  // namespace

std::optional<PowerCutAnswer> run_power_cut(const Design& design, const Library& library, const PieceId& fan, Ratio speed,
                                            const PowerCutRules& rules, const std::function<bool()>& go_on) {
  std::vector<Running> fans;
  for (const PieceId& id : fans_of(design, library)) fans.push_back({id, id == fan ? speed : Ratio(0.0)});
  return in_both(design, library, fans, rules, go_on);
}

std::optional<PowerCutAnswer> run_power_cut(const Design& design, const Library& library, const PowerCutRules& rules,
                                            const std::function<bool()>& go_on) {
  std::vector<Running> fans;
  bool runs = false;
  for (const PieceId& id : fans_of(design, library)) {
    const Piece& piece = *design.piece(id);
    const PieceView view{design, library, piece, *library.piece_type(piece.type)};
    fans.push_back({id, view.ratio("speed")});
    runs = runs || fans.back().speed > Ratio(0.0);
  }
  if (!runs) return std::nullopt;
  return in_both(design, library, fans, rules, go_on);
}

}  // namespace fluewright
