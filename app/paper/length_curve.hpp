// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/dossier.hpp"

#include <optional>
#include <vector>

namespace fluewright::paper {

struct LengthPoint {
  Length bench{};     ///< of all bench runs together
  Pressure margin{};  ///< draft to spare at the worst bench age
};

/// How the draft to spare falls as the bench gets longer: the limit of the longest bench that draws at all, for a picture.
struct LengthCurve {
  LengthPoint yours;
  std::vector<LengthPoint> points;  ///< rising in length
  std::optional<Length> longest;    ///< where the margin goes through zero; nothing where it does so nowhere on the curve
};

/// Nothing where the path is not complete or has no bench run.
[[nodiscard]] std::optional<LengthCurve> length_curve(const Dossier& dossier);

}  // namespace fluewright::paper
