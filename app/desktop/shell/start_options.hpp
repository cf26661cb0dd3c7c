// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/shell/main_window.hpp"
#include "app/desktop/shell/memory.hpp"

#include <optional>
#include <string>

namespace fluewright {

/// How the program was started.
struct StartOptions {
  std::string design;  ///< a file to open
  std::string demo;    ///< or a demo's id
  std::string log_level = "warn";
  std::optional<UnitSystem> units;
  std::optional<Sheet> sheet;
  std::string language;      ///< "de"; empty: the one chosen, else the system's
  std::string picture;       ///< a file to put a picture of the window into, and then leave
  std::optional<int> leave;  ///< the options themselves end the program with this status
};

/// Reads the command line; help, version and faults are printed here.
[[nodiscard]] StartOptions read_start_options(int argc, char** argv);
/// Opens what was asked for, and takes the picture.
void begin(MainWindow& window, const StartOptions& options);

}  // namespace fluewright
