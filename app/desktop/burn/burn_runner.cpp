// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/burn_runner.hpp"

#include <QMetaObject>

#include <algorithm>
#include <utility>

namespace fluewright {

namespace {

/// The run itself is most of the work; looking at it without the fan is the rest.
constexpr double share_of_run = 0.7;

}  // namespace

BurnRunner::BurnRunner(const Library& library, QObject* parent) : QObject(parent), library_(library) {}

BurnRunner::~BurnRunner() {
  for (const auto& job : jobs_) job->wanted = false;
  for (const auto& job : jobs_) job->thread.join();
}

double BurnRunner::progress() const { return job_ ? job_->progress.load() : 0.0; }

void BurnRunner::start(Design design, BurnPlan plan) {
  if (job_) job_->wanted = false;
  job_ = std::make_shared<Job>();
  job_->burn = {std::move(design), std::move(plan), nullptr, std::nullopt, std::nullopt};
  jobs_.push_back(job_);
  job_->thread = std::thread([this, job = job_] {
    run(*job);
    QMetaObject::invokeMethod(this, [this, job] { finish(job); }, Qt::QueuedConnection);
  });
}

// The hand is free at once; the thread notices at its next step and is put away when it is done.
void BurnRunner::call_off() {
  if (!job_) return;
  job_->wanted = false;
  job_.reset();
  emit called_off();
}

void BurnRunner::run(Job& job) {
  const KeptBurn& asked = job.burn;
  const bool has_fan = switches_fans(asked.plan, asked.design, library_);
  const double part = has_fan ? share_of_run : 1.0;
  BurnOptions options;
  options.go_on = [&](Ratio share) {
    job.progress = part * share.value();
    return job.wanted.load();
  };
  auto record = std::make_shared<BurnRecord>(run_burn(asked.design, library_, asked.plan, options));
  if (has_fan && record->end == BurnEnd::done) {
    job.burn.fan = fan_dependence(asked.design, library_, asked.plan, *record, [&](Ratio share) {
      job.progress = part + (1.0 - part) * share.value();
      return job.wanted.load();
    });
    job.burn.standard = run_power_cut(asked.design, library_, {}, [&job] { return job.wanted.load(); });
  }
  job.burn.record = std::move(record);
}

void BurnRunner::finish(const std::shared_ptr<Job>& job) {
  job->thread.join();
  jobs_.erase(std::remove(jobs_.begin(), jobs_.end(), job), jobs_.end());
  if (job != job_) return;  // called off, or a younger one has taken its place
  job_.reset();
  emit done(std::make_shared<KeptBurn>(std::move(job->burn)));
}

}  // namespace fluewright
