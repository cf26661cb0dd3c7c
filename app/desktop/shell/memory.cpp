// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/shell/memory.hpp"

#include <QFileInfo>
#include <QStandardPaths>

#include <algorithm>

namespace fluewright {

namespace {
constexpr int most_recent = 8;
const auto units_key = QStringLiteral("units");
const auto sheet_key = QStringLiteral("sheet");
const auto recent_key = QStringLiteral("recent");
}  // namespace

Memory::Memory()
    : settings_(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("fluewright"), QStringLiteral("desk")),
      folder_(QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + QStringLiteral("/fluewright")) {}
Memory::Memory(const QString& ini_file)
    : settings_(ini_file, QSettings::IniFormat),
      folder_(QFileInfo(ini_file).absolutePath() + QStringLiteral("/kept")) {}

UnitSystem Memory::units() const {
  return settings_.value(units_key).toString() == QLatin1String("imperial") ? UnitSystem::imperial : UnitSystem::metric;
}

void Memory::set_units(UnitSystem units) {
  settings_.setValue(units_key, units == UnitSystem::imperial ? QStringLiteral("imperial") : QStringLiteral("metric"));
}

std::optional<Sheet> Memory::sheet() const {
  const QString word = settings_.value(sheet_key).toString();
  if (word == QLatin1String("day")) return Sheet::day;
  if (word == QLatin1String("night")) return Sheet::night;
  if (word == QLatin1String("contrast day")) return Sheet::contrast_day;
  if (word == QLatin1String("contrast night")) return Sheet::contrast_night;
  return std::nullopt;
}

void Memory::set_sheet(Sheet sheet) {
  const QString word = is_dark(sheet) ? QStringLiteral("night") : QStringLiteral("day");
  settings_.setValue(sheet_key, is_high_contrast(sheet) ? QStringLiteral("contrast ") + word : word);
}

QByteArray Memory::state(const QString& of) const {
  return settings_.value(QStringLiteral("state/") + of).toByteArray();
}

void Memory::set_state(const QString& of, const QByteArray& state) {
  settings_.setValue(QStringLiteral("state/") + of, state);
}

QString Memory::choice(const QString& of) const {
  return settings_.value(QStringLiteral("choice/") + of).toString();
}

void Memory::set_choice(const QString& of, const QString& choice) {
  settings_.setValue(QStringLiteral("choice/") + of, choice);
}

QStringList Memory::recent() const {
  QStringList paths = settings_.value(recent_key).toStringList();
  paths.erase(std::remove_if(paths.begin(), paths.end(), [](const QString& path) { return !QFileInfo::exists(path); }),
              paths.end());
  return paths;
}

void Memory::add_recent(const QString& path) {
  QStringList paths = settings_.value(recent_key).toStringList();
  const QString whole = QFileInfo(path).absoluteFilePath();
  paths.removeAll(whole);
  paths.prepend(whole);
  while (paths.size() > most_recent) paths.removeLast();
  settings_.setValue(recent_key, paths);
}

void Memory::clear_recent() { settings_.remove(recent_key); }

}  // namespace fluewright
