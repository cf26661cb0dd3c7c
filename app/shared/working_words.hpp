// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace fluewright {

/// What the engine calls a step of a working ("density of the outdoor air", "slice 3 of 40"), in the language in force; as it
/// is where it is not among the known ones.
[[nodiscard]] std::string said_step(std::string_view english);

/// Whether it is among them: a step the engine has and this room has no words for is a gap.
[[nodiscard]] bool is_known_step(std::string_view english);

}  // namespace fluewright
