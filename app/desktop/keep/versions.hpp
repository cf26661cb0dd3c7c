// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDateTime>
#include <QString>

#include <vector>

namespace fluewright {

/// A design as it stood in its file before it was saved over.
struct KeptVersion {
  QDateTime saved;  ///< when that version had been saved
  QString file;
};

/// Older versions of design files, in a folder of the program's own.
class Versions {
 public:
  /// All of the last so many are kept, of older ones the last of each day.
  static constexpr int all_of_the_last = 10;
  static constexpr int most = 40;

  explicit Versions(const QString& folder) : folder_(folder) {}

  /// What stands in the file now, before it is saved over. False if it could not be kept; true also where there is
  /// nothing to keep.
  bool keep(const QString& path) const;
  /// The newest first.
  [[nodiscard]] std::vector<KeptVersion> of(const QString& path) const;

 private:
  [[nodiscard]] QString folder_of(const QString& path) const;
  void thin_out(const QString& path) const;

  QString folder_;
};

}  // namespace fluewright
