// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QCustomPlot;

namespace fluewright {

/// Paper, hairlines and small faint labels of today's theme, with about `ticks` of them along each axis; lines across only.
void style_axes(QCustomPlot& plot, int ticks);

}  // namespace fluewright
