// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/advice/background_task.hpp"
#include "app/desktop/document.hpp"
#include "app/shared/remedy_search.hpp"

#include <QTimer>
#include <QWidget>

class QLabel;
class QPushButton;
class QTableWidget;

namespace fluewright {

/// What could be changed, tried in the background while this page is in front: a table, best first. One click shows a
/// change on the drawing, another makes it.
class RemediesPage : public QWidget {
  Q_OBJECT

 public:
  explicit RemediesPage(Document& document, PriceList prices, QWidget* parent = nullptr);

  /// Whether everything has been tried for the design on the desk.
  [[nodiscard]] bool done() const;
  [[nodiscard]] const std::vector<TriedRemedy>& remedies() const { return remedies_; }
  /// Other prices: everything is added up anew.
  void set_prices(PriceList prices, bool own);
  /// Something to say beside the table until the next search.
  void complain(const QString& words);

 signals:
  /// The user wants a price list of his own, or the shipped one again.
  void own_prices_wanted();

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  void follow();
  void search();
  void take(const TriedRemedy& tried);
  void fill();
  void fill_row(int row, const QString& words, const Outcome& outcome, const TriedRemedy* tried);
  void say_state();
  void show_preview(bool on);
  void apply();
  [[nodiscard]] const TriedRemedy* chosen() const;

  Document& document_;
  PriceList prices_;
  std::optional<Design> searched_;   ///< the design that the table is about
  std::optional<Outcome> before_;
  std::vector<TriedRemedy> remedies_;
  SearchState state_;
  bool previewing_ = false;
  QTimer soon_;      ///< a search begins when the drawing has come to rest
  QTimer repaint_;   ///< the table is filled anew a few times a second, not at every find
  QTableWidget* table_;
  QLabel* words_;
  QPushButton* preview_;
  QPushButton* apply_;
  QPushButton* stop_;
  QPushButton* own_prices_;
  BackgroundTask* task_;
};

}  // namespace fluewright
