// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/burn_strip.hpp"

#include "app/desktop/burn/plan_numbers.hpp"
#include "app/desktop/fields/quiet_combo.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/burn_report.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QProgressBar>
#include <QPushButton>
#include <QToolButton>

#include <array>
#include <cmath>

namespace fluewright {

namespace {

constexpr std::array speeds{1.0, 5.0, 15.0, 60.0};  // minutes of the run in a second

}  // namespace

BurnStrip::BurnStrip(BurnBook& book, QWidget* parent)
    : QWidget(parent),
      book_(book),
      play_(new QToolButton),
      speed_(new QuietCombo),
      time_(new QLabel),
      plans_(new QToolButton),
      presets_(new QMenu(this)),
      state_(new QLabel),
      progress_(new QProgressBar),
      call_off_(new QPushButton(tr("Call off"))),
      compute_(new QPushButton(tr("Compute"))) {
  play_->setObjectName(QStringLiteral("burn_play"));
  play_->setFixedWidth(34);
  QList<QuietCombo::Option> options;
  for (const double minutes : speeds) {
    options.append({QString::number(minutes), minutes < 60.0 ? tr("%1 min in a second").arg(minutes) : tr("1 h in a second")});
  }
  speed_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  speed_->set_options(options);
  speed_->show_id(QString::number(in(book_.speed(), minute)));
  speed_->setObjectName(QStringLiteral("burn_speed"));
  speed_->setAccessibleName(tr("How fast it plays"));
  time_->setObjectName(QStringLiteral("burn_time"));
  time_->setMinimumWidth(time_->fontMetrics().horizontalAdvance(tr("0:00:00  ·  day 2, 00:00")));
  plans_->setText(tr("Time line ▾"));
  plans_->setObjectName(QStringLiteral("burn_plans"));
  plans_->setToolTip(tr("Presets, and files of events"));
  plans_->setPopupMode(QToolButton::InstantPopup);
  plans_->setMenu(presets_);
  state_->setObjectName(QStringLiteral("burn_state"));
  state_->setProperty("role", "caption");
  state_->setMinimumWidth(1);
  progress_->setObjectName(QStringLiteral("burn_progress"));
  progress_->setFixedSize(110, 8);
  progress_->setTextVisible(false);
  progress_->setRange(0, 1000);
  progress_->setAccessibleName(tr("How far the run is computed"));
  call_off_->setObjectName(QStringLiteral("burn_call_off"));
  compute_->setObjectName(QStringLiteral("burn_compute"));

  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(10, 4, 10, 4);
  row->setSpacing(8);
  row->addWidget(play_);
  row->addWidget(speed_);
  row->addWidget(time_);
  row->addWidget(state_, 1);
  row->addWidget(progress_);
  row->addWidget(call_off_);
  row->addWidget(compute_);
  row->addWidget(plans_);

  connect(play_, &QToolButton::clicked, this, [this] { book_.play(!book_.playing()); });
  connect(speed_, &QComboBox::activated, this, [this] { book_.set_speed(speed_->id().toDouble() * minute); });
  connect(call_off_, &QPushButton::clicked, &book_, &BurnBook::call_off);
  connect(compute_, &QPushButton::clicked, &book_, &BurnBook::compute);
  connect(presets_, &QMenu::aboutToShow, this, &BurnStrip::fill_presets);
  connect(&book_, &BurnBook::time_changed, this, &BurnStrip::show_time);
  connect(&book_, &BurnBook::plan_changed, this, &BurnStrip::show_time);
  connect(&book_, &BurnBook::plan_changed, this, &BurnStrip::show_run);
  connect(&book_, &BurnBook::run_changed, this, &BurnStrip::show_run);
  connect(&book_, &BurnBook::playing_changed, this, &BurnStrip::show_time);
  beat_.setInterval(40);
  connect(&beat_, &QTimer::timeout, this, [this] { progress_->setValue(static_cast<int>(std::lround(1000.0 * book_.progress()))); });
  fill_presets();
  show_time();
  show_run();
}

void BurnStrip::fill_presets() {
  presets_->clear();
  presets_->setToolTipsVisible(true);
  const Document& document = book_.document();
  for (const PlanPreset& preset : plan_presets) {
    QAction* action = presets_->addAction(spoken(preset.name), this, [this, id = preset.id] {
      if (!book_.take_preset(id)) emit refused(tr("This preset wants a fan that the design does not have."));
    });
    const bool fits = preset_plan(preset.id, document.design(), document.library()).has_value();
    action->setEnabled(fits);
    action->setToolTip(fits ? spoken(preset.story) : tr("The design lacks the fan for this."));
  }
  presets_->addSeparator();
  presets_->addAction(tr("Open a time line…"), this, &BurnStrip::open_wanted);
  presets_->addAction(tr("Save the time line…"), this, &BurnStrip::save_wanted);
}

void BurnStrip::show_time() {
  const bool playing = book_.playing();
  play_->setText(playing ? QStringLiteral("❚❚") : QStringLiteral("▶"));
  play_->setAccessibleName(playing ? tr("Pause") : tr("Play"));
  play_->setToolTip(playing ? tr("Pause (Space on the bar)") : tr("Play (Space on the bar)"));
  play_->setEnabled(book_.moment().has_value());
  time_->setText(QStringLiteral("%1  ·  %2").arg(QString::fromStdString(moment_text(book_.now())), QString::fromStdString(clock_text(book_.plan(), book_.now()))));
}

void BurnStrip::say(const QString& sentence) {
  if (sentence == said_) return;
  said_ = sentence;
  show_run();
}

void BurnStrip::show_run() {
  const bool running = book_.running();
  progress_->setVisible(running);
  call_off_->setVisible(running);
  compute_->setVisible(!running && book_.called_off());
  if (running != beat_.isActive()) {
    progress_->setValue(0);
    running ? beat_.start() : beat_.stop();
  }
  play_->setEnabled(book_.moment().has_value());
  QString words = said_;
  if (words.isEmpty()) {
    const KeptBurn* kept = book_.kept();
    if (!book_.faults().empty()) {
      words = tr("The time line has faults: nothing is computed.");
    } else if (running) {
      words = kept != nullptr ? tr("Computing; below stands the run before the edit.") : tr("Computing…");
    } else if (book_.called_off()) {
      words = tr("Called off.");
    } else if (kept == nullptr || book_.stale()) {
      words = tr("Waiting.");
    } else if (kept->record->end != BurnEnd::done) {
      words = spoken(sentence(kept->record->end));
    } else {
      const BurnSummary& s = kept->record->summary;
      words = (s.holds_from ? tr("Holds by itself from %1").arg(QString::fromStdString(moment_text(*s.holds_from))) : tr("Never holds by itself")) +
              tr("; smoke into the room %1").arg(QString::fromStdString(grams_text(s.smoke, book_.document().units())));
      if (s.counterflow > 1.0 * minute) {
        words += tr("; for %1 the air at the mouth is so slow that smoke can pass it").arg(QString::fromStdString(duration_text(s.counterflow)));
      }
    }
  }
  state_->setText(words);
  state_->setToolTip(words);
}

}  // namespace fluewright
