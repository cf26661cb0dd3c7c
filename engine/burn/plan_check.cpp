// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/burn_plan.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace fluewright {
namespace {

/// No weather on record is outside these.
constexpr Temperature coldest = celsius(-70.0);
constexpr Temperature warmest = celsius(60.0);
constexpr Time longest_run = 1000.0 * 24.0 * hour;
constexpr Ratio fastest = 3.0;  // of a fan, over its curve's own speed

class Check {
 public:
  Check(const BurnPlan& plan, const Design& design, const Library& library)
      : plan_{&plan}, design_{&design}, library_{&library} {}

  std::vector<PlanFault> faults;

  void all() {
    at_ = {PlanList::plan, 0};
    if (positive("length", plan_->length) && plan_->length > longest_run) {
      add(PlanFaultCode::too_much, "length", plan_->length, Time{}, longest_run, true);
    }
    not_negative("begins_at", plan_->begins_at);
    spans(PlanList::loads, plan_->loads, [&](const WoodLoad& l) {
      positive("wood", l.wood);
      return std::pair{l.at, l.lasts};
    });
    for_each(PlanList::feeds, plan_->feeds, [&](const SteadyFeed& f) {
      positive("rate", f.rate);
      if (begins("from", f.from) && !(f.until > f.from)) add(PlanFaultCode::nothing, "until", f.until, f.from, plan_->length, true);
      if (f.until > plan_->length) add(PlanFaultCode::beyond_the_run, "until", f.until, f.from, plan_->length, true);
    });
    follow(PlanList::feeds, plan_->feeds, "from", [](const SteadyFeed& f) { return std::pair{f.from, f.until}; });
    spans(PlanList::priming, plan_->priming, [&](const PrimingFire& p) {
      positive("starter", p.starter);
      positive("heating_value", p.heating_value);
      if (!p.tee.empty()) piece("tee", p.tee, {"tee"});
      return std::pair{p.at, p.lasts};
    });
    switches(PlanList::moves, plan_->moves, [&](const PieceMove& m) {
      share("open", m.open, 1.0);
      piece("piece", m.piece, {"damper"});
    });
    switches(PlanList::fans, plan_->fans, [&](const FanSwitch& f) {
      share("speed", f.speed, fastest);
      if (f.runs_for) positive("runs_for", *f.runs_for);
      piece("fan", f.fan, {"fan", "fan_head"});
    });
    switches(PlanList::hoods, plan_->hoods, [&](const HoodSwitch& h) { not_negative("exhaust", h.exhaust); });
    spans(PlanList::cuts, plan_->cuts, [](const PowerCut& c) { return std::pair{c.at, c.lasts}; });
    outdoors();
  }

 private:
  void add(PlanFaultCode code, std::string field, PlanValue value, PlanValue lowest = {}, PlanValue highest = {},
           bool above = false) {
    faults.push_back({code, at_.first, at_.second, std::move(field), std::move(value), std::move(lowest), std::move(highest), above});
  }
  template <class Quantity>
  bool not_negative(const char* field, Quantity value, bool above = false) {
    if (std::isnan(value.value())) return add(PlanFaultCode::nothing, field, value, Quantity{}, {}, above), false;
    if (value < Quantity{}) return add(PlanFaultCode::negative, field, value, Quantity{}, {}, above), false;
    return true;
  }
  template <class Quantity>
  bool positive(const char* field, Quantity value) {
    if (!not_negative(field, value, true)) return false;
    if (!(value > Quantity{})) return add(PlanFaultCode::nothing, field, value, Quantity{}, {}, true), false;
    return true;
  }
  void share(const char* field, Ratio value, Ratio most) {
    if (not_negative(field, value) && value > most) add(PlanFaultCode::too_much, field, value, Ratio(0.0), most);
  }
  bool begins(const char* field, Time at) {
    if (!not_negative(field, at)) return false;
    if (!(at < plan_->length)) return add(PlanFaultCode::beyond_the_run, field, at, Time{}, plan_->length), false;
    return true;
  }
  void piece(const char* field, const PieceId& id, std::initializer_list<std::string_view> shapes) {
    const Piece* found = design_->piece(id);
    if (found == nullptr) return add(PlanFaultCode::unknown_piece, field, id);
    const PieceType* type = library_->piece_type(found->type);
    if (type == nullptr || std::find(shapes.begin(), shapes.end(), type->shape) == shapes.end()) {
      add(PlanFaultCode::wrong_piece, field, id);
    }
  }
  void temperature(const char* field, Temperature t) {
    if (!(t > coldest && t < warmest)) add(PlanFaultCode::too_much, field, t, coldest, warmest);
  }

  template <class Entry, class Each>
  void for_each(PlanList list, const std::vector<Entry>& entries, Each each) {
    for (std::size_t i = 0; i < entries.size(); ++i) {
      at_ = {list, i};
      each(entries[i]);
    }
  }
  /// One after the other, none before the one before it has ended.
  template <class Entry, class Span>
  void follow(PlanList list, const std::vector<Entry>& entries, const char* field, Span span) {
    for (std::size_t i = 1; i < entries.size(); ++i) {
      at_ = {list, i};
      const auto [before, ended] = span(entries[i - 1]);
      const Time begun = span(entries[i]).first;
      if (begun < before) {
        add(PlanFaultCode::out_of_order, field, begun, before);
      } else if (begun < ended - 1e-6 * second) {
        add(PlanFaultCode::overlapping, field, begun, ended);
      }
    }
  }
  template <class Entry, class Each>
  void spans(PlanList list, const std::vector<Entry>& entries, Each each) {
    for_each(list, entries, [&](const Entry& e) {
      const auto [at, lasts] = each(e);
      const bool fits = begins("at", at);
      if (positive("lasts", lasts) && fits && at + lasts > plan_->length + 1e-6 * second) {
        add(PlanFaultCode::beyond_the_run, "lasts", lasts, Time{}, Time(plan_->length - at), true);
      }
    });
    follow(list, entries, "at", [](const Entry& e) { return std::pair{e.at, Time(e.at + e.lasts)}; });
  }
  template <class Entry, class Each>
  void switches(PlanList list, const std::vector<Entry>& entries, Each each) {
    for_each(list, entries, [&](const Entry& e) {
      begins("at", e.at);
      each(e);
    });
    follow(list, entries, "at", [](const Entry& e) { return std::pair{e.at, e.at}; });
  }

  void outdoors() {
    at_ = {PlanList::outdoors, 0};
    if (const auto* constant = std::get_if<Temperature>(&plan_->outdoors)) temperature("constant", *constant);
    if (const auto* day = std::get_if<OutdoorDay>(&plan_->outdoors)) {
      if (!(day->swing >= 0.0 * kelvin)) add(PlanFaultCode::negative, "swing", std::monostate{});
      temperature("mean", day->mean + day->swing);
      temperature("mean", day->mean - day->swing);
      not_negative("warmest_at", day->warmest_at);
    }
    const auto* course = std::get_if<std::vector<OutdoorPoint>>(&plan_->outdoors);
    if (course == nullptr) return;
    if (course->empty()) return add(PlanFaultCode::nothing, "series", std::monostate{});
    for_each(PlanList::outdoors, *course, [&](const OutdoorPoint& p) { temperature("temperature", p.temperature); });
    for (std::size_t i = 1; i < course->size(); ++i) {
      at_ = {PlanList::outdoors, i};
      if (!((*course)[i].at > (*course)[i - 1].at)) add(PlanFaultCode::out_of_order, "at", (*course)[i].at, (*course)[i - 1].at, {}, true);
    }
    at_ = {PlanList::outdoors, 0};
    if (course->front().at > 1e-6 * second) add(PlanFaultCode::too_short, "at", course->front().at, {}, Time{});
    at_ = {PlanList::outdoors, course->size() - 1};
    if (course->back().at < plan_->length - 1e-6 * second) add(PlanFaultCode::too_short, "at", course->back().at, plan_->length);
  }

  const BurnPlan* plan_;
  const Design* design_;
  const Library* library_;
  std::pair<PlanList, std::size_t> at_{};
};

}  // namespace

const Starter* starter(std::string_view id) {
  const auto it = std::find_if(starters.begin(), starters.end(), [&](const Starter& s) { return s.id == id; });
  return it == starters.end() ? nullptr : &*it;
}

std::vector<PlanFault> check_plan(const BurnPlan& plan, const Design& design, const Library& library) {
  Check check{plan, design, library};
  check.all();
  return check.faults;
}

}  // namespace fluewright
