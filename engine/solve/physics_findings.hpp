// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/assessment.hpp"
#include "engine/solve/network_march.hpp"

namespace fluewright {

/// What the numbers say that a builder should hear: smoke into the room, wet walls, too little or too much air, a state
/// that runs backwards.
void add_physics_findings(Assessment& assessment, const Design& design);

/// A mass narrower than its pipe, a material or a relation outside its published temperatures: on a path without
/// branches, and in all branches of a network.
void say_about_walls(Assessment& assessment, const Design& design, const SlicedPath& path);
void say_about_walls(Assessment& assessment, const Design& design, const SlicedNetwork& network);

/// What side branches do that a builder should hear: smoke that comes out into the room, a way in that blows out, room
/// air drawn into the stack, a regulator's flap that stands open.
void say_about_branches(Assessment& assessment, const Design& design);

}  // namespace fluewright
