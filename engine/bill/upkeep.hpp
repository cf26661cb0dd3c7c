// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the builder must leave room for and the owner must come back to: openings for the brush, low places, points for
// gauges.

#include "engine/layout/path.hpp"

#include <optional>
#include <vector>

namespace fluewright {

/// Where a brush goes in.
enum class AccessKind {
  mouth,  ///< the feed's open mouth or the fire door
  lid,    ///< a barrel's lid, lifted off
  cover,  ///< a cleanout: a port that is shut by a cap or stays shut
  top     ///< the stack's head, from the roof
};

struct Access {
  AccessKind kind{};
  std::size_t piece = 0;  ///< index in Design::pieces
  Length s{};             ///< along the main path from its inlet, as drawn
};

/// The flue between two openings, to be swept from either.
struct SweptLength {
  Access from;
  Access to;
  Length length{};
  std::size_t turns = 0;  ///< pieces on the way that turn the brush by more than 20 degrees (chosen)
};

/// A place on the main path behind the fire that lies lower than what comes before and after: water gathers there.
struct LowPlace {
  std::size_t first = 0;  ///< index in Design::pieces
  std::size_t last = 0;   ///< the same piece, or the last of a level stretch
  Length height{};        ///< of the axis above the floor
  bool opens = false;     ///< a cleanout lies on it
};

/// A level run that was given a slope.
struct Slope {
  std::size_t piece = 0;
  Ratio rise_per_run = 0.0;  ///< > 0: climbs along the gas
};

/// Where a gauge or a probe tells most.
enum class GaugePlace { into_the_bench, out_of_the_bench, foot_of_the_stack };
struct GaugePoint {
  GaugePlace place{};
  std::size_t piece = 0;  ///< in the middle of it
  Position at;
};

struct Upkeep {
  std::vector<Access> accesses;      ///< along the path
  std::vector<SweptLength> lengths;  ///< between them
  std::vector<LowPlace> low_places;
  std::vector<Slope> slopes;
  std::vector<GaugePoint> gauges;
};

[[nodiscard]] Upkeep upkeep(const Design& design, const Library& library);

}  // namespace fluewright
