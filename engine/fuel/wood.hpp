// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"

namespace fluewright {

/// What a wood is made of: mass fractions of the dry, ash-free substance, its ash, and its heating value.
struct WoodAnalysis {
  Ratio carbon = 0.50;
  Ratio hydrogen = 0.062;
  Ratio oxygen = 0.435;
  Ratio nitrogen = 0.003;
  /// Ash per mass of dry wood.
  Ratio ash = 0.005;
  /// Net heating value of the dry, ash-free substance, water formed staying vapour, at 25 degC.
  SpecificEnergy net_heating_value_daf = 18.9e6 * joule_per_kilogram;
};

/// A wood as it goes into the fire.
struct WoodFuel {
  WoodAnalysis analysis;
  /// Water per mass of wood as fired (wet basis), 0 to below 1.
  Ratio moisture = 0.18;
  /// Share of the heat that leaves unburned (carbon monoxide, soot, charcoal in the ash). It is taken off the
  /// heat and not off the flow.
  Ratio unburned_share = 0.03;
};

/// Heat that evaporating a kilogram of water at 25 degC takes: 2.443 MJ/kg (ISO 1928 / ISO 18125).
inline constexpr SpecificEnergy evaporation_heat = 2.443e6 * joule_per_kilogram;

/// Dry, ash-free substance per kilogram of wood as fired.
[[nodiscard]] Ratio combustible_share(const WoodFuel& fuel);

/// Net heating value per kilogram as fired: H_daf (1-w)(1-ash) - 2.443 MJ/kg w.
/// Before the unburned share is taken off. Source: ISO 18125 conversion between bases.
[[nodiscard]] SpecificEnergy net_heating_value(const WoodFuel& fuel);

/// Gross heating value of dry wood from its ultimate analysis, mass fractions of dry wood:
/// 34.91 C + 117.83 H - 10.34 O - 1.51 N - 2.11 ash MJ/kg (sulphur neglected).
/// Source: Channiwala & Parikh, Fuel 81 (2002) 1051. A check of net_heating_value_daf, not an input.
[[nodiscard]] SpecificEnergy gross_heating_value_from_analysis(const WoodAnalysis& analysis);

/// The dry, ash-free net heating value that the analysis implies by Channiwala & Parikh: gross value less the
/// evaporation of the water formed from the hydrogen.
[[nodiscard]] SpecificEnergy net_heating_value_daf_from_analysis(const WoodAnalysis& analysis);

}  // namespace fluewright
