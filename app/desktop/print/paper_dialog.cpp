// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/print/paper_dialog.hpp"

#include "app/desktop/document.hpp"

#include <QComboBox>
#include <QDate>
#include <QDir>
#include <QDoubleSpinBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QMessageBox>
#include <QPainter>
#include <QPointer>
#include <QPrintDialog>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QPushButton>
#include <QThread>

namespace fluewright {

namespace {

QDoubleSpinBox* spin(double value, double most, const QString& unit, const QString& name) {
  auto* box = new QDoubleSpinBox;
  box->setRange(0.0, most);
  box->setDecimals(unit.isEmpty() ? 1 : 0);
  box->setValue(value);
  box->setSuffix(unit.isEmpty() ? QString() : QStringLiteral(" ") + unit);
  box->setKeyboardTracking(false);
  box->setFocusPolicy(Qt::StrongFocus);
  box->setObjectName(name);
  return box;
}

QPageLayout page_layout(const paper::Sheet& sheet) {
  const QPageSize size(QSizeF(sheet.width, sheet.height), QPageSize::Millimeter);
  return {size, QPageLayout::Portrait, QMarginsF(0, 0, 0, 0)};
}

}  // namespace

PaperDialog::PaperDialog(const Document& document, const QString& name, QWidget* parent)
    : QDialog(parent),
      design_(document.design()),
      library_(document.library()),
      units_(document.units()),
      name_(name),
      printer_(std::make_unique<QPrinter>(QPrinter::HighResolution)) {
  setObjectName(QStringLiteral("paper"));
  setWindowTitle(QStringLiteral("Paper: %1").arg(name));
  build_controls();
  resize(980, 760);
  lay_out();
}

// A layout that is still at work reads the library and the fonts: both must outlast it.
PaperDialog::~PaperDialog() {
  for (const QPointer<QThread>& thread : layouts_) {
    if (thread) thread->wait();
  }
}

void PaperDialog::build_controls() {
  page_ = new QComboBox;
  page_->setObjectName(QStringLiteral("paper_page"));
  page_->addItems({QStringLiteral("Build sheet"), QStringLiteral("Client's page"), QStringLiteral("Lighting card"),
                   QStringLiteral("Working")});
  size_ = new QComboBox;
  size_->setObjectName(QStringLiteral("paper_size"));
  size_->addItems({QStringLiteral("A4"), QStringLiteral("Letter")});
  size_->setCurrentIndex(units_ == UnitSystem::metric ? 0 : 1);
  const PaperOptions usual;
  const QString mm = QStringLiteral("mm");
  stock_ = spin(in(usual.stock.length, millimetre), 20000.0, mm, QStringLiteral("paper_stock"));
  kerf_ = spin(in(usual.stock.kerf, millimetre), 20.0, mm, QStringLiteral("paper_kerf"));
  overlap_ = spin(in(usual.stock.overlap, millimetre), 200.0, mm, QStringLiteral("paper_overlap"));
  sand_ = spin(usual.recipe.sand, 20.0, {}, QStringLiteral("paper_sand"));
  clay_ = spin(usual.recipe.clay, 20.0, {}, QStringLiteral("paper_clay"));
  print_ = new QPushButton(QStringLiteral("&Print…"));
  save_ = new QPushButton(QStringLiteral("Save as P&DF…"));
  auto* close = new QPushButton(QStringLiteral("Close"));
  state_ = new QLabel;
  state_->setWordWrap(true);
  preview_ = new QPrintPreviewWidget(printer_.get());
  preview_->setObjectName(QStringLiteral("paper_preview"));

  auto* form = new QFormLayout;
  form->addRow(QStringLiteral("Pa&ge"), page_);
  form->addRow(QStringLiteral("Pap&er"), size_);
  form->addRow(QStringLiteral("Stock &pipe"), stock_);
  form->addRow(QStringLiteral("Saw &cut"), kerf_);
  form->addRow(QStringLiteral("&Overlap"), overlap_);
  form->addRow(QStringLiteral("Cob: &sand, parts"), sand_);
  form->addRow(QStringLiteral("Cob: c&lay, parts"), clay_);
  auto* side = new QVBoxLayout;
  side->addLayout(form);
  side->addWidget(state_);
  side->addStretch();
  for (QPushButton* button : {print_, save_, close}) side->addWidget(button);
  auto* all = new QHBoxLayout(this);
  all->addLayout(side);
  all->addWidget(preview_, 1);

  for (QComboBox* box : {page_, size_}) connect(box, &QComboBox::currentIndexChanged, this, &PaperDialog::lay_out);
  for (QDoubleSpinBox* box : {stock_, kerf_, overlap_, sand_, clay_}) {
    connect(box, &QDoubleSpinBox::valueChanged, this, &PaperDialog::lay_out);
  }
  connect(preview_, &QPrintPreviewWidget::paintRequested, this, &PaperDialog::paint);
  connect(print_, &QPushButton::clicked, this, &PaperDialog::ask_and_print);
  connect(save_, &QPushButton::clicked, this, &PaperDialog::ask_and_save);
  connect(close, &QPushButton::clicked, this, &QDialog::reject);
}

PaperOptions PaperDialog::options() const {
  PaperOptions options;
  options.page = static_cast<PaperPage>(page_->currentIndex());
  options.size = static_cast<PaperSize>(size_->currentIndex());
  options.units = units_;
  options.stamp = {name_.toStdString(), QDate::currentDate().toString(Qt::ISODate).toStdString(), FLUEWRIGHT_VERSION};
  options.stock = {stock_->value() * millimetre, kerf_->value() * millimetre, overlap_->value() * millimetre};
  options.recipe.sand = sand_->value();
  options.recipe.clay = clay_->value();
  return options;
}

void PaperDialog::lay_out() {
  const int asked = ++wanted_;
  sheets_.clear();
  print_->setEnabled(false);
  save_->setEnabled(false);
  state_->setText(QStringLiteral("Laying out…"));
  auto made = std::make_shared<std::vector<paper::Sheet>>();
  QThread* thread = QThread::create([made, design = design_, library = &library_, wish = options()] {
    *made = paper::pages(design, *library, wish);
  });
  connect(thread, &QThread::finished, thread, &QObject::deleteLater);
  connect(thread, &QThread::finished, this, [this, made, asked] {
    if (asked == wanted_) show_pages(std::move(*made));
  });
  layouts_.emplace_back(thread);
  thread->start();
}

void PaperDialog::show_pages(std::vector<paper::Sheet> sheets) {
  sheets_ = std::move(sheets);
  print_->setEnabled(!sheets_.empty());
  save_->setEnabled(!sheets_.empty());
  state_->setText(sheets_.size() == 1 ? QStringLiteral("1 page") : QStringLiteral("%1 pages").arg(sheets_.size()));
  if (!sheets_.empty()) printer_->setPageLayout(page_layout(sheets_.front()));
  preview_->updatePreview();
  emit laid_out();
}

void PaperDialog::paint(QPrinter* printer) const {
  QPainter painter;
  printer->setFullPage(true);
  for (std::size_t i = 0; i < sheets_.size(); ++i) {
    printer->setPageLayout(page_layout(sheets_[i]));
    if (i == 0) {
      if (!painter.begin(printer)) return;
    } else {
      printer->newPage();
    }
    // A page is as many dots wide as its paper: one to one, so that the scale bars measure true.
    const double width = sheets_[i].width / 25.4 * printer->resolution();
    paper::paint_page(painter, sheets_[i], QRectF(0.0, 0.0, width, sheets_[i].height / 25.4 * printer->resolution()));
  }
}

PaperFault PaperDialog::save_pdf(const QString& path) const {
  const QByteArray pdf = paper::to_pdf(sheets_, name_);
  return write_file(std::filesystem::path(path.toStdU16String()),
                    {pdf.constData(), static_cast<std::size_t>(pdf.size())});
}

void PaperDialog::ask_and_save() {
  const QString base = QFileInfo(name_).completeBaseName();
  const QString start = QDir::home().filePath(QStringLiteral("%1 - %2.pdf").arg(base, page_->currentText()));
  const QString path =
      QFileDialog::getSaveFileName(this, QStringLiteral("Save the pages as PDF"), start, QStringLiteral("PDF (*.pdf)"));
  if (path.isEmpty()) return;
  if (const PaperFault fault = save_pdf(path)) {
    QMessageBox::warning(this, QStringLiteral("Fluewright"), QString::fromStdString(*fault));
    return;
  }
  emit said(QStringLiteral("Written: %1.").arg(QDir::toNativeSeparators(path)));
}

void PaperDialog::ask_and_print() {
  QPrintDialog ask(printer_.get(), this);
  if (ask.exec() != QDialog::Accepted) return;
  paint(printer_.get());
  emit said(QStringLiteral("Sent to the printer."));
}

}  // namespace fluewright
