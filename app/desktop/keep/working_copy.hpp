// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDateTime>
#include <QLockFile>
#include <QObject>
#include <QString>
#include <QTimer>

#include <memory>
#include <vector>

namespace fluewright {

class Document;

/// Unsaved work of a program that ended without being asked to.
struct LostWork {
  QString id;
  QString name;    ///< as the window's title had it
  QString path;    ///< of the design's file; empty: it never had one
  QDateTime when;  ///< of the last edit that was kept
  QString design;  ///< the text of a design file
};

/// Keeps a copy of the unsaved design on the disk while it is being drawn, so that a crash or a power cut loses at most
/// the last moment. The copy goes when the design is saved or left; what is still there at the next start was lost.
class WorkingCopy : public QObject {
  Q_OBJECT

 public:
  /// From an edit to its copy at the latest; the time the writing takes comes on top.
  static constexpr int delay_milliseconds = 1000;

  WorkingCopy(Document& document, const QString& folder, QObject* parent = nullptr);
  ~WorkingCopy() override;

  /// What the copy is called when it is offered back.
  void set_name(const QString& name) { name_ = name; }
  /// Writes at once what is not written yet.
  void flush();
  /// The design has been left: nothing to offer back.
  void forget();
  [[nodiscard]] const QString& file() const { return file_; }

  /// Copies that no running program holds, the newest first.
  [[nodiscard]] static std::vector<LostWork> lost_in(const QString& folder);
  static void forget_lost(const QString& folder, const QString& id);

 signals:
  /// The copy could not be written; said once until it works again.
  void failed(const QString& why);

 private:
  void follow();
  void write();

  Document& document_;
  QString folder_;
  QString id_;
  QString file_;
  QString name_;
  QTimer timer_;
  std::unique_ptr<QLockFile> held_;
  bool failing_ = false;
};

}  // namespace fluewright
