// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"
#include "app/desktop/keep/file_lock.hpp"
#include "app/desktop/keep/versions.hpp"
#include "app/desktop/keep/working_copy.hpp"

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
  /// By five questions: a whole path to go on from.
  bool start_by_questions();
  bool start_with(DesignDocument file);  ///< an example to play with
  bool open();
  bool open_path(const QString& path);
  bool open_demo(const QString& id);
  bool save();
  bool save_as();
  /// Asks about unsaved changes; true if the design may be left.
  bool may_leave();
  /// The design has been left for good: its working copy goes, its file is free again.
  void leave();

  /// Offers what an earlier start of the program lost; true if that lies on the desk now.
  bool offer_lost_work();
  /// Offers the versions that were saved over; the chosen one becomes an undoable step.
  void earlier_versions();

  /// "Greenhouse", "Long bench in spring (demo)", "Unnamed": without the mark of changes.
  [[nodiscard]] QString name() const;

 signals:
  void opened();  ///< another design lies on the desk
  void recent_changed();
  void said(const QString& sentence);  ///< for the status bar

 private:
  bool read(const QString& path);
  /// Whether the file is this window's now. If another one has it: whether a copy without a file is wanted instead.
  enum class Access { own, copy, no };
  Access ask_for(const QString& path);
  bool open_lost(const LostWork& work);
  bool save_to(const QString& path);
  void show_fault(const QString& headline, const FileFault& fault);
  [[nodiscard]] QString folder() const;

  Document& document_;
  Memory& memory_;
  QWidget& window_;
  FileLock lock_;
  Versions versions_;
  WorkingCopy working_;
  QString demo_;  ///< title of the demo on the desk, empty otherwise
};

}  // namespace fluewright
