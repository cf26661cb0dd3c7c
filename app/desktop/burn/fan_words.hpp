// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/units.hpp"
#include "engine/burn/fan_dependence.hpp"

#include <QString>

#include <optional>

namespace fluewright {

/// How far the draft hangs on the fan, and what a power cut does: the first thing to be read about a burn.
struct FanStatement {
  QString headline;  ///< "The draft holds only with the fan on. That is unsafe."
  QString detail;
  bool unsafe = false;
};
/// `standard`: what a power cut does to the design's own fans in a standard start. The statement is about this time line
/// and says so; where the standard start is unsafe it never says that all is well.
[[nodiscard]] FanStatement fan_statement(const FanDependence& fan, const std::optional<PowerCutAnswer>& standard,
                                         UnitSystem units);

}  // namespace fluewright
