// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The menus of the drawing's verbs and of the variants.

#include "app/desktop/desk/desk_menu.hpp"
#include "app/desktop/desk/desk_widget.hpp"
#include "app/desktop/desk/winding_dialog.hpp"
#include "app/desktop/shell/actions.hpp"
#include "app/desktop/shell/main_window.hpp"
#include "app/desktop/variants/variants_dialog.hpp"

#include <QAction>
#include <QMenu>
#include <QMenuBar>

#include <functional>

namespace fluewright {

void Actions::build_piece(QMenuBar& bar) {
  QMenu* menu = bar.addMenu(tr("&Piece"));
  DeskWidget& desk = window_.desk();
  const auto with = [&](const QString& words, const QKeySequence& key, std::function<void(DeskVerbs)> verb) {
    with_selection_ << add(menu, words, {key}, [&desk, verb = std::move(verb)] { verb(desk.verbs()); });
  };
  QMenu* replace = menu->addMenu(tr("Re&place by"));
  connect(replace, &QMenu::aboutToShow, this, [replace, &desk] {
    replace->clear();
    fill_replace_menu(*replace, desk.verbs());
  });
  with_selection_ << replace->menuAction();
  with(tr("Put a red&ucer between two bores"), Qt::CTRL | Qt::Key_K, [](DeskVerbs verbs) { verbs.put_reducer(); });
  with(tr("Turn end for &end"), Qt::CTRL | Qt::Key_J, [](DeskVerbs verbs) { verbs.reverse(); });
  menu->addSeparator();
  with(tr("Rotate to the &left"), Qt::CTRL | Qt::Key_L, [](DeskVerbs verbs) { verbs.rotate(1); });
  with(tr("Rotate to the &right"), Qt::CTRL | Qt::SHIFT | Qt::Key_L, [](DeskVerbs verbs) { verbs.rotate(-1); });
  with(tr("Mirror, &west for east"), Qt::CTRL | Qt::Key_M, [](DeskVerbs verbs) { verbs.mirror(heading_east); });
  with(tr("Mirror, &north for south"), Qt::CTRL | Qt::SHIFT | Qt::Key_M, [](DeskVerbs verbs) { verbs.mirror(heading_north); });
  menu->addSeparator();
  with(tr("&Bench longer, with its return runs"), Qt::CTRL | Qt::SHIFT | Qt::Key_Right,
       [](DeskVerbs verbs) { verbs.lengthen_bench(1); });
  with(tr("Bench &shorter"), Qt::CTRL | Qt::SHIFT | Qt::Key_Left, [](DeskVerbs verbs) { verbs.lengthen_bench(-1); });
  add(menu, tr("&Draw passes side by side…"), {QKeySequence(Qt::CTRL | Qt::Key_G)},
      [this] { ask_for_winding(window_.desk().verbs(), &window_); });
  menu->addSeparator();
  with(tr("Pull its joint &apart"), Qt::CTRL | Qt::Key_B, [](DeskVerbs verbs) { verbs.pull_apart(); });
  add(menu, tr("&Join what meets"), {QKeySequence(Qt::CTRL | Qt::Key_H)}, [this] { window_.desk().verbs().heal(); });
  menu->addSeparator();
  with_selection_ << add(menu, tr("Take &out\tDel"), {}, [this] { window_.desk().verbs().remove(); });
}

void Actions::build_variants(QMenuBar& bar) {
  QMenu* menu = bar.addMenu(tr("&Variants"));
  add(menu, tr("&Fork what is on the desk"), {QKeySequence(Qt::CTRL | Qt::Key_F6)}, [this] {
    document_.fork_variant(tr("Variant %1").arg(document_.variant_count() + 1));
  });
  const auto turn = [this](std::size_t by) {
    document_.change_over((document_.active_variant() + by) % document_.variant_count());
  };
  with_others_ << add(menu, tr("&Next variant"), {QKeySequence(Qt::Key_F6)}, [turn] { turn(1); });
  with_others_ << add(menu, tr("&Variant before"), {QKeySequence(Qt::SHIFT | Qt::Key_F6)},
                      [this, turn] { turn(document_.variant_count() - 1); });
  with_others_ << add(menu, tr("&Compare them…"), {QKeySequence(Qt::Key_F7)}, [this] { show_variants(document_, &window_); });
  with_others_ << add(menu, tr("&Take this one out"), {}, [this] { document_.remove_variant(document_.active_variant()); });
}

void Actions::follow_selection() {
  for (QAction* action : with_selection_) action->setEnabled(!document_.selection().empty());
  for (QAction* action : with_others_) action->setEnabled(document_.variant_count() > 1);
}

}  // namespace fluewright
