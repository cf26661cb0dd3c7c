// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A burn on paper: a table for people, JSON and comma-separated values for programs.

#include "app/shared/units.hpp"
#include "engine/burn/burn_plan.hpp"
#include "engine/burn/burn_record.hpp"

#include <nlohmann/json.hpp>

#include <string>
#include <string_view>

namespace fluewright {

/// Why a run ended before its time; empty when it is done.
[[nodiscard]] std::string_view sentence(BurnEnd end);

/// Summary, then a row every so often: about forty rows over the run.
[[nodiscard]] std::string burn_text(const BurnPlan& plan, const BurnRecord& record, UnitSystem units);
/// Summary, rows, and with them the temperatures by slice; units in the keys.
[[nodiscard]] nlohmann::ordered_json burn_json(const Design& design, const BurnPlan& plan, const BurnRecord& record);
/// A line a row, units in the header.
[[nodiscard]] std::string burn_csv(const BurnRecord& record);

}  // namespace fluewright
