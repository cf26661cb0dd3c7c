// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"

namespace fluewright {

/// Nusselt number, over the nozzle's diameter D, of a round jet that strikes a plate square on, mean over a disc of
/// radius r, the plate H from the nozzle:
/// Nu = Pr^0.42 (D/r) (1 - 1.1 D/r) / (1 + 0.1 (H/D - 6) D/r) x 2 sqrt(Re (1 + 0.005 Re^0.55)),
/// 2000 < Re < 4e5, 2.5 < r/D < 7.5, 2 < H/D < 12.
/// A riser under a barrel's lid stands nearer (H/D about 0.3) and the lid is smaller (r/D about 2): the relation is
/// stretched there, and jet_within_range() says so. Its mean turns at D/r = 1/2.2 and would fall below zero on a still
/// smaller lid, where the true mean cannot be less: such a lid has the value of the turn (chosen).
/// Source: Martin, Adv. Heat Transfer 13 (1977) 1, in Incropera & DeWitt ch. 7 (single round nozzle); from memory.
[[nodiscard]] Ratio jet_nusselt(Ratio reynolds, Ratio prandtl, Ratio diameter_over_radius, Ratio gap_over_diameter);

/// D/r at which the relation turns: the root of d/dx (x - 1.1 x^2).
inline constexpr double jet_smallest_spread = 1.0 / 2.2;

[[nodiscard]] bool jet_within_range(Ratio reynolds, Ratio diameter_over_radius, Ratio gap_over_diameter);

}  // namespace fluewright
