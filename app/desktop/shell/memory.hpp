// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/theme/theme.hpp"
#include "app/shared/units.hpp"

#include <QByteArray>
#include <QSettings>
#include <QStringList>

#include <optional>

namespace fluewright {

/// What the program remembers between two starts.
class Memory {
 public:
  /// The user's own settings file.
  Memory();
  /// A file of one's own: for tests.
  explicit Memory(const QString& ini_file);

  [[nodiscard]] UnitSystem units() const;
  void set_units(UnitSystem units);
  /// Nothing: follow the system's light or dark.
  [[nodiscard]] std::optional<Sheet> sheet() const;
  void set_sheet(Sheet sheet);
  [[nodiscard]] QByteArray state(const QString& of) const;
  void set_state(const QString& of, const QByteArray& state);
  /// A choice made on the desk; empty: none yet.
  [[nodiscard]] QString choice(const QString& of) const;
  void set_choice(const QString& of, const QString& choice);

  /// Where working copies and older versions are kept.
  [[nodiscard]] const QString& folder() const { return folder_; }

  /// Newest first, only files that are still there.
  [[nodiscard]] QStringList recent() const;
  void add_recent(const QString& path);
  void clear_recent();

 private:
  mutable QSettings settings_;
  QString folder_;
};

}  // namespace fluewright
