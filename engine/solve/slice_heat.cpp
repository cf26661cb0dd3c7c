// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/slice_heat.hpp"

#include "engine/flow/friction.hpp"
#include "engine/heat/conduction.hpp"
#include "engine/heat/gas_radiation.hpp"
#include "engine/heat/inside_film.hpp"
#include "engine/heat/jet_film.hpp"
#include "engine/heat/outside_film.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fluewright {
namespace {

/// Mean beam length of a long duct, 0.95 D_h (common engineering value for a cylinder of infinite length radiating to
/// its wall).
constexpr double mean_beam_share = 0.95;

FilmCoefficient cubic_sum(FilmCoefficient a, FilmCoefficient b) {
  const double x = in(a, watt_per_square_metre_kelvin);
  const double y = in(b, watt_per_square_metre_kelvin);
  return detail::cube_root(x * x * x + y * y * y) * watt_per_square_metre_kelvin;
}

/// Grashof number times Prandtl number of the gas against the wall, over a length.
struct GasBuoyancy {
  Ratio rayleigh = 0.0;
  Ratio prandtl = 0.7;
  Conductivity conductivity{};
};

GasBuoyancy gas_buoyancy(const SliceHeat& state, const GasTable& gas, Length length, Pressure absolute) {
  const Temperature t = midway(state.mean, state.wall);
  const double dt = std::abs(in(state.mean - state.wall, kelvin));
  const auto nu = gas.viscosity(t) / gas.density(t, absolute);
  const Ratio prandtl = gas.prandtl(t);
  const double cubed = in(standard_gravity * length * length * length / (nu * nu), Ratio(1.0));
  return {cubed * dt / in_kelvin(t) * prandtl.value(), prandtl, gas.conductivity(t)};
}

/// Free convection of the gas along the wall of a chamber: Churchill & Chu's vertical wall with the gas's properties.
FilmCoefficient chamber_film(const SliceHeat& state, const GasTable& gas, Length height, Pressure absolute) {
  const GasBuoyancy b = gas_buoyancy(state, gas, height, absolute);
  return vertical_wall_nusselt(b.rayleigh, b.prandtl) * b.conductivity / height;
}

/// Under a lid: hot gas below a colder plate (McAdams, the plate facing up turned over), joined by the riser's jet.
FilmCoefficient lid_film(const SliceHeat& state, MassFlow flow, const GasTable& gas, const Lid& lid, Pressure absolute) {
  const Length size = 0.25 * lid.across;  // area over perimeter
  const GasBuoyancy b = gas_buoyancy(state, gas, size, absolute);
  const FilmCoefficient free = plate_facing_up_nusselt(b.rayleigh) * b.conductivity / size;
  if (lid.jet_diameter <= Length{}) return free;
  const Length d = lid.jet_diameter;
  const DynamicViscosity mu = gas.viscosity(state.mean);
  const Conductivity k = gas.conductivity(state.mean);
  const Ratio reynolds = 4.0 * flow / (std::numbers::pi * d * mu);
  const Ratio nusselt = jet_nusselt(reynolds, gas.specific_heat(state.mean) * mu / k, 2.0 * (d / lid.across), lid.jet_gap / d);
  return cubic_sum(nusselt * k / d, free);
}

/// A lid sees down into the glowing riser: its mouth is a black opening at the gas's temperature, and the gas feeds what
/// it radiates through `film` on two bores of the riser's wall (chosen). On the lid's surface.
FilmCoefficient mouth_radiation(const SliceHeat& state, FilmCoefficient film, const Lid& lid) {
  if (lid.jet_diameter <= Length{}) return {};
  const Area mouth = 0.25 * std::numbers::pi * lid.jet_diameter * lid.jet_diameter;
  const auto out = radiation_film(1.0, state.mean, state.wall) * mouth;
  const auto fed = film * (8.0 * mouth);  // two bores long: 2 D x pi D = 8 x pi D^2/4
  return out * fed / (out + fed) / lid.surface;
}

void inner_film(SliceHeat& state, MassFlow flow, const GasTable& gas, const SliceSetting& setting,
                const Surround& surround) {
  const Stretch& stretch = *setting.stretch;
  const Length dh = stretch.section.hydraulic_diameter();
  const MassFlux flux = flow / stretch.section.area();
  const DynamicViscosity mu = gas.viscosity(state.mean);
  const Conductivity k = gas.conductivity(state.mean);
  const Ratio prandtl = gas.specific_heat(state.mean) * mu / k;
  state.reynolds = flux * dh / mu;
  state.friction_factor = friction_factor(state.reynolds, stretch.roughness / dh);
  state.nusselt = inside_nusselt(state.reynolds, prandtl, state.friction_factor, setting.diameter_over_run);
  state.convective = state.nusselt * k / dh;
  if (setting.lid) {
    state.convective = lid_film(state, flow, gas, *stretch.lid, surround.absolute);
  } else if (stretch.chamber) {
    state.convective = cubic_sum(
        state.convective, chamber_film(state, gas, setting.wall->upright_height, surround.absolute));
  }
  state.film = state.convective;
  if (setting.flue_gas) {
    state.film += gas_radiation_film(state.mean, state.wall, setting.co2, setting.h2o, mean_beam_share * dh,
                                     soot_emissivity);
    if (setting.lid) state.film += mouth_radiation(state, state.film, *stretch.lid);
  }
}

FilmCoefficient outer_film(const SliceHeat& state, const SliceSetting& setting, const Surround& surround) {
  const WallGeometry& wall = *setting.wall;
  if (setting.stretch->place == Place::jacket) {
    return setting.jacket_film;
  }
  FilmCoefficient film{};
  if (setting.lid) {
    film = plate_facing_up_film(0.25 * setting.stretch->lid->across, state.surface, setting.beyond, surround.absolute);
  } else if (setting.stretch->place == Place::mass) {
    film = plate_facing_up_film(wall.seat_size, state.surface, setting.beyond, surround.absolute);
  } else if (setting.stretch->stands_upright) {
    film = vertical_wall_film(wall.upright_height, state.surface, setting.beyond, surround.absolute);
  } else {
    film = horizontal_cylinder_film(wall.outside_diameter, state.surface, setting.beyond, surround.absolute);
  }
  if (setting.stretch->place == Place::outdoors && surround.wind > Velocity{}) {
    film = cubic_sum(film, cross_flow_film(wall.outside_diameter, state.surface, setting.beyond, surround.absolute,
                                           surround.wind));
  }
  return film + radiation_film(wall.outer_emissivity, state.surface, setting.beyond);
}

/// From the inner face outwards, all on the inner surface.
struct Beyond {
  ThermalResistance layers{};
  ThermalResistance embedding{};
  ThermalResistance film{};
  [[nodiscard]] ThermalResistance all() const { return layers + embedding + film; }
};

Beyond steady_resistance(const SliceHeat& state, const SliceSetting& setting, const Surround& surround) {
  const WallGeometry& wall = *setting.wall;
  Beyond r;
  const bool embedded = setting.stretch->place == Place::mass || setting.stretch->place == Place::ground;
  // Walls in free air see the whole drop; in a mass the drop is in the mass and the pipe is as warm as its face.
  const Temperature layer_level = embedded ? state.wall : midway(state.wall, state.surface);
  for (const WallGeometry::Layer& layer : wall.layers) {
    r.layers += layer.spread / layer.material->conductivity(layer_level);
  }
  if (embedded) {
    r.embedding = wall.embedding_spread / setting.stretch->embedding.material->conductivity(midway(state.wall, state.surface));
  }
  if (setting.stretch->place != Place::ground) {  // the ground's film is in its cover
    const Ratio share = setting.stretch->place == Place::mass ? wall.seat_share : wall.outer_share;
    r.film = 1.0 / (outer_film(state, setting, surround) * share);
  }
  return r;
}

/// The part of a wall that takes up heat while it is cold.
struct Uptake {
  ArealHeatCapacity skin{};                  ///< thin layers, per inner surface
  std::optional<ThermalResistance> into;     ///< into the first thick layer or the mass, at the age
};

Uptake uptake(const SliceHeat& state, const SliceSetting& setting, Time age) {
  const WallGeometry& wall = *setting.wall;
  Uptake u;
  Length d = wall.bore;
  for (const WallGeometry::Layer& layer : wall.layers) {
    const Material& m = *layer.material;
    if (layer.thickness > thin_layer) {
      u.into = penetration_resistance(0.5 * d, m.conductivity(state.wall), m.diffusivity(state.wall), age) *
               (wall.bore / d);
      return u;
    }
    u.skin += m.density * m.specific_heat * layer.thickness * (d / wall.bore);
    d += 2.0 * layer.thickness;
  }
  const Place place = setting.stretch->place;
  if (place == Place::mass || place == Place::ground) {
    const Material& m = *setting.stretch->embedding.material;
    u.into = penetration_resistance(0.5 * d, m.conductivity(state.wall), m.diffusivity(state.wall), age) *
             (wall.bore / d);
  }
  return u;
}

/// Overall coefficient and the level it works towards.
struct Coupling {
  FilmCoefficient overall{};
  Temperature towards;
  ThermalResistance outer{};  ///< film on the outer face
};

Coupling couple(const SliceHeat& state, const SliceSetting& setting, const Surround& surround, WallAge age) {
  const Beyond steady = steady_resistance(state, setting, surround);
  if (!age) {
    return {1.0 / (1.0 / state.film + steady.all()), setting.beyond, steady.film};
  }
  const Uptake u = uptake(state, setting, *age);
  const bool still_soaking = u.into && *u.into < steady.all();
  const ThermalResistance behind = still_soaking ? *u.into : steady.all();
  const FilmCoefficient back = 1.0 / behind;
  const Ratio warmed =
      u.skin > ArealHeatCapacity{} ? thin_wall_warmed_share(*age, state.film + back, u.skin) : Ratio(1.0);
  return {state.film * (1.0 - warmed * (state.film / (state.film + back))),
          still_soaking ? setting.rest : setting.beyond, still_soaking ? ThermalResistance{} : steady.film};
}

/// First guess: wall and surface come down with the gas, in proportion, from the slice before.
void foresee(SliceHeat& state, Temperature mean, Temperature level) {
  const TemperatureDifference before = state.mean - level;
  if (std::abs(before.value()) > 1.0) {
    const Ratio share = (mean - level) / before;
    state.wall = level + share * (state.wall - level);
    state.surface = level + share * (state.surface - level);
  }
  state.mean = mean;
}

}  // namespace

void heat_slice(SliceHeat& state, Temperature t_in, MassFlow flow, const GasTable& gas, const Slice& slice,
                const SliceSetting& setting, const Surround& surround, WallAge age, Power gained, int rounds) {
  const SpecificEnergy h_in = gas.specific_enthalpy(t_in);
  foresee(state, setting.beyond + state.kept * (t_in - setting.beyond), setting.beyond);
  for (int round = 0; round < rounds; ++round) {
    inner_film(state, flow, gas, setting, surround);
    const Coupling c = couple(state, setting, surround, age);
    state.overall = c.overall;

    // Heat gained from elsewhere shifts the level the gas tends to.
    const auto conductance = c.overall * slice.surface;
    const Temperature level = c.towards + gained / conductance;
    const TemperatureDifference above = t_in - level;
    const bool apart = std::abs(above.value()) > 1e-3;
    const SpecificHeat cp = apart ? SpecificHeat((h_in - gas.specific_enthalpy(level)) / above) : gas.specific_heat(t_in);
    const double ntu = (conductance / (flow * cp)).value();
    const double fallen = -std::expm1(-ntu);
    const Power lost = flow * cp * above * fallen;
    state.through_wall = lost + gained;
    state.kept = ntu > 1e-6 ? fallen / ntu : 1.0 - 0.5 * ntu;
    state.mean = level + above * state.kept;

    const HeatFlux through = state.through_wall / slice.surface;
    state.wall = state.mean - through / state.film;
    state.surface = c.towards + through * c.outer;
    if (round + 1 == rounds) {
      state.out = gas.temperature_at(h_in - lost / flow, t_in - above * fallen);
    }
  }
}

}  // namespace fluewright
