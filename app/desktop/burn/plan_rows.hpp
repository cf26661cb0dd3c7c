// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the little editor shows of an entry of the time line: its numbers and its picks, each with the hand that sets it.

#include "app/desktop/burn/plan_events.hpp"
#include "app/desktop/burn/plan_numbers.hpp"

#include <functional>
#include <string>
#include <utility>
#include <vector>

namespace fluewright {

struct NumberRow {
  std::string key;
  std::string label;
  std::string help;
  PlanMeaning meaning{};
  PlanNumber number;
  std::function<void(BurnPlan&, const PlanNumber&)> set;
};
struct PickRow {
  std::string key;
  std::string label;
  std::string help;
  std::vector<std::pair<std::string, std::string>> options;  ///< id and words
  std::string picked;
  std::function<void(BurnPlan&, const std::string&)> set;
};
struct PlanSheet {
  std::string heading;
  std::vector<PickRow> picks;
  std::vector<NumberRow> numbers;
};

/// Of an entry, or of the run itself where `ref` names none.
[[nodiscard]] PlanSheet sheet_of(const BurnPlan& plan, const std::optional<PlanRef>& ref, const Design& design,
                                 const Library& library);
/// An entry in a few words, for the bar and for ears: "4.5 kg in 45 min".
[[nodiscard]] std::string event_words(const BurnPlan& plan, const PlanRef& ref, const Design& design,
                                      const Library& library, UnitSystem units);

}  // namespace fluewright
