// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace fluewright {

/// Puts `text` into the file so that at every moment either the old or the new content stands there in full: written
/// beside, flushed to the disk, renamed. What stood there before stays as "<name>~". Says why where it failed; the old
/// file is then untouched.
[[nodiscard]] std::optional<std::string> save_safely(const std::filesystem::path& path, std::string_view text);

}  // namespace fluewright
