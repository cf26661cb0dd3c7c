// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace fluewright {

/// The words for --log-level, mildest last.
inline constexpr std::string_view log_levels[] = {"trace", "debug", "info", "warn", "error", "off"};

/// Sets up logging for the whole program: warnings and worse (or the given level) on standard error, and from "info"
/// on in a rotating file. A log file that cannot be written is no fault: the level "info" says so.
void start_logging(std::string_view program, std::string_view level);

/// Where logs go: $XDG_STATE_HOME/fluewright, else ~/.local/state/fluewright; nothing if there is neither.
[[nodiscard]] std::optional<std::filesystem::path> log_folder();

}  // namespace fluewright
