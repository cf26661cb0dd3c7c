// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"

#include <QTabWidget>

class QLabel;

namespace fluewright {

class LinePlot;

/// The plots along the path. Pointing at them points at the drawing, and the other way round.
class PlotPanel : public QTabWidget {
  Q_OBJECT

 public:
  explicit PlotPanel(Document& document, QWidget* parent = nullptr);

 private:
  void refresh();
  void show_pointing();
  void connect_plot(LinePlot* plot);
  [[nodiscard]] LinePlot* shown() const;

  Document& document_;
  LinePlot* pressure_;
  LinePlot* temperature_;
  QLabel* readout_;
};

}  // namespace fluewright
