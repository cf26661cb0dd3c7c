// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Words for starts, aids and power cuts. One place, so that desk and command line say the same.

#include "app/shared/units.hpp"
#include "engine/burn/aids.hpp"
#include "engine/burn/start_map.hpp"

#include <string>
#include <string_view>

namespace fluewright {

/// "needs the stack primed"; `draws_with_fan` false: not even the fan gets it to draw.
[[nodiscard]] std::string_view word(StartClass start, bool draws_with_fan = true);
/// One letter for a cell of a map.
[[nodiscard]] char letter(StartClass start);
[[nodiscard]] std::string_view word(StartFault fault);

/// "1:30" minutes and seconds.
[[nodiscard]] std::string minutes_text(Time time);
[[nodiscard]] std::string grams_text(Mass mass);

/// "Below what difference must I prime", answered for a room.
[[nodiscard]] std::string limit_sentence(const StartLimit& limit, UnitSystem units);
/// What the map stands on: kindling, the aids' amounts, when a start counts, the house's suction and neutral plane.
[[nodiscard]] std::string map_assumptions(const StartQuestion& question, UnitSystem units);

[[nodiscard]] std::string aid_name(const AidTask& task);
/// What the least amount was: "8 min", "400 g over 6 min".
[[nodiscard]] std::string amount_text(const AidRow& row);
/// Why it stands where it stands.
[[nodiscard]] std::string reason_sentence(const AidRow& row, UnitSystem units);
/// "UNSAFE: the draft holds only while the fan runs."; empty where a power cut does no harm in either house.
[[nodiscard]] std::string_view power_cut_headline(const PowerCutAnswer& cut);
/// What the costs of ten years stand on.
[[nodiscard]] std::string aids_assumptions(const AidFigures& figures);
/// What a power cut does with the fan on and the feed loaded.
[[nodiscard]] std::string power_cut_sentence(const PowerCutAnswer& cut);
[[nodiscard]] std::string power_cut_words(const PowerCutRun& run);

}  // namespace fluewright
