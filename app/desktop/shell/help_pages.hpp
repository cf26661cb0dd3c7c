// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QMenuBar;
class QWidget;

namespace fluewright {

/// What the program is, under which licence, and the usual cautions.
void show_about(QWidget* parent);
/// Every menu action that has a shortcut, and the keys of drawing desk, plot and fields.
void show_shortcuts(QWidget* parent, const QMenuBar& menus);

}  // namespace fluewright
