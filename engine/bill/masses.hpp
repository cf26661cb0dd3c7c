// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the heater weighs, what the bench takes to build, and what the floor has to carry.

#include "engine/layout/design.hpp"
#include "engine/library/citation.hpp"

#include <string>
#include <vector>

namespace fluewright {

/// How much of one material.
struct MaterialAmount {
  std::string material;  ///< id in Library::materials
  Volume volume{};
  Mass mass{};  ///< dry, by the material's density
};

struct MassBill {
  /// Around the flue: benches and walls the gas runs through, the flue's own space taken off, overlaps counted once.
  std::vector<MaterialAmount> around;
  /// The pieces' own walls, layer by layer.
  std::vector<MaterialAmount> walls;

  [[nodiscard]] Mass total() const;
};

/// Everything that is drawn and can be computed. Walls are taken along each piece's flue: floors of chambers, flanges
/// and mortar are not counted. A tee counts its straight run.
[[nodiscard]] MassBill mass_bill(const Design& design, const Library& library);

/// What lies on an area, as a mass and as what presses.
struct SurfaceLoad {
  detail::quotient<Mass, Area> mass{};  ///< [kg/m2]
  Pressure pressure{};
};

/// What stands on the room's floor.
struct FloorLoad {
  Mass mass{};          ///< of all that stands in the room, the stack's indoor part with it
  Area footprint{};     ///< of benches and standing bodies together
  SurfaceLoad spread;   ///< all of it over the footprint
  SurfaceLoad tallest;  ///< under the heaviest mass alone: its height times its density, as if it were solid
};
/// Nothing stands on the floor: all zero. Pieces in the ground, outdoors and in the attic are not counted.
[[nodiscard]] FloorLoad floor_load(const Design& design, const Library& library);

/// Imposed load that dwellings' floors are built for: 40 lb/ft2.
inline constexpr SurfaceLoad usual_floor_allowance{195.3 * kilogram / square_metre, 1.915e3 * pascal};
[[nodiscard]] Citation usual_floor_allowance_source();

/// How an earthen mix is put together: parts by volume of loose stuff, and what a litre of each weighs.
struct CobRecipe {
  Ratio sand = 3.0;  ///< 2-4 to 1 are usual; common practice, no source: make test bricks
  Ratio clay = 1.0;
  Density loose_sand = 1600.0 * kilogram_per_cubic_metre;  ///< dry (from memory)
  Density loose_clay = 1200.0 * kilogram_per_cubic_metre;  ///< crumbled subsoil, dry (from memory)
};

struct CobMix {
  Mass sand{};
  Mass clay{};
  Volume sand_loose{};
  Volume clay_loose{};
};
/// Sand and clay for a dry mass of finished cob; straw weighs next to nothing. A recipe without either gives nothing of
/// it; a recipe of nothing at all gives nothing.
[[nodiscard]] CobMix cob_mix(Mass dry, const CobRecipe& recipe = {});

}  // namespace fluewright
