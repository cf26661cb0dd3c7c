// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/start_trial.hpp"

#include "engine/burn/fan_fitting.hpp"

#include <algorithm>

namespace fluewright {
namespace {

/// The wood that is put in up to a moment.
Mass put_in(const BurnPlan& plan, Time until) {
  Mass sum{};
  for (const SteadyFeed& feed : plan.feeds) {
    if (until > feed.from) sum += feed.rate * (std::min(until, feed.until) - feed.from);
  }
  return sum;
}

Time last_help(const BurnPlan& plan, const StartAid& aid, const StartRules& rules) {
  if (aid.kind == StartAidKind::none) return {};
  const Time kindling_ends = plan.feeds.front().from + rules.kindling_lasts;
  return aid.kind == StartAidKind::kindling || aid.kind == StartAidKind::priming ? kindling_ends
                                                                                  : std::max(kindling_ends, aid.lasts);
}

/// Looks on and decides.
class TrialWatch {
 public:
  TrialWatch(const BurnPlan& plan, const StartRules& rules, StartTrial& trial) : plan_{&plan}, rules_{&rules}, trial_{&trial} {
    trial.wanted = put_in(plan, plan.length);
  }

  bool see(const BurnRow& row) {
    StartTrial& t = *trial_;
    const bool starves = row.wanted > MassFlow{} && row.excess_air_ratio < rules_->starved_under;
    if (starves) t.starving += row.burnt - t.burnt;
    t.decided_at = row.at;
    t.smoke = row.smoke;
    t.burnt = row.burnt;
    t.last_fire = row.fire;
    if (!row.forward) {
      t.draws_from.reset();
    } else if (!t.draws_from) {
      t.draws_from = row.at;
    }
    if (row.at <= t.aid_ends) t.forward_at_aid_end = row.forward;
    t.fault = fault_of(row);
    return t.fault == StartFault::none;
  }

 private:
  [[nodiscard]] StartFault fault_of(const BurnRow& row) const {
    if (row.at > trial_->aid_ends && row.wanted > MassFlow{} && !row.forward) return StartFault::ran_backward;
    if (row.smoke > rules_->puff) return StartFault::smoke;
    const Mass missed = put_in(*plan_, row.at) - row.burnt + trial_->starving;
    if (missed > (1.0 - rules_->least_burnt) * trial_->wanted) return StartFault::starved;
    return StartFault::none;
  }

  const BurnPlan* plan_;
  const StartRules* rules_;
  StartTrial* trial_;
};

}  // namespace

BurnPlan start_plan(const Design& design, const Library& library, const StartAid& aid, const StartRules& rules) {
  BurnPlan plan;
  const MassFlow full = design.fire.burn_rate;
  Time lit{};
  if (aid.kind == StartAidKind::priming) {
    PrimingFire priming;
    priming.lasts = aid.lasts;
    priming.starter = aid.starter;
    priming.heating_value = aid.heating_value;
    plan.priming.push_back(priming);
    lit = aid.lasts;
  }
  if (aid.kind == StartAidKind::none) lit = rules.open_before_match;
  if (aid.kind == StartAidKind::fan) lit = rules.fan_before_match;
  Time burns_from = lit;
  if (aid.kind != StartAidKind::none) {
    burns_from = lit + rules.kindling_lasts;
    plan.feeds.push_back({lit, burns_from, rules.kindling_share * full});
  }
  // The list is not empty from here on: what follows may ask its front.
  plan.feeds.push_back({burns_from, burns_from + rules.holds_for, full});
  const Time ends = last_help(plan, aid, rules) + rules.holds_for;
  plan.feeds.back().until = std::max(ends, burns_from + rules.holds_for);
  plan.length = plan.feeds.back().until;
  for (const PieceId& fan : fans_of(design, library)) {
    if (aid.kind != StartAidKind::fan || fan != aid.piece) plan.fans.push_back({{}, fan, 0.0, {}});
  }
  if (aid.kind == StartAidKind::fan) plan.fans.push_back({{}, aid.piece, aid.speed, aid.lasts});
  if (aid.kind == StartAidKind::bypass) {
    plan.moves.push_back({{}, aid.piece, 1.0});
    plan.moves.push_back({aid.lasts, aid.piece, 0.0});
  }
  return plan;
}

StartTrial try_start(const Design& design, const Library& library, const StartAid& aid, const StartRules& rules,
                     const std::function<bool()>& go_on) {
  StartTrial trial;
  trial.aid = aid;
  const BurnPlan plan = start_plan(design, library, aid, rules);
  trial.aid_ends = last_help(plan, aid, rules);
  TrialWatch watch{plan, rules, trial};
  BurnOptions options;
  options.grid = rules.grid;
  options.accuracy = rules.accuracy;
  options.keep_slices = false;
  options.watch = [&watch](const BurnRow& row) { return watch.see(row); };
  if (go_on) options.go_on = [&go_on](Ratio) { return go_on(); };
  const BurnRecord record = run_burn(design, library, plan, options);
  trial.cancelled = record.end == BurnEnd::cancelled && trial.fault == StartFault::none;
  if (record.end != BurnEnd::done && record.end != BurnEnd::cancelled) trial.fault = StartFault::not_computed;
  trial.holds = record.end == BurnEnd::done && trial.fault == StartFault::none;
  return trial;
}

}  // namespace fluewright
