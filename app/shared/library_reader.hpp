// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/library/library.hpp"

#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace fluewright {

/// The library that ships in the program (resources/, embedded at build time). Read once; a fault in shipped data is a
/// broken build, so it throws std::runtime_error naming file, entry and field.
[[nodiscard]] std::shared_ptr<const Library> shipped_library();

/// A demo design as shipped.
struct Demo {
  std::string id;  ///< file name without suffix
  std::string title;
  std::string scene;  ///< one paragraph; invented
  std::string text;   ///< the design file
};
[[nodiscard]] const std::vector<Demo>& shipped_demos();

/// The JSON Schema of the design file, as shipped.
[[nodiscard]] std::string_view design_schema();

}  // namespace fluewright
