// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/theme/colour_scale.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace fluewright {

QColor ColourScale::at(double share) const {
  const double last = static_cast<double>(anchors_.size() - 1);
  const double place = std::clamp(std::isnan(share) ? 0.0 : share, 0.0, 1.0) * last;
  const auto below = static_cast<std::size_t>(std::min(std::floor(place), last - 1.0));
  const double part = place - static_cast<double>(below);
  const QColor a{anchors_[below]};
  const QColor b{anchors_[below + 1]};
  const auto mix = [part](int from, int to) { return static_cast<int>(std::lround(from + part * (to - from))); };
  return {mix(a.red(), b.red()), mix(a.green(), b.green()), mix(a.blue(), b.blue())};
}

const ColourScale& sequential_scale() {
  static constexpr std::array<QRgb, 17> anchors{
      0xff00224e, 0xff002e6a, 0xff1a386f, 0xff32436d, 0xff434e6c, 0xff535a6d, 0xff61656f, 0xff6f7073, 0xff7d7c78,
      0xff8b8778, 0xff9a9376, 0xffaaa073, 0xffbbad6d, 0xffccba64, 0xffddc858, 0xffefd748, 0xfffee838};
  static const ColourScale scale{anchors};
  return scale;
}

const ColourScale& diverging_scale() {
  static constexpr std::array<QRgb, 11> anchors{0xff2d004b, 0xff542788, 0xff8073ac, 0xffb2abd2, 0xffd8daeb, 0xfff7f7f7,
                                                0xfffee0b6, 0xfffdb863, 0xffe08214, 0xffb35806, 0xff7f3b08};
  static const ColourScale scale{anchors};
  return scale;
}

}  // namespace fluewright
