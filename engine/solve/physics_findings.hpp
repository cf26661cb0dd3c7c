// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/assessment.hpp"
#include "engine/solve/sliced_path.hpp"

namespace fluewright {

/// What the numbers say that a builder should hear: smoke into the room, wet walls, too little or too much air, a state
/// that runs backwards, a mass narrower than its pipe, a material or a
/// relation outside its published temperatures.
void add_physics_findings(Assessment& assessment, const Design& design, const SlicedPath& path);

}  // namespace fluewright
