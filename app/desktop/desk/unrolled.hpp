// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/path.hpp"

#include <vector>

namespace fluewright {

/// The geometries as they stand when the path is rolled out into one upright plane: what lies along the floor goes on to
/// the east however it turned, heights stay. What hangs on the path goes on from where it hangs; what is joined to
/// nothing stands beyond the path's end. In the order of Design::pieces.
[[nodiscard]] std::vector<PieceGeometry> unrolled(const Design& design, const TracedPath& path,
                                                  const std::vector<PieceGeometry>& geometries);

}  // namespace fluewright
