// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/shell/main_window.hpp"

#include "app/desktop/advice/advice_pages.hpp"
#include "app/desktop/answer/answer_panel.hpp"
#include "app/desktop/burn/burn_panel.hpp"
#include "app/desktop/burn/lane_bar.hpp"
#include "app/desktop/desk/desk_widget.hpp"
#include "app/desktop/editors/editor_tabs.hpp"
#include "app/desktop/fields/field.hpp"
#include "app/desktop/plot/line_plot.hpp"
#include "app/desktop/plot/plot_panel.hpp"
#include "app/desktop/rack/rack.hpp"
#include "app/desktop/shell/actions.hpp"
#include "app/desktop/shell/file_room.hpp"
#include "app/desktop/shell/memory.hpp"
#include "app/desktop/start/tour.hpp"
#include "app/desktop/start/design_thumbnail.hpp"
#include "app/desktop/start/start_page.hpp"
#include "app/desktop/starts/starts_window.hpp"
#include "app/desktop/working/working_panel.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/library_reader.hpp"

#include <QApplication>
#include <QCloseEvent>
#include <QSplitter>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTabBar>

#include <algorithm>
#include <utility>

namespace fluewright {

namespace {

QSplitter* splitter(Qt::Orientation orientation, const QString& name) {
  auto* made = new QSplitter(orientation);
  made->setObjectName(name);
  made->setChildrenCollapsible(false);
  made->setHandleWidth(1);
  return made;
}

}  // namespace

MainWindow::MainWindow(Document& document, Memory& memory, QWidget* parent)
    : QMainWindow(parent),
      document_(document),
      memory_(memory),
      files_(new FileRoom(document, memory, *this)),
      pages_(new QStackedWidget),
      start_(new StartPage) {
  setObjectName(QStringLiteral("main_window"));
  document_.set_units(memory_.units());
  if (document_.units() == UnitSystem::imperial) document_.set_grid_step(1.0 * inch);
  setCentralWidget(pages_);
  build_start();
  build_work();
  new Actions(*this, document_, *files_, memory_);
  connect(files_, &FileRoom::opened, this, [this] {
    show_work();
    show_title();
    zoom_to_fit();
  });
  connect(files_, &FileRoom::said, this, &MainWindow::say);
  connect(&document_, &Document::file_changed, this, &MainWindow::show_title);
  connect(&document_, &Document::changed, this, &MainWindow::show_title);
  restore_choices();
  restore_window();
  show_title();
  show_start();
}

MainWindow::~MainWindow() = default;

void MainWindow::build_start() {
  for (const Demo& demo : shipped_demos()) {
    start_->add_demo(
        QString::fromStdString(demo.id), spoken(demo.title),
        spoken(demo.scene),
        [&demo](QSize size, double ratio) { return design_thumbnail(demo, shipped_library(), size, ratio); });
  }
  start_->set_recent(memory_.recent());
  connect(start_, &StartPage::new_chosen, files_, &FileRoom::start_new);
  connect(start_, &StartPage::questions_chosen, files_, &FileRoom::start_by_questions);
  connect(start_, &StartPage::open_chosen, files_, &FileRoom::open);
  connect(start_, &StartPage::back_chosen, this, &MainWindow::show_work);
  connect(start_, &StartPage::recent_chosen, files_, &FileRoom::open_path);
  connect(start_, &StartPage::demo_chosen, files_, &FileRoom::open_demo);
  connect(files_, &FileRoom::recent_changed, this, [this] { start_->set_recent(memory_.recent()); });
  pages_->addWidget(start_);
}

void MainWindow::build_work() {
  rack_ = new Rack(document_);
  desk_ = new DeskWidget(document_);
  rack_->serve(*desk_);
  connect(desk_, &DeskWidget::sentence_changed, this, &MainWindow::say);
  plot_ = new PlotPanel(document_);
  advice_ = new AdvicePages(document_, *plot_, memory_);
  burn_ = new BurnPanel(document_);
  plot_->add_page(burn_, tr("Burn over time"));
  connect(plot_, &PlotPanel::page_changed, this, &MainWindow::share_height);
  answer_ = new AnswerPanel(document_);
  working_ = new WorkingPanel(document_, this);
  starts_ = new StartsWindow(document_, this);
  connect(answer_, &AnswerPanel::working_wanted, this, &MainWindow::show_working);
  editors_ = new EditorTabs(document_);
  editors_->setMinimumHeight(170);
  answer_->setMinimumWidth(320);
  rack_->setMinimumWidth(150);

  drawing_ = splitter(Qt::Horizontal, QStringLiteral("drawing"));
  drawing_->addWidget(rack_);
  drawing_->addWidget(desk_);
  drawing_->setStretchFactor(1, 1);
  left_ = splitter(Qt::Vertical, QStringLiteral("left"));
  left_->addWidget(drawing_);
  left_->addWidget(plot_);
  left_->setStretchFactor(0, 1);
  right_ = splitter(Qt::Vertical, QStringLiteral("right"));
  right_->addWidget(answer_);
  right_->addWidget(editors_);
  right_->setStretchFactor(0, 1);
  across_ = splitter(Qt::Horizontal, QStringLiteral("across"));
  across_->addWidget(left_);
  across_->addWidget(right_);
  across_->setStretchFactor(0, 1);
  work_ = across_;
  pages_->addWidget(work_);
}

void MainWindow::restore_window() {
  resize(1440, 900);
  setMinimumSize(1000, 640);
  const QByteArray geometry = memory_.state(QStringLiteral("window"));
  if (!geometry.isEmpty()) restoreGeometry(geometry);
}

// Not before the window has its size: splitters keep proportions, and the side parts should not grow with it.
void MainWindow::restore_splitters() {
  work_->resize(pages_->size());
  const bool wide = width() > 1250;
  const int right = wide ? 384 : 344;
  const int rack = wide ? 196 : 168;
  const int plot = height() > 800 ? 232 : 180;
  across_->setSizes({width() - right, right});
  left_->resize(width() - right, work_->height());
  right_->resize(right, work_->height());
  drawing_->resize(width() - right, work_->height() - plot);
  drawing_->setSizes({rack, width() - right - rack});
  left_->setSizes({height() - plot, plot});
  right_->setSizes({height() * 58 / 100, height() * 42 / 100});
  for (QSplitter* part : {across_, drawing_, left_, right_}) {
    const QByteArray state = memory_.state(part->objectName());
    if (!state.isEmpty()) part->restoreState(state);
  }
}

namespace {

QString word_of(ViewKind elevation) {
  if (elevation == ViewKind::side) return QStringLiteral("side");
  return elevation == ViewKind::unrolled ? QStringLiteral("unrolled") : QStringLiteral("front");
}

}  // namespace

void MainWindow::restore_choices() {
  const double step = memory_.choice(QStringLiteral("grid_step_mm")).toDouble();
  if (step > 0.0) document_.set_grid_step(step * millimetre);
  if (memory_.choice(QStringLiteral("tint")) == QLatin1String("pressure")) document_.set_tint(Document::Tint::gauge_pressure);
  const QString elevation = memory_.choice(QStringLiteral("elevation"));
  if (elevation == QLatin1String("side")) desk_->look_from(ViewKind::side);
  if (elevation == QLatin1String("unrolled")) desk_->look_from(ViewKind::unrolled);
  Board& board = desk_->board();
  const auto type = [this](const QString& of) {
    const std::string id = memory_.choice(of).toStdString();
    return document_.library().piece_type(id) == nullptr ? std::string() : id;
  };
  if (const std::string run = type(QStringLiteral("run")); !run.empty()) board.set_run_type(run);
  if (const std::string upright = type(QStringLiteral("upright")); !upright.empty()) board.set_upright_type(upright);
  if (const std::string bend = type(QStringLiteral("bend")); !bend.empty()) board.set_bend_type(bend);
}

void MainWindow::keep_choices() {
  memory_.set_choice(QStringLiteral("grid_step_mm"), QString::number(in(document_.grid_step(), millimetre), 'g', 10));
  memory_.set_choice(QStringLiteral("tint"), document_.tint() == Document::Tint::gauge_pressure
                                                 ? QStringLiteral("pressure")
                                                 : QStringLiteral("temperature"));
  memory_.set_choice(QStringLiteral("elevation"), word_of(desk_->elevation().projection().kind()));
  const Board& board = desk_->board();
  memory_.set_choice(QStringLiteral("run"), QString::fromStdString(board.run_type()));
  memory_.set_choice(QStringLiteral("upright"), QString::fromStdString(board.upright_type()));
  memory_.set_choice(QStringLiteral("bend"), QString::fromStdString(board.bend_type()));
}

// The burn wants more height than the plots along the path; they get theirs back after it.
void MainWindow::share_height() {
  const QList<int> sizes = left_->sizes();
  const int whole = sizes.value(0) + sizes.value(1);
  if (whole <= 0) return;
  if (plot_->page() == burn_) {
    plot_height_ = sizes.value(1);
    const int wanted = std::max(plot_height_, whole * 52 / 100);
    left_->setSizes({whole - wanted, wanted});
  } else if (plot_height_ > 0) {
    left_->setSizes({whole - plot_height_, plot_height_});
    plot_height_ = 0;
  }
}

void MainWindow::closeEvent(QCloseEvent* event) {
  settle_typing();
  if (!files_->may_leave()) {
    event->ignore();
    return;
  }
  files_->leave();
  keep_choices();
  plot_->open_page(plot_->shown());  // the plot's own height is what is remembered
  memory_.set_state(QStringLiteral("window"), saveGeometry());
  if (laid_out_) {
    for (const QSplitter* part : {across_, drawing_, left_, right_}) {
      memory_.set_state(part->objectName(), part->saveState());
    }
  }
  event->accept();
}

void MainWindow::show_start() {
  const bool something = !document_.design().pieces.empty() || document_.modified();
  start_->set_current(something ? files_->name() : QString());
  pages_->setCurrentWidget(start_);
  show_title();
  show_hint();
}

void MainWindow::show_work() {
  pages_->setCurrentWidget(work_);
  if (!std::exchange(laid_out_, true)) restore_splitters();
  desk_->setFocus();
  show_title();
  show_hint();
}

void MainWindow::zoom_to_fit() { desk_->zoom_to_fit(); }

void MainWindow::show_tour() {
  end_tour();
  if (!files_->start_with(Tour::example(document_.library()))) return;
  tour_ = new Tour(document_, desk_);
  connect(tour_, &Tour::over, this, &MainWindow::end_tour);
}

void MainWindow::end_tour() {
  memory_.set_choice(QStringLiteral("tour"), QStringLiteral("seen"));
  if (tour_ == nullptr) return;
  tour_->hide();
  tour_->deleteLater();
  tour_ = nullptr;
  desk_->setFocus();
}

void MainWindow::welcome() {
  if (memory_.choice(QStringLiteral("tour")).isEmpty()) show_tour();
}

void MainWindow::show_working(std::optional<HeadlineNumber> number) {
  if (number) {
    working_->show_headline(*number);
  } else {
    working_->show_piece();
  }
}

void MainWindow::show_advice(Advice page) {
  show_work();
  advice_->open(static_cast<AdvicePages::Page>(page));
}

void MainWindow::show_start_map() { starts_->show_page(StartsWindow::Page::map); }
void MainWindow::show_aids() { starts_->show_page(StartsWindow::Page::aids); }

void MainWindow::go_to(Place place) {
  show_work();
  if (place == Place::burn) plot_->open_page(burn_);
  if (place == Place::plot) plot_->open_page(plot_->shown());
  QWidget* targets[] = {rack_, desk_, answer_, editors_->tabBar(), plot_->shown(), &burn_->bar()};
  targets[static_cast<int>(place)]->setFocus(Qt::ShortcutFocusReason);
}

void MainWindow::settle_typing() {
  for (QWidget* widget = QApplication::focusWidget(); widget; widget = widget->parentWidget()) {
    if (auto* field = qobject_cast<Field*>(widget)) {
      field->commit_typing();
      return;
    }
  }
}

void MainWindow::show_title() {
  if (pages_->currentWidget() == start_) {
    setWindowTitle(QStringLiteral("Fluewright"));
    setWindowModified(false);
    return;
  }
  setWindowTitle(QStringLiteral("%1[*]%2 – Fluewright")
                     .arg(files_->name(), document_.read_only() ? tr(" (read-only)") : QString()));
  setWindowModified(document_.modified());
}

void MainWindow::show_hint() {
  say(pages_->currentWidget() == start_ ? tr("Choose a design to look at, or start with an empty sheet.")
                                        : desk_->sentence());
}

void MainWindow::say(const QString& sentence) { statusBar()->showMessage(sentence); }

}  // namespace fluewright
