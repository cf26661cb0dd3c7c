// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A time line as lanes of events, and what a hand can do to one. Plain values in, plain values out.

#include "engine/burn/burn_plan.hpp"

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

namespace fluewright {

/// One row of the bar.
enum class Lane { wood, dampers, priming, fans, hood, power, outdoors };
inline constexpr std::array lanes{Lane::wood, Lane::dampers, Lane::priming, Lane::fans,
                                  Lane::hood, Lane::power,   Lane::outdoors};
[[nodiscard]] std::string_view lane_name(Lane lane);
[[nodiscard]] Lane lane_of(PlanList list);

/// An entry of one of the plan's lists. A point of the outdoor course is an entry of `outdoors`.
struct PlanRef {
  PlanList list = PlanList::plan;
  std::size_t index = 0;
  friend bool operator==(const PlanRef&, const PlanRef&) = default;
};

/// An entry as the bar shows it: how long it acts, and whether its end can be pulled.
struct PlanEvent {
  PlanRef ref;
  Lane lane{};
  Time begin{};
  Time end{};              ///< equal to begin: a moment only (something is switched off)
  bool resizable = false;
};
/// By lane, then by time. More points of an outdoor course than can be pointed at are no events.
[[nodiscard]] std::vector<PlanEvent> events_of(const BurnPlan& plan);
[[nodiscard]] std::optional<PlanEvent> event_of(const BurnPlan& plan, const PlanRef& ref);

/// A changed plan and where the touched entry now is; or why it cannot be done.
struct PlanEdit {
  std::optional<BurnPlan> plan;
  PlanRef touched;
  std::string_view refusal;  ///< a sentence
};

/// Entries stay in the order of their beginnings, so one that is moved past another changes places with it.
[[nodiscard]] PlanEdit move_event(const BurnPlan& plan, const PlanRef& ref, Time to);
[[nodiscard]] PlanEdit resize_event(const BurnPlan& plan, const PlanRef& ref, Time end);
[[nodiscard]] PlanEdit remove_event(const BurnPlan& plan, const PlanRef& ref);
/// With what is usual for such an entry, until `until` where given.
[[nodiscard]] PlanEdit add_event(const BurnPlan& plan, Lane lane, Time at, std::optional<Time> until,
                                 const Design& design, const Library& library);
/// After a value was typed: the order of beginnings again, and where the entry went.
[[nodiscard]] PlanEdit put_in_order(BurnPlan plan, const PlanRef& ref);

/// The pieces an entry of a list may name, in the design's order.
[[nodiscard]] std::vector<PieceId> pieces_for(PlanList list, const Design& design, const Library& library);

}  // namespace fluewright
