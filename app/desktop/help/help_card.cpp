// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/help/help_card.hpp"

#include "app/desktop/document.hpp"
#include "app/desktop/help/number_help.hpp"
#include "app/desktop/rack/piece_symbol.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/words.hpp"

#include <QCoreApplication>
#include <QDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QScrollArea>
#include <QVBoxLayout>

namespace fluewright {

namespace {

constexpr QSize picture_size(260, 182);


/// "50 mm to 500 mm", by the field's own kind and unit.
QString range(const std::optional<FieldValue>& low, const std::optional<FieldValue>& high, const FieldSpec& spec, UnitSystem units) {
  if (!low || !high) return {};
  const auto words = [&](const FieldValue& value) { return QString::fromStdString(show(value, units, spec.kind, spec.key).text()); };
  return tr("%1 to %2").arg(words(*low), words(*high));
}

class Card : public QDialog {
 public:
  Card(const Document& document, QWidget* parent) : QDialog(parent), document_{document}, list_{new QListWidget}, picture_{new QLabel}, words_{new QLabel} {
    setObjectName(QStringLiteral("help_card"));
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("What is this, and what is usual"));
    list_->setAccessibleName(tr("Pieces and numbers"));
    for (const NumberHelp& number : numbers_) list_->addItem(number.name);
    for (const PieceType& type : document_.library().piece_types) list_->addItem(QString::fromStdString(type.name));
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::RichText);
    words_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    picture_->setFixedHeight(picture_size.height());
    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    column->addWidget(picture_);
    column->addWidget(words_, 1);
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidget(content);
    scroll->setAccessibleName(tr("What is this, and what is usual"));
    auto* row = new QHBoxLayout(this);
    row->addWidget(list_);
    row->addWidget(scroll, 1);
    list_->setMaximumWidth(240);
    connect(list_, &QListWidget::currentRowChanged, this, &Card::show_row);
    resize(760, 480);
  }

  void go_to_selected() {
    const Piece* piece = document_.design().piece(document_.selected());
    int row = 0;
    const auto& types = document_.library().piece_types;
    for (std::size_t i = 0; piece != nullptr && i < types.size(); ++i) {
      if (types[i].id == piece->type) row = static_cast<int>(numbers_.size() + i);
    }
    list_->setCurrentRow(row);
  }

 private:
  void show_row(int row) {
    if (row < 0) return;
    const auto place = static_cast<std::size_t>(row);
    if (place < numbers_.size()) {
      show_number(numbers_[place]);
    } else {
      show_type(document_.library().piece_types[place - numbers_.size()]);
    }
  }

  void show_number(const NumberHelp& number) {
    picture_->setPixmap(picture_of(number.picture, picture_size, devicePixelRatioF()));
    picture_->setAccessibleName(number.name);
    words_->setText(QStringLiteral("<h3>%1</h3><p>%2</p><p><b>%3</b> %4</p>")
                        .arg(number.name, number.what.toHtmlEscaped(), tr("Usual:"), number.usual.toHtmlEscaped()));
  }

  void show_type(const PieceType& type) {
    picture_->setPixmap(piece_symbol(type, document_.library(), picture_size, devicePixelRatioF()));
    picture_->setAccessibleName(QString::fromStdString(type.name));
    QString text = QStringLiteral("<h3>%1</h3><p>%2</p>").arg(QString::fromStdString(type.name).toHtmlEscaped(), QString::fromStdString(type.summary).toHtmlEscaped());
    for (const FieldSpec& field : type.fields) {
      text += QStringLiteral("<p><b>%1</b><br>%2").arg(QString::fromStdString(field.label).toHtmlEscaped(), QString::fromStdString(field.help).toHtmlEscaped());
      const QString usual = range(field.usual_low, field.usual_high, field, document_.units());
      if (!usual.isEmpty()) text += QStringLiteral("<br>%1 %2").arg(tr("Usual:"), usual);
      text += QStringLiteral("</p>");
    }
    words_->setText(text);
  }

  const Document& document_;
  const std::vector<NumberHelp> numbers_ = number_helps();
  QListWidget* list_;
  QLabel* picture_;
  QLabel* words_;
};

}  // namespace

void show_help_card(const Document& document, QWidget* parent) {
  auto* card = static_cast<Card*>(parent->findChild<QDialog*>(QStringLiteral("help_card")));
  if (card == nullptr) card = new Card(document, parent);
  card->go_to_selected();
  card->show();
  card->raise();
  card->activateWindow();
}

}  // namespace fluewright
