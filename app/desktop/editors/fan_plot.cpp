// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/editors/fan_plot.hpp"

#include "app/desktop/plot/plot_axes.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"

#include <QEvent>
#include <QVBoxLayout>

#include <qcustomplot.h>

#include <algorithm>

namespace fluewright {

namespace {

constexpr int samples = 120;
/// The curve is drawn so far beyond its last point, or beyond where the fan runs.
constexpr double beyond = 1.1;

double shown_flow(VolumeFlow flow, UnitSystem units) { return in_shown_unit(flow, units); }

/// What the fan adds to the path, its own obstacle taken off.
Pressure net_head(const FanPlot::Picture& p, VolumeFlow flow) {
  const FanEffect e = fan_effect(p.fan, flow, p.gas, p.area);
  return flow < VolumeFlow{} ? Pressure(e.head + e.loss) : Pressure(e.head - e.loss);
}

}  // namespace

struct FanPlot::Drawing {
  explicit Drawing(QWidget* owner) : plot(*new QCustomPlot(owner)) {
    plot.setFocusPolicy(Qt::NoFocus);
    plot.setInteractions(QCP::Interactions());
    plot.axisRect()->setMinimumMargins(QMargins(6, 6, 10, 6));
  }

  void style() {
    style_axes(plot, 4);
  }

  QCPGraph* graph(const QPen& pen) {
    QCPGraph* added = plot.addGraph();
    added->setPen(pen);
    return added;
  }

  void redraw() {
    plot.clearGraphs();
    style();
    if (!picture) return;
    const UnitSystem units = picture->units;
    const Inks& inks = theme().inks;
    plot.xAxis->setLabel(QString::fromStdString(unit_name(Meaning::volume_flow, units)));
    plot.yAxis->setLabel(QString::fromStdString(unit_name(Meaning::pressure, units)));
    const FanSheet& sheet = picture->fan.curve.sheet();
    VolumeFlow last = picture->fan.curve.last_flow();
    if (picture->flow) last = std::max(last, VolumeFlow(beyond * *picture->flow));
    const VolumeFlow first = picture->flow ? std::min(VolumeFlow{}, *picture->flow) : VolumeFlow{};

    QCPGraph* sheet_points = graph(QPen(inks.faint_ink, 1, Qt::DotLine));
    sheet_points->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssDisc, inks.faint_ink, 5.0));
    for (const FanPoint& p : sheet.points) sheet_points->addData(shown_flow(p.flow, units), in_shown_unit(p.head, units));

    QCPGraph* today = graph(QPen(inks.accent, 2.0));
    double lowest = 0.0;
    double highest = in_shown_unit(picture->fan.curve.largest_head(), units);
    for (int i = 0; i <= samples; ++i) {
      const VolumeFlow q = first + (last - first) * (static_cast<double>(i) / samples);
      const double head = in_shown_unit(net_head(*picture, q), units);
      // A fan far beyond its sheet only brakes: how much needs no room on the picture.
      if (head < -0.3 * highest) continue;
      lowest = std::min(lowest, head);
      highest = std::max(highest, head);
      today->addData(shown_flow(q, units), head);
    }
    if (picture->flow) {
      QCPGraph* now = graph(QPen(inks.ink, 2.0));
      now->setLineStyle(QCPGraph::lsNone);
      now->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssCircle, QPen(inks.ink, 2.0), QBrush(inks.paper), 10.0));
      now->addData(shown_flow(*picture->flow, units), in_shown_unit(net_head(*picture, *picture->flow), units));
      lowest = std::min(lowest, in_shown_unit(net_head(*picture, *picture->flow), units));
    }
    const double span = std::max(highest - lowest, 1e-6);
    plot.yAxis->setRange(lowest - 0.05 * span, highest + 0.1 * span);
    const double from = shown_flow(first, units);
    const double to = std::max(shown_flow(last, units), from + 1e-6);
    plot.xAxis->setRange(from - 0.02 * (to - from), to + 0.02 * (to - from));
    plot.replot(QCustomPlot::rpQueuedReplot);
  }

  QCustomPlot& plot;
  std::optional<Picture> picture;
};

FanPlot::FanPlot(QWidget* parent) : QWidget(parent), drawing_(std::make_unique<Drawing>(this)) {
  setObjectName(QStringLiteral("fan_plot"));
  setAccessibleName(tr("Fan curve"));
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(&drawing_->plot);
  setFixedHeight(11 * fontMetrics().lineSpacing());
}

FanPlot::~FanPlot() = default;

QSize FanPlot::sizeHint() const { return {20 * fontMetrics().averageCharWidth(), height()}; }

void FanPlot::show_picture(Picture picture) {
  drawing_->picture = std::move(picture);
  drawing_->redraw();
}

void FanPlot::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) drawing_->redraw();
  QWidget::changeEvent(event);
}

}  // namespace fluewright
