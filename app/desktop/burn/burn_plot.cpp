// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/burn_plot.hpp"

#include "app/desktop/theme/theme.hpp"

#include <QEvent>
#include <QLabel>
#include <QMouseEvent>
#include <QVBoxLayout>
#include <QWheelEvent>

#include <qcustomplot.h>

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

constexpr int least_chart = 66;  // pixels
constexpr int bottom_room = 20;

QVector<double> vector_of(const std::vector<double>& values) { return {values.begin(), values.end()}; }

QPen pen_of(CurveRole role, bool stale) {
  const Inks& inks = theme().inks;
  switch (role) {
    case CurveRole::first: return {stale ? inks.hairline : inks.accent, 1.8};
    case CurveRole::second: return {stale ? inks.hairline : inks.ink, 1.4, Qt::DashLine};
    case CurveRole::third: return {stale ? inks.hairline : inks.calm, 1.4, Qt::DashDotLine};
  }
  return {};
}

QColor ink_of(TroubleSpan::Kind kind) {
  const Inks& inks = theme().inks;
  switch (kind) {
    case TroubleSpan::Kind::smoke: return inks.ink;
    case TroubleSpan::Kind::backwards: return inks.accent;
    case TroubleSpan::Kind::starved: return inks.caution;
  }
  return inks.ink;
}

}  // namespace

struct BurnPlot::Drawing {
  Drawing(BurnPlot& owner_widget, TimeSight& time_sight)
      : plot(*new QCustomPlot(&owner_widget)), sight(time_sight), empty(new QLabel(&owner_widget)) {
    empty->setAlignment(Qt::AlignCenter);
    empty->setForegroundRole(QPalette::PlaceholderText);
    empty->setAutoFillBackground(true);
    empty->setBackgroundRole(QPalette::Light);
    plot.setInteractions(QCP::Interactions());
    plot.setFocusPolicy(Qt::NoFocus);
    plot.plotLayout()->clear();
    plot.addLayer(QStringLiteral("under"), plot.layer(QStringLiteral("grid")), QCustomPlot::limAbove);
    plot.addLayer(QStringLiteral("cursor"), plot.layer(QStringLiteral("main")), QCustomPlot::limAbove);
    // Scrubbing redraws this layer alone.
    plot.layer(QStringLiteral("cursor"))->setMode(QCPLayer::lmBuffered);
  }

  void rebuild();
  void build_chart(std::size_t index);
  void mark_troubles(const BurnChart& chart, QCPAxisRect& rect);
  void set_heights(const BurnChart& chart, QCPAxisRect& rect) const;
  void set_times();
  void write_gutter();
  void move_cursor();
  QCPItemText* write(const QString& words, const QColor& ink, QPointF at, Qt::Alignment side);

  QCustomPlot& plot;
  TimeSight& sight;
  QLabel* empty;  ///< words while there is nothing to draw
  BurnPicture picture;
  bool stale = false;
  double cursor = 0.0;
  std::vector<QCPAxisRect*> rects;
  std::vector<QCPItemLine*> lines;
  std::vector<QCPItemText*> gutter;
};

QCPItemText* BurnPlot::Drawing::write(const QString& words, const QColor& ink, QPointF at, Qt::Alignment side) {
  auto* text = new QCPItemText(&plot);
  text->setClipToAxisRect(false);
  text->position->setType(QCPItemPosition::ptAbsolute);
  text->setText(words);
  text->setColor(ink);
  text->setFont(type(TypeRole::caption));
  text->setPositionAlignment(side);
  text->setTextAlignment(side);
  text->setPadding(QMargins(0, 0, 0, 0));
  text->position->setCoords(at);
  return text;
}

void BurnPlot::Drawing::rebuild() {
  plot.clearPlottables();
  plot.clearItems();
  plot.plotLayout()->clear();
  rects.clear();
  lines.clear();
  gutter.clear();
  const Inks& inks = theme().inks;
  plot.setBackground(QBrush(inks.paper));
  const bool nothing = picture.seconds.size() < 2;
  plot.setVisible(!nothing);
  empty->setVisible(nothing);
  if (nothing) return;
  plot.setMinimumHeight(static_cast<int>(picture.charts.size()) * least_chart + bottom_room);
  plot.plotLayout()->setRowSpacing(0);
  for (std::size_t i = 0; i < picture.charts.size(); ++i) build_chart(i);
  set_times();
  plot.replot(QCustomPlot::rpImmediateRefresh);  // the rects have their places only now
  write_gutter();
  move_cursor();
  plot.replot(QCustomPlot::rpQueuedReplot);
}

void BurnPlot::Drawing::build_chart(std::size_t index) {
  const BurnChart& chart = picture.charts[index];
  const Inks& inks = theme().inks;
  const bool last = index + 1 == picture.charts.size();
  auto* rect = new QCPAxisRect(&plot, true);
  rects.push_back(rect);
  plot.plotLayout()->addElement(static_cast<int>(index), 0, rect);
  rect->setAutoMargins(QCP::msNone);
  rect->setMargins(QMargins(TimeSight::gutter, 5, TimeSight::margin, last ? bottom_room : 3));
  rect->setMinimumSize(50, least_chart - 8);
  for (QCPAxis* axis : rect->axes()) {
    axis->setLayer(QStringLiteral("axes"));
    axis->grid()->setLayer(QStringLiteral("grid"));
    axis->setBasePen(QPen(inks.hairline));
    axis->setTickPen(Qt::NoPen);
    axis->setSubTickPen(Qt::NoPen);
    axis->setTickLabelColor(inks.faint_ink);
    axis->setTickLabelFont(type(TypeRole::caption));
    axis->grid()->setPen(QPen(inks.grid_strong, 1));
    axis->grid()->setZeroLinePen(QPen(inks.faint_ink, 1));
  }
  rect->axis(QCPAxis::atTop)->setVisible(false);
  rect->axis(QCPAxis::atRight)->setVisible(false);
  QCPAxis* x = rect->axis(QCPAxis::atBottom);
  QCPAxis* y = rect->axis(QCPAxis::atLeft);
  x->setTickLabels(last);
  x->setTickLabelPadding(2);
  y->setTickLabelSide(QCPAxis::lsInside);
  y->ticker()->setTickCount(3);
  mark_troubles(chart, *rect);
  for (const BurnCurve& curve : chart.curves) {
    QCPGraph* graph = plot.addGraph(x, y);
    graph->setData(vector_of(picture.seconds), vector_of(curve.y), true);
    graph->setPen(pen_of(curve.role, stale));
  }
  set_heights(chart, *rect);
  auto* line = new QCPItemLine(&plot);
  line->setLayer(QStringLiteral("cursor"));
  line->setClipAxisRect(rect);
  line->setPen(QPen(inks.accent, 1.2));
  for (QCPItemPosition* end : {line->start, line->end}) {
    end->setAxisRect(rect);
    end->setAxes(x, y);
    end->setTypeX(QCPItemPosition::ptPlotCoords);
    end->setTypeY(QCPItemPosition::ptAxisRectRatio);
  }
  lines.push_back(line);
}

void BurnPlot::Drawing::mark_troubles(const BurnChart& chart, QCPAxisRect& rect) {
  if (stale) return;
  for (const TroubleSpan& span : chart.troubles) {
    auto* box = new QCPItemRect(&plot);
    box->setLayer(QStringLiteral("under"));
    box->setClipAxisRect(&rect);
    QColor wash = ink_of(span.kind);
    wash.setAlphaF(0.55F);
    const auto pattern = span.kind == TroubleSpan::Kind::smoke ? Qt::BDiagPattern : span.kind == TroubleSpan::Kind::backwards ? Qt::FDiagPattern : Qt::Dense6Pattern;
    box->setBrush(QBrush(wash, pattern));
    box->setPen(Qt::NoPen);
    for (QCPItemPosition* corner : {box->topLeft, box->bottomRight}) {
      corner->setAxisRect(&rect);
      corner->setAxes(rect.axis(QCPAxis::atBottom), rect.axis(QCPAxis::atLeft));
      corner->setTypeX(QCPItemPosition::ptPlotCoords);
      corner->setTypeY(QCPItemPosition::ptAxisRectRatio);
    }
    // Three kinds can hold at once: each has its own third of the height.
    const double top = static_cast<double>(span.kind) / 3.0;
    box->topLeft->setCoords(span.from, top);
    box->bottomRight->setCoords(span.to, top + 1.0 / 3.0);
  }
}

void BurnPlot::Drawing::set_heights(const BurnChart& chart, QCPAxisRect& rect) const {
  double low = chart.from_zero ? 0.0 : HUGE_VAL;
  double high = chart.from_zero ? 0.0 : -HUGE_VAL;
  for (const BurnCurve& curve : chart.curves) {
    for (const double y : curve.y) {
      if (!std::isfinite(y)) continue;
      low = std::min(low, y);
      high = std::max(high, y);
    }
  }
  if (chart.highest) high = std::min(high, *chart.highest);
  if (!(high >= low)) {
    low = 0.0;
    high = 1.0;
  }
  const double span = std::max(high - low, 1e-3 * std::max(1.0, std::abs(high)));
  rect.axis(QCPAxis::atLeft)->setRange(low - 0.06 * span, high + 0.10 * span);
}

void BurnPlot::Drawing::set_times() {
  const int width = plot.width();
  for (QCPAxisRect* rect : rects) {
    QCPAxis* x = rect->axis(QCPAxis::atBottom);
    x->setRange(in(sight.from(), second), in(sight.to(), second));
    const QSharedPointer<QCPAxisTickerText> ticker(new QCPAxisTickerText);
    for (const TimeSight::Mark& mark : sight.marks(width)) ticker->addTick(in(mark.at, second), mark.words);
    x->setTicker(ticker);
  }
}

// Beside each chart: its name, and the values under the cursor in their lines' inks.
void BurnPlot::Drawing::write_gutter() {
  for (QCPItemText* text : gutter) plot.removeItem(text);
  gutter.clear();
  const Inks& inks = theme().inks;
  const int line_height = QFontMetrics(type(TypeRole::caption)).height();
  for (std::size_t i = 0; i < rects.size(); ++i) {
    const BurnChart& chart = picture.charts[i];
    const double top = rects[i]->top();
    const QString title = chart.unit.isEmpty() ? chart.title : QStringLiteral("%1, %2").arg(chart.title, chart.unit);
    gutter.push_back(write(title, stale ? inks.faint_ink : inks.ink, QPointF(10.0, top), Qt::AlignLeft | Qt::AlignTop));
    if (chart.curves.empty()) {
      gutter.push_back(write(tr("none in this design"), inks.faint_ink, QPointF(10.0, top + line_height), Qt::AlignLeft | Qt::AlignTop));
    }
    for (std::size_t k = 0; k < chart.curves.size() && static_cast<int>(k + 2) * line_height <= rects[i]->height() + 6; ++k) {
      const BurnCurve& curve = chart.curves[k];
      const double value = value_at(picture, curve, cursor);
      const QString number = std::isfinite(value) ? digits(value, chart.decimals) : QStringLiteral("–");
      const QString words = QFontMetrics(type(TypeRole::caption)).elidedText(QStringLiteral("%1 %2").arg(number, curve.label), Qt::ElideRight, TimeSight::gutter - 14);
      gutter.push_back(write(words, stale ? inks.faint_ink : pen_of(curve.role, false).color(), QPointF(10.0, top + (static_cast<double>(k) + 1.0) * line_height), Qt::AlignLeft | Qt::AlignTop));
    }
  }
  for (QCPItemText* text : gutter) text->setLayer(QStringLiteral("cursor"));
}

void BurnPlot::Drawing::move_cursor() {
  for (QCPItemLine* line : lines) {
    line->start->setCoords(cursor, 0.0);
    line->end->setCoords(cursor, 1.0);
  }
}

BurnPlot::BurnPlot(TimeSight& sight, QWidget* parent) : QWidget(parent), drawing_(std::make_unique<Drawing>(*this, sight)) {
  setObjectName(QStringLiteral("burn_plot"));
  setAccessibleName(tr("Charts over time"));
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(&drawing_->plot);
  all->addWidget(drawing_->empty);
  drawing_->plot.installEventFilter(this);
  connect(&sight, &TimeSight::changed, this, [this] {
    if (drawing_->rects.empty()) return;
    drawing_->set_times();
    drawing_->plot.replot(QCustomPlot::rpQueuedReplot);
  });
  drawing_->rebuild();
}

BurnPlot::~BurnPlot() = default;

void BurnPlot::show_picture(BurnPicture picture, bool stale) {
  drawing_->picture = std::move(picture);
  drawing_->stale = stale;
  drawing_->rebuild();
}

void BurnPlot::set_cursor(Time at) {
  Drawing& d = *drawing_;
  if (d.cursor == in(at, second)) return;
  d.cursor = in(at, second);
  if (d.rects.empty()) return;
  d.move_cursor();
  d.write_gutter();
  d.plot.layer(QStringLiteral("cursor"))->replot();
}

void BurnPlot::set_empty_words(const QString& words) {
  drawing_->empty->setText(words);
}

const BurnPicture& BurnPlot::picture() const { return drawing_->picture; }

bool BurnPlot::stale() const { return drawing_->stale; }

QStringList BurnPlot::readout(std::size_t chart) const {
  QStringList words;
  if (chart >= drawing_->picture.charts.size()) return words;
  const BurnChart& shown = drawing_->picture.charts[chart];
  for (const BurnCurve& curve : shown.curves) {
    const double value = value_at(drawing_->picture, curve, drawing_->cursor);
    words << QStringLiteral("%1 %2").arg(std::isfinite(value) ? digits(value, shown.decimals) : QStringLiteral("–"), curve.label);
  }
  return words;
}

QPoint BurnPlot::place_of(Time at) const {
  return {static_cast<int>(std::lround(drawing_->sight.x_of(at, drawing_->plot.width()))), drawing_->plot.height() / 3};
}

bool BurnPlot::eventFilter(QObject* watched, QEvent* event) {
  QCustomPlot& plot = drawing_->plot;
  TimeSight& sight = drawing_->sight;
  if (watched != &plot) return QWidget::eventFilter(watched, event);
  const auto choose = [&] {
    const double x = static_cast<QMouseEvent*>(event)->position().x();
    emit time_chosen(std::clamp(sight.at(x, plot.width()), sight.from(), sight.to()));
  };
  switch (event->type()) {
    case QEvent::MouseButtonPress:
      if (static_cast<QMouseEvent*>(event)->button() == Qt::LeftButton) choose();
      return true;
    case QEvent::MouseMove:
      if (static_cast<QMouseEvent*>(event)->buttons().testFlag(Qt::LeftButton)) choose();
      return true;
    case QEvent::Wheel: {
      auto* wheel = static_cast<QWheelEvent*>(event);
      if (!wheel->modifiers().testFlag(Qt::ControlModifier)) {
        event->ignore();  // the charts scroll; Ctrl looks closer
        return true;
      }
      sight.zoom(sight.at(wheel->position().x(), plot.width()), std::pow(1.25, wheel->angleDelta().y() / 120.0));
      return true;
    }
    case QEvent::Resize:
      QMetaObject::invokeMethod(this, [this] { drawing_->rebuild(); }, Qt::QueuedConnection);
      break;
    default: break;
  }
  return QWidget::eventFilter(watched, event);
}

void BurnPlot::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange) drawing_->rebuild();
  QWidget::changeEvent(event);
}

}  // namespace fluewright
