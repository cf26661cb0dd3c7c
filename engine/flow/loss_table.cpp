// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/loss_table.hpp"

#include "engine/flow/bends.hpp"
#include "engine/flow/local_loss.hpp"
#include "engine/flow/openings.hpp"
#include "engine/flow/tees.hpp"

#include <array>
#include <cstddef>

namespace fluewright {

Ratio LossTable::at(Ratio argument_value) const {
  const double x = argument_value;
  if (!(x > rows.front().argument)) {
    return rows.front().coefficient;
  }
  for (std::size_t i = 1; i < rows.size(); ++i) {
    if (x < rows[i].argument) {
      const LossRow& a = rows[i - 1];
      const LossRow& b = rows[i];
      return a.coefficient + (b.coefficient - a.coefficient) * (x - a.argument) / (b.argument - a.argument);
    }
  }
  return rows.back().coefficient;
}

bool LossTable::covers(Ratio argument_value) const {
  return argument_value.value() >= rows.front().argument && argument_value.value() <= rows.back().argument;
}

Citation LossTable::citation() const { return {std::string{source}, standing}; }

Citation LossFormula::citation() const { return {std::string{source}, standing}; }

std::span<const LossTable* const> loss_tables() {
  static constexpr std::array tables{&loss::pipe_end_entry,
                                     &loss::bellmouth,
                                     &loss::blade,
                                     &loss::rain_cap_gap,
                                     &loss::mitre,
                                     &loss::mitre_reynolds,
                                     &loss::smooth,
                                     &loss::bend_angle,
                                     &loss::five_piece,
                                     &loss::four_piece,
                                     &loss::three_piece,
                                     &loss::stamped_90,
                                     &loss::stamped_45,
                                     &loss::pleated_90,
                                     &loss::pleated_45,
                                     &loss::five_gore_90,
                                     &loss::three_gore_45,
                                     &loss::rectangular_mitre_90,
                                     &loss::rectangular_mitre_75,
                                     &loss::rectangular_mitre_60,
                                     &loss::rectangular_mitre_45,
                                     &loss::rectangular_mitre_30,
                                     &loss::rectangular_mitre_20};
  return tables;
}

std::span<const LossFormula* const> loss_formulas() {
  static constexpr std::array formulas{&loss::restriction,
                                       &loss::expansion,
                                       &loss::contraction,
                                       &loss::flush_entry,
                                       &loss::exit,
                                       &loss::diffuser,
                                       &loss::reducer,
                                       &loss::plain_cap,
                                       &loss::low_resistance_cap,
                                       &loss::screen,
                                       &loss::firebox_throat,
                                       &loss::joining_branch,
                                       &loss::joining_run,
                                       &loss::dividing_branch,
                                       &loss::dividing_run,
                                       &loss::shut_branch,
                                       &loss::restricted_entry,
                                       &loss::restricted_exit};
  return formulas;
}

}  // namespace fluewright
