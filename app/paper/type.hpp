// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/mark.hpp"

#include <QFont>
#include <QRectF>
#include <QStringList>

namespace fluewright::paper {

/// Fonts are measured and painted in hundredths of a millimetre, without hinting, so that layout is the same on every
/// device.
inline constexpr double font_units = 100.0;

/// The font of a type, its size in hundredths of a millimetre.
[[nodiscard]] QFont font_of(Type type);

/// Line pitch, height of capitals and depth under the baseline [mm].
[[nodiscard]] double line_height(Type type);
[[nodiscard]] double cap_height(Type type);
[[nodiscard]] double descent(Type type);
/// [mm]
[[nodiscard]] double width_of(const QString& text, Type type);

/// What the words cover on the sheet [mm].
[[nodiscard]] QRectF extent(const Words& words);

/// The text in lines no wider than `width`, broken at spaces and, where a single word is wider, within it: nothing is
/// ever cut off. Line breaks in the text stay.
[[nodiscard]] QStringList wrapped(const QString& text, Type type, double width);

}  // namespace fluewright::paper
