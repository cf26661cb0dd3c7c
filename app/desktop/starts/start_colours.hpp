// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/theme/inks.hpp"
#include "engine/burn/start_class.hpp"

#include <QColor>

namespace fluewright {

/// A class's ground: from blue over sand to brick, each step darker or lighter than its neighbours, so that the order
/// can be told without hues; the cell's letter says it anyway.
[[nodiscard]] QColor start_colour(StartClass start, Sheet sheet);
/// Words on it.
[[nodiscard]] QColor letter_colour(const QColor& ground);

}  // namespace fluewright
