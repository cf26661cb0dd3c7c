// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/moisture/saturation.hpp"

#include <boost/math/tools/roots.hpp>

#include <cmath>
#include <cstdint>
#include <limits>
#include <utility>

namespace fluewright {

namespace {

// IAPWS-IF97, Table 34, n1 to n10.
constexpr double n1 = 1167.0521452767;
constexpr double n2 = -724213.16703206;
constexpr double n3 = -17.073846940092;
constexpr double n4 = 12020.824702470;
constexpr double n5 = -3232555.0322333;
constexpr double n6 = 14.915108613530;
constexpr double n7 = -4823.2657361591;
constexpr double n8 = 405113.40542057;
constexpr double n9 = -0.23855557567849;
constexpr double n10 = 650.17534844798;

constexpr double triple_temperature = 273.16;     // [K]
constexpr double triple_pressure = 611.657;       // [Pa]
constexpr double critical_temperature = 647.096;  // [K]
constexpr double coldest = 50.0;                  // [K] lower end of the sublimation equation

double pressure_over_water(double t) {
  const double v = t + n9 / (t - n10);
  const double a = v * v + n1 * v + n2;
  const double b = n3 * v * v + n4 * v + n5;
  const double c = n6 * v * v + n7 * v + n8;
  const double root = 2.0 * c / (-b + std::sqrt(b * b - 4.0 * a * c));
  return 1e6 * root * root * root * root;
}

double temperature_over_water(double p) {
  const double beta2 = std::sqrt(p * 1e-6);
  const double beta = std::sqrt(beta2);
  const double e = beta2 + n3 * beta + n6;
  const double f = n1 * beta2 + n4 * beta + n7;
  const double g = n2 * beta2 + n5 * beta + n8;
  const double d = 2.0 * g / (-f - std::sqrt(f * f - 4.0 * e * g));
  return 0.5 * (n10 + d - std::sqrt((n10 + d) * (n10 + d) - 4.0 * (n9 + n10 * d)));
}

/// ln(p/p_triple) over ice and its derivative by temperature [1/K]. IAPWS R14-08(2011) eq. 6.
std::pair<double, double> log_pressure_over_ice(double t) {
  constexpr double a[] = {-0.212144006e2, 0.273203819e2, -0.610598130e1};
  constexpr double b[] = {0.333333333e-2, 0.120666667e1, 0.170333333e1};
  const double theta = t / triple_temperature;
  double sum = 0.0;
  double derivative = 0.0;
  for (int i = 0; i < 3; ++i) {
    const double term = a[i] * std::pow(theta, b[i] - 1.0);
    sum += term;
    derivative += (b[i] - 1.0) * term / theta;
  }
  return {sum, derivative / triple_temperature};
}

double temperature_over_ice(double p) {
  const double wanted = std::log(p / triple_pressure);
  if (!(wanted > log_pressure_over_ice(coldest).first)) {
    return coldest;
  }
  const double guess = 1.0 / (1.0 / triple_temperature - wanted / 6140.0);  // Clausius-Clapeyron over ice
  std::uintmax_t steps = 60;
  return boost::math::tools::newton_raphson_iterate(
      [wanted](double t) {
        const auto [value, derivative] = log_pressure_over_ice(t);
        return std::make_pair(value - wanted, derivative);
      },
      guess, coldest, triple_temperature + 0.01, 50, steps);
}

}  // namespace

Pressure saturation_pressure(Temperature t) {
  const double kelvin_t = in_kelvin(t);
  if (kelvin_t < triple_temperature) {
    return triple_pressure * std::exp(log_pressure_over_ice(kelvin_t).first) * pascal;
  }
  if (kelvin_t > critical_temperature) {
    return std::numeric_limits<double>::infinity() * pascal;
  }
  return pressure_over_water(kelvin_t) * pascal;
}

Temperature dew_point(Pressure vapour) {
  const double p = in(vapour, pascal);
  return kelvins(p < triple_pressure ? temperature_over_ice(p) : temperature_over_water(p));
}

ValidRange<Temperature> saturation_range() {
  return {kelvins(coldest), kelvins(critical_temperature), "saturation pressure of water",
          "IAPWS-IF97 region 4; IAPWS R14-08(2011) over ice"};
}

}  // namespace fluewright
