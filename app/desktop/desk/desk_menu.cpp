// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/desk_menu.hpp"

#include "app/desktop/desk/winding_dialog.hpp"

#include <QMenu>

namespace fluewright {

void fill_replace_menu(QMenu& menu, DeskVerbs verbs) {
  const auto types = verbs.replacements();
  for (const PieceType* type : types) {
    QAction* action = menu.addAction(QString::fromStdString(type->name));
    action->setToolTip(QString::fromStdString(type->summary));
    QObject::connect(action, &QAction::triggered, &verbs.board(),
                     [verbs, id = type->id]() mutable { verbs.replace(id); });
  }
  if (types.empty()) menu.addAction(Board::tr("Nothing else fits here"))->setEnabled(false);
}

void fill_piece_menu(QMenu& menu, DeskVerbs verbs, const Hit& under) {
  Board& board = verbs.board();
  const bool may_edit = !board.document().read_only();
  const auto add = [&](QMenu& to, const QString& words, bool enabled, auto verb) {
    QAction* action = to.addAction(words);
    action->setEnabled(enabled);
    QObject::connect(action, &QAction::triggered, &board, verb);
    return action;
  };
  const std::size_t selected = board.document().selection().size();
  if (under.joint) {
    add(menu, Board::tr("Pull this joint &apart"), may_edit, [verbs, joint = *under.joint]() mutable { verbs.pull_apart(joint); });
  }
  if (verbs.joint_without_reducer()) {
    add(menu, Board::tr("Put a red&ucer between the two bores"), may_edit, [verbs]() mutable { verbs.put_reducer(); });
  }
  if (selected == 1) {
    QMenu* replace = menu.addMenu(Board::tr("Re&place by"));
    replace->setEnabled(may_edit);
    fill_replace_menu(*replace, verbs);
    add(menu, Board::tr("Turn end for &end"), may_edit, [verbs]() mutable { verbs.reverse(); });
  }
  if (selected > 0) {
    add(menu, Board::tr("Rotate &left"), may_edit, [verbs]() mutable { verbs.rotate(1); });
    add(menu, Board::tr("Mirror, &west for east"), may_edit, [verbs]() mutable { verbs.mirror(heading_east); });
    add(menu, Board::tr("Mirror, &north for south"), may_edit, [verbs]() mutable { verbs.mirror(heading_north); });
    menu.addSeparator();
    add(menu, Board::tr("&Copy"), true, [verbs]() mutable { verbs.copy(); });
    add(menu, Board::tr("Cu&t"), may_edit, [verbs]() mutable { verbs.cut(); });
  }
  add(menu, Board::tr("Pa&ste"), may_edit, [verbs]() mutable { verbs.paste(); });
  if (selected > 0) {
    add(menu, Board::tr("Take &out"), may_edit, [verbs]() mutable { verbs.remove(); });
  }
  menu.addSeparator();
  add(menu, Board::tr("&Join what meets"), may_edit && verbs.can_heal(), [verbs]() mutable { verbs.heal(); });
  add(menu, Board::tr("Draw passes side by s&ide…"), may_edit, [verbs, parent = menu.parentWidget()] { ask_for_winding(verbs, parent); });
}

}  // namespace fluewright
