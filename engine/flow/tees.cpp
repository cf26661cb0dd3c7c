// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/tees.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace fluewright {

namespace loss {

namespace {
constexpr std::string_view crane = "Crane TP-410 (2009), ch. 2";
constexpr std::string_view of_whole = "of the leg with the whole flow";
}  // namespace

const LossFormula joining_branch{"tee, branch into run", "C [1 + (q/b)^2 - 2 (1-q)^2 - F q^2/b]", of_whole, crane,
                                 Standing::published};
const LossFormula joining_run{"tee, run while a branch joins", "1.55 q - q^2 (90 degrees)", of_whole, crane,
                              Standing::published};
const LossFormula dividing_branch{"tee, run into branch", "G [1 + H (q/b)^2 - J (q/b) cos a]", of_whole, crane,
                                  Standing::published};
const LossFormula dividing_run{"tee, run while a branch leaves", "M q^2", of_whole, crane, Standing::published};
const LossFormula shut_branch{"tee, straight past a shut branch", "0.03", of_whole,
                              "Rennels & Hudson, Pipe Flow (2012), dividing tee", Standing::from_memory};

}  // namespace loss

namespace {

/// Crane's F of converging wyes and tees by angle.
double wye_drag(double degrees) {
  static constexpr std::array<LossRow, 4> rows{{{30.0, 1.74}, {45.0, 1.41}, {60.0, 1.0}, {90.0, 0.0}}};
  static const LossTable table{"F", "degrees", "", "", Standing::published, rows};
  return table.at(degrees);
}

/// G of a diverging wye (30-60 degrees). Crane: 1.1 - 0.7q to q = 0.4, then 0.85 for slender branches; 1 - 0.6q to
/// q = 0.6, then 0.6 for others.
double wye_share_factor(double q, double area_ratio) {
  return area_ratio <= 0.35 ? std::max(1.1 - 0.7 * q, 0.85) : std::max(1.0 - 0.6 * q, 0.6);
}

double diverging_wye(double q, double area_ratio, double degrees) {
  const double ratio = q / area_ratio;
  const double cosine = std::cos(degrees * in(degree, radian));
  return wye_share_factor(q, area_ratio) * (1.0 + ratio * ratio - 2.0 * ratio * cosine);
}

double diverging_tee(double q, double area_ratio) {
  const double ratio = q / area_ratio;
  // Crane's two 90 degree cases are a branch of at most two thirds of the run's diameter and one of the same diameter.
  // Between them the result is interpolated over the diameter.
  const double slender = 1.0 + ratio * ratio;
  const double full = (1.0 + 0.3 * q * q) * (1.0 + 0.3 * ratio * ratio);
  const double diameters = std::sqrt(area_ratio);
  const double share = std::clamp(3.0 * diameters - 2.0, 0.0, 1.0);
  return (1.0 - share) * slender + share * full;
}

/// Share of the way from 60 to 90 degrees, where Crane changes from wye to tee.
double tee_share(double degrees) { return std::clamp((degrees - 60.0) / 30.0, 0.0, 1.0); }

}  // namespace

Ratio converging_branch(Ratio branch_share, Ratio area_ratio, Angle branch_angle) {
  const double q = branch_share;
  const double b = area_ratio;
  // Crane: 0.9 (1 - q) up to q = 0.4, then 0.55.
  const double c = b <= 0.35 ? 1.0 : std::max(0.9 * (1.0 - q), 0.55);
  const double f = wye_drag(in(branch_angle, degree));
  return c * (1.0 + (q / b) * (q / b) - 2.0 * (1.0 - q) * (1.0 - q) - f * q * q / b);
}

Ratio converging_run(Ratio branch_share, Ratio area_ratio, Angle branch_angle) {
  const double q = branch_share;
  const double degrees = in(branch_angle, degree);
  const double wye = 1.0 - (1.0 - q) * (1.0 - q) - wye_drag(std::min(degrees, 60.0)) * q * q / area_ratio;
  const double tee = 1.55 * q - q * q;
  const double share = tee_share(degrees);
  return (1.0 - share) * wye + share * tee;
}

Ratio diverging_branch(Ratio branch_share, Ratio area_ratio, Angle branch_angle) {
  const double q = branch_share;
  const double degrees = in(branch_angle, degree);
  const double share = tee_share(degrees);
  if (share >= 1.0) {
    return diverging_tee(q, area_ratio);
  }
  const double wye = diverging_wye(q, area_ratio, std::min(degrees, 60.0));
  return (1.0 - share) * wye + share * diverging_tee(q, area_ratio);
}

Ratio diverging_run(Ratio branch_share, Ratio area_ratio) {
  const double q = branch_share;
  const double from_even = 2.0 * q - 1.0;
  const double m = area_ratio.value() <= 0.4 ? 0.4 : (q <= 0.5 ? 2.0 * from_even : 0.3 * from_even);
  return m * q * q;
}

Ratio straight_past_branch() { return 0.03; }

}  // namespace fluewright
