// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/print/paper_dialog.hpp"

#include "app/desktop/document.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/library_reader.hpp"

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
#include <QProgressBar>
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
  for (std::size_t i = 0; i < document.variant_count() && document.variant_count() > 1; ++i) {
    if (i == document.active_variant()) {
      variant_name_ = document.variant_name(i).toStdString();
    } else {
      variants_.push_back({document.variant(i), document.variant_name(i).toStdString()});
    }
  }
  setObjectName(QStringLiteral("paper"));
  setWindowTitle(tr("Paper: %1").arg(name));
  build_controls();
  resize(980, 760);
  page_chosen();
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
  page_->addItems({tr("Build sheet"), tr("Client's page"), tr("Lighting card"),
                   tr("Working")});
  size_ = new QComboBox;
  size_->setObjectName(QStringLiteral("paper_size"));
  size_->addItems({QStringLiteral("A4"), tr("Letter")});
  size_->setCurrentIndex(units_ == UnitSystem::metric ? 0 : 1);
  const PaperOptions usual;
  const QString mm = QStringLiteral("mm");
  stock_ = spin(in(usual.stock.length, millimetre), 20000.0, mm, QStringLiteral("paper_stock"));
  kerf_ = spin(in(usual.stock.kerf, millimetre), 20.0, mm, QStringLiteral("paper_kerf"));
  overlap_ = spin(in(usual.stock.overlap, millimetre), 200.0, mm, QStringLiteral("paper_overlap"));
  sand_ = spin(usual.recipe.sand, 20.0, {}, QStringLiteral("paper_sand"));
  clay_ = spin(usual.recipe.clay, 20.0, {}, QStringLiteral("paper_clay"));
  print_ = new QPushButton(tr("&Print…"));
  save_ = new QPushButton(tr("Save as P&DF…"));
  auto* close = new QPushButton(tr("Close"));
  before_ = new QComboBox;
  before_->setObjectName(QStringLiteral("paper_before"));
  before_->addItem(tr("Nothing"));
  for (const PaperVariant& variant : variants_) before_->addItem(QString::fromStdString(variant.name));
  if (!variants_.empty()) before_->setCurrentIndex(1);
  state_ = new QLabel;
  state_->setObjectName(QStringLiteral("paper_state"));
  state_->setWordWrap(true);
  progress_ = new QProgressBar;
  progress_->setObjectName(QStringLiteral("paper_progress"));
  call_off_ = new QPushButton(tr("Leave the table ou&t"));
  call_off_->setObjectName(QStringLiteral("paper_call_off"));
  preview_ = new QPrintPreviewWidget(printer_.get());
  preview_->setObjectName(QStringLiteral("paper_preview"));
  for (auto* part : preview_->findChildren<QWidget*>()) part->setAccessibleName(tr("Pages"));

  form_ = new QFormLayout;
  form_->addRow(tr("Pa&ge"), page_);
  form_->addRow(tr("Pap&er"), size_);
  form_->addRow(tr("Compare &with"), before_);
  form_->addRow(tr("Stock &pipe"), stock_);
  form_->addRow(tr("Saw &cut"), kerf_);
  form_->addRow(tr("&Overlap"), overlap_);
  form_->addRow(tr("Cob: &sand, parts"), sand_);
  form_->addRow(tr("Cob: c&lay, parts"), clay_);
  auto* side = new QVBoxLayout;
  side->addLayout(form_);
  side->addWidget(state_);
  side->addWidget(progress_);
  side->addWidget(call_off_);
  side->addStretch();
  for (QPushButton* button : {print_, save_, close}) side->addWidget(button);
  auto* all = new QHBoxLayout(this);
  all->addLayout(side);
  all->addWidget(preview_, 1);

  glance_.setInterval(100);
  connect(&glance_, &QTimer::timeout, this, &PaperDialog::look_at_starts);
  connect(call_off_, &QPushButton::clicked, this, &PaperDialog::call_off_starts);
  connect(page_, &QComboBox::currentIndexChanged, this, &PaperDialog::page_chosen);
  for (QComboBox* box : {size_, before_}) connect(box, &QComboBox::currentIndexChanged, this, &PaperDialog::lay_out);
  for (QDoubleSpinBox* box : {stock_, kerf_, overlap_, sand_, clay_}) {
    connect(box, &QDoubleSpinBox::valueChanged, this, &PaperDialog::lay_out);
  }
  connect(preview_, &QPrintPreviewWidget::paintRequested, this, &PaperDialog::paint);
  connect(print_, &QPushButton::clicked, this, &PaperDialog::ask_and_print);
  connect(save_, &QPushButton::clicked, this, &PaperDialog::ask_and_save);
  connect(close, &QPushButton::clicked, this, &QDialog::reject);
}

/// Only what the page goes by is asked for.
void PaperDialog::page_chosen() {
  const auto page = static_cast<PaperPage>(page_->currentIndex());
  const auto ask = [this](QWidget* field, bool on) {
    field->setVisible(on);
    if (QWidget* label = form_->labelForField(field)) label->setVisible(on);
  };
  ask(before_, page == PaperPage::client && !variants_.empty());
  for (QDoubleSpinBox* box : {stock_, kerf_, overlap_, sand_, clay_}) ask(box, page == PaperPage::build);
  starts_called_off_ = false;
  lay_out();
}

bool PaperDialog::starts_wanted() const {
  return static_cast<PaperPage>(page_->currentIndex()) == PaperPage::card && !starts_ && !starts_called_off_;
}

void PaperDialog::look_at_starts() {
  progress_->setValue(static_cast<int>(100.0 * starts_job_->progress().value()));
  if (!starts_job_->done()) return;
  glance_.stop();
  starts_ = starts_job_->table();
  starts_job_.reset();
  if (static_cast<PaperPage>(page_->currentIndex()) == PaperPage::card) lay_out();
}

void PaperDialog::call_off_starts() {
  glance_.stop();
  starts_job_.reset();  // ends within a step of a run
  starts_called_off_ = true;
  lay_out();
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
  options.variant_name = variant_name_;
  if (const int chosen = before_->currentIndex(); chosen > 0) options.before = variants_[static_cast<std::size_t>(chosen) - 1];
  options.starts = starts_;
  return options;
}

void PaperDialog::lay_out() {
  const int asked = ++wanted_;
  sheets_.clear();
  print_->setEnabled(false);
  save_->setEnabled(false);
  if (starts_wanted() && !starts_job_) {
    starts_job_ = CardTableJob::begin(design_, shipped_library(), card_days(units_));
    starts_called_off_ = starts_job_ == nullptr;  // an unfinished drawing has none
    if (starts_job_) glance_.start();
  }
  const bool waiting = starts_wanted();
  progress_->setVisible(waiting);
  call_off_->setVisible(waiting);
  state_->setText(waiting ? tr("Trying starts…") : tr("Laying out…"));
  if (waiting) return;
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
  state_->setText(sheets_.size() == 1 ? tr("1 page") : tr("%1 pages").arg(sheets_.size()));
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
  QString path =
      QFileDialog::getSaveFileName(this, tr("Save the pages as PDF"), start, QStringLiteral("PDF (*.pdf)"));
  if (path.isEmpty()) return;
  if (QFileInfo(path).suffix().isEmpty()) path += QStringLiteral(".pdf");
  if (const PaperFault fault = save_pdf(path)) {
    QMessageBox::warning(this, QStringLiteral("Fluewright"), QString::fromStdString(*fault));
    return;
  }
  emit said(tr("Written: %1.").arg(QDir::toNativeSeparators(path)));
}

void PaperDialog::ask_and_print() {
  QPrintDialog ask(printer_.get(), this);
  if (ask.exec() != QDialog::Accepted) return;
  paint(printer_.get());
  emit said(tr("Sent to the printer."));
}

}  // namespace fluewright
