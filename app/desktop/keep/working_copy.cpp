// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/keep/working_copy.hpp"

#include "app/desktop/document.hpp"

#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>
#include <QUuid>

#include <algorithm>

namespace fluewright {

namespace {

const auto suffix = QStringLiteral(".working");

QString copy_of(const QString& folder, const QString& id) { return QDir(folder).filePath(id + suffix); }

/// Held by the program that writes the copy, so that another one does not offer it back while it is being drawn.
std::unique_ptr<QLockFile> lock_of(const QString& folder, const QString& id) {
  auto lock = std::make_unique<QLockFile>(QDir(folder).filePath(id + QStringLiteral(".lock")));
  lock->setStaleLockTime(0);  // a program may stand for days; only one that is gone has let go
  return lock;
}

std::optional<LostWork> read_copy(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
  const QJsonObject json = QJsonDocument::fromJson(file.readAll()).object();
  LostWork work;
  work.id = QFileInfo(path).completeBaseName();
  work.name = json.value(QStringLiteral("name")).toString();
  work.path = json.value(QStringLiteral("path")).toString();
  work.when = QDateTime::fromString(json.value(QStringLiteral("when")).toString(), Qt::ISODateWithMs);
  work.design = json.value(QStringLiteral("design")).toString();
  if (work.design.isEmpty()) return std::nullopt;
  return work;
}

}  // namespace

WorkingCopy::WorkingCopy(Document& document, const QString& folder, QObject* parent)
    : QObject(parent), document_(document), folder_(folder), id_(QUuid::createUuid().toString(QUuid::WithoutBraces)) {
  QDir().mkpath(folder_);
  file_ = copy_of(folder_, id_);
  held_ = lock_of(folder_, id_);
  held_->tryLock(0);
  timer_.setSingleShot(true);
  timer_.setInterval(delay_milliseconds);
  connect(&timer_, &QTimer::timeout, this, &WorkingCopy::write);
  connect(&document_, &Document::changed, this, &WorkingCopy::follow);
  connect(&document_, &Document::file_changed, this, &WorkingCopy::follow);
}

WorkingCopy::~WorkingCopy() = default;

void WorkingCopy::follow() {
  if (!document_.modified()) {
    forget();
    return;
  }
  // Not put off by every further edit: while somebody draws without a pause a copy is still written each second.
  if (!timer_.isActive()) timer_.start();
}

void WorkingCopy::flush() {
  if (timer_.isActive()) write();
}

void WorkingCopy::forget() {
  timer_.stop();
  QFile::remove(file_);
}

void WorkingCopy::write() {
  timer_.stop();
  const std::string text = write_design_text(document_.file(), document_.library());
  const QJsonObject json{{QStringLiteral("name"), name_},
                         {QStringLiteral("path"), document_.path()},
                         {QStringLiteral("when"), QDateTime::currentDateTime().toString(Qt::ISODateWithMs)},
                         {QStringLiteral("design"), QString::fromStdString(text)}};
  QSaveFile file(file_);
  const bool written = file.open(QIODevice::WriteOnly) && file.write(QJsonDocument(json).toJson()) >= 0 && file.commit();
  if (!written && !failing_) emit failed(file.errorString());
  failing_ = !written;
}

std::vector<LostWork> WorkingCopy::lost_in(const QString& folder) {
  std::vector<LostWork> found;
  for (const QFileInfo& info : QDir(folder).entryInfoList({QLatin1Char('*') + suffix}, QDir::Files)) {
    const auto lock = lock_of(folder, info.completeBaseName());
    if (!lock->tryLock(0)) continue;
    if (auto work = read_copy(info.absoluteFilePath())) found.push_back(std::move(*work));
  }
  std::sort(found.begin(), found.end(), [](const LostWork& a, const LostWork& b) { return a.when > b.when; });
  return found;
}

void WorkingCopy::forget_lost(const QString& folder, const QString& id) { QFile::remove(copy_of(folder, id)); }

}  // namespace fluewright
