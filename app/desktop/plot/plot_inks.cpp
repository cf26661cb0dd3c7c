// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plot/plot_inks.hpp"

#include "app/desktop/theme/theme.hpp"

namespace fluewright {

QPen pen_of(LineRole role) {
  const Inks& inks = theme().inks;
  switch (role) {
    case LineRole::flue_pressure:
      return {inks.ink, 2.0};
    case LineRole::room_pressure:
      return {inks.calm, 1.5, Qt::DashLine};
    case LineRole::gas:
      return {inks.accent, 2.0};
    case LineRole::wall:
      return {inks.ink, 1.5, Qt::DashDotLine};
    case LineRole::dew_point:
      return {inks.water, 1.5, Qt::DotLine};
    case LineRole::other_variant:
      return {inks.faint_ink, 1.4, Qt::DashLine};
  }
  return {};
}

QBrush brush_of(LineRole above) {
  const Inks& inks = theme().inks;
  return {above == LineRole::dew_point ? inks.water : inks.accent, Qt::BDiagPattern};
}

}  // namespace fluewright
