// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/design_file.hpp"
#include "app/shared/library_reader.hpp"
#include "engine/burn/burn_run.hpp"

#include <algorithm>
#include <string>
#include <variant>

namespace fluewright::test {

inline Design demo(const std::string& id) {
  const auto& demos = shipped_demos();
  const auto found = std::find_if(demos.begin(), demos.end(), [&](const Demo& d) { return d.id == id; });
  return std::get<DesignDocument>(read_design_text(found->text, *shipped_library())).design;
}

/// A spring evening at the long bench: the house three degrees colder than outdoors. Starts are judged as builders say
/// them, in minutes.
inline Design spring_evening() { return demo("bench_spring_200"); }

/// Kindling for ten minutes, then full fire; nothing else.
inline BurnPlan fire_from(const Design& design, Time lit, Time length) {
  BurnPlan plan;
  plan.length = length;
  const Time kindling = 10.0 * minute;
  plan.loads.push_back({lit, 0.6 * design.fire.burn_rate * kindling, kindling});
  plan.feeds.push_back({lit + kindling, length, design.fire.burn_rate});
  return plan;
}

inline BurnRecord burn(const Design& design, const BurnPlan& plan) {
  return run_burn(design, *shipped_library(), plan);
}

/// Smoke-free, forward for the last so many minutes.
inline bool holds_at_the_end(const BurnRecord& record, Time minutes) {
  const Time from = record.rows.back().at - minutes;
  const BurnRow* first = nullptr;
  for (const BurnRow& row : record.rows) {
    if (row.at < from) continue;
    if (first == nullptr) first = &row;
    if (!row.forward) return false;
  }
  return first != nullptr && record.rows.back().smoke - first->smoke < 1.0 * gram;
}

}  // namespace fluewright::test
