// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/board.hpp"
#include "app/desktop/desk/desk_verbs.hpp"
#include "app/desktop/desk/desk_view.hpp"

#include <QPoint>
#include <QWidget>

class QComboBox;
class QLabel;
class QSplitter;

namespace fluewright {

/// The drawing desk: elevation over plan, both at one scale and one above the other, and the isometric view beside
/// them; above them what the path grows with, the grid, the colours and their legend.
class DeskWidget : public QWidget {
  Q_OBJECT

 public:
  explicit DeskWidget(Document& document, QWidget* parent = nullptr);
  ~DeskWidget() override;

  void zoom_to_fit() { fit(0.0); }
  /// Which elevation: from the south (front) or from the east (side).
  void look_from(ViewKind elevation);

  /// What the rack says. A piece is picked up by a click, or carried with the mouse held down (global positions), or
  /// put where the keyboard is.
  void pick_up(const std::string& type);
  void carry(const std::string& type, QPoint global);
  void drop_carried(QPoint global);
  void forget_carried();
  void put_by_key(const std::string& type);

  [[nodiscard]] Board& board() { return *board_; }
  [[nodiscard]] DeskVerbs verbs() { return DeskVerbs(*board_); }
  [[nodiscard]] DeskView& plan() { return *plan_; }
  [[nodiscard]] DeskView& elevation() { return *elevation_; }
  [[nodiscard]] DeskView& isometric() { return *isometric_; }
  /// One sentence on the tool in hand, or why an edit was refused.
  [[nodiscard]] QString sentence() const { return board_->sentence(); }

 signals:
  void sentence_changed(const QString& sentence);
  void rack_wanted();

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* make_strip();
  void furnish_views();
  void fit(double room);
  void share_height();
  void word_captions();  ///< of the strip's lists: shorter where it is narrow
  void fill_growth();
  void fill_steps();
  void show_choices();
  void link(const DeskView& moved);
  void keep_in_sight();
  [[nodiscard]] DeskView* view_at(QPoint global) const;

  Document& document_;
  Board* board_;
  DeskView* plan_;
  DeskView* elevation_;
  DeskView* isometric_;
  QSplitter* upright_ = nullptr;   ///< elevation over plan
  QLabel* run_caption_ = nullptr;
  QLabel* upright_caption_ = nullptr;
  QLabel* bend_caption_ = nullptr;
  QComboBox* run_ = nullptr;
  QComboBox* upright_run_ = nullptr;
  QComboBox* bend_ = nullptr;
  QComboBox* step_ = nullptr;
  QComboBox* from_ = nullptr;
  QComboBox* tint_ = nullptr;
  bool carrying_ = false;           ///< the mouse holds a piece from the rack
  DeskView* carried_over_ = nullptr;
  bool fitted_by_itself_ = true;   ///< nobody has moved the paper since the last fit
  bool shared_by_itself_ = true;   ///< nobody has moved the line between elevation and plan
};

}  // namespace fluewright
