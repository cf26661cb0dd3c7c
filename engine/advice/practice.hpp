// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The limits that the findings hold a design against, each with its source: all of them stand in practice.cpp.

#include "engine/layout/finding.hpp"
#include "engine/library/citation.hpp"
#include "engine/quantities/quantities.hpp"
#include "engine/quantities/temperature.hpp"

namespace fluewright {

/// A limit and where it comes from.
template <class Quantity>
struct Limit {
  Quantity value;
  Citation citation;
};

/// All limits of practice.
struct Practice {
  Limit<Pressure> marginal;              ///< margin under which a path that draws is called marginal
  Limit<Ratio> choke_over;               ///< excess-air ratio over which the inlet is open too far
  Limit<Temperature> exit_hottest;       ///< gas at the cap
  Limit<Pressure> house_suction;         ///< depressurisation of the house by exhaust
  Limit<Ratio> area_share;               ///< section over the system's section, under which it narrows
  Limit<Ratio> level_slope;              ///< rise per run under which a run counts as level
  Limit<Length> over_the_roof;           ///< chimney top over the roof where it comes through
  Limit<Length> over_the_near;           ///< chimney top over what stands near it
  Limit<Length> single_wall_clearance;
  Limit<Length> drum_clearance;
  Limit<Length> masonry_clearance;       ///< around masonry and masses of earth
  Limit<Length> layered_pipe_clearance;  ///< around pipe of several layers, where its maker says nothing else
  Limit<Length> thin_wall;               ///< metal no thicker than this counts as a single wall
  Limit<Angle> brush_turns;              ///< turning after which a brush goes no further
  Limit<Velocity> gas_fastest;
  Limit<Velocity> gas_slowest;
  Limit<Temperature> seat_hottest;
};

[[nodiscard]] const Practice& practice();

/// What a finding rests on: the source of its limit, or of the relation behind it.
[[nodiscard]] const Citation& finding_source(FindingCode code);

}  // namespace fluewright
