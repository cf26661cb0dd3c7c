// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>

namespace fluewright {

/// A colour in CIE L*a*b* under D65 (CIE 15:2018): equal distances look about equally different.
struct Lab {
  double lightness = 0.0;  ///< 0 black to 100 white
  double a = 0.0;          ///< green to red
  double b = 0.0;          ///< blue to yellow

  /// By chroma and hue [degrees].
  [[nodiscard]] static Lab of_hue(double lightness, double chroma, double hue);
};

/// The difference that CIE 15:2018 calls Delta E*ab.
[[nodiscard]] double difference(const Lab& x, const Lab& y);
[[nodiscard]] Lab mixed(const Lab& from, const Lab& to, double part);

/// To and from a screen's sRGB (IEC 61966-2-1). A colour outside what the screen can show takes its nearest edge.
[[nodiscard]] QColor to_screen_colour(const Lab& lab);
[[nodiscard]] Lab to_lab(const QColor& colour);

}  // namespace fluewright
