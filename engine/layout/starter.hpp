// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/edit.hpp"

#include <string>

namespace fluewright {

enum class BenchShape { straight, l_shape, u_shape, serpentine };
enum class StackPlace {
  inside,  ///< up from where the bench run ends, through the roof
  outside  ///< from there through the wall, and up along the house
};

/// What a person is asked before a first path stands on the desk.
struct StarterAnswers {
  Length bore = 150.0 * millimetre;  ///< 100 to 250 mm
  BenchShape shape = BenchShape::u_shape;
  Length bench = 4.0 * metre;        ///< of straight flue in the bench, all passes together; 1 to 15 m
  StackPlace stack = StackPlace::inside;
  Length top = 4.5 * metre;          ///< of the stack above the room's floor; 3.5 to 12 m
};

/// The catalogue types a starter is built of.
struct StarterTypes {
  std::string feed = "feed_tube";
  std::string tunnel = "burn_tunnel";
  std::string riser = "heat_riser";
  std::string barrel = "barrel";
  std::string manifold = "manifold";
  std::string run = "bench_pipe";
  std::string bend = "bench_elbow";
  std::string tee = "cleanout_tee";
  std::string tee_cap = "cleanout_cap";
  std::string pipe = "stovepipe";
  std::string stack = "stack_insulated";
  std::string roof = "roof_passage";
  std::string thimble = "thimble";
  std::string cap = "cap_rain";
};

/// A complete path by the answers: feed, tunnel, riser and barrel in the usual proportions to the bore, the bench, the
/// stack. Common practice, no source: feed and tunnel square with the riser's area; tunnel four bores long, riser seven
/// high, barrel a 200-litre drum; passes two bores and a hand apart. Site and weather are those of a new design; house
/// height and neutral plane follow the stack. Refused as out_of_range outside the ranges above, as too_short where the
/// stack would end below the roof.
[[nodiscard]] EditResult starter_path(const Library&, const StarterAnswers&, const StarterTypes& types = {});

}  // namespace fluewright
