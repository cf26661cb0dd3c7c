// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plot/plot_axes.hpp"

#include "app/desktop/theme/theme.hpp"

#include <qcustomplot.h>

namespace fluewright {

void style_axes(QCustomPlot& plot, int ticks) {
  const Inks& inks = theme().inks;
  plot.setBackground(QBrush(inks.paper));
  for (QCPAxis* axis : {plot.xAxis, plot.yAxis}) {
    axis->setBasePen(QPen(inks.hairline));
    axis->setTickPen(QPen(inks.hairline));
    axis->setSubTickPen(Qt::NoPen);
    axis->setTickLabelColor(inks.faint_ink);
    axis->setLabelColor(inks.faint_ink);
    axis->setTickLabelFont(type(TypeRole::caption));
    axis->setLabelFont(type(TypeRole::caption));
    axis->setLabelPadding(2);
    axis->grid()->setPen(QPen(inks.grid_strong, 1));
    axis->grid()->setZeroLinePen(QPen(inks.hairline, 1));
    axis->ticker()->setTickCount(ticks);
  }
  plot.xAxis->grid()->setVisible(false);
}

}  // namespace fluewright
