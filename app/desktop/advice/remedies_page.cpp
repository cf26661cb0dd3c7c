// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/advice/remedies_page.hpp"

#include "app/desktop/answer/answer_words.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/remedy_words.hpp"
#include "app/shared/words.hpp"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <set>

namespace fluewright {

namespace {

enum Column { change, margin, leaving, kept, parts, mends, column_count };

template <class Quantity>
QString text(const Quantity& quantity, UnitSystem units) {
  return QString::fromStdString(show(quantity, units).text());
}

/// Each title once.
QString titles(const std::vector<Finding>& findings) {
  QStringList words;
  for (const Finding& finding : findings) {
    const QString title = QString::fromStdString(finding_title(finding.code));
    if (!words.contains(title)) words << title;
  }
  return words.join(QStringLiteral(", "));
}

QString effect_words(const TriedRemedy& tried) {
  QStringList words;
  if (!tried.mended.empty()) words << QStringLiteral("✓ ") + titles(tried.mended);
  if (!tried.raised.empty()) words << QStringLiteral("▲ ") + titles(tried.raised);
  return words.join(QStringLiteral("   "));
}

}  // namespace

RemediesPage::RemediesPage(Document& document, PriceList prices, QWidget* parent)
    : QWidget(parent),
      document_(document),
      prices_(std::move(prices)),
      table_(new QTableWidget(0, column_count, this)),
      words_(new QLabel(this)),
      preview_(new QPushButton(tr("Show on the drawing"), this)),
      apply_(new QPushButton(tr("Make this change"), this)),
      stop_(new QPushButton(tr("Stop trying"), this)),
      own_prices_(new QPushButton(tr("Own prices…"), this)),
      task_(new BackgroundTask(this)) {
  setObjectName(QStringLiteral("remedies_page"));
  table_->setObjectName(QStringLiteral("remedies"));
  table_->setAccessibleName(tr("Remedies"));
  table_->setHorizontalHeaderLabels({tr("Change"), tr("Margin"), tr("Exit"),
                                     tr("Heat kept"), tr("Parts"), tr("Mends ✓   raises ▲")});
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setTabKeyNavigation(false);
  table_->setShowGrid(false);
  table_->setFrameShape(QFrame::NoFrame);
  table_->setWordWrap(false);
  table_->verticalHeader()->hide();
  table_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  table_->verticalHeader()->setDefaultSectionSize(fontMetrics().lineSpacing() + 8);
  table_->horizontalHeader()->setHighlightSections(false);
  table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  for (const Column column : {margin, leaving, kept, parts}) {
    table_->horizontalHeader()->setSectionResizeMode(column, QHeaderView::ResizeToContents);
  }
  table_->horizontalHeader()->setSectionResizeMode(change, QHeaderView::Stretch);
  // What to do is read first and takes what room there is; the rest of a long list stands in its tip.
  table_->horizontalHeader()->setSectionResizeMode(mends, QHeaderView::Interactive);
  table_->setColumnWidth(mends, 24 * fontMetrics().averageCharWidth());
  words_->setProperty("role", "caption");
  words_->setObjectName(QStringLiteral("remedies_state"));
  words_->setMinimumWidth(1);
  preview_->setObjectName(QStringLiteral("preview_remedy"));
  preview_->setCheckable(true);
  apply_->setObjectName(QStringLiteral("apply_remedy"));
  stop_->setObjectName(QStringLiteral("stop_remedies"));
  auto* row = new QHBoxLayout;
  row->setContentsMargins(12, 4, 12, 6);
  row->addWidget(words_, 1);
  row->addWidget(stop_);
  own_prices_->setObjectName(QStringLiteral("own_prices"));
  own_prices_->setToolTip(tr("Add up with a price list of your own; the shipped one holds round figures"));
  row->addWidget(own_prices_);
  row->addWidget(preview_);
  row->addWidget(apply_);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(table_, 1);
  column->addLayout(row);

  soon_.setSingleShot(true);
  soon_.setInterval(200);
  repaint_.setSingleShot(true);
  repaint_.setInterval(60);
  connect(&soon_, &QTimer::timeout, this, &RemediesPage::search);
  connect(&repaint_, &QTimer::timeout, this, &RemediesPage::fill);
  connect(&document_, &Document::changed, this, &RemediesPage::follow);
  connect(&document_, &Document::units_changed, this, &RemediesPage::fill);
  connect(task_, &BackgroundTask::ended, this, [this] { fill(); });
  connect(table_, &QTableWidget::itemSelectionChanged, this, [this] {
    if (previewing_) show_preview(true);
    say_state();
  });
  connect(table_, &QTableWidget::itemDoubleClicked, this, [this] { show_preview(!previewing_); });
  connect(preview_, &QPushButton::clicked, this, &RemediesPage::show_preview);
  connect(apply_, &QPushButton::clicked, this, &RemediesPage::apply);
  connect(own_prices_, &QPushButton::clicked, this, &RemediesPage::own_prices_wanted);
  connect(stop_, &QPushButton::clicked, this, [this] {
    task_->call_off();
    fill();
  });
  say_state();
}

void RemediesPage::set_prices(PriceList prices, bool own) {
  prices_ = std::move(prices);
  own_prices_->setText(own ? tr("Round-figure prices") : tr("Own prices…"));
  searched_.reset();
  follow();
}

void RemediesPage::complain(const QString& words) { words_->setText(words); }

bool RemediesPage::done() const { return searched_ && !task_->runs() && !soon_.isActive(); }

void RemediesPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  follow();
}

void RemediesPage::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  if (previewing_) show_preview(false);
  soon_.stop();
  if (task_->runs()) {
    task_->call_off();
    searched_.reset();
  }
}

// While something is shown that is not yet drawn, the table stays what it was.
void RemediesPage::follow() {
  if (document_.in_preview()) return;
  if (previewing_) {
    previewing_ = false;
    preview_->setChecked(false);
  }
  if (!isVisible() || (searched_ && *searched_ == document_.design())) {
    say_state();
    return;
  }
  task_->call_off();
  searched_.reset();
  before_.reset();
  remedies_.clear();
  state_ = {};
  fill();
  soon_.start();
}

void RemediesPage::search() {
  if (document_.in_preview()) return;
  searched_ = document_.design();
  task_->start([this, design = document_.design(), &library = document_.library(), prices = prices_](const Courier& courier) {
    const auto before = standing_of(design, library, assess(design, library), prices);
    courier.bring([this, before] {
      before_ = before;
      fill();
    });
    RemedySearch asked{design, library, prices, true, courier.stop(), {}, {}};
    asked.found = [this, &courier](const TriedRemedy& tried) { courier.bring([this, tried] { take(tried); }); };
    asked.moved_on = [this, &courier](const SearchState& state) {
      courier.bring([this, state] {
        state_ = state;
        say_state();
      });
    };
    (void)search_remedies(asked);
  });
  say_state();
}

void RemediesPage::take(const TriedRemedy& tried) {
  remedies_.insert(std::upper_bound(remedies_.begin(), remedies_.end(), tried, ranks_before), tried);
  if (!repaint_.isActive()) repaint_.start();
}

void RemediesPage::fill_row(int row, const QString& words, const Outcome& outcome, const TriedRemedy* tried) {
  const UnitSystem units = document_.units();
  const auto put = [&](Column column, const QString& said, bool number) {
    auto* item = new QTableWidgetItem(said);
    item->setTextAlignment((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    item->setToolTip(said);
    table_->setItem(row, column, item);
  };
  const Tone tone = tone_of(lasting_verdict(outcome));
  put(change,
      outcome.shut ? tr("%1 (warm and shut: %2 to spare)").arg(words, text(*outcome.shut, units)) : words, false);
  put(margin, symbol(tone) + QLatin1Char(' ') + text(outcome.margin, units), true);
  put(leaving, text(outcome.exit, units), true);
  put(kept, text(outcome.kept, units), true);
  put(parts, tried != nullptr ? QString::fromStdString(money_text(outcome.parts - before_->parts, prices_.currency)) : QString(), true);
  put(mends, tried != nullptr ? effect_words(*tried) : QString(), false);
}

void RemediesPage::fill() {
  const TriedRemedy* now = chosen();
  const std::optional<Remedy> kept_choice = now != nullptr ? std::optional(now->remedy) : std::nullopt;
  const QSignalBlocker quiet(table_);
  table_->setRowCount(before_ ? 1 + static_cast<int>(remedies_.size()) : 0);
  if (before_ && searched_) {
    fill_row(0, tr("As drawn"), *before_, nullptr);
    int row = 1;
    int choice = 0;
    for (const TriedRemedy& tried : remedies_) {
      if (kept_choice && tried.remedy == *kept_choice) choice = row;
      fill_row(row++, QString::fromStdString(remedy_sentence(tried.remedy, *searched_, document_.library(), document_.units())),
               tried.after, &tried);
    }
    table_->setCurrentCell(choice, 0);
  }
  say_state();
}

const TriedRemedy* RemediesPage::chosen() const {
  const int row = table_->currentRow() - 1;
  return row >= 0 && row < static_cast<int>(remedies_.size()) ? &remedies_[static_cast<std::size_t>(row)] : nullptr;
}

void RemediesPage::say_state() {
  const bool runs = task_->runs();
  stop_->setVisible(runs);
  preview_->setEnabled(chosen() != nullptr && !document_.read_only());
  apply_->setEnabled(chosen() != nullptr && !document_.read_only());
  if (!before_ && !runs) {
    words_->setText(document_.assessment().verdict ? tr("Changes are tried when the drawing has come to rest.")
                                                   : tr("The drawing has no answer yet; its faults come first."));
    return;
  }
  const QString tried = runs ? tr("%1 of %2 changes tried").arg(state_.tried).arg(state_.of)
                             : tr("%1 changes tried").arg(state_.tried);
  words_->setText(tr("%1, %2 worth a look. Prices: %3.")
                      .arg(tried)
                      .arg(remedies_.size())
                      .arg(QString::fromStdString(prices_.citation.source.empty() ? said("your own") : said(prices_.citation.source))));
}

void RemediesPage::show_preview(bool on) {
  const TriedRemedy* tried = chosen();
  if (!on || tried == nullptr || !searched_) {
    preview_->setChecked(false);
    if (std::exchange(previewing_, false)) document_.cancel_preview();
    return;
  }
  const auto changed = remedied(*searched_, document_.library(), tried->remedy);
  if (!changed) return;
  previewing_ = true;
  preview_->setChecked(true);
  document_.preview(*changed);
}

void RemediesPage::apply() {
  const TriedRemedy* tried = chosen();
  if (tried == nullptr || !searched_) return;
  const auto changed = remedied(*searched_, document_.library(), tried->remedy);
  if (!changed) return;
  const QString words = QString::fromStdString(remedy_sentence(tried->remedy, *searched_, document_.library(), document_.units()));
  document_.commit(*changed, words);
}

}  // namespace fluewright
