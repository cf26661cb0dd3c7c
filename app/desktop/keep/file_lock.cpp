// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/keep/file_lock.hpp"

#include <QDir>
#include <QFileInfo>

#include <utility>

namespace fluewright {

namespace {

/// One name for a file however one came to it.
QString true_path(const QString& path) {
  const QFileInfo info(path);
  const QString canonical = info.canonicalFilePath();
  return canonical.isEmpty() ? info.absoluteFilePath() : canonical;
}

}  // namespace

QString FileLock::mark_of(const QString& path) {
  const QFileInfo info(true_path(path));
  return info.dir().filePath(QLatin1Char('.') + info.fileName() + QStringLiteral(".open"));
}

FileLock::Outcome FileLock::take(const QString& path) {
  const QString wanted = true_path(path);
  if (lock_ && wanted == path_) return Outcome::held;
  auto lock = std::make_unique<QLockFile>(mark_of(wanted));
  lock->setStaleLockTime(0);  // only a program that is gone has let go
  if (!lock->tryLock(0)) {
    if (lock->error() != QLockFile::LockFailedError) {
      let_go();
      return Outcome::not_possible;
    }
    QString program;
    lock->getLockInfo(&holder_.process, &holder_.computer, &program);
    return Outcome::taken;
  }
  lock_ = std::move(lock);
  path_ = wanted;
  return Outcome::held;
}

void FileLock::let_go() {
  lock_.reset();
  path_.clear();
}

}  // namespace fluewright
