// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/starts/starts_window.hpp"

#include "app/desktop/fields/scroll_column.hpp"
#include "app/desktop/starts/aids_model.hpp"
#include "app/desktop/starts/map_model.hpp"
#include "app/desktop/starts/map_view.hpp"
#include "app/desktop/starts/start_colours.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/aid_figures.hpp"
#include "app/shared/library_reader.hpp"
#include "app/shared/start_words.hpp"

#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QTabWidget>
#include <QTableView>
#include <QVBoxLayout>

namespace fluewright {

namespace {

constexpr int glance_ms = 120;
constexpr int settle_ms = 800;

QTableView* table(const QString& name, const QString& words, QAbstractItemModel* model, QWidget* parent) {
  auto* made = new QTableView(parent);
  made->setObjectName(name);
  made->setAccessibleName(words);
  made->setModel(model);
  made->setFrameShape(QFrame::NoFrame);
  made->setTabKeyNavigation(false);
  made->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  return made;
}

QLabel* paragraph(const QString& name, const char* role, QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setObjectName(name);
  label->setWordWrap(true);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  if (role != nullptr) label->setProperty("role", role);
  return label;
}

/// Each class's letter on its ground, with its words.
QString legend_text() {
  QString text;
  for (const StartClass start : start_classes) {
    const QColor ground = start_colour(start, theme().sheet);
    const std::string words = said(word(start));
    text += QStringLiteral("<p style='margin:2px'><span style='background-color:%1;color:%2'>&nbsp;%3&nbsp;</span> %4</p>")
                .arg(ground.name(), letter_colour(ground).name(), QString(QLatin1Char(letter(start))),
                     QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size())));
  }
  return text + QStringLiteral("<p style='margin:2px'>%1</p>").arg(tr("Pale, small letter: not computed yet, the cells around it agree"));
}

/// Rank, aid and why, one after the other; what is unsafe in the warning's colour.
QString reasons_text(const std::vector<AidRow>& rows, UnitSystem units) {
  QString text;
  int rank = 0;
  for (const AidRow& row : rows) {
    const QString words = tr("%1&nbsp; <b>%2</b>: %3")
                              .arg(++rank)
                              .arg(QString::fromStdString(aid_name(row.task)).toHtmlEscaped(),
                                   QString::fromStdString(reason_sentence(row, units)).toHtmlEscaped());
    const bool unsafe = row.reason == AidReason::only_while_it_runs;
    text += unsafe ? QStringLiteral("<p style='margin:2px;color:%1'>%2</p>").arg(theme().inks.accent.name(), words)
                   : QStringLiteral("<p style='margin:2px'>%1</p>").arg(words);
  }
  return text;
}

}  // namespace

StartsWindow::StartsWindow(Document& document, QWidget* parent) : QWidget(parent, Qt::Window), document_(document) {
  setObjectName(QStringLiteral("starts"));
  setWindowTitle(tr("Will it start? – Fluewright"));
  resize(1080, 760);
  warning_ = paragraph(QStringLiteral("power_cut"), "heading", this);
  warning_->hide();
  pages_ = new QTabWidget(this);
  pages_->setAccessibleName(windowTitle());
  pages_->setObjectName(QStringLiteral("starts_pages"));
  pages_->addTab(build_map_page(), tr("Map"));
  table_model_ = new MapModel(this);
  table_ = table(QStringLiteral("start_table"), tr("Start map as a table"), table_model_, pages_);
  table_->horizontalHeader()->setDefaultSectionSize(54);
  pages_->addTab(table_, tr("Map as a table"));
  pages_->addTab(build_aids_page(), tr("Starting aids"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(14, 12, 14, 12);
  column->setSpacing(8);
  column->addWidget(warning_);
  column->addWidget(pages_, 1);
  column->addWidget(build_foot());
  glance_.setInterval(glance_ms);
  settle_.setInterval(settle_ms);
  settle_.setSingleShot(true);
  connect(&glance_, &QTimer::timeout, this, &StartsWindow::look);
  connect(&settle_, &QTimer::timeout, this, &StartsWindow::begin);
  connect(&document_, &Document::changed, this, &StartsWindow::design_changed);
  connect(&document_, &Document::units_changed, this, [this] {
    cells_shown_ = aids_shown_ = 0;
    cut_shown_ = false;
    look();
  });
}

StartsWindow::~StartsWindow() = default;

QWidget* StartsWindow::build_map_page() {
  auto* page = new QWidget(this);
  auto* line = new QHBoxLayout(page);
  view_ = new MapView(page);
  auto* words = new QVBoxLayout;
  limit_ = paragraph(QStringLiteral("start_limit"), nullptr, page);
  pointed_ = paragraph(QStringLiteral("start_pointed"), nullptr, page);
  legend_ = paragraph(QStringLiteral("start_legend"), nullptr, page);
  assumptions_ = paragraph(QStringLiteral("start_assumptions"), "caption", page);
  words->addWidget(limit_);
  words->addSpacing(8);
  words->addWidget(legend_);
  words->addSpacing(8);
  words->addWidget(pointed_);
  words->addStretch(1);
  words->addWidget(assumptions_);
  auto* side = new QWidget(page);
  side->setLayout(words);
  side->setFixedWidth(300);
  line->addWidget(view_, 1);
  line->addWidget(side);
  connect(view_, &MapView::pointed, pointed_, &QLabel::setText);
  return page;
}

QWidget* StartsWindow::build_aids_page() {
  aids_model_ = new AidsModel(this);
  aids_table_ = table(QStringLiteral("aids_table"), tr("Starting aids, best first"), aids_model_, this);
  aids_table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  aids_table_->setShowGrid(false);
  aids_table_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  // Why each stands where it stands is said in full beneath: beside ten columns there is no room for sentences.
  aids_table_->setColumnHidden(aids_model_->columnCount() - 1, true);
  auto* page = new QWidget(this);
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(0, 0, 0, 0);
  reasons_ = paragraph(QStringLiteral("aids_reasons"), nullptr, page);
  reasons_->setContentsMargins(6, 6, 6, 6);
  reasons_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  column->addWidget(aids_table_);
  column->addWidget(scroll_column(reasons_, tr("Why"), page), 1);
  return page;
}

QWidget* StartsWindow::build_foot() {
  auto* foot = new QWidget(this);
  auto* line = new QHBoxLayout(foot);
  line->setContentsMargins(0, 0, 0, 0);
  progress_ = new QProgressBar(foot);
  progress_->setObjectName(QStringLiteral("starts_progress"));
  progress_->setAccessibleName(tr("How far the runs are"));
  progress_->setRange(0, 100);
  button_ = new QPushButton(foot);
  button_->setObjectName(QStringLiteral("starts_button"));
  line->addWidget(progress_, 1);
  line->addWidget(button_);
  connect(button_, &QPushButton::clicked, this, [this] { busy() ? call_off() : begin(); });
  return foot;
}

void StartsWindow::show_page(Page page) {
  pages_->setCurrentIndex(static_cast<int>(page));
  show();
  raise();
  activateWindow();
}

bool StartsWindow::busy() const {
  return (cut_job_ && !cut_job_->done()) || (map_job_ && !map_job_->done()) || (aids_job_ && !aids_job_->done());
}

void StartsWindow::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (!map_job_ || !(design_ == document_.design())) begin();
}

/// Nobody looks: nothing runs. What is computed stays.
void StartsWindow::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  settle_.stop();
  if (busy()) {
    call_off();
    map_job_.reset();
  }
}

void StartsWindow::design_changed() {
  if (!isVisible() || design_ == document_.design()) return;
  call_off();
  settle_.start();
}

void StartsWindow::begin() {
  settle_.stop();
  // Jobs of a former drawing end before the next begin: their destructors wait, a step of a run long.
  cut_job_.reset();
  map_job_.reset();
  aids_job_.reset();
  cells_shown_ = aids_shown_ = 0;
  cut_shown_ = false;
  design_ = document_.design();
  const std::shared_ptr<const Library> library = document_.shared_library();
  auto question = ask_for_start(design_, *library);
  if (!question) {
    view_->clear();
    table_model_->clear();
    aids_model_->show_rows({}, document_.units());
    warning_->hide();
    limit_->setText(tr("The drawing has no complete path with a fire on it yet: nothing can burn."));
    assumptions_->clear();
    show_progress();
    return;
  }
  assumptions_->setText(QString::fromStdString(map_assumptions(*question, document_.units())));
  legend_->setText(legend_text());
  cut_job_ = std::make_unique<PowerCutJob>(design_, library);
  map_job_ = std::make_unique<StartMapJob>(*std::move(question), library, usual_grid(design_, cells_));
  aids_job_ = std::make_unique<AidsJob>(AidsQuestion{design_, library.get(), shipped_aid_figures(), {}}, library);
  glance_.start();
  look();
}

void StartsWindow::call_off() {
  if (cut_job_) cut_job_->cancel();
  if (map_job_) map_job_->cancel();
  if (aids_job_) aids_job_->cancel();
  show_progress();
}

void StartsWindow::look() {
  if (!map_job_) return;
  const bool was_busy = busy();
  show_power_cut();
  show_map();
  show_aids();
  show_progress();
  if (!was_busy) glance_.stop();
}

void StartsWindow::show_power_cut() {
  if (!cut_job_ || cut_shown_ || !cut_job_->done()) return;
  cut_shown_ = true;
  const std::optional<PowerCutAnswer>& cut = cut_job_->answer();
  warning_->setVisible(cut.has_value());
  if (!cut) return;
  const std::string_view unsafe = power_cut_headline(*cut);
  warning_->setText((spoken(unsafe) + QLatin1Char(' ') +
                     QString::fromStdString(power_cut_sentence(*cut))).trimmed());
  QPalette palette = warning_->palette();
  palette.setColor(QPalette::WindowText, unsafe.empty() ? theme().inks.ink : theme().inks.accent);
  warning_->setPalette(palette);
}

void StartsWindow::show_map() {
  const StartMap map = map_job_->map();
  if (map.computed() == cells_shown_) return;
  cells_shown_ = map.computed();
  view_->show_map(map, design_.site.outdoor_temperature, design_.room.temperature, document_.units());
  table_model_->show_map(map, document_.units());
  limit_->setText(QString::fromStdString(limit_sentence(map.limit(design_.room.temperature), document_.units())));
}

void StartsWindow::show_aids() {
  std::vector<AidRow> rows = aids_job_->rows();
  if (rows.size() == aids_shown_) return;
  aids_shown_ = rows.size();
  reasons_->setText(reasons_text(rows, document_.units()) +
                    QStringLiteral("<p>%1</p>").arg(QString::fromStdString(aids_assumptions(shipped_aid_figures())).toHtmlEscaped()));
  aids_model_->show_rows(std::move(rows), document_.units());
  aids_table_->resizeColumnsToContents();
  aids_table_->resizeRowsToContents();
  int height = aids_table_->horizontalHeader()->height() + 2 * aids_table_->frameWidth() + 16;
  for (int row = 0; row < aids_model_->rowCount(); ++row) height += aids_table_->rowHeight(row);
  aids_table_->setFixedHeight(height);
}

void StartsWindow::show_progress() {
  const bool at_work = busy();
  const double cells = map_job_ ? map_job_->progress().value() : 0.0;
  const double aids = aids_job_ ? aids_job_->progress().value() : 0.0;
  progress_->setValue(static_cast<int>(50.0 * cells + 50.0 * aids));
  progress_->setFormat(tr("map %1 %, aids %2 %").arg(static_cast<int>(100.0 * cells)).arg(static_cast<int>(100.0 * aids)));
  button_->setText(at_work ? tr("Stop") : tr("Compute anew"));
}

void StartsWindow::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() != QEvent::PaletteChange || legend_ == nullptr || legend_->text().isEmpty()) return;
  legend_->setText(legend_text());
  view_->update();
}

void StartsWindow::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    close();
  } else {
    QWidget::keyPressEvent(event);
  }
}

}  // namespace fluewright
