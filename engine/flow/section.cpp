// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/section.hpp"

#include <cmath>
#include <numbers>

namespace fluewright {

namespace {
constexpr double pi = std::numbers::pi;
}

Section Section::circle(Length diameter) {
  const Length perimeter = pi * diameter;
  return {Form::circle, diameter, Length{}, pi / 4.0 * diameter * diameter, perimeter, perimeter};
}

Section Section::rectangle(Length width, Length height) {
  const Length perimeter = 2.0 * (width + height);
  return {Form::rectangle, width, height, width * height, perimeter, perimeter};
}

Section Section::annulus(Length outer, Length inner) {
  return {Form::annulus, outer, inner, pi / 4.0 * (outer * outer - inner * inner), pi * (outer + inner), pi * outer};
}

Section Section::half_round(Length diameter) {
  const Length perimeter = (pi / 2.0 + 1.0) * diameter;
  return {Form::half_round, diameter, Length{}, pi / 8.0 * diameter * diameter, perimeter, perimeter};
}

Length Section::equal_area_diameter() const { return bu::sqrt(4.0 / pi * area_); }

}  // namespace fluewright
