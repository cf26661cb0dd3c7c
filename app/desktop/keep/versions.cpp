// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/keep/versions.hpp"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <set>

namespace fluewright {

namespace {
// Sorts by name as by time.
const auto stamp = QStringLiteral("yyyyMMdd-HHmmss-zzz");
}  // namespace

QString Versions::folder_of(const QString& path) const {
  const QFileInfo info(path);
  const QByteArray where = QCryptographicHash::hash(info.absoluteFilePath().toUtf8(), QCryptographicHash::Sha256);
  return QDir(folder_).filePath(info.completeBaseName() + QLatin1Char('-') + QString::fromLatin1(where.toHex().left(12)));
}

bool Versions::keep(const QString& path) const {
  const QFileInfo now(path);
  if (!now.exists()) return true;
  const QDir folder(folder_of(path));
  if (!folder.mkpath(QStringLiteral("."))) return false;
  const QString kept = folder.filePath(now.lastModified().toString(stamp) + QLatin1Char('.') + now.suffix());
  if (QFile::exists(kept)) return true;
  if (!QFile::copy(path, kept)) return false;
  thin_out(path);
  return true;
}

std::vector<KeptVersion> Versions::of(const QString& path) const {
  std::vector<KeptVersion> found;
  for (const QFileInfo& info : QDir(folder_of(path)).entryInfoList(QDir::Files, QDir::Name | QDir::Reversed)) {
    const QDateTime saved = QDateTime::fromString(info.completeBaseName(), stamp);
    if (saved.isValid()) found.push_back({saved, info.absoluteFilePath()});
  }
  return found;
}

void Versions::thin_out(const QString& path) const {
  const std::vector<KeptVersion> versions = of(path);
  std::set<QDate> days;
  for (std::size_t i = 0; i < versions.size(); ++i) {
    const bool first_of_its_day = days.insert(versions[i].saved.date()).second;
    const bool recent = i < static_cast<std::size_t>(all_of_the_last);
    if (i >= static_cast<std::size_t>(most) || !(recent || first_of_its_day)) QFile::remove(versions[i].file);
  }
}

}  // namespace fluewright
