// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"

#include <QWidget>

class QLabel;
class QStackedWidget;
class QTabBar;

namespace fluewright {

class LinePlot;

/// The plots along the path. Pointing at them points at the drawing, and the other way round.
class PlotPanel : public QWidget {
  Q_OBJECT

 public:
  explicit PlotPanel(Document& document, QWidget* parent = nullptr);

  /// The plot in front.
  [[nodiscard]] LinePlot* shown() const;
  /// Another page behind the plots, with a tab of its own.
  void add_page(QWidget* page, const QString& name);
  void name_page(QWidget* page, const QString& name);
  void open_page(const QWidget* page);
  [[nodiscard]] QWidget* page() const;  ///< the one in front

 signals:
  void page_changed();

 private:
  void refresh();
  void show_pointing();
  [[nodiscard]] bool shown_is_plot() const;
  void connect_plot(LinePlot* plot);

  Document& document_;
  QTabBar* tabs_;
  QStackedWidget* pages_;
  LinePlot* pressure_;
  LinePlot* temperature_;
  QLabel* readout_;
};

}  // namespace fluewright
