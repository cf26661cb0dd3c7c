// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/units.hpp"

#include <CLI/CLI.hpp>

namespace fluewright {

/// --unit metric|imperial into `units`.
inline void add_unit_option(CLI::App& parser, UnitSystem& units) {
  static const std::map<std::string, UnitSystem> systems{{"metric", UnitSystem::metric},
                                                         {"imperial", UnitSystem::imperial}};
  parser
      .add_option_function<std::string>(
          "--unit", [&units](const std::string& word) { units = systems.at(word); },
          "Units of the table (JSON is always metric)")
      ->check(CLI::IsMember({"metric", "imperial"}))
      ->default_str("metric");
}

}  // namespace fluewright
