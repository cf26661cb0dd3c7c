// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/flow/stretch.hpp"
#include "engine/working/sheet.hpp"

#include <string>
#include <vector>

namespace fluewright {

/// The gas where it passes the fan, with the symbols that its values have in the sheet.
struct FanPlace {
  MassFlow flow{};
  Density rho{};
  const char* flow_symbol = "mdot";
  const char* density = "rho_in";
  const char* head = "K_in";  ///< velocity head
};

/// What the fan of a stretch raises the pressure by, along the gas; its loss's symbol goes into `losses`.
Pressure add_fan(Sheet& sheet, const Stretch& stretch, const FanPlace& at, std::vector<std::string>& losses);

}  // namespace fluewright
