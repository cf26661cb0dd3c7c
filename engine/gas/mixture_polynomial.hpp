// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/gas/species_data.hpp"

#include <array>
#include <cmath>

namespace fluewright::gas_data {

/// Heat capacity and sensible enthalpy of a mixture per kilogram. The mixture of NASA polynomials is itself
/// one, with coefficients averaged over the amounts, so nothing is interpolated. Plain SI doubles.
class MixturePolynomial {
 public:
  MixturePolynomial() = default;

  explicit MixturePolynomial(const std::array<double, species_count>& mole_fractions) {
    double mass = 0.0;
    NasaRange low{};
    NasaRange high{};
    for (std::size_t i = 0; i < species_count; ++i) {
      const double y = mole_fractions[i];
      mass += y * gas_data::molar_mass[i];
      for (std::size_t k = 0; k < low.cp.size(); ++k) {
        low.cp[k] += y * nasa[i].low.cp[k];
        high.cp[k] += y * nasa[i].high.cp[k];
      }
    }
    const double per_mass = in(molar_gas_constant, joule_per_mole_kelvin) / mass;
    molar_mass_ = mass;
    low_ = Range(low.cp, per_mass);
    high_ = Range(high.cp, per_mass);
    low_.constant = -low_.enthalpy(in_kelvin(reference_temperature));
    high_.constant = low_.enthalpy(nasa_border) - high_.enthalpy(nasa_border);
  }

  /// [kg/mol]
  [[nodiscard]] double molar_mass() const { return molar_mass_; }
  /// [J/(kg K)]
  [[nodiscard]] double specific_heat(double t) const { return range(t).specific_heat(t); }
  /// [J/kg], zero at 298.15 K
  [[nodiscard]] double specific_enthalpy(double t) const { return range(t).enthalpy(t); }

  /// The temperature [K] at which the sensible enthalpy is h [J/kg], by Newton from a guess: the curve is
  /// nearly straight, so 3 to 5 steps reach the last digit. Steps are kept from halving the temperature more
  /// than once, so a guess far off still arrives.
  [[nodiscard]] double temperature_at(double h, double guess) const {
    double t = guess;
    for (int step = 0; step < 60; ++step) {
      const Range& r = range(t);
      double next = t - (r.enthalpy(t) - h) / r.specific_heat(t);
      if (next < 0.5 * t) {
        next = 0.5 * t;
      }
      const double change = std::abs(next - t);
      t = next;
      if (change <= 1e-9 * t) {
        // Newton squares the error: a last step of 1e-9 leaves 1e-15.
        break;
      }
    }
    return t;
  }

 private:
  struct Range {
    std::array<double, 5> cp{};
    std::array<double, 5> integral{};
    double constant = 0.0;

    Range() = default;
    Range(const std::array<double, 5>& per_r, double scale) {
      for (std::size_t k = 0; k < cp.size(); ++k) {
        cp[k] = per_r[k] * scale;
        integral[k] = cp[k] / static_cast<double>(k + 1);
      }
    }
    [[nodiscard]] double specific_heat(double t) const {
      return cp[0] + t * (cp[1] + t * (cp[2] + t * (cp[3] + t * cp[4])));
    }
    [[nodiscard]] double enthalpy(double t) const {
      const auto& c = integral;
      return constant + t * (c[0] + t * (c[1] + t * (c[2] + t * (c[3] + t * c[4]))));
    }
  };

  [[nodiscard]] const Range& range(double t) const { return t < nasa_border ? low_ : high_; }

  double molar_mass_ = 0.0;
  Range low_;
  Range high_;
};

}  // namespace fluewright::gas_data
