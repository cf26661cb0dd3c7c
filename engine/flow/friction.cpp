// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/friction.hpp"

#include <boost/math/tools/roots.hpp>

#include <cstdint>
#include <numbers>
#include <utility>

namespace fluewright {

Ratio colebrook_friction_factor(Ratio reynolds, Ratio relative_roughness) {
  // In x = 1/sqrt f the relation is x + 2 lg(r + 2.51 x/Re) = 0: convex, one root, and Newton runs to it.
  const double rough = relative_roughness / 3.7;
  const double smooth = 2.51 / reynolds;
  std::uintmax_t steps = 50;
  const double x = boost::math::tools::newton_raphson_iterate(
      [rough, smooth](double v) {
        const double inside = rough + smooth * v;
        return std::make_pair(v + 2.0 * std::log10(inside), 1.0 + 2.0 / std::numbers::ln10 * smooth / inside);
      },
      6.0, 0.1, 100.0, 48, steps);
  return 1.0 / (x * x);
}

}  // namespace fluewright
