// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/length_curve.hpp"

#include "app/shared/limit_search.hpp"

namespace fluewright::paper {

std::optional<LengthCurve> length_curve(const Dossier& dossier) {
  if (!dossier.complete()) return std::nullopt;
  constexpr std::size_t points = 17;
  const auto answer =
      search_limit({LimitKind::longest_bench, dossier.design(), dossier.library(), Pressure{}, points, {}, {}});
  if (!answer) return std::nullopt;
  LengthCurve curve;
  curve.yours = {std::get<Length>(answer->scale.today), dossier.answer().worst_margin};
  for (const LimitPoint& point : answer->curve) {
    if (point.margin) curve.points.push_back({std::get<Length>(point.x), *point.margin});
  }
  if (answer->found) curve.longest = std::get<Length>(*answer->found);
  return curve;
}

}  // namespace fluewright::paper
