// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/design_file.hpp"
#include "engine/burn/aids.hpp"

#include <filesystem>
#include <string>
#include <variant>

namespace fluewright {

/// The figures that ship with the program (resources/aid_figures.json).
[[nodiscard]] const AidFigures& shipped_aid_figures();

/// A user's own file, laid out the same way.
using FiguresResult = std::variant<AidFigures, FileFault>;
[[nodiscard]] FiguresResult read_aid_figures_file(const std::filesystem::path& path);
[[nodiscard]] FiguresResult read_aid_figures_text(std::string_view text, const std::string& name);

}  // namespace fluewright
