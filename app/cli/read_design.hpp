// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/design_file.hpp"

#include <optional>
#include <string>

namespace fluewright {

/// A design by path, or a shipped demo by "demo:ID".
[[nodiscard]] ReadResult read_design(const std::string& name, const Library& library);
/// The same; what is wrong with the file or worth knowing about it goes to the error stream. Nothing where it cannot be read.
[[nodiscard]] std::optional<DesignDocument> opened_design(const std::string& name, const Library& library);

}  // namespace fluewright
