// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/shell/main_window.hpp"

#include "app/desktop/answer/answer_panel.hpp"
#include "app/desktop/desk/desk_widget.hpp"
#include "app/desktop/editors/editor_tabs.hpp"
#include "app/desktop/fields/field.hpp"
#include "app/desktop/plot/line_plot.hpp"
#include "app/desktop/plot/plot_panel.hpp"
#include "app/desktop/rack/rack.hpp"
#include "app/desktop/shell/actions.hpp"
#include "app/desktop/shell/file_room.hpp"
#include "app/desktop/shell/memory.hpp"
#include "app/desktop/start/design_thumbnail.hpp"
#include "app/desktop/start/start_page.hpp"
#include "app/desktop/starts/starts_window.hpp"
#include "app/desktop/working/working_panel.hpp"
#include "app/shared/library_reader.hpp"

#include <QApplication>
#include <QCloseEvent>
#include <QSplitter>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTabBar>

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
  restore_window();
  show_title();
  show_start();
}

MainWindow::~MainWindow() = default;

void MainWindow::build_start() {
  for (const Demo& demo : shipped_demos()) {
    start_->add_demo(
        QString::fromStdString(demo.id), QString::fromStdString(demo.title), QString::fromStdString(demo.scene),
        [&demo](QSize size, double ratio) { return design_thumbnail(demo, shipped_library(), size, ratio); });
  }
  start_->set_recent(memory_.recent());
  connect(start_, &StartPage::new_chosen, files_, &FileRoom::start_new);
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

void MainWindow::closeEvent(QCloseEvent* event) {
  settle_typing();
  if (!files_->may_leave()) {
    event->ignore();
    return;
  }
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

void MainWindow::show_working(std::optional<HeadlineNumber> number) {
  if (number) {
    working_->show_headline(*number);
  } else {
    working_->show_piece();
  }
}

void MainWindow::show_start_map() { starts_->show_page(StartsWindow::Page::map); }
void MainWindow::show_aids() { starts_->show_page(StartsWindow::Page::aids); }

void MainWindow::go_to(Place place) {
  show_work();
  QWidget* targets[] = {rack_, desk_, answer_, editors_->tabBar(), plot_->shown()};
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
                     .arg(files_->name(), document_.read_only() ? QStringLiteral(" (read-only)") : QString()));
  setWindowModified(document_.modified());
}

void MainWindow::show_hint() {
  say(pages_->currentWidget() == start_ ? QStringLiteral("Choose a design to look at, or start with an empty sheet.")
                                        : desk_->sentence());
}

void MainWindow::say(const QString& sentence) { statusBar()->showMessage(sentence); }

}  // namespace fluewright
