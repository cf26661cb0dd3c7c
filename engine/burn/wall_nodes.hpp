// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/sliced_path.hpp"

#include <cstddef>
#include <vector>

namespace fluewright {

/// How finely a burn is computed.
struct BurnGrid {
  Length slice = 100.0 * millimetre;     ///< longest slice of what rises, falls or stands free
  Length level_slice = 100.0 * millimetre;  ///< longest slice of a run in bench or ground
  std::size_t mass_nodes = 8;            ///< through bench or ground
  std::size_t layer_nodes = 4;           ///< through brick, fibre, wool
  Length first_node = 4.0 * millimetre;  ///< thickness of the node next to the gas in a mass; they widen geometrically

  /// Half the slice, twice the nodes.
  [[nodiscard]] BurnGrid finer() const { return {0.5 * slice, 0.5 * level_slice, 2 * mass_nodes, 2 * layer_nodes, 0.5 * first_node}; }
  /// For maps of many starts. A start is decided by how the first hot gas climbs riser and stack: those stay finely cut, or
  /// their borders move by some kelvin to the wrong side (checked); runs in a bench may be coarse.
  [[nodiscard]] static BurnGrid coarse() { return {100.0 * millimetre, 500.0 * millimetre, 5, 3, 8.0 * millimetre}; }

  [[nodiscard]] Length longest_slice(const Stretch& stretch) const {
    return stretch.place == Place::mass || stretch.place == Place::ground ? level_slice : slice;
  }
};

namespace kernel {

/// One node of a wall and what resists on either side of it, as geometry: divided by the conductivity of its material a
/// resistance [K/W].
struct WallNode {
  double capacity = 0.0;       ///< [J/K]
  double inner = 0.0;          ///< from its inner face to its middle [1/m]
  double outer = 0.0;          ///< from its middle to its outer face [1/m]
  const Material* material = nullptr;
  double gap = 0.0;            ///< beyond its outer face: a layer that holds no heat worth the name [1/m]
  const Material* gap_material = nullptr;
  bool embedding = false;      ///< of bench or ground, not of the flue's own wall
};

/// The nodes of a slice's wall from the gas outwards; at least one. `surface` is the slice's inner surface.
///
/// Each layer is cut by cylinders about the bore; a bench is the cylinder of its own cross-section's area, ground the
/// cylinder that resists as much as its depth. A bench's corners: the published shape factor of a square resists a few
/// percent less than the cylinder, and the outer half of the nodes shares that difference, so that the steady flow is the
/// published one and the first hour that of the cylinder. Sheet up to 5 mm is one node; an air gap is none.
[[nodiscard]] std::vector<WallNode> wall_nodes(const Stretch& stretch, const WallGeometry& wall, Area surface,
                                               const BurnGrid& grid);

/// Thicknesses of `count` nodes that fill `total`, the first `first` thick (or all alike where that is already too much),
/// each so many times the one before.
[[nodiscard]] std::vector<double> widening(double total, double first, std::size_t count);

}  // namespace kernel
}  // namespace fluewright
