// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/paper.hpp"

#include <QObject>

#include <functional>

class QWidget;

namespace fluewright {

class Document;

/// Paper as a person asks for it: the dialog with preview, and exports of views, parts and results. What takes long
/// runs beside the window; the design on the desk is copied first.
class PaperRoom : public QObject {
  Q_OBJECT

 public:
  PaperRoom(Document& document, std::function<QString()> name, QWidget& window);

  /// The dialog: which page, on what, preview, print, save as PDF.
  void open_paper();
  void export_view(PaperView view);
  void export_parts();
  void export_results();

 signals:
  void said(const QString& sentence);

 private:
  /// Asks where to; empty if nowhere.
  [[nodiscard]] QString ask_file(const QString& title, const QString& ending, const QString& filter);
  void write(const QString& path, std::function<PaperFault()> job);

  Document& document_;
  std::function<QString()> name_;
  QWidget& window_;
};

}  // namespace fluewright
