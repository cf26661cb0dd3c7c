// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/desk_verbs.hpp"
#include "app/desktop/desk/hit.hpp"

class QMenu;

namespace fluewright {

/// The menu under the mouse: what can be done with what lies there and with what is selected.
void fill_piece_menu(QMenu& menu, DeskVerbs verbs, const Hit& under);
/// The pieces that could stand in the selected one's place, each as an entry; one disabled line where there are none.
void fill_replace_menu(QMenu& menu, DeskVerbs verbs);

}  // namespace fluewright
