// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/desk_verbs.hpp"

class QWidget;

namespace fluewright {

/// Asks how many passes, how long, how far apart and to which side, shows them on the drawing while one chooses, and
/// draws them from the focused open end.
void ask_for_winding(DeskVerbs verbs, QWidget* parent);

}  // namespace fluewright
