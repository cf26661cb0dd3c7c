// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/print/paper_room.hpp"

#include "app/desktop/document.hpp"
#include "app/desktop/print/paper_dialog.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/library_reader.hpp"
#include "app/shared/report.hpp"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QThread>

namespace fluewright {

PaperRoom::PaperRoom(Document& document, std::function<QString()> name, QWidget& window)
    : QObject(&window), document_(document), name_(std::move(name)), window_(window) {}

void PaperRoom::open_paper() {
  auto* dialog = new PaperDialog(document_, name_(), &window_);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &PaperDialog::said, this, &PaperRoom::said);
  dialog->open();
}

QString PaperRoom::ask_file(const QString& title, const QString& ending, const QString& filter) {
  const QString folder = document_.path().isEmpty() ? QDir::homePath() : QFileInfo(document_.path()).absolutePath();
  QString base = QFileInfo(name_()).completeBaseName();
  const QString start = QDir(folder).filePath(base.replace(QLatin1Char('/'), QLatin1Char('-')) + ending);
  return QFileDialog::getSaveFileName(&window_, title, start, filter);
}

void PaperRoom::export_view(PaperView view) {
  const char* endings[] = {"-plan", "-front", "-side", "-isometric"};
  const QString filter = view == PaperView::isometric
                             ? QStringLiteral("PDF (*.pdf);;SVG (*.svg);;PNG (*.png)")
                             : QStringLiteral("DXF (*.dxf);;PDF (*.pdf);;SVG (*.svg);;PNG (*.png)");
  const QString suffix = view == PaperView::isometric ? QStringLiteral(".pdf") : QStringLiteral(".dxf");
  const QString path =
      ask_file(tr("Export a view"), QString::fromUtf8(endings[static_cast<int>(view)]) + suffix, filter);
  if (path.isEmpty()) return;
  ViewOptions options;
  options.view = view;
  options.units = document_.units();
  write(path, [design = document_.design(), library = &document_.library(), options, path] {
    return write_view(design, *library, options, std::filesystem::path(path.toStdU16String()));
  });
}

void PaperRoom::export_parts() {
  const QString path =
      ask_file(tr("Export the parts list"), QStringLiteral("-parts.csv"), QStringLiteral("CSV (*.csv)"));
  if (path.isEmpty()) return;
  write(path, [design = document_.design(), path] {
    const InEnglish for_programs;
    return write_file(std::filesystem::path(path.toStdU16String()), parts_csv(design, *shipped_library()));
  });
}

void PaperRoom::export_results() {
  const QString path =
      ask_file(tr("Export the results"), QStringLiteral("-results.json"), QStringLiteral("JSON (*.json)"));
  if (path.isEmpty()) return;
  write(path, [design = document_.design(), path] {
    const InEnglish for_programs;
    const auto library = shipped_library();
    const Assessment answer = assess(design, *library);
    return write_file(std::filesystem::path(path.toStdU16String()),
                      assessment_json(design, *library, answer).dump(2) + "\n");
  });
}

void PaperRoom::write(const QString& path, std::function<PaperFault()> job) {
  auto result = std::make_shared<PaperFault>();
  QThread* thread = QThread::create([result, job = std::move(job)] { *result = job(); });
  thread->setParent(this);
  connect(thread, &QThread::finished, this, [this, thread, result, path] {
    thread->deleteLater();
    if (!*result) {
      emit said(tr("Written: %1.").arg(QDir::toNativeSeparators(path)));
      return;
    }
    QMessageBox box(
        QMessageBox::Warning, QStringLiteral("Fluewright"),
        tr("“%1” was not written. What stood there before still does.").arg(QFileInfo(path).fileName()),
        QMessageBox::Ok, &window_);
    box.setObjectName(QStringLiteral("paper_fault"));
    box.setInformativeText(QString::fromStdString(**result));
    box.exec();
  });
  thread->start();
}

}  // namespace fluewright
