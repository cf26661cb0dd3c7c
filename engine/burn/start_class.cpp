// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/start_class.hpp"

#include "engine/burn/burning_flue.hpp"
#include "engine/layout/path.hpp"

#include <algorithm>

namespace fluewright {
namespace {

struct Step {
  StartClass leads_to;
  StartAid aid;
  const Design* design;
};

std::vector<Step> steps_of(const StartQuestion& q, const Design& plain, const Design& fitted) {
  std::vector<Step> steps;
  StartAid aid;
  aid.kind = StartAidKind::none;
  steps.push_back({StartClass::by_itself, aid, &plain});
  aid.kind = StartAidKind::kindling;
  steps.push_back({StartClass::with_kindling, aid, &plain});
  if (q.can_prime) {
    aid.kind = StartAidKind::priming;
    aid.lasts = q.allowance.priming_lasts;
    aid.starter = q.allowance.priming_starter;
    steps.push_back({StartClass::with_priming, aid, &plain});
  }
  if (q.fan) {
    aid = {};
    aid.kind = StartAidKind::fan;
    aid.lasts = q.allowance.fan_lasts;
    aid.piece = q.fan->fan;
    steps.push_back({StartClass::with_fan, aid, &fitted});
  }
  return steps;
}

Design on_day(Design design, Temperature outdoors, Temperature room) {
  design.site.outdoor_temperature = outdoors;
  design.room.temperature = room;
  return design;
}

}  // namespace

bool can_be_primed(const Design& design, const Library& library) {
  // Asked of a run too short for anything else: it names a missing tee before it begins.
  BurnPlan plan;
  plan.length = 1.0 * second;
  PrimingFire priming;
  priming.lasts = plan.length;
  priming.starter = 1.0 * gram;
  plan.priming.push_back(priming);
  BurnOptions options;
  options.grid = BurnGrid::coarse();
  options.keep_slices = false;
  return run_burn(design, library, plan, options).end == BurnEnd::done;
}

std::optional<PieceId> primed_at(const Design& design, const Library& library) {
  const auto tee = kernel::priming_tee(design, library, trace_path(design, library), {});
  if (!tee) return std::nullopt;
  return design.pieces[tee->piece].id;
}

std::optional<StartQuestion> ask_for_start(const Design& design, const Library& library, const StartRules& rules) {
  const TracedPath traced = trace_path(design, library);
  if (!traced.complete) return std::nullopt;
  StartQuestion question;
  question.design = design;
  question.library = &library;
  question.rules = rules;
  const std::vector<PieceId> own = fans_of(design, library);
  if (own.empty()) {
    question.fan = fit_fan(design, library, "fan_side", FanSeat::stack_foot);
  } else {
    question.fan = FanFitted{design, own.front(), true};
  }
  question.can_prime = can_be_primed(design, library);
  return question;
}

StartAnswer classify_start(const StartQuestion& question, Temperature outdoors, Temperature room,
                           const std::function<bool()>& go_on) {
  StartAnswer answer;
  const Design plain = on_day(question.design, outdoors, room);
  const Design fitted = question.fan ? on_day(question.fan->design, outdoors, room) : plain;
  for (const Step& step : steps_of(question, plain, fitted)) {
    const StartTrial trial = try_start(*step.design, *question.library, step.aid, question.rules, go_on);
    answer.trials.push_back(trial);
    if (trial.cancelled) {
      answer.cancelled = true;
      return answer;
    }
    if (trial.fault == StartFault::not_computed) answer.certain = false;
    if (trial.holds) {
      answer.start = step.leads_to;
      return answer;
    }
    if (step.aid.kind == StartAidKind::fan) answer.draws_with_fan = trial.forward_at_aid_end;
  }
  answer.start = StartClass::only_with_fan;
  return answer;
}

}  // namespace fluewright
