// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/plan_events.hpp"

#include "app/shared/said.hpp"

#include <algorithm>
#include <type_traits>
#include <utility>

namespace fluewright {

namespace {

/// More points than this are read as a curve, not moved one by one.
constexpr std::size_t most_points = 40;

// What a new entry is where the plan has none of its kind to follow (common practice, no source).
constexpr Time usual_load = 45.0 * minute;
constexpr Time usual_priming = 6.0 * minute;
constexpr Mass usual_starter = 400.0 * gram;
constexpr Time usual_fan = 8.0 * minute;
constexpr Time usual_hood = 30.0 * minute;
constexpr Time usual_cut = 30.0 * minute;
const VolumeFlow usual_exhaust = 250.0 * cubic_metre / hour;

template <class Entry>
Time& begin_of(Entry& entry) {
  return entry.at;
}
Time& begin_of(SteadyFeed& feed) { return feed.from; }

std::vector<OutdoorPoint>* points_of(BurnPlan& plan) { return std::get_if<std::vector<OutdoorPoint>>(&plan.outdoors); }

/// Calls `use` with the list an entry is in, if it is there.
template <class Use>
bool with_list(BurnPlan& plan, const PlanRef& ref, Use use) {
  const auto try_list = [&](auto& list) {
    if (ref.index >= list.size()) return false;
    use(list);
    return true;
  };
  switch (ref.list) {
    case PlanList::plan: return false;
    case PlanList::loads: return try_list(plan.loads);
    case PlanList::feeds: return try_list(plan.feeds);
    case PlanList::priming: return try_list(plan.priming);
    case PlanList::moves: return try_list(plan.moves);
    case PlanList::fans: return try_list(plan.fans);
    case PlanList::hoods: return try_list(plan.hoods);
    case PlanList::cuts: return try_list(plan.cuts);
    case PlanList::outdoors: {
      auto* points = points_of(plan);
      return points != nullptr && try_list(*points);
    }
  }
  return false;
}

/// Puts the entry where its beginning belongs; its new index.
template <class Entry>
std::size_t settle(std::vector<Entry>& list, std::size_t index) {
  Entry entry = list[index];
  list.erase(list.begin() + static_cast<std::ptrdiff_t>(index));
  const auto place = std::upper_bound(list.begin(), list.end(), begin_of(entry),
                                      [](Time at, Entry& other) { return at < begin_of(other); });
  const auto put = list.insert(place, std::move(entry));
  return static_cast<std::size_t>(put - list.begin());
}

template <class Entry>
PlanEdit insert(BurnPlan& plan, PlanList list, std::vector<Entry>& into, Entry entry) {
  into.push_back(std::move(entry));
  PlanRef ref{list, into.size() - 1};
  ref.index = settle(into, ref.index);
  return {std::move(plan), ref, {}};
}

Time end_of_fan(const BurnPlan& plan, std::size_t index) {
  const FanSwitch& fan = plan.fans[index];
  if (!(fan.speed > Ratio(0.0))) return fan.at;
  Time end = fan.runs_for ? std::min(Time(fan.at + *fan.runs_for), plan.length) : plan.length;
  for (std::size_t i = index + 1; i < plan.fans.size(); ++i) {
    if (plan.fans[i].fan == fan.fan) return std::min(end, plan.fans[i].at);
  }
  return end;
}

Time end_of_move(const BurnPlan& plan, std::size_t index) {
  for (std::size_t i = index + 1; i < plan.moves.size(); ++i) {
    if (plan.moves[i].piece == plan.moves[index].piece) return plan.moves[i].at;
  }
  return plan.length;
}

Time end_of_hood(const BurnPlan& plan, std::size_t index) {
  if (!(plan.hoods[index].exhaust > VolumeFlow{})) return plan.hoods[index].at;
  return index + 1 < plan.hoods.size() ? plan.hoods[index + 1].at : plan.length;
}

template <class Entry, class End>
void list_events(std::vector<PlanEvent>& events, PlanList list, const std::vector<Entry>& entries, bool resizable, End end) {
  for (std::size_t i = 0; i < entries.size(); ++i) {
    Entry entry = entries[i];
    const Time begin = begin_of(entry);
    events.push_back({{list, i}, lane_of(list), begin, end(i), resizable});
  }
}

BurnPlan with_hood_until(BurnPlan plan, std::size_t index, Time end) {
  const bool off_follows = index + 1 < plan.hoods.size() && !(plan.hoods[index + 1].exhaust > VolumeFlow{});
  if (off_follows) {
    plan.hoods[index + 1].at = end;
  } else {
    plan.hoods.insert(plan.hoods.begin() + static_cast<std::ptrdiff_t>(index) + 1, {end, VolumeFlow{}});
  }
  return plan;
}

}  // namespace

std::string_view lane_name(Lane lane) {
  switch (lane) {
    case Lane::wood: return said("Wood");
    case Lane::dampers: return said("Bypass, dampers");
    case Lane::priming: return said("Priming");
    case Lane::fans: return said("Fan");
    case Lane::hood: return said("Range hood");
    case Lane::power: return said("Power cut");
    case Lane::outdoors: return said("Outdoors");
  }
  return "";
}

Lane lane_of(PlanList list) {
  switch (list) {
    case PlanList::moves: return Lane::dampers;
    case PlanList::priming: return Lane::priming;
    case PlanList::fans: return Lane::fans;
    case PlanList::hoods: return Lane::hood;
    case PlanList::cuts: return Lane::power;
    case PlanList::outdoors: return Lane::outdoors;
    default: return Lane::wood;
  }
}

std::vector<PlanEvent> events_of(const BurnPlan& plan) {
  std::vector<PlanEvent> events;
  list_events(events, PlanList::loads, plan.loads, true, [&](std::size_t i) { return plan.loads[i].at + plan.loads[i].lasts; });
  list_events(events, PlanList::feeds, plan.feeds, true, [&](std::size_t i) { return plan.feeds[i].until; });
  list_events(events, PlanList::moves, plan.moves, false, [&](std::size_t i) { return end_of_move(plan, i); });
  list_events(events, PlanList::priming, plan.priming, true, [&](std::size_t i) { return plan.priming[i].at + plan.priming[i].lasts; });
  list_events(events, PlanList::fans, plan.fans, true, [&](std::size_t i) { return end_of_fan(plan, i); });
  list_events(events, PlanList::hoods, plan.hoods, true, [&](std::size_t i) { return end_of_hood(plan, i); });
  list_events(events, PlanList::cuts, plan.cuts, true, [&](std::size_t i) { return plan.cuts[i].at + plan.cuts[i].lasts; });
  const auto* course = std::get_if<std::vector<OutdoorPoint>>(&plan.outdoors);
  if (course != nullptr && course->size() <= most_points) {
    list_events(events, PlanList::outdoors, *course, false, [&](std::size_t i) { return (*course)[i].at; });
  }
  for (PlanEvent& event : events) {
    if (!(event.end > event.begin)) event.resizable = false;
  }
  return events;
}

std::optional<PlanEvent> event_of(const BurnPlan& plan, const PlanRef& ref) {
  for (const PlanEvent& event : events_of(plan)) {
    if (event.ref == ref) return event;
  }
  return std::nullopt;
}

PlanEdit move_event(const BurnPlan& plan, const PlanRef& ref, Time to) {
  BurnPlan changed = plan;
  PlanRef touched = ref;
  if (const auto hood = event_of(plan, ref); hood && ref.list == PlanList::hoods && hood->resizable && hood->end < plan.length) {
    // The switch that ends it goes along.
    if (!(changed.hoods[ref.index + 1].exhaust > VolumeFlow{})) changed.hoods[ref.index + 1].at += to - hood->begin;
  }
  const bool found = with_list(changed, ref, [&](auto& list) {
    auto& entry = list[ref.index];
    const Time by = to - begin_of(entry);
    begin_of(entry) = to;
    if constexpr (std::is_same_v<std::decay_t<decltype(entry)>, SteadyFeed>) entry.until += by;
    touched.index = settle(list, ref.index);
  });
  if (!found) return {std::nullopt, ref, said("That entry is no longer there.")};
  return {std::move(changed), touched, {}};
}

PlanEdit resize_event(const BurnPlan& plan, const PlanRef& ref, Time end) {
  const auto event = event_of(plan, ref);
  if (!event || !event->resizable) return {std::nullopt, ref, said("That entry has no end to pull.")};
  BurnPlan changed = plan;
  const Time lasts = end - event->begin;
  switch (ref.list) {
    case PlanList::loads: changed.loads[ref.index].lasts = lasts; break;
    case PlanList::feeds: changed.feeds[ref.index].until = end; break;
    case PlanList::priming: changed.priming[ref.index].lasts = lasts; break;
    case PlanList::fans: changed.fans[ref.index].runs_for = lasts; break;
    case PlanList::hoods: changed = with_hood_until(std::move(changed), ref.index, end); break;
    case PlanList::cuts: changed.cuts[ref.index].lasts = lasts; break;
    default: break;
  }
  return {std::move(changed), ref, {}};
}

PlanEdit remove_event(const BurnPlan& plan, const PlanRef& ref) {
  BurnPlan changed = plan;
  const auto* course = std::get_if<std::vector<OutdoorPoint>>(&plan.outdoors);
  if (ref.list == PlanList::outdoors && course != nullptr && course->size() <= 1) {
    return {std::nullopt, ref, said("The last point stays: choose another kind of outdoor temperature instead.")};
  }
  const bool found = with_list(changed, ref, [&](auto& list) { list.erase(list.begin() + static_cast<std::ptrdiff_t>(ref.index)); });
  if (!found) return {std::nullopt, ref, said("That entry is no longer there.")};
  return {std::move(changed), {}, {}};
}

PlanEdit put_in_order(BurnPlan plan, const PlanRef& ref) {
  PlanRef touched = ref;
  with_list(plan, ref, [&](auto& list) { touched.index = settle(list, ref.index); });
  return {std::move(plan), touched, {}};
}

std::vector<PieceId> pieces_for(PlanList list, const Design& design, const Library& library) {
  std::vector<std::string_view> shapes;
  if (list == PlanList::moves) shapes = {"damper"};
  if (list == PlanList::fans) shapes = {"fan", "fan_head"};
  if (list == PlanList::priming) shapes = {"tee"};
  std::vector<PieceId> found;
  for (const Piece& piece : design.pieces) {
    const PieceType* type = library.piece_type(piece.type);
    if (type != nullptr && std::find(shapes.begin(), shapes.end(), type->shape) != shapes.end()) found.push_back(piece.id);
  }
  return found;
}

PlanEdit add_event(const BurnPlan& plan, Lane lane, Time at, std::optional<Time> until, const Design& design,
                   const Library& library) {
  BurnPlan changed = plan;
  const auto lasting = [&](Time usual) { return until ? Time(*until - at) : std::min(usual, std::max(Time(plan.length - at), Time(1.0 * minute))); };
  switch (lane) {
    case Lane::wood: {
      Time usual = usual_load;
      MassFlow rate = design.fire.burn_rate;
      for (const WoodLoad& load : plan.loads) {
        if (load.at > at || !(load.lasts > Time{})) break;
        usual = load.lasts;
        rate = load.wood / load.lasts;
      }
      for (const WoodLoad& load : plan.loads) {
        if (load.at > at) usual = std::min(usual, Time(load.at - at));
      }
      const Time lasts = lasting(usual);
      return insert(changed, PlanList::loads, changed.loads, WoodLoad{at, rate * lasts, lasts});
    }
    case Lane::dampers: {
      const auto pieces = pieces_for(PlanList::moves, design, library);
      if (pieces.empty()) return {std::nullopt, {}, said("The drawing has no damper or bypass to move.")};
      Ratio open = 0.0;
      for (const PieceMove& move : plan.moves) {
        if (move.at <= at && move.piece == pieces.front()) open = move.open > Ratio(0.5) ? 0.0 : 1.0;
      }
      return insert(changed, PlanList::moves, changed.moves, PieceMove{at, pieces.front(), open});
    }
    case Lane::priming: {
      PrimingFire fire;
      fire.at = at;
      fire.lasts = lasting(usual_priming);
      fire.starter = usual_starter;
      return insert(changed, PlanList::priming, changed.priming, std::move(fire));
    }
    case Lane::fans: {
      const auto pieces = pieces_for(PlanList::fans, design, library);
      if (pieces.empty()) return {std::nullopt, {}, said("The drawing has no fan to switch.")};
      const PieceId fan = plan.fans.empty() ? pieces.front() : plan.fans.back().fan;
      return insert(changed, PlanList::fans, changed.fans, FanSwitch{at, fan, 1.0, lasting(usual_fan)});
    }
    case Lane::hood: {
      const VolumeFlow exhaust = design.room.exhaust_flow > VolumeFlow{} ? design.room.exhaust_flow : usual_exhaust;
      const Time end = at + lasting(usual_hood);
      PlanEdit edit = insert(changed, PlanList::hoods, changed.hoods, HoodSwitch{at, exhaust});
      const std::size_t next = edit.touched.index + 1;
      const bool another_first = next < edit.plan->hoods.size() && edit.plan->hoods[next].at <= end;
      if (!another_first && end < plan.length) edit.plan = with_hood_until(std::move(*edit.plan), edit.touched.index, end);
      return edit;
    }
    case Lane::power:
      return insert(changed, PlanList::cuts, changed.cuts, PowerCut{at, lasting(usual_cut)});
    case Lane::outdoors: {
      auto* points = points_of(changed);
      if (points == nullptr) return {std::nullopt, {}, said("Choose points as the outdoor temperature first; then they can be added here.")};
      if (points->size() >= most_points) return {std::nullopt, {}, said("This course has too many points to add to by hand.")};
      Temperature level = design.site.outdoor_temperature;
      for (const OutdoorPoint& point : *points) {
        if (point.at <= at) level = point.temperature;
      }
      return insert(changed, PlanList::outdoors, *points, OutdoorPoint{at, level});
    }
  }
  return {};
}

}  // namespace fluewright
