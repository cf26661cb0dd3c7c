// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"

#include <QObject>

class QWidget;

namespace fluewright {

class Memory;

/// Opening and saving as a person meets them: the question about unsaved changes, the dialogs, the messages.
/// Whatever goes wrong, the design on the desk stays as it was.
class FileRoom : public QObject {
  Q_OBJECT

 public:
  FileRoom(Document& document, Memory& memory, QWidget& window);

  /// Each gives true if it went through.
  bool start_new();
  bool open();
  bool open_path(const QString& path);
  bool open_demo(const QString& id);
  bool save();
  bool save_as();
  /// Asks about unsaved changes; true if the design may be left.
  bool may_leave();

  /// "Greenhouse", "Long bench in spring (demo)", "Unnamed": without the mark of changes.
  [[nodiscard]] QString name() const;

 signals:
  void opened();  ///< another design lies on the desk
  void recent_changed();
  void said(const QString& sentence);  ///< for the status bar

 private:
  bool read(const QString& path);
  bool save_to(const QString& path);
  void show_fault(const QString& headline, const FileFault& fault);
  [[nodiscard]] QString folder() const;

  Document& document_;
  Memory& memory_;
  QWidget& window_;
  QString demo_;  ///< title of the demo on the desk, empty otherwise
};

}  // namespace fluewright
