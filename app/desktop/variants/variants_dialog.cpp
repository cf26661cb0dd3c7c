// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/variants/variants_dialog.hpp"

#include "app/desktop/document.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/desktop/variants/variants_words.hpp"
#include "app/drawing/tr.hpp"

#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

namespace fluewright {

namespace {


/// Names of the variants over what is compared; changing over by a click on a name.
class ComparisonTable : public QTableWidget {
 public:
  explicit ComparisonTable(Document& document) : document_{document} {
    setAccessibleName(tr("Variants side by side"));
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionMode(QAbstractItemView::SingleSelection);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    setWordWrap(true);
    QObject::connect(horizontalHeader(), &QHeaderView::sectionClicked, this,
                     [this](int column) { document_.change_over(static_cast<std::size_t>(column)); });
    QObject::connect(this, &QTableWidget::cellActivated, this,
                     [this](int, int column) { document_.change_over(static_cast<std::size_t>(column)); });
    QObject::connect(&document_, &Document::changed, this, [this] { refresh(); });
    QObject::connect(&document_, &Document::variants_changed, this, [this] { refresh(); });
    QObject::connect(&document_, &Document::units_changed, this, [this] { refresh(); });
    refresh();
  }

 private:
  void refresh() {
    const auto lines = compared_variants(document_);
    const int variants = static_cast<int>(document_.variant_count());
    setColumnCount(variants);
    setRowCount(static_cast<int>(lines.size()) + 1);
    for (int column = 0; column < variants; ++column) {
      const auto place = static_cast<std::size_t>(column);
      const bool here = place == document_.active_variant();
      auto* head = new QTableWidgetItem(here ? tr("%1 (on the desk)").arg(document_.variant_name(place))
                                             : document_.variant_name(place));
      setHorizontalHeaderItem(column, head);
      for (int row = 0; row < static_cast<int>(lines.size()); ++row) {
        const ComparedLine& line = lines[static_cast<std::size_t>(row)];
        put(row, column, line.values[column], line.differences[column]);
      }
      put(static_cast<int>(lines.size()), column,
          column == 0 ? QString() : parts_words(document_, place), {});
    }
    for (int row = 0; row < static_cast<int>(lines.size()); ++row) {
      setVerticalHeaderItem(row, new QTableWidgetItem(lines[static_cast<std::size_t>(row)].what));
    }
    setVerticalHeaderItem(static_cast<int>(lines.size()), new QTableWidgetItem(tr("Parts")));
    resizeRowsToContents();
  }

  void put(int row, int column, const QString& value, const QString& difference) {
    auto* item = new QTableWidgetItem(difference.isEmpty() ? value : QStringLiteral("%1   (%2)").arg(value, difference));
    item->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    if (!difference.isEmpty()) {
      QFont font = type(TypeRole::body);
      font.setWeight(QFont::Medium);
      item->setFont(font);
    }
    setItem(row, column, item);
  }

  Document& document_;
};

}  // namespace

void show_variants(Document& document, QWidget* parent) {
  const auto name = QStringLiteral("variants");
  if (auto* open = parent->findChild<QDialog*>(name)) {
    open->raise();
    open->activateWindow();
    return;
  }
  auto* dialog = new QDialog(parent);
  dialog->setObjectName(name);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setWindowTitle(tr("Variants side by side"));
  auto* column = new QVBoxLayout(dialog);
  auto* words = new QLabel(tr("In brackets: how far from the first. F6 changes over; a click on a name puts that one on the desk."));
  words->setWordWrap(true);
  column->addWidget(words);
  column->addWidget(new ComparisonTable(document), 1);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  QObject::connect(buttons, &QDialogButtonBox::rejected, dialog, &QDialog::close);
  column->addWidget(buttons);
  dialog->resize(720, 420);
  dialog->show();
}

}  // namespace fluewright
