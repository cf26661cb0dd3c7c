// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/theme/inks.hpp"

#include <QFont>
#include <QString>

#include <array>

class QApplication;

namespace fluewright {

/// The one type scale.
enum class TypeRole {
  caption,  ///< marks on the drawing, captions under numbers
  body,     ///< everything read as a sentence
  heading,  ///< the name of a panel
  figure    ///< the large quiet numbers
};

/// The look of the whole program: which sheet, and its inks.
struct Theme {
  Sheet sheet = Sheet::day;
  Inks inks = day_inks();
  double text_scale = 1.0;  ///< 1 to 2
};

/// The theme in force. Widgets read it when they paint; they need not keep it.
[[nodiscard]] const Theme& theme();

/// Lato, else DejaVu Sans, in the size of the role.
[[nodiscard]] QFont type(TypeRole role);

/// Puts a sheet on the desk: style, palette, fonts and style sheet of the whole application. Every widget gets a
/// QEvent::PaletteChange and repaints; one that keeps colours (a plot) listens for that event.
void apply_theme(QApplication& application, Sheet sheet);
void apply_theme(QApplication& application, Sheet sheet, double text_scale);
/// The scales offered, in percent.
inline constexpr std::array text_scales{100, 115, 130, 150, 175, 200};

/// The sheet that follows the system's own light or dark setting.
[[nodiscard]] Sheet sheet_of_system(const QApplication& application);

/// Rules that a palette cannot say (margins, rules between panels). Uses the roles of `inks` only.
///
/// A QLabel gets a role of the type scale by its dynamic property "role": "caption", "heading" or "figure".
/// A button is the quiet one by default; "prominent" set to true makes it the accent's.
[[nodiscard]] QString style_sheet(const Inks& inks);

}  // namespace fluewright
