// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/theme/inks.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright {

Inks day_inks() {
  Inks inks;
  inks.paper = QColor(0xf8f4ea);
  inks.margin = QColor(0xf1ebde);
  inks.field = QColor(0xfdfbf6);
  inks.ink = QColor(0x2a251f);
  inks.faint_ink = QColor(0x6b6256);
  inks.hairline = QColor(0xd2c8b6);
  inks.grid = QColor(0xece5d6);
  inks.grid_strong = QColor(0xdcd2bf);
  inks.accent = QColor(0xa9401f);
  inks.accent_wash = QColor(0xa9, 0x40, 0x1f, 34);
  inks.on_accent = QColor(0xfffaf2);
  inks.caution = QColor(0x8a5a00);
  inks.calm = QColor(0x35586b);
  inks.water = QColor(0x1f6392);
  inks.mass = QColor(0xb8, 0x9a, 0x6c, 46);
  inks.mass_line = QColor(0xa08a66);
  inks.bare = QColor(0xfdfaf3);
  return inks;
}

Inks night_inks() {
  Inks inks;
  inks.paper = QColor(0x1d1b18);
  inks.margin = QColor(0x25221e);
  inks.field = QColor(0x171512);
  inks.ink = QColor(0xeee6d8);
  inks.faint_ink = QColor(0xaba292);
  inks.hairline = QColor(0x4a443b);
  inks.grid = QColor(0x272420);
  inks.grid_strong = QColor(0x36322c);
  inks.accent = QColor(0xf0875a);
  inks.accent_wash = QColor(0xf0, 0x87, 0x5a, 44);
  inks.on_accent = QColor(0x1d1b18);
  inks.caution = QColor(0xe2b257);
  inks.calm = QColor(0x93b8cc);
  inks.water = QColor(0x74b6e6);
  inks.mass = QColor(0xc8, 0xa8, 0x78, 34);
  inks.mass_line = QColor(0x8d7a5c);
  inks.bare = QColor(0x2c2924);
  return inks;
}

Inks contrast_day_inks() {
  Inks inks = day_inks();
  inks.paper = inks.margin = inks.field = inks.bare = QColor(0xffffff);
  inks.ink = QColor(0, 0, 0);
  inks.faint_ink = QColor(0x262626);
  inks.hairline = QColor(0x5a5a5a);
  inks.grid = QColor(0xe4e4e4);
  inks.grid_strong = QColor(0xb4b4b4);
  inks.accent = QColor(0x9a1f00);
  inks.accent_wash = QColor(0xff, 0xd2, 0xc2);
  inks.on_accent = QColor(0xffffff);
  inks.caution = QColor(0x5c3a00);
  inks.calm = QColor(0x0d3b57);
  inks.water = QColor(0x003f77);
  inks.mass_line = QColor(0x3f3115);
  return inks;
}

Inks contrast_night_inks() {
  Inks inks = night_inks();
  inks.paper = inks.margin = inks.field = QColor(0, 0, 0);
  inks.bare = QColor(0x1c1c1c);
  inks.ink = QColor(0xffffff);
  inks.faint_ink = QColor(0xe0e0e0);
  inks.hairline = QColor(0xa8a8a8);
  inks.grid = QColor(0x262626);
  inks.grid_strong = QColor(0x5a5a5a);
  inks.accent = QColor(0xffa27a);
  inks.accent_wash = QColor(0x5a, 0x24, 0x10);
  inks.on_accent = QColor(0, 0, 0);
  inks.caution = QColor(0xffd479);
  inks.calm = QColor(0xb5dcf2);
  inks.water = QColor(0x9bd2ff);
  inks.mass_line = QColor(0xd9c196);
  return inks;
}

Inks inks_of(Sheet sheet) {
  switch (sheet) {
    case Sheet::day: return day_inks();
    case Sheet::night: return night_inks();
    case Sheet::contrast_day: return contrast_day_inks();
    case Sheet::contrast_night: return contrast_night_inks();
  }
  return day_inks();
}

namespace {

/// WCAG 2.1, "relative luminance".
double luminance(const QColor& colour) {
  const auto channel = [](double c) { return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
  return 0.2126 * channel(colour.redF()) + 0.7152 * channel(colour.greenF()) + 0.0722 * channel(colour.blueF());
}

}  // namespace

double contrast(const QColor& a, const QColor& b) {
  const double la = luminance(a);
  const double lb = luminance(b);
  return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

}  // namespace fluewright
