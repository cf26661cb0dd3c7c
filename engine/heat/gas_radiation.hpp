// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/heat/outside_film.hpp"
#include "engine/quantities/quantities.hpp"
#include "engine/quantities/temperature.hpp"
#include "engine/quantities/valid_range.hpp"

#include <algorithm>
#include <array>
#include <cmath>

// Radiation of the carbon dioxide and water vapour in flue gas by a weighted sum of three grey gases and a clear one:
// emissivity = sum a_i(T) (1 - exp(-k_i (p_CO2 + p_H2O) L)), a_i cubic in temperature.
// Source: Smith, Shen & Friedman, J. Heat Transfer 104 (1982) 602, Table 1 (compared with two published codes that
// transcribe it); 600-2400 K, 0.001-10 atm m, 1 atm total.
// The published sets are for CO2 alone, p_H2O/p_CO2 = 1 and 2, and thin H2O; between them the emissivity is taken
// linear in the share of water, p_H2O/(p_CO2 + p_H2O) = 0, 1/2, 2/3, 1. Weights are held at 600 K below it and at
// 2400 K above it.

namespace fluewright {

namespace grey_gas {

/// One published set: absorption coefficients [1/(atm m)] and weights b_ij of T^j.
struct Set {
  double water_share;
  std::array<double, 3> k;
  std::array<std::array<double, 4>, 3> b;
};

inline constexpr std::array<Set, 4> sets{{{0.0,
                                           {0.3966, 15.64, 394.3},
                                           {{{0.4334e-1, 2.620e-4, -1.560e-7, 2.565e-11},
                                             {-0.4814e-1, 2.822e-4, -1.794e-7, 3.274e-11},
                                             {0.5492e-1, 0.1087e-4, -0.3500e-7, 0.9123e-11}}}},
                                          {0.5,
                                           {0.4303, 7.055, 178.1},
                                           {{{5.150e-1, -2.303e-4, 0.9779e-7, -1.494e-11},
                                             {0.7749e-1, 3.399e-4, -2.297e-7, 3.770e-11},
                                             {1.907e-1, -1.824e-4, 0.5608e-7, -0.5122e-11}}}},
                                          {2.0 / 3.0,
                                           {0.4201, 6.516, 131.9},
                                           {{{6.508e-1, -5.551e-4, 3.029e-7, -5.353e-11},
                                             {-0.2504e-1, 6.112e-4, -3.882e-7, 6.528e-11},
                                             {2.718e-1, -3.118e-4, 1.221e-7, -1.612e-11}}}},
                                          {1.0,
                                           {0.4098, 6.325, 120.5},
                                           {{{5.977e-1, -5.119e-4, 3.042e-7, -5.564e-11},
                                             {0.5677e-1, 3.333e-4, -1.967e-7, 2.718e-11},
                                             {1.800e-1, -2.334e-4, 1.008e-7, -1.454e-11}}}}}};

inline constexpr double weights_begin = 600.0;  ///< [K]
inline constexpr double weights_end = 2400.0;   ///< [K]

/// The emissivity of one gas column as a cubic in temperature: all that is left of the sum once pressure and path
/// are known. Plain SI doubles.
class Column {
 public:
  Column(double carbon_dioxide_atm, double water_atm, double path) {
    const double pressure = carbon_dioxide_atm + water_atm;
    if (!(pressure > 0.0)) {
      return;
    }
    const double share = water_atm / pressure;
    std::size_t upper = 1;
    while (upper + 1 < sets.size() && share > sets[upper].water_share) {
      ++upper;
    }
    const Set& a = sets[upper - 1];
    const Set& b = sets[upper];
    const double weight = (share - a.water_share) / (b.water_share - a.water_share);
    add(a, 1.0 - weight, pressure * path);
    add(b, weight, pressure * path);
  }

  [[nodiscard]] double emissivity(double t) const {
    const double held = std::clamp(t, weights_begin, weights_end);
    return c_[0] + held * (c_[1] + held * (c_[2] + held * c_[3]));
  }

  /// (e(a) a^4 - e(b) b^4) / (a - b), worked out without the difference, so that it stays smooth (and is the
  /// derivative) where the two temperatures meet.
  [[nodiscard]] double mean_slope(double a, double b) const {
    const double low = std::min(a, b);
    const double high = std::max(a, b);
    if (high <= weights_begin) {
      return emissivity(weights_begin) * fourth_power_slope(low, high);
    }
    if (low >= weights_begin && high <= weights_end) {
      return inner_slope(low, high);
    }
    // The range is cut where the weights start and stop changing; the parts add up by their lengths.
    double sum = 0.0;
    if (low < weights_begin) {
      sum += (weights_begin - low) * emissivity(weights_begin) * fourth_power_slope(low, weights_begin);
    }
    const double inner_low = std::clamp(low, weights_begin, weights_end);
    const double inner_high = std::clamp(high, weights_begin, weights_end);
    sum += (inner_high - inner_low) * inner_slope(inner_low, inner_high);
    if (high > weights_end) {
      const double from = std::max(low, weights_end);
      if (from == low) {
        return emissivity(weights_end) * fourth_power_slope(low, high);
      }
      sum += (high - from) * emissivity(weights_end) * fourth_power_slope(from, high);
    }
    return sum / (high - low);
  }

 private:
  void add(const Set& set, double weight, double pressure_path) {
    for (std::size_t i = 0; i < set.k.size(); ++i) {
      const double absorbed = -weight * std::expm1(-set.k[i] * pressure_path);
      for (std::size_t j = 0; j < c_.size(); ++j) {
        c_[j] += absorbed * set.b[i][j];
      }
    }
  }

  [[nodiscard]] static double fourth_power_slope(double a, double b) { return (a * a + b * b) * (a + b); }

  /// Divided difference of the polynomial sum c_j T^(4+j), by S_n = a S_(n-1) + b^(n-1).
  [[nodiscard]] double inner_slope(double a, double b) const {
    double power = b * b * b;
    double slope = fourth_power_slope(a, b);
    double sum = c_[0] * slope;
    for (std::size_t j = 1; j < c_.size(); ++j) {
      power *= b;
      slope = a * slope + power;
      sum += c_[j] * slope;
    }
    return sum;
  }

  std::array<double, 4> c_{};
};

inline constexpr double pascals_per_atmosphere = 101325.0;

[[nodiscard]] inline Column column(Pressure carbon_dioxide, Pressure water, Length mean_beam) {
  return {in(carbon_dioxide, pascal) / pascals_per_atmosphere, in(water, pascal) / pascals_per_atmosphere,
          in(mean_beam, metre)};
}

}  // namespace grey_gas

/// Mean beam length of a long duct, 0.95 of the hydraulic diameter. Source: Hottel, in McAdams (1954).
[[nodiscard]] inline Length mean_beam_length(Length hydraulic_diameter) { return 0.95 * hydraulic_diameter; }

/// Total emissivity of the gas at its own temperature; partial pressures and mean beam length >= 0.
[[nodiscard]] inline Ratio emissivity(Temperature gas, Pressure carbon_dioxide, Pressure water, Length mean_beam) {
  return grey_gas::column(carbon_dioxide, water, mean_beam).emissivity(in_kelvin(gas));
}

/// Share of black radiation from a wall that the gas absorbs. The weights are those of the wall's temperature with
/// the absorption coefficients unchanged, as grey-gas zone methods do; Smith's separate table for absorptivity, which
/// also knows the gas temperature, is not used.
[[nodiscard]] inline Ratio absorptivity(Temperature wall, Pressure carbon_dioxide, Pressure water, Length mean_beam) {
  return grey_gas::column(carbon_dioxide, water, mean_beam).emissivity(in_kelvin(wall));
}

/// Film coefficient of the radiation between gas and wall:
/// sigma (1 + e_w)/2 (e_g Tg^4 - a_g Tw^4)/(Tg - Tw), smooth through Tg = Tw.
/// The wall factor (1 + e_w)/2 is for walls of emissivity above about 0.7 (soot, rust, brick).
/// Source: Hottel, in McAdams (1954); grey gases as above.
[[nodiscard]] inline FilmCoefficient gas_radiation_film(Temperature gas, Temperature wall, Pressure carbon_dioxide,
                                                        Pressure water, Length mean_beam, Ratio wall_emissivity) {
  const double slope = grey_gas::column(carbon_dioxide, water, mean_beam).mean_slope(in_kelvin(gas), in_kelvin(wall));
  return 0.5 * (1.0 + wall_emissivity.value()) * stefan_boltzmann * slope * watt_per_square_metre_kelvin;
}

/// Published temperature range of the grey-gas weights.
[[nodiscard]] inline ValidRange<Temperature> gas_radiation_range() {
  return {kelvins(grey_gas::weights_begin), kelvins(grey_gas::weights_end), "radiation of carbon dioxide and water",
          "Smith, Shen & Friedman 1982"};
}

}  // namespace fluewright
