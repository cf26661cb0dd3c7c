// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/working/working_panel.hpp"

#include "app/desktop/fields/quiet_combo.hpp"
#include "app/desktop/working/working_model.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/words.hpp"
#include "app/shared/working_report.hpp"

#include <QClipboard>
#include <QEvent>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollBar>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace fluewright {

namespace {

QString capital(std::string_view text) {
  QString words = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
  words[0] = words[0].toUpper();
  return words;
}

QToolButton* step_button(const QString& sign, const QString& words, QWidget* parent) {
  auto* button = new QToolButton(parent);
  button->setText(sign);
  button->setToolTip(words);
  button->setAccessibleName(words);
  return button;
}

}  // namespace

WorkingPanel::WorkingPanel(Document& document, QWidget* parent) : QWidget(parent, Qt::Window), document_(document) {
  setObjectName(QStringLiteral("working"));
  setWindowTitle(tr("Working – Fluewright"));
  resize(1080, 720);
  build_table();
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(14, 12, 14, 12);
  column->setSpacing(8);
  column->addWidget(build_head());
  auto* how = new QLabel(tr("SI base units; temperatures in kelvin. Values stand to more digits than they mean, so that "
                                        "whoever works with them on a calculator gets six back."),
                         this);
  how->setProperty("role", "caption");
  column->addWidget(how);
  column->addWidget(table_, 1);
  connect(&document_, &Document::changed, this, &WorkingPanel::refresh);
  connect(&document_, &Document::units_changed, this, &WorkingPanel::refresh);
  connect(&document_, &Document::selection_changed, this, &WorkingPanel::follow_selection);
}

QWidget* WorkingPanel::build_head() {
  auto* head = new QWidget(this);
  auto* line = new QHBoxLayout(head);
  line->setContentsMargins(0, 0, 0, 0);
  subject_ = new QuietCombo(head);
  subject_->setObjectName(QStringLiteral("working_subject"));
  subject_->setAccessibleName(tr("What is worked"));
  subject_->addItem(tr("The selected piece"));
  for (const NamedHeadline& headline : headlines()) subject_->addItem(capital(said(word(headline.headline))));
  title_ = new QLabel(head);
  title_->setObjectName(QStringLiteral("working_title"));
  title_->setProperty("role", "heading");
  earlier_ = step_button(QStringLiteral("‹"), tr("The slice before"), head);
  later_ = step_button(QStringLiteral("›"), tr("The slice after"), head);
  earlier_->setObjectName(QStringLiteral("slice_before"));
  later_->setObjectName(QStringLiteral("slice_after"));
  slice_words_ = new QLabel(head);
  slice_words_->setProperty("role", "caption");
  auto* copy = new QPushButton(tr("Copy all"), head);
  copy->setToolTip(tr("The whole working as text; Ctrl+C copies the chosen lines"));
  line->addWidget(subject_);
  line->addSpacing(10);
  line->addWidget(title_, 1);
  line->addWidget(slice_words_);
  line->addWidget(earlier_);
  line->addWidget(later_);
  line->addWidget(copy);
  connect(subject_, &QComboBox::activated, this, &WorkingPanel::choose);
  connect(earlier_, &QToolButton::clicked, this, [this] { step_slice(-1); });
  connect(later_, &QToolButton::clicked, this, [this] { step_slice(1); });
  connect(copy, &QPushButton::clicked, this, &WorkingPanel::copy_all);
  return head;
}

void WorkingPanel::build_table() {
  model_ = new WorkingModel(this);
  table_ = new QTableView(this);
  table_->setObjectName(QStringLiteral("working_table"));
  table_->setAccessibleName(tr("Steps of the working"));
  table_->setModel(model_);
  table_->setShowGrid(false);
  table_->setWordWrap(true);
  table_->setFrameShape(QFrame::NoFrame);
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setTabKeyNavigation(false);
  table_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  table_->verticalHeader()->hide();
  QHeaderView* columns = table_->horizontalHeader();
  columns->setHighlightSections(false);
  columns->setSectionResizeMode(QHeaderView::Interactive);
  columns->setSectionResizeMode(WorkingModel::meaning, QHeaderView::Stretch);
  const int widths[] = {92, 300, 300, 190, 190};
  for (int i = 0; i < WorkingModel::column_count; ++i) table_->setColumnWidth(i, widths[i]);
  connect(columns, &QHeaderView::sectionResized, this, &WorkingPanel::fit_rows);
  connect(table_, &QTableView::activated, this, [this](const QModelIndex& index) { open_piece_of(index.row()); });
}

void WorkingPanel::show_piece() {
  number_.reset();
  slice_.reset();
  come_forward();
}

void WorkingPanel::show_headline(HeadlineNumber number) {
  number_ = number;
  slice_.reset();
  come_forward();
}

void WorkingPanel::come_forward() {
  const auto known = headlines();
  const auto at = std::find_if(known.begin(), known.end(), [this](const NamedHeadline& h) { return h.headline == number_; });
  subject_->setCurrentIndex(number_ ? 1 + static_cast<int>(at - known.begin()) : 0);
  if (isVisible()) {
    refresh();
  } else {
    show();
  }
  raise();
  activateWindow();
  table_->scrollToTop();
  table_->setFocus();
}

void WorkingPanel::choose(int entry) {
  if (entry == 0) {
    show_piece();
  } else {
    show_headline(headlines()[static_cast<std::size_t>(entry) - 1].headline);
  }
}

void WorkingPanel::follow_selection() {
  if (number_) return;
  slice_.reset();
  refresh();
}

void WorkingPanel::step_slice(int by) {
  if (slices_ == 0) return;
  const std::size_t now = slice_.value_or(slices_ / 2);
  if (by < 0 ? now == 0 : now + 1 >= slices_) return;
  slice_ = by < 0 ? now - 1 : now + 1;
  refresh();
}

std::optional<std::size_t> WorkingPanel::piece_shown() const {
  const std::vector<Piece>& pieces = document_.design().pieces;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (pieces[i].id == document_.selected()) return i;
  }
  const auto& passed = document_.assessment().path.passages;
  return passed.empty() ? std::nullopt : std::optional{passed.front().piece};
}

std::optional<Working> WorkingPanel::explained() {
  const Design& design = document_.design();
  const Assessment& answer = document_.assessment();
  slices_ = 0;
  if (number_) return explain_headline(design, document_.library(), answer, *number_);
  const auto piece = piece_shown();
  const auto run = piece ? retrace_piece(design, document_.library(), answer, *piece) : nullptr;
  if (run == nullptr) return std::nullopt;
  const std::vector<std::size_t> rows = rows_of_piece(*run, *piece);
  slices_ = rows.size();
  if (rows.empty()) return std::nullopt;
  if (!slice_) return explain_piece(*run, *piece);
  slice_ = std::min(*slice_, rows.size() - 1);
  return explain_slice(*run, rows[*slice_]);
}

void WorkingPanel::refresh() {
  if (!isVisible()) return;
  say(explained());
}

void WorkingPanel::say(const std::optional<Working>& working) {
  const int scrolled = table_->verticalScrollBar()->value();
  working_ = working;
  table_->clearSpans();
  if (working_) {
    title_->setText(QString::fromStdString(working_title(*working_, document_.design(), document_.library())));
    model_->show(*working_, document_.design(), document_.library(), document_.units());
    for (int row = 0; row < model_->rowCount(); ++row) {
      if (model_->is_heading(row)) table_->setSpan(row, 0, 1, WorkingModel::column_count);
    }
  } else {
    title_->setText(number_ ? tr("The answer has no such number now.")
                            : tr("The gas does not pass this piece yet."));
    model_->clear();
  }
  const bool sliced = slices_ > 0;
  for (QWidget* part : {static_cast<QWidget*>(slice_words_), static_cast<QWidget*>(earlier_), static_cast<QWidget*>(later_)}) {
    part->setVisible(sliced);
  }
  const std::size_t now = slice_.value_or(slices_ / 2);
  slice_words_->setText(tr("Slice %1 of the piece's %2").arg(now + 1).arg(slices_));
  earlier_->setEnabled(now > 0);
  later_->setEnabled(now + 1 < slices_);
  fit_rows();
  table_->verticalScrollBar()->setValue(scrolled);
}

void WorkingPanel::fit_rows() { table_->resizeRowsToContents(); }

/// A sum's term opens the working of its piece.
void WorkingPanel::open_piece_of(int row) {
  const auto piece = model_->piece_of(row);
  if (!piece || *piece >= document_.design().pieces.size()) return;
  document_.select(document_.design().pieces[*piece].id);
  show_piece();
}

void WorkingPanel::copy_rows() const {
  QStringList lines;
  for (const QModelIndex& index : table_->selectionModel()->selectedRows()) lines << model_->line(index.row());
  if (!lines.isEmpty()) QGuiApplication::clipboard()->setText(lines.join(QLatin1Char('\n')));
}

void WorkingPanel::copy_all() const {
  if (!working_) return;
  QGuiApplication::clipboard()->setText(
      QString::fromStdString(working_text(*working_, document_.design(), document_.library(), document_.units())));
}

void WorkingPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void WorkingPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && table_ != nullptr) table_->viewport()->update();
}

void WorkingPanel::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    close();
  } else if (event->matches(QKeySequence::Copy)) {
    copy_rows();
  } else {
    QWidget::keyPressEvent(event);
  }
}

}  // namespace fluewright
