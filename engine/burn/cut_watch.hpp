// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/burn/power_cut.hpp"

namespace fluewright {

/// Looks on while the mains fail: the one place that says what starving and turning are, for a standard start and for a
/// time line alike.
class CutWatch {
 public:
  CutWatch(Time cut_at, const PowerCutRules& rules, PowerCutRun& run) : cut_at_{cut_at}, rules_{&rules}, run_{&run} {}

  /// After every step.
  void see(const BurnRow& row);
  /// After the last one.
  void conclude();

 private:
  Time cut_at_;
  const PowerCutRules* rules_;
  PowerCutRun* run_;
  Mass smoke_before_{};
};

}  // namespace fluewright
