// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/burn_book.hpp"

#include "app/desktop/burn/plan_step.hpp"
#include "app/shared/burn_file.hpp"

#include <QUndoGroup>

#include <algorithm>
#include <utility>

namespace fluewright {

namespace {

constexpr int pause_before_run = 250;  // [ms]
constexpr int frame = 40;              // [ms]
constexpr std::string_view first_preset = "typical_evening";

}  // namespace

BurnBook::BurnBook(Document& document, QObject* parent)
    : QObject(parent), document_(document), runner_(document.library()) {
  document_.undo_group().addStack(&undo_stack_);
  pause_.setSingleShot(true);
  pause_.setInterval(pause_before_run);
  player_.setInterval(frame);
  connect(&pause_, &QTimer::timeout, this, &BurnBook::compute);
  connect(&player_, &QTimer::timeout, this, &BurnBook::tick);
  connect(&runner_, &BurnRunner::done, this, &BurnBook::take);
  connect(&document_, &Document::changed, this, &BurnBook::follow_document);
  connect(&document_, &Document::adopted, this, &BurnBook::start_over);
  start_over();
}

BurnBook::~BurnBook() = default;

// Another design lies on the desk: the time line of the one before names pieces that are not there.
void BurnBook::start_over() {
  runner_.call_off();
  pause_.stop();
  player_.stop();
  undo_stack_.clear();
  preview_.reset();
  selected_.reset();
  kept_.reset();
  stale_ = false;
  called_off_ = false;
  now_ = {};
  preset_ = first_preset;
  plan_ = preset_plan(preset_, document_.design(), document_.library()).value_or(BurnPlan{});
  check();
  show_moment();
  emit selection_changed();
  emit plan_changed();
  emit run_changed();
  emit time_changed();
  ask_for_run();
}

void BurnBook::follow_document() {
  if (!preset_.empty() && !document_.in_preview()) {
    if (auto plan = preset_plan(preset_, document_.design(), document_.library())) plan_ = std::move(*plan);
  }
  check();
  emit plan_changed();
  ask_for_run();
}

void BurnBook::check() { faults_ = check_plan(plan(), document_.design(), document_.library()); }

QString BurnBook::fault_of(const PlanRef& ref) const {
  for (const PlanFault& fault : faults_) {
    if (fault.list == ref.list && fault.index == ref.index) {
      return QString::fromStdString(sentence(fault, document_.design(), document_.library()));
    }
  }
  return {};
}

void BurnBook::commit(BurnPlan plan, const QString& text, const QString& merge_key) {
  if (plan == plan_) {
    cancel_preview();
    return;
  }
  preview_.reset();
  undo_stack_.push(new PlanStep(*this, plan_, std::move(plan), text, merge_key));
}

void BurnBook::become(const BurnPlan& plan) {
  preset_.clear();
  preview_.reset();
  plan_ = plan;
  now_ = std::min(now_, plan_.length);
  if (selected_ && !event_of(plan_, *selected_)) select(std::nullopt);
  check();
  emit plan_changed();
  ask_for_run();
  emit time_changed();
}

void BurnBook::preview(BurnPlan plan) {
  if (preview_ && *preview_ == plan) return;
  preview_ = std::move(plan);
  check();
  emit plan_changed();
  ask_for_run();
}

void BurnBook::commit_preview(const QString& text) {
  if (!preview_) return;
  commit(*preview_, text);
}

void BurnBook::cancel_preview() {
  if (!preview_) return;
  preview_.reset();
  check();
  emit plan_changed();
  ask_for_run();
}

void BurnBook::select(std::optional<PlanRef> ref) {
  if (ref == selected_) return;
  selected_ = ref;
  emit selection_changed();
}

bool BurnBook::take_preset(std::string_view id) {
  auto plan = preset_plan(id, document_.design(), document_.library());
  if (!plan) return false;
  select(std::nullopt);
  commit(std::move(*plan), tr("Take a preset"));
  preset_ = id;
  return true;
}

void BurnBook::adopt(BurnPlan plan, const QString& text) {
  select(std::nullopt);
  commit(std::move(plan), text);
}

void BurnBook::set_open(bool open) {
  if (open == open_) return;
  open_ = open;
  if (!open) {
    play(false);
    pause_.stop();
    runner_.call_off();
  }
  ask_for_run();
  show_moment();
  emit run_changed();
}

bool BurnBook::is_stale() const {
  return kept_ && (kept_->plan != plan() || kept_->design != document_.design());
}

// A run begins a moment after the last edit; until it is done the old one is shown as old.
void BurnBook::ask_for_run() {
  const bool was_stale = std::exchange(stale_, is_stale());
  const bool holds = kept_ && !stale_;
  const bool gesture = preview_ || document_.in_preview();
  called_off_ = false;
  if (holds || !faults_.empty()) {
    pause_.stop();
    runner_.call_off();
  } else if (open_ && !gesture) {
    pause_.start();
  }
  if (stale_ && !was_stale) play(false);
  show_moment();
  emit run_changed();
}

void BurnBook::compute() {
  pause_.stop();
  if (!faults_.empty() || preview_ || document_.in_preview()) return;
  called_off_ = false;
  ++runs_begun_;
  runner_.start(document_.design(), plan_);
  emit run_changed();
}

void BurnBook::call_off() {
  pause_.stop();
  runner_.call_off();
  called_off_ = true;
  emit run_changed();
}

void BurnBook::take(const std::shared_ptr<KeptBurn>& burn) {
  kept_ = burn;
  stale_ = is_stale();
  show_moment();
  emit run_changed();
  emit time_changed();
}

std::optional<Moment> BurnBook::moment() const {
  if (!kept_ || stale_ || !kept_->record || kept_->record->rows.empty()) return std::nullopt;
  return Moment(kept_->record, now_);
}

void BurnBook::show_moment() { document_.show_moment(open_ ? moment() : std::nullopt); }

void BurnBook::go_to(Time at) {
  at = std::clamp(at, Time{}, plan().length);
  if (at == now_) return;
  now_ = at;
  show_moment();
  emit time_changed();
}

void BurnBook::step_rows(int rows) {
  const auto here = moment();
  if (!here) {
    go_to(now_ + static_cast<double>(rows) * minute);
    return;
  }
  const auto& all = here->burn().rows;
  auto index = static_cast<std::ptrdiff_t>(here->burn().row_at(now_).first);
  // From between two rows, one back is the row just passed.
  if (rows < 0 && all[static_cast<std::size_t>(index)].at < now_) ++index;
  const auto last = static_cast<std::ptrdiff_t>(all.size()) - 1;
  std::ptrdiff_t to = std::clamp<std::ptrdiff_t>(index + rows, 0, last);
  // Where something is switched two rows stand at one time.
  const std::ptrdiff_t on = rows < 0 ? -1 : 1;
  while (to + on >= 0 && to + on <= last && all[static_cast<std::size_t>(to)].at == now_) to += on;
  go_to(all[static_cast<std::size_t>(to)].at);
}

void BurnBook::play(bool on) {
  if (on == playing()) return;
  if (on) {
    if (!moment()) return;
    if (now_ >= plan().length) go_to({});
    player_.start();
  } else {
    player_.stop();
  }
  emit playing_changed();
}

void BurnBook::set_speed(Time per_second) {
  if (per_second == speed_) return;
  speed_ = per_second;
  emit playing_changed();
}

void BurnBook::tick() {
  go_to(now_ + speed_ * (frame / 1000.0));
  if (now_ >= plan().length) play(false);
}

}  // namespace fluewright
