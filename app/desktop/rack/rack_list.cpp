// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/rack/rack_list.hpp"

#include "app/desktop/rack/piece_symbol.hpp"
#include "app/desktop/theme/theme.hpp"

#include <QApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QStyledItemDelegate>

#include <array>
#include <utility>

namespace fluewright {

namespace {

constexpr int type_role = Qt::UserRole;
constexpr int search_role = Qt::UserRole + 1;
constexpr QSize symbol_size{46, 32};
constexpr int row_height = 40;
constexpr int heading_height = 30;

/// Rows as on a drawing's parts list: the symbol, the name in up to two lines.
class RowPainter final : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override {
    return {120, index.data(type_role).isNull() ? heading_height : row_height};
  }

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const Inks& inks = theme().inks;
    painter->save();
    if (index.data(type_role).isNull()) {
      QFont font = type(TypeRole::caption);
      font.setCapitalization(QFont::AllUppercase);
      font.setLetterSpacing(QFont::AbsoluteSpacing, 0.8);
      painter->setFont(font);
      painter->setPen(inks.faint_ink);
      painter->drawText(option.rect.adjusted(10, 0, -6, -5), Qt::AlignLeft | Qt::AlignBottom, index.data().toString());
    } else {
      const bool selected = option.state.testFlag(QStyle::State_Selected);
      const bool hovered = option.state.testFlag(QStyle::State_MouseOver);
      if (selected || hovered) {
        QColor wash = inks.accent_wash;
        if (!selected) wash.setAlpha(wash.alpha() / 2);
        painter->fillRect(option.rect.adjusted(2, 1, -2, -1), wash);
      }
      if (selected && option.state.testFlag(QStyle::State_HasFocus)) {
        painter->setPen(inks.accent);
        painter->drawRect(option.rect.adjusted(2, 1, -3, -2));
      }
      const auto symbol = index.data(Qt::DecorationRole).value<QPixmap>();
      painter->drawPixmap(option.rect.left() + 8, option.rect.top() + (row_height - symbol_size.height()) / 2, symbol);
      painter->setFont(type(TypeRole::body));
      painter->setPen(inks.ink);
      painter->drawText(option.rect.adjusted(symbol_size.width() + 18, 0, -6, 0), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap,
                        index.data().toString());
    }
    painter->restore();
  }
};

}  // namespace

QString family_words(const std::string& family) {
  const std::array<std::pair<const char*, QString>, 7> words{{{"inlet", RackList::tr("Where air comes in")},
                                                                     {"fire", RackList::tr("Fire")},
                                                                     {"exchange", RackList::tr("First heat exchange")},
                                                                     {"bench", RackList::tr("Bench and floor")},
                                                                     {"fitting", RackList::tr("Fittings")},
                                                                     {"stack", RackList::tr("Up and out")},
                                                                     {"helper", RackList::tr("Helpers")}}};
  for (const auto& [id, said] : words) {
    if (family == id) return said;
  }
  return QString::fromStdString(family);
}

RackList::RackList(const Library& library, QWidget* parent) : QListWidget(parent), library_{library} {
  setAccessibleName(tr("Rack of pieces"));
  setFrameShape(QFrame::NoFrame);
  setItemDelegate(new RowPainter(this));
  setMouseTracking(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  viewport()->setAutoFillBackground(false);
  fill();
  draw_symbols();
}

void RackList::fill() {
  std::string family;
  for (const PieceType& type : library_.piece_types) {
    if (type.family != family) {
      family = type.family;
      auto* heading = new QListWidgetItem(family_words(family), this);
      heading->setFlags(Qt::NoItemFlags);
    }
    auto* row = new QListWidgetItem(QString::fromStdString(type.name), this);
    row->setData(type_role, QString::fromStdString(type.id));
    row->setData(search_role, (row->text() + QLatin1Char(' ') + family_words(family) + QLatin1Char(' ') +
                               QString::fromStdString(type.summary)));
    row->setToolTip(QString::fromStdString(type.summary));
    row->setData(Qt::AccessibleTextRole, row->text());
    row->setData(Qt::AccessibleDescriptionRole, QString::fromStdString(type.summary));
  }
}

void RackList::draw_symbols() {
  for (int i = 0; i < count(); ++i) {
    const PieceType* type = library_.piece_type(item(i)->data(type_role).toString().toStdString());
    if (type != nullptr) item(i)->setData(Qt::DecorationRole, piece_symbol(*type, library_, symbol_size, devicePixelRatioF()));
  }
}

void RackList::filter(const QString& words) {
  QListWidgetItem* heading = nullptr;
  bool any = false;
  const auto close_family = [&] {
    if (heading != nullptr) heading->setHidden(!any);
  };
  for (int i = 0; i < count(); ++i) {
    QListWidgetItem* row = item(i);
    if (row->data(type_role).isNull()) {
      close_family();
      heading = row;
      any = false;
      continue;
    }
    bool fits = true;
    for (const QString& word : words.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
      fits = fits && row->data(search_role).toString().contains(word, Qt::CaseInsensitive);
    }
    row->setHidden(!fits);
    any = any || fits;
  }
  close_family();
}

void RackList::select_best(const QString& words) {
  QListWidgetItem* best = nullptr;
  int best_rank = 3;
  for (int i = 0; i < count(); ++i) {
    if (item(i)->isHidden() || item(i)->data(type_role).isNull()) continue;
    const QString name = item(i)->text();
    const bool begins = name.startsWith(words.trimmed(), Qt::CaseInsensitive);
    const int rank = begins ? 0 : name.contains(words.trimmed(), Qt::CaseInsensitive) ? 1 : 2;
    if (rank >= best_rank) continue;
    best_rank = rank;
    best = item(i);
  }
  setCurrentItem(best);
}

QString RackList::selected_type() const {
  const QListWidgetItem* row = currentItem();
  return row == nullptr || row->isHidden() ? QString() : row->data(type_role).toString();
}

void RackList::mousePressEvent(QMouseEvent* event) {
  QListWidget::mousePressEvent(event);
  const QListWidgetItem* row = itemAt(event->pos());
  pressed_ = row == nullptr || event->button() != Qt::LeftButton ? QString() : row->data(type_role).toString();
  pressed_at_ = event->pos();
  carrying_ = false;
}

void RackList::mouseMoveEvent(QMouseEvent* event) {
  if (pressed_.isEmpty() || !event->buttons().testFlag(Qt::LeftButton)) {
    QListWidget::mouseMoveEvent(event);
    return;
  }
  if (!carrying_ && (event->pos() - pressed_at_).manhattanLength() < QApplication::startDragDistance()) return;
  if (!carrying_) setCursor(Qt::ClosedHandCursor);
  carrying_ = true;
  emit carried(pressed_, event->globalPosition().toPoint());
}

void RackList::mouseReleaseEvent(QMouseEvent* event) {
  QListWidget::mouseReleaseEvent(event);
  const QString type = std::exchange(pressed_, QString());
  unsetCursor();
  if (std::exchange(carrying_, false)) {
    emit dropped(event->globalPosition().toPoint());
  } else if (!type.isEmpty()) {
    emit picked(type);
  }
}

void RackList::mouseDoubleClickEvent(QMouseEvent* event) {
  pressed_.clear();
  const QListWidgetItem* row = itemAt(event->pos());
  if (row != nullptr && !row->data(type_role).isNull()) emit chosen(row->data(type_role).toString());
}

void RackList::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    if (!selected_type().isEmpty()) emit chosen(selected_type());
    return;
  }
  if (event->key() == Qt::Key_Escape) {
    pressed_.clear();
    carrying_ = false;
    unsetCursor();
    emit let_go();
    return;
  }
  const bool plain = !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
  if (plain && !event->text().isEmpty() && event->text().front().isLetterOrNumber()) {
    emit typed(event->text());
    return;
  }
  QListWidget::keyPressEvent(event);
}

void RackList::changeEvent(QEvent* event) {
  QListWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && count() > 0) draw_symbols();
}

}  // namespace fluewright
