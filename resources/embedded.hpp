// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string_view>

namespace fluewright {

/// A file of resources/ as it was built into the program.
struct EmbeddedFile {
  std::string_view name;  ///< relative to resources/: "pieces/index.json"
  std::string_view text;
};

[[nodiscard]] std::span<const EmbeddedFile> embedded_files();

}  // namespace fluewright
