// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>

#include <span>

namespace fluewright {

/// Colours along a share from 0 to 1, linear between anchors.
class ColourScale {
 public:
  explicit ColourScale(std::span<const QRgb> anchors) : anchors_{anchors} {}

  /// Shares outside 0..1 take the end colour.
  [[nodiscard]] QColor at(double share) const;
  [[nodiscard]] std::span<const QRgb> anchors() const { return anchors_; }

 private:
  std::span<const QRgb> anchors_;  ///< static storage
};

/// From cold to hot: cividis, perceptually uniform and read nearly alike with and without red-green colour blindness.
/// Source: Nunez, Anderton & Renslow, PLoS ONE 13(7) e0199239 (2018), 17 anchors of its 256.
[[nodiscard]] const ColourScale& sequential_scale();

/// From below (violet) over level to above (orange): ColorBrewer's PuOr, 11 classes, marked colour-blind safe.
/// Source: Harrower & Brewer, The Cartographic Journal 40 (2003) 27.
[[nodiscard]] const ColourScale& diverging_scale();

}  // namespace fluewright
