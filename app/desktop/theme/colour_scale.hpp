// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/theme/inks.hpp"
#include "app/desktop/theme/lab.hpp"

#include <QColor>

#include <cstddef>
#include <span>
#include <vector>

namespace fluewright {

/// Colours along a share from 0 to 1. A scale is a line through points of CIE L*a*b* walked at an even pace, so that
/// equal steps of the share look equally different (Delta E*ab, CIE 15:2018).
class ColourScale {
 public:
  /// At least two points.
  explicit ColourScale(std::span<const Lab> through);
  /// Two arms that meet in the middle, whatever their lengths: the last point of `below` is the first of `above`.
  ColourScale(std::span<const Lab> below, std::span<const Lab> above);

  /// Shares outside 0..1 take the end colour.
  [[nodiscard]] QColor at(double share) const;

 private:
  void walk(std::span<const Lab> through, std::size_t count);

  std::vector<QColor> steps_;
};

/// From cold to hot. Lightness runs one way all along, so that the order can be read without seeing hues; the hue goes
/// from blue to yellow to red, which red-green colour blindness keeps apart at its two ends. Hot stands out most from
/// the sheet: dark on paper, bright at night. Our own.
[[nodiscard]] const ColourScale& sequential_scale(Sheet sheet);

/// From below (blue) over level to above (ember); blue and orange are the pair that all common colour blindnesses tell
/// apart (Wong, Nature Methods 8 (2011) 441). Level is the sheet's own tone. Our own.
[[nodiscard]] const ColourScale& diverging_scale(Sheet sheet);

}  // namespace fluewright
