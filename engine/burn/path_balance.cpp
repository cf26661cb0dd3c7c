// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/path_balance.hpp"

namespace fluewright::kernel {

PathBalance path_balance(const BurnEquations& equations) {
  PathBalance sum;
  const BranchNow* before = nullptr;
  for (const std::size_t b : equations.cells().main_path) {
    const BranchNow& now = equations.branches_now()[b];
    if (before == nullptr) {
      sum.from = now.from;
    } else {
      sum.resistance += before->to - now.from;
    }
    const double way = now.forward ? 1.0 : -1.0;
    sum.buoyancy += now.buoyancy;
    sum.fan += now.fan;
    sum.resistance += way * now.resistance;
    sum.acceleration += way * now.acceleration;
    before = &now;
  }
  if (before != nullptr) sum.to = before->to;
  return sum;
}

}  // namespace fluewright::kernel
