// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/aids.hpp"

#include "engine/burn/fan_watch.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>

namespace fluewright {
namespace {

constexpr std::array fan_minutes{1.0, 2.0, 3.0, 5.0, 8.0, 10.0, 15.0, 20.0};
constexpr std::array bypass_minutes{5.0, 10.0, 20.0};
constexpr std::array priming_minutes{3.0, 6.0, 10.0};
constexpr std::array priming_grams{100.0, 200.0, 400.0, 800.0};
constexpr std::array inducer_speeds{1.0 / 3.0, 2.0 / 3.0, 1.0};
constexpr Time ten_years = 10.0 * 365.25 * 24.0 * hour;

struct FanKind {
  AidKind kind;
  std::string_view type;
  FanSeat seat;
  AidPrice AidFigures::* price;
};
constexpr std::array fan_kinds{FanKind{AidKind::duct_fan_at_foot, "fan_inline", FanSeat::stack_foot, &AidFigures::duct_fan},
                               FanKind{AidKind::duct_fan_under_cap, "fan_inline", FanSeat::under_cap, &AidFigures::duct_fan},
                               FanKind{AidKind::fan_on_top, "fan_top", FanSeat::on_top, &AidFigures::top_fan},
                               FanKind{AidKind::side_inducer, "fan_side", FanSeat::stack_foot, &AidFigures::side_inducer}};

/// The amounts of an aid, least first.
std::vector<StartAid> amounts(const StartAid& aid) {
  std::vector<StartAid> all;
  const auto add = [&](double minutes, double grams) {
    all.push_back(aid);
    all.back().lasts = minutes * minute;
    all.back().starter = grams * gram;
  };
  switch (aid.kind) {
    case StartAidKind::none:
    case StartAidKind::kindling: add(0.0, 0.0); break;
    case StartAidKind::priming:
      for (const double grams : priming_grams) {
        for (const double minutes : priming_minutes) add(minutes, grams);
      }
      break;
    case StartAidKind::bypass:
      for (const double minutes : bypass_minutes) add(minutes, 0.0);
      break;
    case StartAidKind::fan:
      for (const double minutes : fan_minutes) add(minutes, 0.0);
      break;
  }
  return all;
}

/// The least amount that holds.
void search(AidRow& row, const AidsQuestion& q, const Design& design, const StartAid& aid, const std::function<bool()>& go_on) {
  const LeastAmount least = least_amount(design, *q.library, aid, q.rules, go_on);
  row.trial = least.trial;
  row.trials += least.trials;
  row.starts = row.trial.holds;
  row.cancelled = row.trial.cancelled;
  if (!row.starts) return;
  const Time helped = aid.kind == StartAidKind::none || aid.kind == StartAidKind::kindling ? Time{} : row.trial.aid.lasts;
  row.self_sustaining = row.trial.draws_from ? std::max(helped, *row.trial.draws_from) : helped;
}

void set_cost(AidRow& row, const AidsQuestion& q, const AidPrice* device, Power electric) {
  if (device != nullptr && !row.own) row.price = device->price;
  // What is there already is not bought, but it wears out all the same.
  const double bought = device == nullptr ? 0.0
                        : device->life > Time{} ? std::ceil(ten_years / device->life) - (row.own ? 1.0 : 0.0)
                                                : (row.own ? 0.0 : 1.0);
  const Ratio starts = 10.0 * q.figures.starts_per_year;
  const Time on = row.starts ? row.trial.aid.lasts : q.figures.burns_per_start;
  constexpr Energy kilowatt_hour = 3.6e6 * joule;
  const Ratio each = Ratio(electric * on / kilowatt_hour) * q.figures.price_per_kilowatt_hour +
                     Ratio(row.trial.aid.starter / kilogram) * q.figures.price_per_kilogram_of_starter;
  row.ten_years = (device != nullptr ? Ratio(bought * device->price) : Ratio(0.0)) + starts * each;
}

AidReason failed_by(const AidRow& row) {
  switch (row.trial.fault) {
    case StartFault::none:
    case StartFault::ran_backward: return AidReason::runs_backward;
    case StartFault::smoke: return AidReason::smokes;
    case StartFault::starved: return AidReason::starves;
    case StartFault::not_computed: break;
  }
  return AidReason::cannot_be_tried;
}

AidReason reason_of(const AidRow& row) {
  if (row.state != AidState::computed) return AidReason::cannot_be_tried;
  if (!row.starts) {
    const bool runs_with_fan = row.power_cut && row.power_cut->neutral.drew_before;
    return runs_with_fan ? AidReason::only_while_it_runs : failed_by(row);
  }
  if (row.left_on && row.left_on->too_hot()) return AidReason::motor_too_hot;
  if (row.left_on && row.left_on->wet > Time{}) return AidReason::motor_wet;
  if (row.task.kind == AidKind::none) return AidReason::no_help_needed;
  return row.task.kind == AidKind::kindling ? AidReason::small_fire_is_enough : AidReason::holds_after;
}

void compute_fan(AidRow& row, const AidsQuestion& q, const FanKind& kind, const std::function<bool()>& go_on) {
  const auto fitted = fit_fan(q.design, *q.library, kind.type, kind.seat);
  const auto sheet = fitted ? sheet_of(fitted->design, *q.library, fitted->fan) : std::nullopt;
  if (!sheet) {
    row.state = AidState::no_place;
    return;
  }
  row.own = fitted->own;
  StartAid aid;
  aid.kind = StartAidKind::fan;
  aid.piece = fitted->fan;
  aid.speed = row.task.speed;
  search(row, q, fitted->design, aid, go_on);
  if (row.cancelled) return;
  row.left_on = watch_fan_left_on(fitted->design, *q.library, row.trial.aid, q.rules, go_on);
  if (row.left_on && row.starts) row.fire_lost = row.trial.last_fire - row.left_on->last_fire;
  PowerCutRules cut;
  cut.kindling_share = q.rules.kindling_share;
  cut.kindling_lasts = q.rules.kindling_lasts;
  cut.fan_before_match = q.rules.fan_before_match;
  cut.puff = q.rules.puff;
  cut.grid = q.rules.grid;
  row.power_cut = run_power_cut(fitted->design, *q.library, fitted->fan, aid.speed, cut, go_on);
  row.cancelled = go_on && !go_on();
  const double speed = aid.speed.value();
  set_cost(row, q, &(q.figures.*kind.price), speed * speed * speed * sheet->power);
}

/// The design's bypass, if one is drawn.
const Piece* bypass_of(const Design& design) {
  const auto found = std::find_if(design.pieces.begin(), design.pieces.end(),
                                  [](const Piece& piece) { return piece.type == "bypass_link"; });
  return found == design.pieces.end() ? nullptr : &*found;
}

void compute_plain(AidRow& row, const AidsQuestion& q, const std::function<bool()>& go_on) {
  StartAid aid;
  const AidPrice* device = nullptr;
  switch (row.task.kind) {
    case AidKind::none: aid.kind = StartAidKind::none; break;
    case AidKind::priming:
      if (!can_be_primed(q.design, *q.library)) {
        row.state = AidState::no_place;
        return;
      }
      aid.kind = StartAidKind::priming;
      break;
    case AidKind::bypass: {
      const Piece* bypass = bypass_of(q.design);
      if (bypass == nullptr) {
        row.state = AidState::not_drawn;
        return;
      }
      aid.kind = StartAidKind::bypass;
      aid.piece = bypass->id;
      row.own = true;
      device = &q.figures.bypass;
      break;
    }
    default: aid.kind = StartAidKind::kindling; break;
  }
  search(row, q, q.design, aid, go_on);
  set_cost(row, q, device, Power{});
}

/// How good the state of affairs is, before smoke and money count.
int tier(const AidRow& row) {
  switch (row.reason) {
    case AidReason::no_help_needed:
    case AidReason::small_fire_is_enough:
    case AidReason::holds_after: return 0;
    case AidReason::motor_wet: return 1;
    case AidReason::motor_too_hot: return 2;
    case AidReason::only_while_it_runs: return 3;
    case AidReason::runs_backward:
    case AidReason::smokes:
    case AidReason::starves: return 4;
    case AidReason::cannot_be_tried: break;
  }
  return 5;
}

}  // namespace

std::vector<AidTask> aid_tasks() {
  std::vector<AidTask> tasks{{AidKind::none},           {AidKind::kindling},           {AidKind::priming},   {AidKind::bypass},
                             {AidKind::duct_fan_at_foot}, {AidKind::duct_fan_under_cap}, {AidKind::fan_on_top}};
  for (const double speed : inducer_speeds) tasks.push_back({AidKind::side_inducer, speed});
  return tasks;
}

LeastAmount least_amount(const Design& design, const Library& library, const StartAid& aid, const StartRules& rules,
                         const std::function<bool()>& go_on) {
  LeastAmount least;
  for (const StartAid& amount : amounts(aid)) {
    least.trial = try_start(design, library, amount, rules, go_on);
    ++least.trials;
    if (least.trial.holds || least.trial.cancelled) break;
  }
  return least;
}

AidRow compute_aid(const AidsQuestion& question, const AidTask& task, const std::function<bool()>& go_on) {
  AidRow row;
  row.task = task;
  const auto fan = std::find_if(fan_kinds.begin(), fan_kinds.end(), [&](const FanKind& k) { return k.kind == task.kind; });
  if (fan != fan_kinds.end()) {
    compute_fan(row, question, *fan, go_on);
  } else {
    compute_plain(row, question, go_on);
  }
  row.reason = reason_of(row);
  return row;
}

void rank_aids(std::vector<AidRow>& rows) {
  const auto key = [](const AidRow& row) {
    // Smoke in steps of a gram: less than that decides nothing.
    return std::tuple{tier(row), std::floor(in(row.trial.smoke, gram)), row.ten_years.value(),
                      row.self_sustaining ? in(*row.self_sustaining, second) : 0.0};
  };
  std::stable_sort(rows.begin(), rows.end(), [&](const AidRow& a, const AidRow& b) { return key(a) < key(b); });
}

}  // namespace fluewright
