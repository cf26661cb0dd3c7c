// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/answer/findings_list.hpp"

#include "app/desktop/answer/answer_words.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/shared/words.hpp"

#include <QResizeEvent>

namespace fluewright {

namespace {
constexpr int piece_role = Qt::UserRole;
}

FindingsList::FindingsList(Document& document, QWidget* parent) : QListWidget(parent), document_(document) {
  setObjectName(QStringLiteral("findings"));
  setAccessibleName(QStringLiteral("Findings"));
  setWordWrap(true);
  setTextElideMode(Qt::ElideNone);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);  // the panel around it scrolls
  setFrameShape(QFrame::NoFrame);
  setSelectionMode(QAbstractItemView::SingleSelection);
  setTabKeyNavigation(false);
  viewport()->setAutoFillBackground(false);
  connect(this, &QListWidget::itemClicked, this, &FindingsList::choose);
  connect(this, &QListWidget::itemActivated, this, &FindingsList::choose);
  connect(&document_, &Document::changed, this, &FindingsList::refresh);
  connect(&document_, &Document::units_changed, this, &FindingsList::refresh);
  refresh();
}

void FindingsList::refresh() {
  struct Line {
    QString text;
    QString piece;
  };
  std::vector<Line> lines;
  for (const Finding& finding : document_.assessment().findings) {
    const Tone tone = tone_of(finding.severity);
    const QString mark = tone == Tone::silent ? QStringLiteral("·") : symbol(tone);
    lines.push_back({QStringLiteral("%1  %2").arg(mark, QString::fromStdString(sentence(
                         finding, document_.design(), document_.library(), document_.units()))),
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
    row->setToolTip(line.piece.isEmpty() ? QString() : QStringLiteral("Click to select the piece on the drawing"));
  }
  setVisible(wanted > 0);
  updateGeometry();
}

void FindingsList::choose(const QListWidgetItem* item) {
  const QString piece = item->data(piece_role).toString();
  if (!piece.isEmpty()) document_.select(piece.toStdString());
}

QSize FindingsList::sizeHint() const {
  int height = 2 * frameWidth() + 4;
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
