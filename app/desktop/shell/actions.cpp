// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/shell/actions.hpp"

#include "app/desktop/desk/desk_widget.hpp"
#include "app/desktop/desk/house_dialog.hpp"
#include "app/desktop/grid_steps.hpp"
#include "app/desktop/help/help_card.hpp"
#include "app/desktop/language/language.hpp"
#include "app/desktop/print/paper_room.hpp"
#include "app/desktop/shell/file_room.hpp"
#include "app/desktop/shell/help_pages.hpp"
#include "app/desktop/shell/main_window.hpp"
#include "app/desktop/shell/memory.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/working_report.hpp"

#include <QAction>
#include <QActionGroup>
#include <QApplication>
#include <QFileInfo>
#include <QMenu>
#include <QMenuBar>

#include <array>
#include <cmath>
#include <functional>

namespace fluewright {

namespace {

bool same(Length a, Length b) { return bu::abs(a - b) < 0.01 * millimetre; }

}  // namespace

Actions::Actions(MainWindow& window, Document& document, FileRoom& files, Memory& memory)
    : QObject(&window), window_(window), document_(document), files_(files), memory_(memory) {
  QMenuBar& bar = *window.menuBar();
  build_file(bar);
  build_edit(bar);
  build_piece(bar);
  build_variants(bar);
  build_view(bar);
  build_help(bar);
  connect(&document_, &Document::units_changed, this, &Actions::follow_document);
  connect(&document_, &Document::file_changed, this, &Actions::follow_document);
  connect(&files_, &FileRoom::recent_changed, this, &Actions::show_recent);
  connect(&document_, &Document::selection_changed, this, &Actions::follow_selection);
  connect(&document_, &Document::variants_changed, this, &Actions::follow_selection);
  show_recent();
  follow_document();
  follow_selection();
}

QAction* Actions::add(QMenu* menu, const QString& words, const QList<QKeySequence>& keys, std::function<void()> verb) {
  QAction* action = menu->addAction(words);
  action->setShortcuts(keys);
  connect(action, &QAction::triggered, this, [this, verb = std::move(verb)] {
    window_.settle_typing();  // a number still being typed counts before anything else happens
    verb();
  });
  return action;
}

void Actions::build_file(QMenuBar& bar) {
  QMenu* menu = bar.addMenu(tr("&File"));
  add(menu, tr("&New"), {QKeySequence::New}, [this] { files_.start_new(); });
  add(menu, tr("New by five &questions…"), {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N)},
      [this] { files_.start_by_questions(); });
  add(menu, tr("&Open…"), {QKeySequence::Open}, [this] { files_.open(); });
  recent_ = menu->addMenu(tr("Open &recent"));
  add(menu, tr("S&tart page"), {QKeySequence(Qt::CTRL | Qt::Key_Home)}, [this] { window_.show_start(); });
  menu->addSeparator();
  save_ = add(menu, tr("&Save"), {QKeySequence::Save}, [this] { files_.save(); });
  add(menu, tr("Save &as…"), {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S)},
      [this] { files_.save_as(); });
  earlier_ = add(menu, tr("&Earlier versions…"), {}, [this] { files_.earlier_versions(); });
  menu->addSeparator();
  build_paper(*menu);
  menu->addSeparator();
  add(menu, tr("&Close"), {QKeySequence(Qt::CTRL | Qt::Key_W)}, [this] {
    if (files_.start_new()) window_.show_start();
  });
  add(menu, tr("&Quit"), {QKeySequence(Qt::CTRL | Qt::Key_Q)}, [this] { window_.close(); });
}

void Actions::build_paper(QMenu& menu) {
  auto* paper = new PaperRoom(document_, [this] { return files_.name(); }, window_);
  connect(paper, &PaperRoom::said, &files_, &FileRoom::said);
  add(&menu, tr("&Paper: preview, print, PDF…"), {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P)},
      [paper] { paper->open_paper(); });
  QMenu* exports = menu.addMenu(tr("E&xport"));
  static const std::array views{std::pair{PaperView::plan, QT_TR_NOOP("&Plan…")}, std::pair{PaperView::front, QT_TR_NOOP("Elevation from the &south…")},
                                std::pair{PaperView::side, QT_TR_NOOP("Elevation from the &east…")},
                                std::pair{PaperView::isometric, QT_TR_NOOP("&Isometric…")}};
  for (const auto& [view, words] : views) {
    add(exports, tr(words), {}, [paper, kind = view] { paper->export_view(kind); });
  }
  add(exports, tr("Parts &list…"), {}, [paper] { paper->export_parts(); });
  add(exports, tr("&Results…"), {}, [paper] { paper->export_results(); });
}

void Actions::build_edit(QMenuBar& bar) {
  QMenu* menu = bar.addMenu(tr("&Edit"));
  QUndoGroup& stack = document_.undo_group();
  QAction* undo = stack.createUndoAction(menu, tr("&Undo"));
  QAction* redo = stack.createRedoAction(menu, tr("&Redo"));
  undo->setShortcuts({QKeySequence(Qt::CTRL | Qt::Key_Z)});
  redo->setShortcuts({QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
  menu->addAction(undo);
  menu->addAction(redo);
  menu->addSeparator();
  with_selection_ << add(menu, tr("Cu&t"), {QKeySequence::Cut}, [this] { window_.desk().verbs().cut(); });
  with_selection_ << add(menu, tr("&Copy"), {QKeySequence::Copy}, [this] { window_.desk().verbs().copy(); });
  add(menu, tr("&Paste"), {QKeySequence::Paste}, [this] { window_.desk().verbs().paste(); });
  add(menu, tr("Select &all"), {QKeySequence::SelectAll}, [this] { window_.desk().verbs().select_all(); });
}

void Actions::build_view(QMenuBar& bar) {
  QMenu* menu = bar.addMenu(tr("&View"));
  add(menu, tr("Zoom to &fit"), {QKeySequence(Qt::CTRL | Qt::Key_0)}, [this] { window_.zoom_to_fit(); });
  menu->addSeparator();
  add(menu, tr("&Will it start?"), {QKeySequence(Qt::Key_F9)}, [this] { window_.show_start_map(); });
  add(menu, tr("Starting &aids"), {QKeySequence(Qt::SHIFT | Qt::Key_F9)}, [this] { window_.show_aids(); });
  QMenu* working = menu->addMenu(tr("Show the wor&king of"));
  add(working, tr("the selected &piece"), {QKeySequence(Qt::CTRL | Qt::Key_E)},
      [this] { window_.show_working(std::nullopt); });
  for (const NamedHeadline& headline : headlines()) {
    add(working, spoken(word(headline.headline)), {},
        [this, number = headline.headline] { window_.show_working(number); });
  }

  QMenu* units = menu->addMenu(tr("&Units"));
  units_group_ = new QActionGroup(this);
  for (const UnitSystem system : {UnitSystem::metric, UnitSystem::imperial}) {
    const bool metric = system == UnitSystem::metric;
    QAction* action =
        add(units, metric ? tr("&Metric (mm, °C, Pa)") : tr("&Imperial (in, ft, °F, in w.c.)"),
            {}, [this, system] { set_units(system); });
    action->setCheckable(true);
    action->setData(static_cast<int>(system));
    units_group_->addAction(action);
  }
  add(menu, tr("S&witch metric and imperial"), {QKeySequence(Qt::CTRL | Qt::Key_U)},
      [this] { set_units(document_.units() == UnitSystem::metric ? UnitSystem::imperial : UnitSystem::metric); });
  grid_ = menu->addMenu(tr("&Grid step"));

  QMenu* tint = menu->addMenu(tr("&Colour the drawing by"));
  tint_group_ = new QActionGroup(this);
  for (const Document::Tint kind : {Document::Tint::gas_temperature, Document::Tint::gauge_pressure}) {
    const bool temperature = kind == Document::Tint::gas_temperature;
    QAction* action = add(tint, temperature ? tr("Gas &temperature") : tr("&Pressure"),
                          {QKeySequence(Qt::CTRL | (temperature ? Qt::Key_T : Qt::Key_P))},
                          [this, kind] { document_.set_tint(kind); });
    action->setCheckable(true);
    action->setData(static_cast<int>(kind));
    tint_group_->addAction(action);
  }
  menu->addSeparator();
  QAction* night = add(menu, tr("&Dark sheet"), {QKeySequence(Qt::CTRL | Qt::Key_D)}, [this] {
    take_sheet(sheet_of(!is_dark(theme().sheet), is_high_contrast(theme().sheet)));
  });
  night->setCheckable(true);
  night->setChecked(is_dark(theme().sheet));
  QAction* contrast = add(menu, tr("&High contrast"), {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_D)}, [this] {
    take_sheet(sheet_of(is_dark(theme().sheet), !is_high_contrast(theme().sheet)));
  });
  contrast->setCheckable(true);
  contrast->setChecked(is_high_contrast(theme().sheet));
  QMenu* sizes = menu->addMenu(tr("Text si&ze"));
  auto* size_group = new QActionGroup(this);
  for (const int percent : text_scales) {
    QAction* size = add(sizes, tr("%1 %").arg(percent), {}, [this, percent] {
      apply_theme(*qApp, theme().sheet, 0.01 * percent);
      memory_.set_choice(QStringLiteral("text_scale_percent"), QString::number(percent));
    });
    size->setCheckable(true);
    size->setChecked(std::abs(100.0 * theme().text_scale - percent) < 0.5);
    size_group->addAction(size);
  }
  build_languages(*menu->addMenu(tr("Lan&guage")));
  QAction* pipes = add(menu, tr("Isometric as pipe dra&wing"), {QKeySequence(Qt::CTRL | Qt::Key_I)}, [this] {
    Board& board = window_.desk().board();
    board.set_pipe_drawing(!board.pipe_drawing());
  });
  pipes->setCheckable(true);
  connect(&window_.desk().board(), &Board::redraw, pipes, [this, pipes] { pipes->setChecked(window_.desk().board().pipe_drawing()); });
  add(menu, tr("The h&ouse around it…"), {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_H)},
      [this] { ask_for_house(document_, &window_); });
  menu->addSeparator();
  add(menu, tr("What is wr&ong"), {QKeySequence(Qt::CTRL | Qt::Key_6)},
      [this] { window_.show_advice(MainWindow::Advice::findings); });
  add(menu, tr("What would &help"), {QKeySequence(Qt::CTRL | Qt::Key_7)},
      [this] { window_.show_advice(MainWindow::Advice::remedies); });
  add(menu, tr("How far one can &go"), {QKeySequence(Qt::CTRL | Qt::Key_8)},
      [this] { window_.show_advice(MainWindow::Advice::limits); });
  menu->addSeparator();
  static const std::array places{std::pair{MainWindow::Place::rack, QT_TR_NOOP("Go to the &rack")},
                                 std::pair{MainWindow::Place::desk, QT_TR_NOOP("Go to the dra&wing")},
                                 std::pair{MainWindow::Place::answer, QT_TR_NOOP("Go to the &answer")},
                                 std::pair{MainWindow::Place::editors, QT_TR_NOOP("Go to the &editors")},
                                 std::pair{MainWindow::Place::plot, QT_TR_NOOP("Go to the &plot")}};
  int number = Qt::Key_1;
  for (const auto& [place, words] : places) {
    add(menu, tr(words), {QKeySequence(Qt::CTRL | static_cast<Qt::Key>(number++))},
        [this, where = place] { window_.go_to(where); });
  }
  add(menu, tr("Go to the &burn"), {QKeySequence(Qt::CTRL | Qt::Key_9)}, [this] { window_.go_to(MainWindow::Place::burn); });
}

void Actions::build_languages(QMenu& menu) {
  auto* group = new QActionGroup(this);
  const QString chosen = memory_.choice(QStringLiteral("language"));
  const auto offer = [&](const QString& name, const QString& code) {
    QAction* action = add(&menu, name, {}, [this, code] {
      memory_.set_choice(QStringLiteral("language"), code);
      window_.say(tr("The program speaks it from its next start on."));
    });
    action->setObjectName(QStringLiteral("language:") + code);
    action->setCheckable(true);
    action->setChecked(code == chosen);
    group->addAction(action);
  };
  offer(tr("As the &system"), {});
  menu.addSeparator();
  for (const Language& language : languages) offer(QString::fromUtf8(language.name), QString::fromLatin1(language.code));
}

void Actions::take_sheet(Sheet sheet) {
  apply_theme(*qApp, sheet);
  memory_.set_sheet(sheet);
}

void Actions::build_help(QMenuBar& bar) {
  QMenu* menu = bar.addMenu(tr("&Help"));
  add(menu, tr("&Keyboard"), {QKeySequence(Qt::Key_F1)},
      [this] { show_shortcuts(&window_, *window_.menuBar()); });
  add(menu, tr("&What is this, and what is usual"), {QKeySequence(Qt::SHIFT | Qt::Key_F1)},
      [this] { show_help_card(document_, &window_); });
  add(menu, tr("Three &gestures"), {}, [this] { window_.show_tour(); });
  add(menu, tr("&About and cautions"), {}, [this] { show_about(&window_); });
}

void Actions::set_units(UnitSystem units) {
  // The grid goes along: 25 mm and 1 in are the same place in their lists.
  const auto now = grid_steps(document_.units());
  const auto next = grid_steps(units);
  const Length step = document_.grid_step();
  document_.set_units(units);
  memory_.set_units(units);
  for (std::size_t i = 0; i < now.size(); ++i) {
    if (same(now[i], step)) document_.set_grid_step(next[i]);
  }
}

void Actions::build_grid_menu() {
  grid_units_ = document_.units();
  grid_->clear();
  for (const Length& step : grid_steps(grid_units_)) {
    QAction* action = add(grid_, QString::fromStdString(show(step, grid_units_).text()), {},
                          [this, to = Length{step}] { document_.set_grid_step(to); });
    action->setCheckable(true);
    action->setData(in(step, millimetre));
  }
}

void Actions::follow_document() {
  if (grid_->isEmpty() || grid_units_ != document_.units()) build_grid_menu();
  for (QAction* action : grid_->actions()) {
    action->setChecked(same(action->data().toDouble() * millimetre, document_.grid_step()));
  }
  for (QAction* action : units_group_->actions())
    action->setChecked(action->data().toInt() == static_cast<int>(document_.units()));
  for (QAction* action : tint_group_->actions())
    action->setChecked(action->data().toInt() == static_cast<int>(document_.tint()));
  save_->setEnabled(!document_.read_only());
  earlier_->setEnabled(!document_.path().isEmpty() && !document_.read_only());
}

void Actions::show_recent() {
  recent_->clear();
  for (const QString& path : memory_.recent()) {
    add(recent_, QFileInfo(path).fileName(), {}, [this, path] { files_.open_path(path); })->setToolTip(path);
  }
  recent_->setEnabled(!recent_->isEmpty());
  if (recent_->isEmpty()) return;
  recent_->addSeparator();
  add(recent_, tr("Forget these"), {}, [this] {
    memory_.clear_recent();
    emit files_.recent_changed();
  });
}

}  // namespace fluewright
