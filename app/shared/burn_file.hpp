// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The time line of a burn as a file: JSON with the units in the keys (resources/schema/burn.schema.json). A course of
// outdoor temperatures may come from a weather file of its own.

#include "app/shared/design_file.hpp"
#include "app/shared/units.hpp"
#include "engine/burn/burn_plan.hpp"

#include <filesystem>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace fluewright {

inline constexpr int current_burn_file_version = 1;
inline constexpr std::string_view burn_file_suffix = ".fluburn";

using PlanReadResult = std::variant<BurnPlan, FileFault>;

/// `folder` is where a weather file named in the text lies.
[[nodiscard]] PlanReadResult read_plan_text(std::string_view text, const std::filesystem::path& folder = {});
[[nodiscard]] PlanReadResult read_plan_file(const std::filesystem::path& path);
/// Stable key order; reads back to the same plan.
[[nodiscard]] std::string write_plan_text(const BurnPlan& plan);

using WeatherResult = std::variant<std::vector<OutdoorPoint>, FileFault>;

/// Comma-separated, a header line with the columns `time` (2024-04-06T17:00, or with a blank for the T) and
/// `temperature_C`, others ignored; the first row is the run's beginning. Rows must follow one another at one spacing:
/// what is missing, empty, out of order or no number is named with its line.
[[nodiscard]] WeatherResult read_weather_text(std::string_view text, std::string_view name);

/// What is wrong with a plan, in one sentence: the list's entry (counted from 1), the field, the value.
[[nodiscard]] std::string sentence(const PlanFault& fault, const Design& design, const Library& library);

}  // namespace fluewright
