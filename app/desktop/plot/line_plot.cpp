// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plot/line_plot.hpp"

#include "app/desktop/plot/plot_axes.hpp"
#include "app/desktop/plot/plot_inks.hpp"
#include "app/desktop/plot/plot_labels.hpp"
#include "app/desktop/theme/theme.hpp"

#include <QEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QVBoxLayout>

#include <qcustomplot.h>

#include <algorithm>
#include <cmath>
#include <vector>

namespace fluewright {

namespace {

QVector<double> vector_of(const std::vector<double>& values) { return {values.begin(), values.end()}; }

}  // namespace

struct LinePlot::Drawing {
  explicit Drawing(LinePlot& owner);

  void redraw();
  void set_ranges();
  void style();
  void draw_pieces();
  void name_pieces();
  void draw_lines();
  void draw_bands();
  void draw_marks();
  QCPItemText* write(const QString& words, const QColor& ink, double x, double y, Qt::Alignment side,
                     bool from_top = false);
  void queue() { plot.replot(QCustomPlot::rpQueuedReplot); }

  LinePlot& owner;
  QCustomPlot& plot;
  PlotPicture picture;
  QString empty_words;
  PieceId lit;
  std::optional<double> marker;
  PieceId selected;
  QList<QCPAbstractItem*> marks;  ///< redrawn on their own when only the pointing changes
  QList<QCPItemText*> names;
};

LinePlot::Drawing::Drawing(LinePlot& owner_widget) : owner(owner_widget), plot(*new QCustomPlot(&owner_widget)) {
  plot.setFocusPolicy(Qt::NoFocus);
  plot.setMouseTracking(true);
  plot.setInteractions(QCP::Interactions());
  plot.setNoAntialiasingOnDrag(true);
  plot.axisRect()->setMinimumMargins(QMargins(8, 8, 12, 8));
  // Names and marks lie over the lines, bands and ticks under them.
  plot.addLayer(QStringLiteral("under"), plot.layer(QStringLiteral("grid")), QCustomPlot::limAbove);
  plot.addLayer(QStringLiteral("marks"), plot.layer(QStringLiteral("main")), QCustomPlot::limAbove);
}

void LinePlot::Drawing::style() {
  style_axes(plot, 5);
  plot.xAxis->setLabel(picture.x_title);
  plot.yAxis->setLabel(picture.y_title);
}

void LinePlot::Drawing::set_ranges() {
  double low = picture.from_zero ? 0.0 : HUGE_VAL;
  double high = picture.from_zero ? 0.0 : -HUGE_VAL;
  double end = 0.0;
  for (const PlotLine& line : picture.lines) {
    for (const double y : line.y) {
      low = std::min(low, y);
      high = std::max(high, y);
    }
    if (!line.x.empty()) end = std::max(end, line.x.back());
  }
  if (!(high >= low) || end <= 0.0) {
    low = 0.0;
    high = 1.0;
    end = 1.0;
  }
  const double span = std::max(high - low, 1e-6);
  // Room above for the pieces' names and below for the marks at the axis, whatever the height of the panel.
  const double height = std::max(60, plot.axisRect()->height());
  plot.yAxis->setRange(low - span * 14.0 / height - 0.02 * span,
                       high + span * (picture.bands.empty() ? 34.0 : 56.0) / height + 0.02 * span);
  plot.xAxis->setRange(0.0, end);
}

void LinePlot::Drawing::redraw() {
  plot.clearGraphs();
  plot.clearItems();
  marks.clear();
  names.clear();
  style();
  const bool empty = picture.pieces.empty();
  plot.xAxis->setVisible(!empty);
  plot.yAxis->setVisible(!empty);
  if (empty) {
    auto* words = write(empty_words, theme().inks.faint_ink, 0.5, 0.5, Qt::AlignCenter);
    words->position->setType(QCPItemPosition::ptAxisRectRatio);
    words->position->setCoords(0.5, 0.5);  // a change of type keeps the pixel, not the ratio
    words->setFont(type(TypeRole::body));
    queue();
    return;
  }
  set_ranges();
  draw_pieces();
  draw_bands();
  draw_lines();
  draw_marks();
  queue();
}

QCPItemText* LinePlot::Drawing::write(const QString& words, const QColor& ink, double x, double y, Qt::Alignment side,
                                      bool from_top) {
  auto* text = new QCPItemText(&plot);
  if (from_top) text->position->setTypeY(QCPItemPosition::ptAxisRectRatio);
  text->setText(words);
  text->setColor(ink);
  text->setFont(type(TypeRole::caption));
  text->setPositionAlignment(side);
  text->setPadding(QMargins(3, from_top ? 1 : 4, 3, from_top ? 1 : 4));
  text->position->setCoords(x, y);
  text->setLayer(QStringLiteral("marks"));
  return text;
}

void LinePlot::Drawing::draw_pieces() {
  const QPen tick(theme().inks.grid_strong, 1);
  for (const PlotPiece& piece : picture.pieces) {
    if (piece.from <= 0.0) continue;
    auto* line = new QCPItemLine(&plot);
    line->setLayer(QStringLiteral("under"));
    line->setPen(tick);
    for (QCPItemPosition* end : {line->start, line->end}) end->setTypeY(QCPItemPosition::ptAxisRectRatio);
    line->start->setCoords(piece.from, 0.0);
    line->end->setCoords(piece.from, 1.0);
  }
  name_pieces();
}

// A name stands over its own stretch, the widest stretches first; what finds no room is read by pointing.
void LinePlot::Drawing::name_pieces() {
  std::vector<const PlotPiece*> order;
  for (const PlotPiece& piece : picture.pieces) order.push_back(&piece);
  std::stable_sort(order.begin(), order.end(),
                   [](const PlotPiece* a, const PlotPiece* b) { return a->to - a->from > b->to - b->from; });
  const QFontMetricsF metrics(type(TypeRole::caption));
  for (const PlotPiece* piece : order) {
    const double from = plot.xAxis->coordToPixel(piece->from);
    const double room = plot.xAxis->coordToPixel(piece->to) - from - 6.0;
    const QString name = metrics.elidedText(piece->name, Qt::ElideRight, room);
    if (name.size() < std::min<qsizetype>(piece->name.size(), 5)) continue;
    auto* text = write(name, theme().inks.faint_ink, piece->from, 0.0, Qt::AlignLeft | Qt::AlignTop, true);
    names.append(text);
  }
}

void LinePlot::Drawing::draw_bands() {
  for (const PlotBand& band : picture.bands) {
    QCPGraph* top = plot.addGraph();
    QCPGraph* bottom = plot.addGraph();
    top->setData(vector_of(band.x), vector_of(band.top), true);
    bottom->setData(vector_of(band.x), vector_of(band.bottom), true);
    top->setPen(Qt::NoPen);
    bottom->setPen(Qt::NoPen);
    top->setBrush(brush_of(band.above));
    top->setChannelFillGraph(bottom);
  }
  // The words stand once, at the widest band, with paper behind them so that the hatching does not run through.
  const PlotBand* widest = nullptr;
  for (const PlotBand& band : picture.bands) {
    if (band.x.size() > 1 && (!widest || band.x.back() - band.x.front() > widest->x.back() - widest->x.front()))
      widest = &band;
  }
  if (!widest) return;
  std::size_t deepest = 0;
  for (std::size_t i = 0; i < widest->x.size(); ++i) {
    if (widest->top[i] - widest->bottom[i] > widest->top[deepest] - widest->bottom[deepest]) deepest = i;
  }
  const QColor ink = widest->above == LineRole::dew_point ? theme().inks.water : theme().inks.accent;
  const double middle = (widest->x.front() + widest->x.back()) / 2.0;
  const QString words = QStringLiteral("▲ ") + widest->label;
  const double half = QFontMetricsF(type(TypeRole::caption)).horizontalAdvance(words) / 2.0 + 6.0;
  const double left = plot.xAxis->pixelToCoord(plot.xAxis->coordToPixel(0.0) + half);
  const double right = plot.xAxis->pixelToCoord(plot.xAxis->coordToPixel(plot.xAxis->range().upper) - half);
  // Above the band, but not over the pieces' names.
  constexpr double below_names = 38.0;
  const double highest = plot.yAxis->pixelToCoord(plot.axisRect()->top() + below_names);
  auto* text = write(words, ink, std::clamp(middle, std::min(left, right), std::max(left, right)),
                     std::min(widest->top[deepest], highest), Qt::AlignHCenter | Qt::AlignBottom);
  text->setBrush(QBrush(theme().inks.paper));
}

void LinePlot::Drawing::draw_lines() {
  for (const PlotLine& line : picture.lines) {
    QCPGraph* graph = plot.addGraph();
    graph->setData(vector_of(line.x), vector_of(line.y), true);
    graph->setPen(pen_of(line.role));
  }
  std::vector<LabelPlace> written;
  for (std::size_t i = 0; i < picture.lines.size(); ++i) {
    const PlotLine& line = picture.lines[i];
    const double half = QFontMetricsF(type(TypeRole::caption)).horizontalAdvance(line.label) / 2.0 + 4.0;
    const double reach = plot.xAxis->pixelToCoord(half) - plot.xAxis->pixelToCoord(0.0);
    auto place = label_place(picture, i, reach, plot.yAxis->range().lower, plot.yAxis->range().upper);
    if (!place) continue;
    // Curves that lie over one another (a variant just forked) have their names on either side.
    const bool taken = std::any_of(written.begin(), written.end(), [&](const LabelPlace& other) {
      return std::abs(other.x - place->x) < 2.0 * reach && other.over == place->over &&
             std::abs(other.y - place->y) < 0.05 * plot.yAxis->range().size();
    });
    if (taken) place->over = !place->over;
    written.push_back(*place);
    write(line.label, pen_of(line.role).color(), place->x, place->y,
          Qt::AlignHCenter | (place->over ? Qt::AlignBottom : Qt::AlignTop));
  }
}

void LinePlot::Drawing::draw_marks() {
  for (QCPAbstractItem* item : marks) plot.removeItem(item);
  marks.clear();
  const Inks& inks = theme().inks;
  if (const PlotPiece* piece = picture.piece(lit)) {
    auto* wash = new QCPItemRect(&plot);
    wash->setLayer(QStringLiteral("under"));
    wash->setPen(Qt::NoPen);
    wash->setBrush(inks.accent_wash);
    for (QCPItemPosition* corner : {wash->topLeft, wash->bottomRight})
      corner->setTypeY(QCPItemPosition::ptAxisRectRatio);
    wash->topLeft->setCoords(piece->from, 0.0);
    wash->bottomRight->setCoords(piece->to, 1.0);
    marks.append(wash);
  }
  if (const PlotPiece* piece = picture.piece(selected)) {
    auto* bar = new QCPItemLine(&plot);
    bar->setLayer(QStringLiteral("marks"));
    bar->setPen(QPen(inks.accent, 3, Qt::SolidLine, Qt::FlatCap));
    for (QCPItemPosition* end : {bar->start, bar->end}) end->setTypeY(QCPItemPosition::ptAxisRectRatio);
    bar->start->setCoords(piece->from, 1.0);
    bar->end->setCoords(piece->to, 1.0);
    marks.append(bar);
  }
  if (marker) {
    auto* line = new QCPItemLine(&plot);
    line->setLayer(QStringLiteral("marks"));
    line->setPen(QPen(inks.accent, 1));
    for (QCPItemPosition* end : {line->start, line->end}) end->setTypeY(QCPItemPosition::ptAxisRectRatio);
    line->start->setCoords(*marker, 0.0);
    line->end->setCoords(*marker, 1.0);
    marks.append(line);
  }
}

LinePlot::LinePlot(QWidget* parent) : QWidget(parent), drawing_(std::make_unique<Drawing>(*this)) {
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(&drawing_->plot);
  drawing_->plot.installEventFilter(this);
  setFocusPolicy(Qt::StrongFocus);
  setMinimumHeight(90);
  drawing_->redraw();
}

LinePlot::~LinePlot() = default;

void LinePlot::show_picture(PlotPicture picture) {
  drawing_->picture = std::move(picture);
  drawing_->redraw();
}

const PlotPicture& LinePlot::picture() const { return drawing_->picture; }

void LinePlot::mark(const PieceId& piece, std::optional<double> x) {
  if (drawing_->lit == piece && drawing_->marker == x) return;
  drawing_->lit = piece;
  drawing_->marker = x;
  drawing_->draw_marks();
  drawing_->queue();
}

void LinePlot::mark_selected(const PieceId& piece) {
  if (drawing_->selected == piece) return;
  drawing_->selected = piece;
  drawing_->draw_marks();
  drawing_->queue();
}

void LinePlot::set_empty_words(const QString& words) {
  if (drawing_->empty_words == words) return;
  drawing_->empty_words = words;
  if (drawing_->picture.pieces.empty()) drawing_->redraw();
}

std::optional<double> LinePlot::marked() const { return drawing_->marker; }

QPoint LinePlot::place_of(double x) const {
  const QCustomPlot& plot = drawing_->plot;
  const int across = static_cast<int>(std::lround(plot.xAxis->coordToPixel(x)));
  return plot.mapToParent(QPoint(across, plot.axisRect()->center().y()));
}

bool LinePlot::eventFilter(QObject* watched, QEvent* event) {
  QCustomPlot& plot = drawing_->plot;
  if (watched != &plot || drawing_->picture.pieces.empty()) return QWidget::eventFilter(watched, event);
  const auto x_of = [&plot](const QEvent* e) {
    const double x = plot.xAxis->pixelToCoord(static_cast<const QMouseEvent*>(e)->position().x());
    return std::clamp(x, plot.xAxis->range().lower, plot.xAxis->range().upper);
  };
  switch (event->type()) {
    case QEvent::MouseMove:
      emit pointed(x_of(event));
      break;
    case QEvent::MouseButtonPress:
      setFocus(Qt::MouseFocusReason);
      emit chosen(x_of(event));
      break;
    case QEvent::Leave:
      emit left();
      break;
    default:
      break;
  }
  return QWidget::eventFilter(watched, event);
}

void LinePlot::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Left:
      emit stepped(-1);
      return;
    case Qt::Key_Right:
      emit stepped(1);
      return;
    case Qt::Key_PageUp:
      emit stepped(-10);
      return;
    case Qt::Key_PageDown:
      emit stepped(10);
      return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (drawing_->marker) emit chosen(*drawing_->marker);
      return;
    case Qt::Key_Escape:
      emit left();
      return;
    default:
      QWidget::keyPressEvent(event);
  }
}

void LinePlot::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange) drawing_->redraw();
  QWidget::changeEvent(event);
}

void LinePlot::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  drawing_->redraw();  // which names have room depends on the width
}

}  // namespace fluewright
