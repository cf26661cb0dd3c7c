// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Start maps, aids and power cuts on paper: as text for people, as JSON with units in the keys for programs.

#include "app/shared/units.hpp"
#include "engine/burn/aids.hpp"
#include "engine/burn/start_map.hpp"

#include <nlohmann/json.hpp>

#include <string>
#include <vector>

namespace fluewright {

[[nodiscard]] std::string start_map_text(const StartMap& map, const StartQuestion& question, UnitSystem units);
[[nodiscard]] nlohmann::ordered_json start_map_json(const StartMap& map, const StartQuestion& question);

/// Ranked rows.
[[nodiscard]] std::string aids_text(const std::vector<AidRow>& rows, const AidsQuestion& question, UnitSystem units);
[[nodiscard]] nlohmann::ordered_json aids_json(const std::vector<AidRow>& rows, const AidsQuestion& question);

/// The part of the answer that stands above all else where the draft holds only with the fan on.
[[nodiscard]] std::string power_cut_text(const PowerCutAnswer& cut);
[[nodiscard]] nlohmann::ordered_json power_cut_json(const PowerCutAnswer& cut);

/// A column of the comparison: heading and cell.
struct AidColumn {
  std::string_view heading;
  std::string (*cell)(const AidRow&, UnitSystem);
};
/// All but name and reason.
[[nodiscard]] const std::vector<AidColumn>& aid_columns();

}  // namespace fluewright
