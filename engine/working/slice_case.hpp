// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/working/retrace.hpp"
#include "engine/working/sheet.hpp"

namespace fluewright {

/// Mean heat capacity between two temperatures, as the enthalpies have it.
[[nodiscard]] SpecificHeat mean_heat(const GasTable& gas, Temperature a, Temperature b);

/// A slice about to be worked: what the walk gave it and its state repeated until nothing changes.
struct SliceCase {
  const Retrace* run = nullptr;
  std::size_t row = 0;
  const Slice* slice = nullptr;
  const Stretch* stretch = nullptr;
  const WallGeometry* wall = nullptr;
  const SliceVisit* visit = nullptr;
  const GasTable* gas = nullptr;  ///< what fills the slice
  bool burnt = false;             ///< flue gas rather than air
  bool by_species = false;        ///< the gas is given by its species; else it is air with its share of vapour
  const RowSource* source = nullptr;  ///< of a path that branches
  bool settled = false;           ///< repeating has come to rest
  SliceHeat heat;

  /// The gas has mixed where branches meet: how the fire made it is not worked here.
  [[nodiscard]] bool mixed() const { return source != nullptr && source->mixed; }
  [[nodiscard]] const SliceSetting& setting() const { return visit->setting; }
  [[nodiscard]] Pressure absolute() const { return run->surround.absolute; }
  /// Of the gas above the inner face, on the settled state.
  [[nodiscard]] TemperatureDifference above_wall() const;
  [[nodiscard]] HeatFlux through() const { return heat.through_wall / slice->surface; }
  /// Whether the wall lies in a mass or in the ground.
  [[nodiscard]] bool embedded() const { return stretch->place == Place::mass || stretch->place == Place::ground; }
};

[[nodiscard]] SliceCase slice_case(const Retrace& run, std::size_t row);

// The parts of a slice's working, in their order. Each needs the ones before it.

/// Absolute pressure, outdoor and room air, the vapour the fire's air brings, the house's suction.
void add_air(Sheet& sheet, const Retrace& run);
/// What the flows are worked from.
enum class FlowFrom {
  excess_air,  ///< air and flue gas from the excess-air ratio
  flue_gas     ///< the excess-air ratio from the flue gas
};
/// Wood, air, flows, heat.
void add_fire(Sheet& sheet, const Retrace& run, FlowFrom from = FlowFrom::excess_air);
/// What the flue gas is made of.
void add_flue_gas(Sheet& sheet, const Retrace& run);
/// What flows in a branch in place of wood, fire and flue gas: it comes mixed.
void add_mixture(Sheet& sheet, const SliceCase& c);
/// Whether the fuel burns at the slice's start.
[[nodiscard]] bool burns_here(const SliceCase& c);
/// The air as it comes to the fire of such a slice.
[[nodiscard]] Temperature before_fire(const SliceCase& c);
/// What the fire makes of the air that reaches it at a temperature.
void add_burning(Sheet& sheet, const Retrace& run, Temperature before);
/// Section, slice, flow, the gas's properties and friction factor.
void add_gas(Sheet& sheet, const SliceCase& c);
/// Film on the inner face.
void add_inner_film(Sheet& sheet, const SliceCase& c);
/// Layers, mass or ground.
void add_wall(Sheet& sheet, const SliceCase& c);
/// Film on the outer face.
void add_outer_film(Sheet& sheet, const SliceCase& c);
/// Overall coefficient, what the gas loses, the temperatures that come of it.
void add_exchange(Sheet& sheet, const SliceCase& c);
/// Losses, buoyancy, gauge.
void add_pressure(Sheet& sheet, const SliceCase& c);
/// Dew point and condensing water.
void add_moisture(Sheet& sheet, const SliceCase& c);

}  // namespace fluewright
