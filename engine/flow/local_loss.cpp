// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/local_loss.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace fluewright {

namespace loss {

namespace {

constexpr std::array<LossRow, 3> pipe_end_rows{{{0.0, 1.0}, {0.02, 0.72}, {0.05, 0.50}}};
constexpr std::array<LossRow, 4> bellmouth_rows{{{0.0, 1.0}, {0.05, 0.40}, {0.10, 0.15}, {0.20, 0.03}}};
// Argument in degrees.
constexpr std::array<LossRow, 10> blade_rows{{{0.0, 0.20},
                                              {5.0, 0.24},
                                              {10.0, 0.52},
                                              {20.0, 1.54},
                                              {30.0, 3.91},
                                              {40.0, 10.8},
                                              {50.0, 32.6},
                                              {60.0, 118.0},
                                              {65.0, 256.0},
                                              {70.0, 751.0}}};
constexpr std::array<LossRow, 8> rain_cap_rows{
    {{0.45, 1.0}, {0.50, 0.73}, {0.55, 0.56}, {0.60, 0.41}, {0.65, 0.30}, {0.70, 0.22}, {0.75, 0.18}, {1.00, 0.10}}};

}  // namespace

const LossFormula restriction{"sharp-edged restriction", "(1 + 0.707 sqrt(1-phi) - phi)^2 / phi^2", "of the duct",
                              "Idelchik, Handbook of Hydraulic Resistance, 3rd ed., p. 221", Standing::published};
const LossFormula expansion{"sudden widening", "(1 - A1/A2)^2", "of the narrow side", "Borda-Carnot",
                            Standing::published};
const LossFormula contraction{"sudden narrowing", "(1 - A2/A1)/2", "of the narrow side",
                              "Idelchik, Handbook of Hydraulic Resistance", Standing::from_memory};
const LossFormula flush_entry{"sharp entry flush with a wall", "0.5", "of the duct", "Crane TP-410",
                              Standing::published};
const LossTable pipe_end_entry{"entry into a free pipe end",      "wall thickness / D", "of the duct",
                               "Idelchik diagram 3-1, in ASHRAE", Standing::published,  pipe_end_rows};
const LossTable bellmouth{"entry through a bellmouth, no wall",
                          "lip radius / D",
                          "of the duct",
                          "ASHRAE duct fittings",
                          Standing::published,
                          bellmouth_rows};
const LossFormula exit{"free exit", "1.0", "of the outlet", "ASHRAE SD2-6", Standing::published};
const LossFormula diffuser{"gradual widening", "min(1, 2.6 sin(a/2)) (1 - A1/A2)^2", "of the narrow side",
                           "Crane TP-410", Standing::published};
const LossFormula reducer{"gradual narrowing", "min(0.8 sin(a/2), 0.5 sqrt(sin(a/2))) (1 - A2/A1)",
                          "of the narrow side", "Crane TP-410", Standing::published};
const LossTable blade{
    "round blade damper",  "degrees from open",
    "of the duct",         "Weisbach, butterfly valve (5, 10, 20, 40, 60 degrees read; the rest from memory)",
    Standing::from_memory, blade_rows};
const LossTable rain_cap_gap{"rain cap, beyond the free exit",
                             "gap / D",
                             "of the outlet",
                             "ACGIH Industrial Ventilation",
                             Standing::from_memory,
                             rain_cap_rows};
const LossFormula plain_cap{"chimney cap of no known design, beyond the free exit", "2 (1.5 to 4.5)", "of the outlet",
                            "ASHRAE HVAC Systems & Equipment, chimney chapter", Standing::published};
const LossFormula low_resistance_cap{"low-resistance chimney cap, beyond the free exit", "0.5", "of the outlet",
                                     "ASHRAE HVAC Systems & Equipment, chimney chapter", Standing::published};
const LossFormula screen{"spark screen", "0.5", "of the outlet", "ASHRAE HVAC Systems & Equipment, chimney chapter",
                         Standing::published};
const LossFormula firebox_throat{"wood firebox to flue", "2 or more", "of the flue",
                                 "ASHRAE HVAC Systems & Equipment, chimney chapter", Standing::published};

}  // namespace loss

Ratio sharp_restriction(Ratio free_share) {
  const double phi = free_share;
  const double sum = (1.0 + 0.707 * std::sqrt(1.0 - phi) - phi) / phi;
  return sum * sum;
}

Ratio sudden_expansion(Area narrow, Area wide) {
  const Ratio rest = 1.0 - narrow / wide;
  return rest * rest;
}

Ratio sudden_contraction(Area wide, Area narrow) { return 0.5 * (1.0 - narrow / wide); }

Ratio sharp_entry() { return 0.5; }

Ratio thin_wall_entry(Ratio thickness_over_diameter) { return loss::pipe_end_entry.at(thickness_over_diameter); }

Ratio bellmouth_entry(Ratio radius_over_diameter) { return loss::bellmouth.at(radius_over_diameter); }

Ratio free_exit() { return 1.0; }

Ratio gradual_expansion(Area narrow, Area wide, Angle included) {
  const double half_sine = std::sin(0.5 * in(included, radian));
  // Beyond a straight angle there is nothing wider than a step.
  const double share = included < 180.0 * degree ? std::min(1.0, 2.6 * half_sine) : 1.0;
  return share * sudden_expansion(narrow, wide);
}

Ratio gradual_contraction(Area wide, Area narrow, Angle included) {
  const double half_sine = included < 180.0 * degree ? std::sin(0.5 * in(included, radian)) : 1.0;
  return std::min(0.8 * half_sine, 0.5 * std::sqrt(half_sine)) * (1.0 - narrow / wide);
}

Ratio blade_damper(Angle from_open) {
  const double angle = std::abs(in(from_open, degree));
  const auto& rows = loss::blade.rows;
  for (std::size_t i = 1; i < rows.size(); ++i) {
    if (angle < rows[i].argument) {
      const double share = (angle - rows[i - 1].argument) / (rows[i].argument - rows[i - 1].argument);
      return rows[i - 1].coefficient * std::pow(rows[i].coefficient / rows[i - 1].coefficient, share);
    }
  }
  return rows.back().coefficient;
}

Ratio rain_cap(Ratio gap_over_diameter) { return loss::rain_cap_gap.at(gap_over_diameter); }

Ratio spark_screen() { return 0.5; }

}  // namespace fluewright
