// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/cut_watch.hpp"

namespace fluewright {

void CutWatch::see(const BurnRow& row) {
  const bool wanted = row.wanted > MassFlow{};
  const bool enough_burns = row.burning >= rules_->starved_below * row.wanted &&
                            (!wanted || row.excess_air_ratio >= rules_->starved_under);
  if (row.at <= cut_at_) {
    run_->drew_before = row.forward && enough_burns && row.smoke <= rules_->puff;
    run_->fire_before = row.fire;
    smoke_before_ = row.smoke;
    return;
  }
  const Time since = row.at - cut_at_;
  run_->smoke = row.smoke - smoke_before_;
  if (!wanted) return;  // what an empty feed's draft does harms nobody
  if (!row.forward && !run_->reverses) run_->reverses = since;
  if (enough_burns) {
    run_->starves.reset();
  } else if (!run_->starves) {
    run_->starves = since;
  }
}

void CutWatch::conclude() { run_->holds = !run_->starves && !run_->reverses && run_->smoke <= rules_->puff; }

}  // namespace fluewright
