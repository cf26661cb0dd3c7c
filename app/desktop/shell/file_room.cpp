// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/shell/file_room.hpp"

#include "app/desktop/shell/memory.hpp"
#include "app/desktop/start/starter_dialog.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/library_reader.hpp"
#include "app/shared/said_library.hpp"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>

namespace fluewright {

namespace {

QString suffix() {
  return QString::fromUtf8(design_file_suffix.data(), static_cast<qsizetype>(design_file_suffix.size()));
}
QString filter() { return tr("Flue paths (*%1);;All files (*)").arg(suffix()); }

/// More than a few messages hide the first, which is the one to act on.
constexpr std::size_t most_messages = 6;

QString lines_of(const std::vector<std::string>& messages) {
  QStringList lines;
  for (std::size_t i = 0; i < messages.size() && i < most_messages; ++i) lines << QString::fromStdString(messages[i]);
  if (messages.size() > most_messages) lines << tr("… and %1 more.").arg(messages.size() - most_messages);
  return lines.join(QLatin1Char('\n'));
}

}  // namespace

FileRoom::FileRoom(Document& document, Memory& memory, QWidget& window)
    : QObject(&window),
      document_(document),
      memory_(memory),
      window_(window),
      versions_(memory.folder() + QStringLiteral("/versions")),
      working_(document, memory.folder() + QStringLiteral("/working")) {
  connect(&document_, &Document::file_changed, this, [this] { working_.set_name(name()); });
  connect(&working_, &WorkingCopy::failed, this, [this](const QString& why) {
    emit said(tr("No working copy can be kept (%1): save often.").arg(why));
  });
}

QString FileRoom::name() const {
  if (!document_.path().isEmpty()) return QFileInfo(document_.path()).fileName();
  if (!demo_.isEmpty()) return tr("%1 (demo)").arg(demo_);
  const QString title = QString::fromStdString(document_.design().title);
  return title.isEmpty() ? tr("Unnamed") : title;
}

bool FileRoom::may_leave() {
  if (!document_.modified()) return true;
  QMessageBox ask(QMessageBox::Question, tr("Unsaved changes"),
                  tr("“%1” has changes that are not saved.").arg(name()),
                  QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, &window_);
  ask.setObjectName(QStringLiteral("unsaved_changes"));
  ask.setInformativeText(tr("Save them before leaving this design?"));
  ask.setDefaultButton(QMessageBox::Save);
  ask.setEscapeButton(QMessageBox::Cancel);
  switch (ask.exec()) {
    case QMessageBox::Save:
      return save();
    case QMessageBox::Discard:
      return true;
    default:
      return false;
  }
}

bool FileRoom::start_new() {
  if (!may_leave()) return false;
  demo_.clear();
  lock_.let_go();
  document_.start_new();
  emit opened();
  return true;
}

bool FileRoom::start_with(DesignDocument file) {
  if (!may_leave()) return false;
  demo_.clear();
  lock_.let_go();
  document_.adopt(std::move(file), {});
  emit opened();
  return true;
}

bool FileRoom::start_by_questions() {
  if (!may_leave()) return false;
  StarterDialog dialog(document_.shared_library(), document_.units(), &window_);
  if (dialog.exec() != QDialog::Accepted || !dialog.design()) return false;
  demo_.clear();
  lock_.let_go();
  DesignDocument fresh;
  fresh.file_version = current_file_version;
  fresh.design = *dialog.design();
  document_.adopt(std::move(fresh), {}, Document::Came::unsaved);
  emit opened();
  return true;
}

QString FileRoom::folder() const {
  if (!document_.path().isEmpty()) return QFileInfo(document_.path()).absolutePath();
  const QStringList recent = memory_.recent();
  return recent.isEmpty() ? QDir::homePath() : QFileInfo(recent.first()).absolutePath();
}

bool FileRoom::open() {
  if (!may_leave()) return false;
  const QString path = QFileDialog::getOpenFileName(&window_, tr("Open a design"), folder(), filter());
  return !path.isEmpty() && read(path);
}

bool FileRoom::open_path(const QString& path) { return may_leave() && read(path); }

bool FileRoom::read(const QString& path) {
  ReadResult result = read_design_file(std::filesystem::path(path.toStdU16String()), document_.library());
  if (const auto* fault = std::get_if<FileFault>(&result)) {
    show_fault(tr("“%1” was not opened.").arg(QFileInfo(path).fileName()), *fault);
    return false;
  }
  const Access access = ask_for(path);
  if (access == Access::no) return false;
  auto& file = std::get<DesignDocument>(result);
  const std::vector<std::string> remarks = file.remarks;
  demo_.clear();
  if (access == Access::copy) {
    lock_.let_go();
    document_.adopt(std::move(file), {});
    emit opened();
    emit said(tr("A copy of “%1”: saving asks where to put it.").arg(QFileInfo(path).fileName()));
    return true;
  }
  document_.adopt(std::move(file), QFileInfo(path).absoluteFilePath());
  memory_.add_recent(path);
  emit recent_changed();
  emit opened();
  if (!remarks.empty()) emit said(lines_of(remarks).replace(QLatin1Char('\n'), QLatin1Char(' ')));
  return true;
}

bool FileRoom::open_demo(const QString& id) {
  if (!may_leave()) return false;
  for (const Demo& demo : shipped_demos()) {
    if (demo.id != id.toStdString()) continue;
    ReadResult result = read_design_text(demo.text, document_.library());
    if (const auto* fault = std::get_if<FileFault>(&result)) {
      show_fault(tr("The demo “%1” was not opened.").arg(spoken(demo.title)), *fault);
      return false;
    }
    demo_ = spoken(demo.title);
    lock_.let_go();
    auto opened_demo = std::get<DesignDocument>(std::move(result));
    visit_texts(opened_demo.design, [](std::string& text) { text = fluewright::said(text); });
    document_.adopt(std::move(opened_demo), {});
    emit opened();
    return true;
  }
  show_fault(tr("There is no demo “%1”.").arg(id),
             FileFault{{fluewright::said("The start page lists the demos there are.")}});
  return false;
}

bool FileRoom::save() { return document_.path().isEmpty() ? save_as() : save_to(document_.path()); }

bool FileRoom::save_as() {
  QString start = document_.path();
  if (start.isEmpty()) {
    QString base = demo_.isEmpty() ? name() : demo_;
    start = QDir(folder()).filePath(base.replace(QLatin1Char('/'), QLatin1Char('-')) + suffix());
  }
  QString path = QFileDialog::getSaveFileName(&window_, tr("Save the design as"), start, filter());
  if (path.isEmpty()) return false;
  if (QFileInfo(path).suffix().isEmpty()) path += suffix();
  return save_to(path);
}

bool FileRoom::save_to(const QString& path) {
  if (!document_.read_only() && lock_.take(path) == FileLock::Outcome::taken) {
    show_fault(tr("“%1” was not saved. The design is still here, unsaved.").arg(QFileInfo(path).fileName()),
               FileFault{{tr("Another window has that file open. Save under another name.").toStdString()}});
    return false;
  }
  const bool kept = document_.read_only() || versions_.keep(path);
  if (const auto fault = document_.save_to(path)) {
    show_fault(tr("“%1” was not saved. The design is still here, unsaved.").arg(QFileInfo(path).fileName()),
               *fault);
    return false;
  }
  demo_.clear();
  memory_.add_recent(path);
  emit recent_changed();
  emit opened();
  emit said(kept ? tr("Saved as %1.").arg(QDir::toNativeSeparators(path))
                 : tr("Saved as %1, but the version before it could not be kept.").arg(QDir::toNativeSeparators(path)));
  return true;
}

void FileRoom::show_fault(const QString& headline, const FileFault& fault) {
  QMessageBox box(QMessageBox::Warning, QStringLiteral("Fluewright"), headline, QMessageBox::Ok, &window_);
  box.setObjectName(QStringLiteral("file_fault"));
  box.setInformativeText(lines_of(fault.messages));
  if (fault.messages.size() > most_messages) box.setDetailedText(QString::fromStdString(fault.text()));
  box.exec();
}

}  // namespace fluewright
