// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/theme/lab.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fluewright {

namespace {

// D65 white, 2 degree observer (CIE 15:2018).
constexpr double white_x = 0.95047;
constexpr double white_y = 1.0;
constexpr double white_z = 1.08883;

constexpr double epsilon = 216.0 / 24389.0;  // where the cube root gives way to a line (CIE 15:2018)
constexpr double kappa = 24389.0 / 27.0;

double compress(double t) { return t > epsilon ? std::cbrt(t) : (kappa * t + 16.0) / 116.0; }
double expand(double f) { return f * f * f > epsilon ? f * f * f : (116.0 * f - 16.0) / kappa; }

double to_linear(double c) { return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); }
double to_gamma(double c) {
  const double clipped = std::clamp(c, 0.0, 1.0);
  return clipped <= 0.0031308 ? 12.92 * clipped : 1.055 * std::pow(clipped, 1.0 / 2.4) - 0.055;
}

}  // namespace

Lab Lab::of_hue(double lightness, double chroma, double hue) {
  const double angle = hue * std::numbers::pi / 180.0;
  return {lightness, chroma * std::cos(angle), chroma * std::sin(angle)};
}

double difference(const Lab& x, const Lab& y) { return std::hypot(x.lightness - y.lightness, x.a - y.a, x.b - y.b); }

Lab mixed(const Lab& from, const Lab& to, double part) {
  return {from.lightness + part * (to.lightness - from.lightness), from.a + part * (to.a - from.a),
          from.b + part * (to.b - from.b)};
}

QColor to_screen_colour(const Lab& lab) {
  const double fy = (lab.lightness + 16.0) / 116.0;
  const double x = white_x * expand(fy + lab.a / 500.0);
  const double y = white_y * expand(fy);
  const double z = white_z * expand(fy - lab.b / 200.0);
  // IEC 61966-2-1, XYZ to linear RGB.
  const double red = 3.2404542 * x - 1.5371385 * y - 0.4985314 * z;
  const double green = -0.9692660 * x + 1.8760108 * y + 0.0415560 * z;
  const double blue = 0.0556434 * x - 0.2040259 * y + 1.0572252 * z;
  const auto byte = [](double c) { return static_cast<int>(std::lround(255.0 * to_gamma(c))); };
  return {byte(red), byte(green), byte(blue)};
}

Lab to_lab(const QColor& colour) {
  const double red = to_linear(colour.redF());
  const double green = to_linear(colour.greenF());
  const double blue = to_linear(colour.blueF());
  const double fx = compress((0.4124564 * red + 0.3575761 * green + 0.1804375 * blue) / white_x);
  const double fy = compress((0.2126729 * red + 0.7151522 * green + 0.0721750 * blue) / white_y);
  const double fz = compress((0.0193339 * red + 0.1191920 * green + 0.9503041 * blue) / white_z);
  return {116.0 * fy - 16.0, 500.0 * (fx - fy), 200.0 * (fy - fz)};
}

}  // namespace fluewright
