// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/advice/findings_page.hpp"

#include "app/desktop/answer/answer_words.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/words.hpp"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QPainter>
#include <QPushButton>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

#include <algorithm>

namespace fluewright {

namespace {

constexpr int why_role = Qt::UserRole;
constexpr int mark_role = Qt::UserRole + 1;
constexpr int settled_role = Qt::UserRole + 2;
constexpr int mark_width = 18;
constexpr int gap = 3;

QString from(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

/// The mark in the margin, the sentence, and beneath it in small why it matters.
class FindingRow : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const auto* list = qobject_cast<const QListWidget*>(option.widget);
    const int width = list != nullptr ? list->viewport()->width() : option.rect.width();
    const QRect box(0, 0, std::max(80, width - mark_width - 4), 100'000);
    const int sentence = option.fontMetrics.boundingRect(box, Qt::TextWordWrap, index.data().toString()).height();
    const QFontMetrics small(type(TypeRole::caption));
    const int why = small.boundingRect(box, Qt::TextWordWrap, index.data(why_role).toString()).height();
    return {width, sentence + why + 2 * gap};
  }

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const Inks& inks = theme().inks;
    const bool settled = index.data(settled_role).toBool();
    painter->save();
    if (option.state & (QStyle::State_Selected | QStyle::State_MouseOver)) painter->fillRect(option.rect, inks.accent_wash);
    if (option.state & QStyle::State_HasFocus) {
      painter->setPen(inks.accent);
      painter->drawRect(option.rect.adjusted(0, 0, -1, -1));
    }
    const QString mark = index.data(mark_role).toString();
    const QRect box = option.rect.adjusted(4, gap, 0, 0);
    painter->setFont(option.font);
    painter->setPen(settled                         ? inks.faint_ink
                    : mark == symbol(Tone::fault)   ? inks.accent
                    : mark == symbol(Tone::caution) ? inks.caution
                                                    : inks.faint_ink);
    painter->drawText(box, Qt::AlignLeft | Qt::AlignTop, mark);
    const QRect words = box.adjusted(mark_width - 4, 0, -4, 0);
    QRect used;
    painter->setPen(settled ? inks.faint_ink : inks.ink);
    painter->drawText(words, Qt::TextWordWrap, index.data().toString(), &used);
    painter->setFont(type(TypeRole::caption));
    painter->setPen(inks.faint_ink);
    painter->drawText(words.adjusted(0, used.height(), 0, 0), Qt::TextWordWrap, index.data(why_role).toString());
    painter->restore();
  }
};

}  // namespace

FindingsPage::FindingsPage(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      list_(new QListWidget(this)),
      reason_(new QLineEdit(this)),
      stand_(new QPushButton(tr("Let it stand"), this)),
      reopen_(new QPushButton(tr("Open it again"), this)),
      help_(new QPushButton(tr("What would help"), this)) {
  setObjectName(QStringLiteral("findings_page"));
  list_->setObjectName(QStringLiteral("all_findings"));
  list_->setAccessibleName(tr("All findings"));
  list_->setItemDelegate(new FindingRow(list_));
  list_->setMouseTracking(true);
  list_->setFrameShape(QFrame::NoFrame);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  list_->setResizeMode(QListView::Adjust);
  reason_->setObjectName(QStringLiteral("reason"));
  reason_->setPlaceholderText(tr("Why it may stand; this is kept with the design"));
  reason_->setAccessibleName(tr("Why it may stand"));
  stand_->setObjectName(QStringLiteral("let_stand"));
  reopen_->setObjectName(QStringLiteral("reopen"));
  help_->setObjectName(QStringLiteral("what_helps"));
  auto* row = new QHBoxLayout;
  row->setContentsMargins(12, 4, 12, 6);
  row->addWidget(reason_, 1);
  row->addWidget(stand_);
  row->addWidget(reopen_);
  row->addWidget(help_);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(list_, 1);
  column->addLayout(row);

  connect(list_, &QListWidget::currentRowChanged, this, [this] { show_choice(); });
  const auto open_piece = [this] {
    const Finding* finding = chosen();
    if (finding != nullptr && !finding->piece.empty()) document_.select(finding->piece);
  };
  connect(list_, &QListWidget::itemClicked, this, open_piece);
  connect(list_, &QListWidget::itemActivated, this, open_piece);
  connect(stand_, &QPushButton::clicked, this, [this] { let_stand(reason_->text().trimmed()); });
  connect(reason_, &QLineEdit::returnPressed, stand_, &QPushButton::click);
  connect(reason_, &QLineEdit::textChanged, this, [this] { show_choice(); });
  connect(reopen_, &QPushButton::clicked, this, [this] { let_stand({}); });
  connect(help_, &QPushButton::clicked, this, &FindingsPage::help_wanted);
  connect(&document_, &Document::changed, this, &FindingsPage::refresh);
  connect(&document_, &Document::late_answer_came, this, &FindingsPage::refresh);
  connect(&document_, &Document::units_changed, this, &FindingsPage::refresh);
  refresh();
}

const Finding* FindingsPage::chosen() const {
  const int row = list_->currentRow();
  return row >= 0 && row < static_cast<int>(shown_.size()) ? &shown_[static_cast<std::size_t>(row)] : nullptr;
}

void FindingsPage::refresh() {
  const std::optional<Finding> kept = chosen() != nullptr ? std::optional(*chosen()) : std::nullopt;
  const Design& design = document_.design();
  shown_ = document_.findings();
  std::stable_partition(shown_.begin(), shown_.end(),
                        [&](const Finding& finding) { return acknowledgement_of(finding, design) == nullptr; });
  int open = 0;
  while (list_->count() > static_cast<int>(shown_.size())) delete list_->takeItem(list_->count() - 1);
  while (list_->count() < static_cast<int>(shown_.size())) list_->addItem(new QListWidgetItem);
  int row = -1;
  for (int i = 0; i < list_->count(); ++i) {
    const Finding& finding = shown_[static_cast<std::size_t>(i)];
    const Acknowledgement* settled = acknowledgement_of(finding, design);
    if (settled == nullptr && finding.severity != Severity::note) ++open;
    if (kept && same_matter(*kept, finding)) row = i;
    QListWidgetItem& item = *list_->item(i);
    const Tone tone = tone_of(finding.severity);
    item.setText(QString::fromStdString(sentence(finding, design, document_.library(), document_.units())));
    item.setData(mark_role, tone == Tone::silent ? QStringLiteral("·") : symbol(tone));
    item.setData(settled_role, settled != nullptr);
    item.setData(why_role, settled != nullptr
                               ? tr("Let stand: %1").arg(QString::fromStdString(settled->reason))
                               : tr("%1 Source: %2.")
                                     .arg(from(why_it_matters(finding.code)),
                                          QString::fromStdString(finding_source_words(finding))));
  }
  list_->setCurrentRow(row);
  show_choice();
  if (open != open_) {
    open_ = open;
    emit count_changed();
  }
}

void FindingsPage::show_choice() {
  const Finding* finding = chosen();
  const bool settled = finding != nullptr && acknowledgement_of(*finding, document_.design()) != nullptr;
  const bool may = finding != nullptr && !document_.read_only() && !document_.in_preview();
  reason_->setEnabled(may);
  stand_->setEnabled(may && !reason_->text().trimmed().isEmpty());
  reopen_->setVisible(settled);
  reopen_->setEnabled(may);
  help_->setEnabled(document_.assessment().verdict.has_value());
}

void FindingsPage::let_stand(const QString& reason) {
  const Finding* finding = chosen();
  if (finding == nullptr) return;
  Design changed = acknowledged(document_.design(), *finding, reason.toStdString());
  reason_->clear();
  document_.commit(std::move(changed), reason.isEmpty() ? tr("Open a finding again") : tr("Let a finding stand"));
}

}  // namespace fluewright
