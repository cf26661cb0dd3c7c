// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/gas/gas_table.hpp"
#include "engine/solve/sliced_path.hpp"
#include "engine/solve/surround.hpp"

#include <optional>

namespace fluewright {

/// How warm the walls are when the march is made: at rest with the flow (nothing), or so long after lighting.
using WallAge = std::optional<Time>;

/// Layers up to here warm through in one piece within minutes: sheet metal, not brick (chosen; 5 mm of clay: Bi < 0.1).
inline constexpr Length thin_layer = 5.0 * millimetre;

/// A flue that has burnt wood is lined with soot, whatever it is made of (common practice, no source).
inline constexpr double soot_emissivity = 0.9;

/// The gas in a slice and what the slice does to it.
struct SliceHeat {
  // carried from slice to slice as the first guess
  Temperature wall;
  Temperature surface;
  Ratio kept = 1.0;           ///< mean over entering excess temperature of the last slice, 0 to 1

  Temperature mean;           ///< gas, log-mean over the slice
  Temperature out;
  Ratio reynolds = 0.0;
  Ratio friction_factor = 0.0;
  Ratio nusselt = 0.0;
  FilmCoefficient convective{};
  FilmCoefficient film{};     ///< convective + radiative
  FilmCoefficient overall{};
  Power through_wall{};       ///< leaving through the wall
};

/// What the slice stands in.
struct SliceSetting {
  const Stretch* stretch = nullptr;
  const WallGeometry* wall = nullptr;
  Ratio diameter_over_run = 0.0;
  Temperature beyond;             ///< level the wall loses heat to
  Temperature rest;               ///< level the wall stood at before lighting
  FilmCoefficient jacket_film{};  ///< Place::jacket: film on the outside of the riser
  bool lid = false;               ///< the slice is the stretch's lid
  bool flue_gas = false;          ///< carries the fire's gas: CO2 and H2O radiate
  Pressure co2{};                 ///< partial pressures of the radiating gases
  Pressure h2o{};
};

/// One slice: inner film (forced, free in a chamber, gas radiation), wall, mass or ground, outer film; then the
/// exponential approach of the gas to `beyond`, in enthalpy so that energy closes:
///   q = m (h(T_in) - h(T_b)) (1 - exp(-UA/(m c))),  c = (h(T_in) - h(T_b))/(T_in - T_b).
/// `gained` is heat put into the gas from elsewhere (a riser within the chamber). The number of fixed-point rounds is
/// given, not a tolerance, so that the march is a smooth function of the flow. `state` holds the guess and the result.
void heat_slice(SliceHeat& state, Temperature in, MassFlow flow, const GasTable& gas, const Slice& slice,
                const SliceSetting& setting, const Surround& surround, WallAge age, Power gained, int rounds);

}  // namespace fluewright
