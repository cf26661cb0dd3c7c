// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/answer/findings_list.hpp"

#include "app/desktop/answer/answer_words.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/words.hpp"

#include <QPainter>
#include <QResizeEvent>
#include <QStyledItemDelegate>

#include <algorithm>

namespace fluewright {

namespace {
constexpr int piece_role = Qt::UserRole;
constexpr int mark_width = 16;
constexpr int line_gap = 3;

/// A mark in the margin and the sentence beside it, wrapped to the list's width.
class FindingPainter : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const auto* list = qobject_cast<const QListWidget*>(option.widget);
    const int width = (list ? list->viewport()->width() : option.rect.width());
    const QRect box(0, 0, std::max(40, width - mark_width - 2), 100'000);
    return {width, option.fontMetrics.boundingRect(box, Qt::TextWordWrap, sentence_of(index)).height() + 2 * line_gap};
  }

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const Inks& inks = theme().inks;
    painter->save();
    if (option.state & QStyle::State_MouseOver && !index.data(piece_role).toString().isEmpty()) {
      painter->fillRect(option.rect, inks.accent_wash);
    }
    if (option.state & QStyle::State_HasFocus) {
      painter->setPen(inks.accent);
      painter->drawRect(option.rect.adjusted(0, 0, -1, -1));
    }
    const QString mark = index.data().toString().left(1);
    painter->setFont(option.font);
    painter->setPen(mark == symbol(Tone::fault)     ? inks.accent
                    : mark == symbol(Tone::caution) ? inks.caution
                                                    : inks.faint_ink);
    const QRect box = option.rect.adjusted(0, line_gap, 0, 0);
    painter->drawText(box, Qt::AlignLeft | Qt::AlignTop, mark);
    painter->setPen(inks.ink);
    painter->drawText(box.adjusted(mark_width, 0, -2, 0), Qt::TextWordWrap, sentence_of(index));
    painter->restore();
  }

 private:
  [[nodiscard]] static QString sentence_of(const QModelIndex& index) { return index.data().toString().mid(2); }
};

}  // namespace

FindingsList::FindingsList(Document& document, QWidget* parent) : QListWidget(parent), document_(document) {
  setObjectName(QStringLiteral("findings"));
  setAccessibleName(tr("Findings"));
  setItemDelegate(new FindingPainter(this));
  setMouseTracking(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);  // the panel around it scrolls
  setFrameShape(QFrame::NoFrame);
  setSelectionMode(QAbstractItemView::SingleSelection);
  setTabKeyNavigation(false);
  viewport()->setAutoFillBackground(false);
  connect(this, &QListWidget::itemClicked, this, &FindingsList::choose);
  connect(this, &QListWidget::itemActivated, this, &FindingsList::choose);
  connect(&document_, &Document::changed, this, &FindingsList::refresh);
  connect(&document_, &Document::late_answer_came, this, &FindingsList::refresh);
  connect(&document_, &Document::units_changed, this, &FindingsList::refresh);
  refresh();
}

void FindingsList::refresh() {
  struct Line {
    QString text;
    QString piece;
  };
  std::vector<Line> lines;
  for (const Finding& finding : document_.findings()) {
    if (is_about_settling(finding.code)) continue;  // said beside the operating point
    if (acknowledgement_of(finding, document_.design()) != nullptr) continue;
    const Tone tone = tone_of(finding.severity);
    const std::string words = sentence(finding, document_.design(), document_.library(), document_.units());
    lines.push_back({QStringLiteral("%1 %2").arg(tone == Tone::silent ? QStringLiteral("·") : symbol(tone),
                                                 QString::fromStdString(words)),
                     QString::fromStdString(finding.piece)});
  }
  // Keep the items that stay: a drag refreshes this at every mouse move.
  const auto wanted = static_cast<int>(lines.size());
  while (count() > wanted) delete takeItem(count() - 1);
  while (count() < wanted) addItem(new QListWidgetItem);
  for (int i = 0; i < wanted; ++i) {
    const Line& line = lines[static_cast<std::size_t>(i)];
    QListWidgetItem* row = item(i);
    if (row->text() != line.text) row->setText(line.text);
    row->setData(piece_role, line.piece);
    row->setToolTip(line.piece.isEmpty() ? QString() : tr("Click to select the piece on the drawing"));
  }
  setVisible(wanted > 0);
  updateGeometry();
}

void FindingsList::choose(const QListWidgetItem* item) {
  const QString piece = item->data(piece_role).toString();
  if (!piece.isEmpty()) document_.show_piece(piece.toStdString());
}

QSize FindingsList::sizeHint() const {
  int height = 2 * frameWidth() + 2;
  for (int i = 0; i < count(); ++i) height += sizeHintForRow(i);
  return {200, height};
}

QSize FindingsList::minimumSizeHint() const { return {80, sizeHint().height()}; }

void FindingsList::resizeEvent(QResizeEvent* event) {
  QListWidget::resizeEvent(event);
  if (event->size().width() != event->oldSize().width()) {
    scheduleDelayedItemsLayout();
    updateGeometry();
  }
}

}  // namespace fluewright
