// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The view's smaller helpers: the typed length, walking over the open ends by Tab, and the tip under the mouse.

#include "app/desktop/desk/desk_view.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/shared/words.hpp"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QLineEdit>
#include <QToolTip>

#include <algorithm>

namespace fluewright {

bool DeskView::event(QEvent* event) {
  if (event->type() == QEvent::KeyPress) {
    auto* key = static_cast<QKeyEvent*>(event);
    const bool back = key->key() == Qt::Key_Backtab;
    if ((key->key() == Qt::Key_Tab || back) && next_end(!back)) return true;
  }
  if (event->type() == QEvent::ShortcutOverride) {
    // While a length is being drawn or typed, plain keys belong to the tool and not to the menus.
    auto* key = static_cast<QKeyEvent*>(event);
    const bool plain = (key->modifiers() & (Qt::ControlModifier | Qt::MetaModifier)) == 0;
    if (plain && !key->text().isEmpty()) event->accept();
  }
  if (event->type() == QEvent::ToolTip) {
    auto* help = static_cast<QHelpEvent*>(event);
    const QString words = tip_at(help->pos());
    if (words.isEmpty()) {
      QToolTip::hideText();
    } else {
      QToolTip::showText(help->globalPos(), words, this);
    }
    return true;
  }
  // The drawing holds colours of the theme.
  if (event->type() == QEvent::PaletteChange) make_anew();
  return QWidget::event(event);
}

bool DeskView::next_end(bool forward) {
  const std::vector<OpenEnd>& ends = board_.ends().open;
  if (ends.empty()) return false;
  const auto here = board_.focused_end()
                        ? std::find_if(ends.begin(), ends.end(), [&](const OpenEnd& e) { return e.ref == *board_.focused_end(); })
                        : ends.end();
  std::ptrdiff_t next = forward ? 0 : static_cast<std::ptrdiff_t>(ends.size()) - 1;
  if (here != ends.end()) next = (here - ends.begin()) + (forward ? 1 : -1);
  // Past the last end the focus goes on to the next widget, so nobody is caught here.
  if (next < 0 || next >= static_cast<std::ptrdiff_t>(ends.size())) {
    board_.focus_end(std::nullopt);
    return false;
  }
  board_.focus_end(ends[static_cast<std::size_t>(next)].ref);
  return true;
}

QString DeskView::tip_at(QPointF pixel) const {
  const Document& document = board_.document();
  const Design& design = document.design();
  const Hit found = under(pixel);
  if (found.end) {
    return tr("Open end of %1: drag to grow the path").arg(QString::fromStdString(piece_name(design, document.library(), found.end->piece)));
  }
  if (found.piece.empty()) return {};
  QStringList lines{QString::fromStdString(piece_name(design, document.library(), found.piece))};
  if (found.s) {
    const auto& profile = document.assessment().profile;
    const auto slice = std::find_if(profile.begin(), profile.end(), [&](const SliceState& state) { return state.s >= *found.s; });
    if (slice != profile.end()) {
      lines << tr("%1 along: gas %2, wall %3, %4")
                   .arg(QString::fromStdString(fluewright::show(*found.s, document.units(), Meaning::run_length).text()),
                        QString::fromStdString(fluewright::show(slice->gas, document.units()).text()),
                        QString::fromStdString(fluewright::show(slice->wall, document.units()).text()),
                        QString::fromStdString(fluewright::show(slice->gauge, document.units()).text()));
    }
  }
  for (const Finding& finding : document.assessment().findings) {
    if (finding.piece == found.piece) lines << QString::fromStdString(sentence(finding, design, document.library(), document.units()));
  }
  return lines.join(QLatin1Char('\n'));
}

void DeskView::open_length_entry(QPointF beside, const QString& first) {
  close_length_entry();
  length_entry_ = new QLineEdit(this);
  length_entry_->setAccessibleName(tr("Length"));
  length_entry_->setAlignment(Qt::AlignRight);
  length_entry_->setFont(type(TypeRole::body));
  length_entry_->setPlaceholderText(QString::fromStdString(unit_name(Meaning::small_length, board_.document().units())));
  length_entry_->setFixedWidth(110);
  const QPointF corner = beside + QPointF(16.0, -length_entry_->sizeHint().height() - 8.0);
  length_entry_->move(std::clamp(static_cast<int>(corner.x()), 4, std::max(4, width() - 116)),
                      std::clamp(static_cast<int>(corner.y()), 4, std::max(4, height() - 34)));
  length_entry_->installEventFilter(this);
  length_entry_->show();
  length_entry_->setFocus(Qt::OtherFocusReason);
  length_entry_->setText(first);
  update();
}

void DeskView::close_length_entry() {
  if (length_entry_ == nullptr) return;
  // Let go of first: hiding it moves the focus, and that comes back here.
  QLineEdit* entry = length_entry_;
  length_entry_ = nullptr;
  entry->removeEventFilter(this);
  setFocus(Qt::OtherFocusReason);
  entry->hide();
  entry->deleteLater();
  update();
}

bool DeskView::length_entry_open() const { return length_entry_ != nullptr; }

bool DeskView::eventFilter(QObject* watched, QEvent* event) {
  if (watched != length_entry_ || event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
  // Taken here and not from the field's signals: what a field leaves over comes to the view, where Enter asks for the rack.
  switch (static_cast<QKeyEvent*>(event)->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
      board_.sweep();
      board_.tool().length_typed(*this, length_entry_->text());
      return true;
    case Qt::Key_Escape:
      board_.sweep();
      board_.step_back();
      emit board_.sentence_changed(board_.sentence());
      return true;
    default: return QWidget::eventFilter(watched, event);
  }
}

}  // namespace fluewright
