// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/starts/start_colours.hpp"

#include <array>

namespace fluewright {

QColor start_colour(StartClass start, Sheet sheet) {
  static const std::array<QColor, 5> day{QColor(0x2b6a99), QColor(0x8fbfdd), QColor(0xf3e3b0), QColor(0xe39a4a), QColor(0x8c2f16)};
  static const std::array<QColor, 5> night{QColor(0x2f78ab), QColor(0x86b4d0), QColor(0xd9c78e), QColor(0xd08637), QColor(0x7d2c17)};
  return (sheet == Sheet::day ? day : night)[static_cast<std::size_t>(start)];
}

QColor letter_colour(const QColor& ground) {
  const QColor dark(0x1d1b18);
  const QColor light(0xfffaf2);
  return contrast(ground, dark) > contrast(ground, light) ? dark : light;
}

}  // namespace fluewright
