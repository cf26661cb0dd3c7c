// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/answer/follower.hpp"

#include "engine/burn/power_cut.hpp"
#include "engine/burn/start_margins.hpp"

#include <QMetaObject>

#include <algorithm>
#include <utility>

namespace fluewright {

namespace {

constexpr int pause_before_run = 200;  // [ms]

}  // namespace

Follower::Follower(Document& document, QObject* parent) : QObject(parent), document_(document) {
  pause_.setSingleShot(true);
  pause_.setInterval(pause_before_run);
  connect(&pause_, &QTimer::timeout, this, &Follower::start);
  connect(&document_, &Document::changed, this, &Follower::follow_document);
  follow_document();
}

Follower::~Follower() {
  for (const auto& job : jobs_) job->wanted = false;
  for (const auto& job : jobs_) job->thread.join();
}

void Follower::follow_document() {
  call_off();
  if (document_.in_preview() || !document_.assessment().verdict) return;
  pause_.start();
  emit busy_changed();
}

// The hand is free at once; the thread notices at its next step and is put away when it is done.
void Follower::call_off() {
  pause_.stop();
  if (job_) job_->wanted = false;
  job_.reset();
  emit busy_changed();
}

void Follower::start() {
  job_ = std::make_shared<Job>();
  job_->design = document_.answered_design();
  jobs_.push_back(job_);
  job_->thread = std::thread([this, job = job_] {
    run(job);
    QMetaObject::invokeMethod(this, [this, job] { put_away(job); }, Qt::QueuedConnection);
  });
  emit busy_changed();
}

void Follower::run(const std::shared_ptr<Job>& job) {
  const Library& library = document_.library();
  const auto go_on = [&job] { return job->wanted.load(); };
  const auto tell = [this, &job](const LateAnswer& late) {
    QMetaObject::invokeMethod(this, [this, job, late] { hand_over(job, late); }, Qt::QueuedConnection);
  };
  LateAnswer late;
  if (auto young = young_design_flows(job->design, library, {}, {}, go_on)) late.young = *std::move(young);
  if (go_on()) tell(late);
  late.power_cut = run_power_cut(job->design, library, {}, go_on);
  late.complete = true;
  if (go_on()) tell(late);
}

void Follower::hand_over(const std::shared_ptr<Job>& job, const LateAnswer& late) {
  if (job == job_) document_.add_late_answer(job->design, late);
}

void Follower::put_away(const std::shared_ptr<Job>& job) {
  job->thread.join();
  jobs_.erase(std::remove(jobs_.begin(), jobs_.end(), job), jobs_.end());
  if (job != job_) return;
  job_.reset();
  emit busy_changed();
}

}  // namespace fluewright
