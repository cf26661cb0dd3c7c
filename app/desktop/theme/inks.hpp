// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>

namespace fluewright {

/// Which paper lies on the desk.
/// The last two for eyes that want it: black on white or white on black, no washes, strong lines.
enum class Sheet { day, night, contrast_day, contrast_night };
[[nodiscard]] constexpr bool is_dark(Sheet sheet) { return sheet == Sheet::night || sheet == Sheet::contrast_night; }
[[nodiscard]] constexpr bool is_high_contrast(Sheet sheet) { return sheet == Sheet::contrast_day || sheet == Sheet::contrast_night; }
[[nodiscard]] constexpr Sheet sheet_of(bool dark, bool high_contrast) {
  if (high_contrast) return dark ? Sheet::contrast_night : Sheet::contrast_day;
  return dark ? Sheet::night : Sheet::day;
}

/// The colours of a drafting sheet, named by what they do. No other colour is used anywhere except the two colour
/// scales of colour_scale.hpp.
struct Inks {
  QColor paper;        ///< the drawing's ground
  QColor margin;       ///< the ground of panels beside the drawing
  QColor field;        ///< the ground of a box to type in
  QColor ink;          ///< lines and words that matter
  QColor faint_ink;    ///< captions, axis marks; still readable on paper and margin
  QColor hairline;     ///< rules between things
  QColor grid;         ///< the fine grid
  QColor grid_strong;  ///< every so many steps
  QColor accent;       ///< ember: open ends, selection, what needs a hand
  QColor accent_wash;  ///< the accent as a wash behind ink
  QColor on_accent;    ///< words on the accent
  QColor caution;      ///< ochre: marginal, cautions
  QColor calm;         ///< slate: all is well, the room's line on the plot
  QColor water;        ///< drops and wet walls
  QColor mass;         ///< the bench's wash
  QColor mass_line;    ///< its outline and hatching
  QColor bare;         ///< a piece whose gas is not known yet
};

[[nodiscard]] Inks day_inks();
[[nodiscard]] Inks night_inks();
[[nodiscard]] Inks contrast_day_inks();
[[nodiscard]] Inks contrast_night_inks();
[[nodiscard]] Inks inks_of(Sheet sheet);

/// How well two colours can be told apart in light and dark, 1 to 21 (WCAG 2.1 contrast ratio).
[[nodiscard]] double contrast(const QColor& a, const QColor& b);

}  // namespace fluewright
