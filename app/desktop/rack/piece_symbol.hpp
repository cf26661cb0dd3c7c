// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/library/library.hpp"

#include <QPixmap>
#include <QSize>

namespace fluewright {

/// A piece type as a small drawing, by the painter of the desk, in the inks of the theme.
[[nodiscard]] QPixmap piece_symbol(const PieceType& type, const Library& library, QSize size, double pixel_ratio);

}  // namespace fluewright
