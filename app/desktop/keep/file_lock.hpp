// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLockFile>
#include <QString>

#include <memory>

namespace fluewright {

/// Says that a design's file is open, so that a second window does not write over what the first one saves. The mark is
/// a hidden file beside the design, so it also holds between two computers that share a folder.
class FileLock {
 public:
  enum class Outcome {
    held,          ///< this window has the file now
    taken,         ///< another window has it
    not_possible,  ///< no mark can be made there (a folder for reading only): nothing to guard either
  };
  struct Holder {
    qint64 process = 0;
    QString computer;
  };

  /// Takes the file, and lets go of the one held before if that went through.
  Outcome take(const QString& path);
  void let_go();
  [[nodiscard]] const QString& path() const { return path_; }
  /// Who has the file that take() found taken.
  [[nodiscard]] const Holder& holder() const { return holder_; }

  [[nodiscard]] static QString mark_of(const QString& path);

 private:
  std::unique_ptr<QLockFile> lock_;
  QString path_;
  Holder holder_;
};

}  // namespace fluewright
