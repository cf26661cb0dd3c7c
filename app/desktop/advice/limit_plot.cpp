// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/advice/limit_plot.hpp"

#include "app/desktop/plot/plot_axes.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"

#include <QEvent>
#include <QVBoxLayout>

#include <qcustomplot.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace fluewright {

namespace {

double shown_x(LimitKind kind, const FieldValue& x, UnitSystem units) {
  if (const auto* length = std::get_if<Length>(&x)) {
    return in_shown_unit(*length, units, kind == LimitKind::smallest_bore ? Meaning::small_length : Meaning::run_length);
  }
  if (const auto* temperature = std::get_if<Temperature>(&x)) return in_shown_unit(*temperature, units);
  return std::get<Count>(x).value;
}

QString axis_title(LimitKind kind, UnitSystem units) {
  const std::string axis = limit_axis(kind);
  const QString words = QString::fromUtf8(axis.data(), static_cast<qsizetype>(axis.size()));
  std::string unit;
  if (kind == LimitKind::smallest_bore) unit = unit_name(Meaning::small_length, units);
  if (kind == LimitKind::longest_bench || kind == LimitKind::shortest_stack) unit = unit_name(Meaning::run_length, units);
  if (kind == LimitKind::coldest_bench || kind == LimitKind::weakest_difference) unit = unit_name(Meaning::temperature, units);
  return unit.empty() ? words : QStringLiteral("%1, %2").arg(words, QString::fromStdString(unit));
}

}  // namespace

struct LimitPlot::Drawing {
  explicit Drawing(QWidget& owner) : plot(*new QCustomPlot(&owner)) {
    plot.setFocusPolicy(Qt::NoFocus);
    plot.setInteractions(QCP::Interactions());
    plot.axisRect()->setMinimumMargins(QMargins(8, 8, 14, 8));
  }

  void style();
  void redraw();
  void draw_curve(const std::vector<LimitPoint>& points, const QPen& pen, bool dots);
  void draw_line_across(double y, const QColor& ink, const QString& words);
  void draw_upright(double x, const QColor& ink, const QString& words, bool dashed);
  void write(const QString& words, const QColor& ink, double x, double y, Qt::Alignment side);
  [[nodiscard]] double x_of(const FieldValue& value) const { return shown_x(answer->kind, value, units); }

  QCustomPlot& plot;
  std::optional<LimitAnswer> answer;
  std::vector<LimitPoint> refined;
  UnitSystem units = UnitSystem::metric;
  QString empty_words;
};

void LimitPlot::Drawing::style() {
  style_axes(plot, 5);
  for (QCPAxis* axis : {plot.xAxis, plot.yAxis}) axis->setVisible(answer.has_value());
}

void LimitPlot::Drawing::write(const QString& words, const QColor& ink, double x, double y, Qt::Alignment side) {
  auto* text = new QCPItemText(&plot);
  text->setText(words);
  text->setColor(ink);
  text->setFont(type(TypeRole::caption));
  text->setPositionAlignment(side);
  text->setPadding(QMargins(4, 2, 4, 2));
  text->position->setCoords(x, y);
  text->setBrush(QBrush(theme().inks.paper));
}

void LimitPlot::Drawing::draw_line_across(double y, const QColor& ink, const QString& words) {
  auto* line = new QCPItemLine(&plot);
  line->setPen(QPen(ink, 1, Qt::DashLine));
  line->start->setCoords(plot.xAxis->range().lower, y);
  line->end->setCoords(plot.xAxis->range().upper, y);
  write(words, ink, plot.xAxis->range().upper, y, Qt::AlignRight | Qt::AlignBottom);
}

void LimitPlot::Drawing::draw_upright(double x, const QColor& ink, const QString& words, bool dashed) {
  auto* line = new QCPItemLine(&plot);
  line->setPen(QPen(ink, 1, dashed ? Qt::DashLine : Qt::SolidLine));
  line->start->setCoords(x, plot.yAxis->range().lower);
  line->end->setCoords(x, plot.yAxis->range().upper);
  const bool right_half = x > plot.xAxis->range().center();
  write(words, ink, x, dashed ? plot.yAxis->range().lower : plot.yAxis->range().upper,
        (right_half ? Qt::AlignRight : Qt::AlignLeft) | (dashed ? Qt::AlignBottom : Qt::AlignTop));
}

void LimitPlot::Drawing::draw_curve(const std::vector<LimitPoint>& points, const QPen& pen, bool dots) {
  QVector<double> xs;
  QVector<double> ys;
  for (const LimitPoint& point : points) {
    xs << x_of(point.x);
    ys << (point.margin ? in_shown_unit(*point.margin, units) : std::numeric_limits<double>::quiet_NaN());
  }
  QCPGraph* graph = plot.addGraph();
  graph->setPen(pen);
  if (dots) graph->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssDisc, 5));
  graph->setData(xs, ys, true);
}

void LimitPlot::Drawing::redraw() {
  plot.clearGraphs();
  plot.clearItems();
  style();
  if (!answer || answer->curve.empty()) {
    auto* words = new QCPItemText(&plot);
    words->position->setType(QCPItemPosition::ptAxisRectRatio);
    words->position->setCoords(0.5, 0.5);
    words->setText(empty_words);
    words->setColor(theme().inks.faint_ink);
    words->setFont(type(TypeRole::body));
    plot.replot(QCustomPlot::rpQueuedReplot);
    return;
  }
  const Inks& inks = theme().inks;
  plot.xAxis->setLabel(axis_title(answer->kind, units));
  plot.yAxis->setLabel(tr("Draft to spare, %1").arg(QString::fromStdString(unit_name(Meaning::pressure, units))));
  const double wanted = in_shown_unit(answer->wanted, units);
  double low = std::min(0.0, wanted);
  double high = std::max(0.0, wanted);
  std::optional<double> today;
  for (const auto* points : {&answer->curve, &refined}) {
    for (const LimitPoint& point : *points) {
      if (!point.margin) continue;
      const double y = in_shown_unit(*point.margin, units);
      low = std::min(low, y);
      high = std::max(high, y);
      if (point.x == answer->scale.today) today = y;
    }
  }
  const double span = std::max(high - low, 1e-6);
  plot.yAxis->setRange(low - 0.12 * span, high + 0.18 * span);
  plot.xAxis->setRange(x_of(answer->curve.front().x), x_of(answer->curve.back().x));
  draw_line_across(wanted, inks.calm, tr("wanted %1").arg(QString::fromStdString(fluewright::show(answer->wanted, units).text())));
  const bool counts = answer->kind == LimitKind::most_bends;
  if (refined.empty()) {
    draw_curve(answer->curve, QPen(inks.ink, 2.0), counts);
  } else {
    draw_curve(answer->curve, QPen(inks.faint_ink, 1.2, Qt::DotLine), false);
    draw_curve(refined, QPen(inks.ink, 2.0), true);
  }
  draw_upright(x_of(answer->scale.today), inks.faint_ink,
               tr("drawn: %1").arg(QString::fromStdString(limit_value_text(answer->kind, answer->scale.today, units))), false);
  if (today) {
    QCPGraph* point = plot.addGraph();
    point->setLineStyle(QCPGraph::lsNone);
    point->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssCircle, QPen(inks.ink, 2), QBrush(inks.paper), 9));
    point->setData({x_of(answer->scale.today)}, {*today});
  }
  if (answer->found) {
    draw_upright(x_of(*answer->found), inks.accent,
                 tr("limit: %1").arg(QString::fromStdString(limit_value_text(answer->kind, *answer->found, units))), true);
  }
  plot.replot(QCustomPlot::rpQueuedReplot);
}

LimitPlot::LimitPlot(QWidget* parent) : QWidget(parent), drawing_(std::make_unique<Drawing>(*this)) {
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(&drawing_->plot);
  setMinimumHeight(90);
}

LimitPlot::~LimitPlot() = default;

void LimitPlot::show_answer(LimitAnswer answer, UnitSystem units) {
  drawing_->answer = std::move(answer);
  drawing_->units = units;
  drawing_->refined.clear();
  drawing_->redraw();
}

void LimitPlot::show_refined(std::vector<LimitPoint> points) {
  drawing_->refined = std::move(points);
  drawing_->redraw();
}

const std::vector<LimitPoint>& LimitPlot::refined() const { return drawing_->refined; }

void LimitPlot::show_nothing(const QString& words) {
  drawing_->answer.reset();
  drawing_->refined.clear();
  drawing_->empty_words = words;
  drawing_->redraw();
}

const std::optional<LimitAnswer>& LimitPlot::answer() const { return drawing_->answer; }

void LimitPlot::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange) drawing_->redraw();
  QWidget::changeEvent(event);
}

}  // namespace fluewright
