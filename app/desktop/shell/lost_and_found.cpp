// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The file room's care that nothing gets lost: a file that another window has, work that a crash left behind, versions
// that were saved over.

#include "app/desktop/shell/file_room.hpp"
#include "app/desktop/shell/memory.hpp"

#include <QDialog>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QLabel>
#include <QListWidget>
#include <QLocale>
#include <QMessageBox>
#include <QPushButton>
#include <QVBoxLayout>

namespace fluewright {

namespace {

QString moment(const QDateTime& when) { return QLocale().toString(when, QLocale::ShortFormat); }

}  // namespace

FileRoom::Access FileRoom::ask_for(const QString& path) {
  if (lock_.take(path) != FileLock::Outcome::taken) return Access::own;
  const FileLock::Holder holder = lock_.holder();
  QMessageBox ask(QMessageBox::Question, tr("Already open"),
                  tr("“%1” is open in another window.").arg(QFileInfo(path).fileName()), QMessageBox::NoButton, &window_);
  ask.setObjectName(QStringLiteral("already_open"));
  ask.setInformativeText(
      tr("The program with number %1 on the computer “%2” has it. If both saved it, one would lose what it drew. "
         "You can work on a copy.")
          .arg(holder.process)
          .arg(holder.computer));
  QPushButton* copy = ask.addButton(tr("Open a &copy"), QMessageBox::AcceptRole);
  copy->setObjectName(QStringLiteral("open_copy"));
  ask.addButton(QMessageBox::Cancel);
  ask.setDefaultButton(copy);
  ask.exec();
  return ask.clickedButton() == copy ? Access::copy : Access::no;
}

void FileRoom::leave() {
  working_.forget();
  lock_.let_go();
}

bool FileRoom::offer_lost_work() {
  const QString folder = memory_.folder() + QStringLiteral("/working");
  for (const LostWork& work : WorkingCopy::lost_in(folder)) {
    QMessageBox ask(QMessageBox::Question, tr("Unsaved work"), tr("“%1” was not saved when the program ended.").arg(work.name),
                    QMessageBox::NoButton, &window_);
    ask.setObjectName(QStringLiteral("lost_work"));
    ask.setInformativeText(tr("A working copy from %1 is here.").arg(moment(work.when)));
    QPushButton* again = ask.addButton(tr("&Go on with it"), QMessageBox::AcceptRole);
    again->setObjectName(QStringLiteral("go_on"));
    QPushButton* forget = ask.addButton(tr("&Throw it away"), QMessageBox::DestructiveRole);
    forget->setObjectName(QStringLiteral("throw_away"));
    ask.addButton(tr("Ask me &later"), QMessageBox::RejectRole);
    ask.setDefaultButton(again);
    ask.exec();
    if (ask.clickedButton() == forget) WorkingCopy::forget_lost(folder, work.id);
    if (ask.clickedButton() == again && open_lost(work)) {
      WorkingCopy::forget_lost(folder, work.id);
      return true;
    }
  }
  return false;
}

bool FileRoom::open_lost(const LostWork& work) {
  ReadResult result = read_design_text(work.design.toStdString(), document_.library());
  if (const auto* fault = std::get_if<FileFault>(&result)) {
    show_fault(tr("The working copy of “%1” was not opened.").arg(work.name), *fault);
    return false;
  }
  Access access = Access::copy;
  if (!work.path.isEmpty()) access = ask_for(work.path);
  if (access == Access::no) return false;
  demo_.clear();
  document_.adopt(std::get<DesignDocument>(std::move(result)), access == Access::own ? work.path : QString(),
                  Document::Came::unsaved);
  working_.flush();  // the old copy goes only when the new one stands
  emit opened();
  emit said(tr("Unsaved work from %1: save it to keep it.").arg(moment(work.when)));
  return true;
}

void FileRoom::earlier_versions() {
  QDialog dialog(&window_);
  dialog.setObjectName(QStringLiteral("earlier_versions"));
  dialog.setWindowTitle(tr("Earlier versions of “%1”").arg(name()));
  auto* column = new QVBoxLayout(&dialog);
  auto* list = new QListWidget;
  list->setAccessibleName(tr("Earlier versions"));
  std::vector<Design> designs;
  for (const KeptVersion& version : versions_.of(document_.path())) {
    ReadResult read = read_design_file(std::filesystem::path(version.file.toStdU16String()), document_.library());
    auto* file = std::get_if<DesignDocument>(&read);
    if (file == nullptr) continue;  // nothing to go back to
    list->addItem(tr("%1, %n piece(s)", nullptr, static_cast<int>(file->design.pieces.size())).arg(moment(version.saved)));
    designs.push_back(std::move(file->design));
  }
  auto* words = new QLabel(designs.empty() ? tr("There is none yet: one is kept each time you save.")
                                           : tr("Choose what to go back to. Undo brings back what is there now."));
  words->setWordWrap(true);
  column->addWidget(words);
  column->addWidget(list);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  QPushButton* back = buttons->addButton(tr("&Go back to it"), QDialogButtonBox::AcceptRole);
  back->setObjectName(QStringLiteral("go_back"));
  back->setEnabled(!designs.empty());
  column->addWidget(buttons);
  list->setCurrentRow(designs.empty() ? -1 : 0);
  connect(buttons, &QDialogButtonBox::accepted, &dialog, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
  connect(list, &QListWidget::itemActivated, &dialog, &QDialog::accept);
  dialog.resize(420, 320);
  const bool accepted = dialog.exec() == QDialog::Accepted;
  const int row = list->currentRow();
  if (!accepted || row < 0) return;
  const QString which = list->item(row)->text();
  document_.commit(designs[static_cast<std::size_t>(row)], tr("Go back to %1").arg(which));
  emit said(tr("This is the version of %1.").arg(which));
}

}  // namespace fluewright
