// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/design.hpp"

#include <nlohmann/json.hpp>

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace fluewright {

/// Another idea for the same heater, kept in the same file.
struct Variant {
  std::string name;
  Design design;
  nlohmann::ordered_json unknown;
};

/// A design as it came from a file: the design itself and what this version does not know but must not lose.
struct DesignDocument {
  Design design;
  std::string variant_name;     ///< of `design`, where there are others
  std::size_t place = 0;        ///< of `design` among all variants
  std::vector<Variant> others;  ///< in their order
  nlohmann::ordered_json unknown;  ///< keys this version does not know, by where they stood; written back on save
  int file_version = 0;
  bool read_only = false;            ///< the file is from a newer version
  std::vector<std::string> remarks;  ///< what a person should know ("from a newer version: opened read-only")
};

/// Why a file could not be read or written: one message a fault, each naming piece, field, value and allowed range.
struct FileFault {
  std::vector<std::string> messages;
  [[nodiscard]] std::string text() const;
};

using ReadResult = std::variant<DesignDocument, FileFault>;

inline constexpr int current_file_version = 1;
inline constexpr std::uintmax_t largest_design_file = 16u * 1024u * 1024u;
inline constexpr std::string_view design_file_suffix = ".fluepath";

[[nodiscard]] ReadResult read_design_text(std::string_view text, const Library& library);
[[nodiscard]] ReadResult read_design_file(const std::filesystem::path& path, const Library& library);

/// Stable key order, one piece a line group, lengths in mm, units in the key names.
[[nodiscard]] std::string write_design_text(const DesignDocument& document, const Library& library);
/// Write beside, flush, rename; the last good copy stays as "<name>~". Nothing on success.
[[nodiscard]] std::optional<FileFault> save_design_file(const DesignDocument& document, const Library& library,
                                                        const std::filesystem::path& path);

}  // namespace fluewright
