// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/gas/gas_table.hpp"
#include "engine/quantities/quantities.hpp"
#include "engine/quantities/temperature.hpp"

namespace fluewright {

/// Diffusivity of water vapour in air at an absolute pressure:
/// 1.87e-10 T^2.072 / p[atm] m2/s for 282-450 K and 2.75e-9 T^1.632 / p[atm] for 450-1070 K, joined where the two
/// cross (450.2 K). Flue gas is taken as air. Source: Marrero & Mason, J. Phys. Chem. Ref. Data 1 (1972) 3,
/// coefficients from memory.
[[nodiscard]] Diffusivity vapour_diffusivity(Temperature t, Pressure absolute);

/// Water that condenses on a colder wall, by the analogy of heat and mass transfer:
/// h_m = h/(rho cp Le^(2/3)), flux = h_m rho_v ln((p - p_wall)/(p - p_bulk)), with the saturation pressure at the
/// wall, Le = a/D and all properties midway between wall and gas. Zero where the wall is above the dew point.
/// Source: Chilton & Colburn analogy with Stefan flow, e.g. Incropera & DeWitt ch. 6 and 14.
/// `convective` is the film without radiation; `vapour_bulk` must be below `total` (absolute).
[[nodiscard]] MassFlux condensing_flux(FilmCoefficient convective, const GasTable& gas, Pressure vapour_bulk,
                                       Pressure total, Temperature wall, Temperature gas_temperature);
[[nodiscard]] MassFlux condensing_flux(FilmCoefficient convective, const GasMixture& gas, Pressure vapour_bulk,
                                       Pressure total, Temperature wall, Temperature gas_temperature);

}  // namespace fluewright
