// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/assessment.hpp"

#include <string>

namespace fluewright {

/// A branch as one speaks of it, the way its gas runs.
struct BranchWords {
  std::string name;  ///< of the piece that makes it: "Bypass link"; of the main path "main path"
  std::string from;  ///< "room", "outdoors", or the piece in which it leaves the others
  std::string to;
};
[[nodiscard]] BranchWords branch_words(const Assessment&, const BranchState&, const Design&, const Library&);

/// "forward, stable"; "backward, will not last".
[[nodiscard]] std::string state_words(const OperatingPoint&);

}  // namespace fluewright
