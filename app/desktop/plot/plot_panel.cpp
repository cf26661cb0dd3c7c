// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plot/plot_panel.hpp"

#include "app/desktop/plot/line_plot.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/words.hpp"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QStackedWidget>
#include <QTabBar>
#include <QVBoxLayout>

#include <algorithm>

namespace fluewright {

namespace {

template <class Quantity>
QString text(const Quantity& quantity, UnitSystem units) {
  return QString::fromStdString(show(quantity, units).text());
}

}  // namespace

PlotPanel::PlotPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      tabs_(new QTabBar),
      pages_(new QStackedWidget),
      pressure_(new LinePlot),
      temperature_(new LinePlot),
      readout_(new QLabel) {
  setObjectName(QStringLiteral("plot"));
  pressure_->setObjectName(QStringLiteral("pressure_plot"));
  temperature_->setObjectName(QStringLiteral("temperature_plot"));
  pages_->addWidget(pressure_);
  pages_->addWidget(temperature_);
  tabs_->addTab(tr("Pressure along the path"));
  tabs_->addTab(tr("Temperature along the path"));
  tabs_->setDrawBase(false);
  tabs_->setAccessibleName(tr("Plots along the path"));
  readout_->setProperty("role", "caption");
  readout_->setObjectName(QStringLiteral("plot_readout"));
  readout_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  readout_->setMinimumWidth(1);  // a long name is cut rather than widening the window

  auto* top = new QHBoxLayout;
  top->setContentsMargins(0, 0, 12, 0);
  top->addWidget(tabs_);
  top->addWidget(readout_, 1);
  auto* rule = new QFrame;
  rule->setFrameShape(QFrame::HLine);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addLayout(top);
  column->addWidget(rule);
  column->addWidget(pages_, 1);

  connect_plot(pressure_);
  connect_plot(temperature_);
  connect(tabs_, &QTabBar::currentChanged, this, [this](int page) {
    pages_->setCurrentIndex(page);
    if (!shown_is_plot()) readout_->clear();
    refresh();
    emit page_changed();
  });
  connect(&document_, &Document::changed, this, &PlotPanel::refresh);
  connect(&document_, &Document::units_changed, this, &PlotPanel::refresh);
  connect(&document_, &Document::variants_changed, this, &PlotPanel::refresh);
  connect(&document_, &Document::pointed_changed, this, &PlotPanel::show_pointing);
  connect(&document_, &Document::selection_changed, this, &PlotPanel::show_pointing);
  refresh();
}

QWidget* PlotPanel::page() const { return pages_->currentWidget(); }

bool PlotPanel::shown_is_plot() const { return pages_->currentIndex() < 2; }

LinePlot* PlotPanel::shown() const { return pages_->currentWidget() == temperature_ ? temperature_ : pressure_; }

void PlotPanel::connect_plot(LinePlot* plot) {
  plot->set_empty_words(tr("The curves appear once air can come in and a fire burns on the path."));
  plot->setToolTip({});
  connect(plot, &LinePlot::pointed, this, [this, plot](double x) {
    const PlotPiece* piece = plot->picture().piece_at(x);
    if (piece) document_.point_at({piece->id, from_plotted(x, document_.units())});
  });
  connect(plot, &LinePlot::left, this, [this] { document_.point_at({}); });
  connect(plot, &LinePlot::chosen, this, [this, plot](double x) {
    if (const PlotPiece* piece = plot->picture().piece_at(x)) document_.select(piece->id);
  });
  connect(plot, &LinePlot::stepped, this, [this](int slices) {
    const auto& profile = document_.assessment().profile;
    if (profile.empty()) return;
    const auto s = document_.pointed().s;
    const SliceState* now = s ? slice_at(document_.assessment(), *s) : nullptr;
    const auto last = static_cast<std::ptrdiff_t>(profile.size()) - 1;
    const std::ptrdiff_t next =
        now ? std::clamp<std::ptrdiff_t>(now - profile.data() + slices, 0, last) : (slices > 0 ? 0 : last);
    const SliceState& slice = profile[static_cast<std::size_t>(next)];
    document_.point_at({document_.design().pieces.at(slice.piece).id, slice.s});
  });
}

void PlotPanel::add_page(QWidget* page, const QString& name) {
  pages_->addWidget(page);
  tabs_->addTab(name);
}

void PlotPanel::name_page(QWidget* page, const QString& name) { tabs_->setTabText(pages_->indexOf(page), name); }

void PlotPanel::open_page(const QWidget* page) { tabs_->setCurrentIndex(pages_->indexOf(page)); }

// Only the plot in front is drawn: the other would double the cost of every mouse move.
void PlotPanel::refresh() {
  if (!shown_is_plot()) return;
  LinePlot* plot = shown();
  if (pages_->currentWidget() != plot) {
    readout_->setText({});
    return;
  }
  const auto picture = plot == pressure_ ? pressure_picture : temperature_picture;
  PlotPicture drawn = picture(document_.assessment(), document_.design(), document_.library(), document_.units());
  // The other variants' curves behind the one on the desk.
  for (std::size_t i = 0; i < document_.variant_count(); ++i) {
    if (i == document_.active_variant()) continue;
    PlotPicture other = picture(document_.variant_assessment(i), document_.variant(i), document_.library(), document_.units());
    for (PlotLine& line : other.lines) {
      if ((line.role != LineRole::flue_pressure && line.role != LineRole::gas) || line.x.empty()) continue;
      line.role = LineRole::other_variant;
      line.label = document_.variant_name(i);
      drawn.lines.push_back(std::move(line));
      break;
    }
  }
  plot->show_picture(std::move(drawn));
  const bool settled = document_.assessment().profile_is_operating;
  const QString state = document_.assessment().profile.empty() ? QString()
                        : settled                              ? tr("where it settles, bench charged")
                                                               : tr("at the wanted air, bench charged");
  plot->setAccessibleName(QStringLiteral("%1, %2").arg(tabs_->tabText(tabs_->currentIndex()), state));
  show_pointing();
}

void PlotPanel::show_pointing() {
  if (!shown_is_plot()) return;
  LinePlot* plot = shown();
  if (pages_->currentWidget() != plot) return;
  const Document::Pointed& pointed = document_.pointed();
  const UnitSystem units = document_.units();
  plot->mark(pointed.piece, pointed.s ? std::optional(plotted(*pointed.s, units)) : std::nullopt);
  plot->mark_selected(document_.selected());

  const PlotPiece* piece = plot->picture().piece(pointed.piece);
  const SliceState* slice = nullptr;
  if (piece) {
    slice =
        slice_at(document_.assessment(), pointed.s ? *pointed.s : from_plotted((piece->from + piece->to) / 2.0, units));
  }
  if (!slice) {
    readout_->setText({});
    return;
  }
  const QString where =
      tr("%1, %2 along")
          .arg(piece->name, QString::fromStdString(
                                fluewright::show(pointed.s.value_or(slice->s), units, Meaning::run_length).text()));
  readout_->setText(
      plot == pressure_
          ? tr("%1: %2, room %3").arg(where, text(slice->gauge, units), text(slice->room_gauge, units))
          : tr("%1: gas %2, wall %3, dew point %4")
                .arg(where, text(slice->gas, units), text(slice->wall, units), text(slice->dew_point, units)));
}

}  // namespace fluewright
