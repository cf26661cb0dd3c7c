// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/board.hpp"
#include "engine/layout/edit_run.hpp"
#include "engine/layout/edit_set.hpp"

#include <QString>

class QMenu;

namespace fluewright {

/// What can be done with the selected pieces without pointing at the paper: one verb, one undo step. Menus, keys and
/// the menu under the mouse all come here.
class DeskVerbs {
 public:
  explicit DeskVerbs(Board& board) : board_{board} {}

  void select_all();
  void copy() const;
  void cut();
  void paste();
  void remove();
  void mirror(const Heading& across);
  void rotate(int quarters);  ///< to the left
  void reverse();
  /// The joint after the selected piece, or the one given.
  void pull_apart();
  void pull_apart(const PortRef& joint);
  void heal();
  /// Open ends that meet and could be healed.
  [[nodiscard]] bool can_heal() const;
  /// The bench with all its return runs, by so many grid steps.
  void lengthen_bench(int steps);
  void wind(const Serpentine& serpentine);
  [[nodiscard]] EditResult try_winding(const Serpentine& serpentine) const;
  void replace(const std::string& type);
  [[nodiscard]] std::vector<const PieceType*> replacements() const;
  /// Where the selected piece's bore differs from its neighbour's; nothing where it does not.
  [[nodiscard]] std::optional<PortRef> joint_without_reducer() const;
  void put_reducer();

  [[nodiscard]] Board& board() const { return board_; }
  [[nodiscard]] bool anything_selected() const { return !board_.document().selection().empty(); }

 private:
  [[nodiscard]] Document& document() const { return board_.document(); }
  [[nodiscard]] std::optional<PortRef> joint_after(const PieceId& piece) const;
  [[nodiscard]] QString subject() const;  ///< "Bench pipe" or "3 pieces"
  bool commit(const SetResult& result, const QString& text);

  Board& board_;
};

}  // namespace fluewright
