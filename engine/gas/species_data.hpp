// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The numbers behind species.hpp, in plain SI doubles, for the engine's gas room only.

#include "engine/gas/species.hpp"

#include <array>
#include <cmath>

namespace fluewright::gas_data {

/// Border between the two ranges of a NASA 7-coefficient polynomial [K].
inline constexpr double nasa_border = 1000.0;

/// One range of a NASA 7-coefficient polynomial without the entropy constant: cp/R = a1 + a2 T + ... + a5 T^4,
/// h/R = a1 T + a2 T^2/2 + ... + a5 T^5/5 + a6 [K].
struct NasaRange {
  std::array<double, 5> cp;
  double a6;

  [[nodiscard]] constexpr double heat_capacity(double t) const {
    return cp[0] + t * (cp[1] + t * (cp[2] + t * (cp[3] + t * cp[4])));
  }
  [[nodiscard]] constexpr double enthalpy(double t) const {
    return a6 + t * (cp[0] + t * (cp[1] / 2.0 + t * (cp[2] / 3.0 + t * (cp[3] / 4.0 + t * (cp[4] / 5.0)))));
  }
};

struct Nasa {
  NasaRange low;
  NasaRange high;
};

/// Joins the ranges: the upper enthalpy constant is set so that both give the same enthalpy at the border.
constexpr Nasa joined(Nasa n) {
  n.high.a6 += n.low.enthalpy(nasa_border) - n.high.enthalpy(nasa_border);
  return n;
}

/// NASA TM-4513 (1993), order of Species.
inline constexpr std::array<Nasa, species_count> nasa{
    joined({{{3.53100528, -1.23660987e-04, -5.02999437e-07, 2.43530612e-09, -1.40881235e-12}, -1046.97628},
            {{2.95257626, 1.39690057e-03, -4.92631691e-07, 7.86010367e-11, -4.60755321e-15}, -923.948645}}),
    joined({{{3.78245636, -2.99673415e-03, 9.847302e-06, -9.68129508e-09, 3.24372836e-12}, -1063.94356},
            {{3.66096083, 6.56365523e-04, -1.41149485e-07, 2.05797658e-11, -1.29913248e-15}, -1215.97725}}),
    joined({{{2.35677352, 8.98459677e-03, -7.12356269e-06, 2.45919022e-09, -1.43699548e-13}, -4.83719697e+04},
            {{4.63659493, 2.74131991e-03, -9.95828531e-07, 1.60373011e-10, -9.16103468e-15}, -4.90249341e+04}}),
    joined({{{4.19864056, -2.0364341e-03, 6.52040211e-06, -5.48797062e-09, 1.77197817e-12}, -3.02937267e+04},
            {{2.67703787, 2.97318329e-03, -7.7376969e-07, 9.44336689e-11, -4.26900959e-15}, -2.98858938e+04}}),
    joined({{{2.5, 0.0, 0.0, 0.0, 0.0}, -745.375}, {{2.5, 0.0, 0.0, 0.0, 0.0}, -745.375}}),
    joined({{{3.57953347, -6.1035368e-04, 1.01681433e-06, 9.07005884e-10, -9.04424499e-13}, -1.4344086e+04},
            {{3.04848583, 1.35172818e-03, -4.85794075e-07, 7.88536486e-11, -4.69807489e-15}, -1.42661171e+04}})};

/// Molar masses [kg/mol], order of Species.
inline constexpr std::array<double, species_count> molar_mass{28.0134e-3,  31.9988e-3, 44.0095e-3,
                                                              18.01528e-3, 39.948e-3,  28.0101e-3};

/// A Perry transport fit C1 T^C2 / (1 + C3/T + C4/T^2) and the range it was made for [K].
struct TransportFit {
  double c1, c2, c3, c4;
  double low, high;

  [[nodiscard]] double at(double t) const { return c1 * std::pow(t, c2) / (1.0 + c3 / t + c4 / (t * t)); }
};

/// Perry 8e Table 2-312, vapour viscosity [Pa s], order of Species.
inline constexpr std::array<TransportFit, species_count> viscosity{{{6.5592e-7, 0.6081, 54.714, 0.0, 63.15, 1970.0},
                                                                    {1.101e-6, 0.5634, 96.3, 0.0, 80.0, 1500.0},
                                                                    {2.148e-6, 0.46, 290.0, 0.0, 194.67, 1500.0},
                                                                    {1.7096e-8, 1.1146, 0.0, 0.0, 273.16, 1073.15},
                                                                    {9.2121e-7, 0.60529, 83.24, 0.0, 83.78, 3273.1},
                                                                    {1.1127e-6, 0.5338, 94.7, 0.0, 68.15, 1250.0}}};

/// Perry 8e Table 2-314, vapour thermal conductivity [W/(m K)], order of Species.
inline constexpr std::array<TransportFit, species_count> conductivity{
    {{3.3143e-4, 0.7722, 16.323, 373.72, 63.15, 2000.0},
     {4.4994e-4, 0.7456, 56.699, 0.0, 80.0, 2000.0},
     {3.69, -0.3838, 964.0, 1.86e6, 194.67, 1500.0},
     {6.2041e-6, 1.3973, 0.0, 0.0, 273.16, 1073.15},
     {6.33e-4, 0.6221, 70.0, 0.0, 90.0, 3273.1},
     {5.9882e-4, 0.6863, 57.13, 501.92, 70.0, 1500.0}}};

/// Wilke's interaction factor phi_ij from the viscosities and molar masses of i and j.
/// Source: Wilke, J. Chem. Phys. 18 (1950) 517.
[[nodiscard]] inline double wilke_factor(double mu_i, double mu_j, double m_i, double m_j) {
  const double s = 1.0 + std::sqrt(mu_i / mu_j * std::sqrt(m_j / m_i));
  return s * s / std::sqrt(8.0 * (1.0 + m_i / m_j));
}

}  // namespace fluewright::gas_data
