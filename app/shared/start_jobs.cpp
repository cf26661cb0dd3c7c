// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/start_jobs.hpp"

#include <algorithm>
#include <utility>

namespace fluewright {

std::size_t usual_threads(std::size_t wanted) {
  if (wanted > 0) return wanted;
  return std::max<std::size_t>(1, std::thread::hardware_concurrency());
}

Workers::Workers(Take take, Finished finished, std::function<void()> told)
    : take_{std::move(take)}, finished_{std::move(finished)}, told_{std::move(told)} {}

void Workers::begin(std::size_t threads) {
  running_ = threads;
  for (std::size_t i = 0; i < threads; ++i) threads_.emplace_back([this] { run(); });
}

Workers::~Workers() {
  cancel();
  wait();
}

void Workers::cancel() {
  {
    // Held so that no worker is between looking at the flag and falling asleep.
    const std::lock_guard lock(mutex_);
    cancelled_ = true;
  }
  more_.notify_all();
}

void Workers::wait() {
  for (std::thread& thread : threads_) {
    if (thread.joinable()) thread.join();
  }
}

void Workers::run() {
  while (true) {
    Work work;
    {
      std::unique_lock lock(mutex_);
      while (!cancelled_ && !(work = take_()) && !finished_()) more_.wait(lock);
      if (cancelled_ || !work) break;
    }
    work();
    if (told_) told_();
  }
  more_.notify_all();
  if (--running_ == 0 && told_) told_();
}

StartMapJob::StartMapJob(StartQuestion question, std::shared_ptr<const Library> library, const StartMapGrid& grid,
                         std::function<void()> told, std::size_t threads)
    : question_{std::move(question)}, library_{std::move(library)}, map_{grid} {
  question_.library = library_.get();
  open_ = map_.next();
  std::reverse(open_.begin(), open_.end());
  workers_ = std::make_unique<Workers>([this] { return take(); }, [this] { return map_.complete(); }, std::move(told));
  workers_->begin(usual_threads(threads));
}

StartMapJob::~StartMapJob() { workers_->cancel(), workers_->wait(); }

Workers::Work StartMapJob::take() {
  if (open_.empty()) {
    if (under_way_ > 0) return {};  // the next round wants all of this one
    map_.fill_between();
    open_ = map_.next();
    std::reverse(open_.begin(), open_.end());
    if (open_.empty()) return {};
  }
  const std::size_t cell = open_.back();
  open_.pop_back();
  ++under_way_;
  const Temperature outdoors = map_.outdoors(cell);
  const Temperature room = map_.room(cell);
  return [this, cell, outdoors, room] {
    const StartAnswer answer = classify_start(question_, outdoors, room, [this] { return !workers_->cancelled(); });
    const std::lock_guard lock(workers_->mutex());
    --under_way_;
    if (!answer.cancelled) map_.set(cell, answer);
    workers_->changed();
  };
}

StartMap StartMapJob::map() const {
  const std::lock_guard lock(workers_->mutex());
  return map_;
}

Ratio StartMapJob::progress() const {
  const std::lock_guard lock(workers_->mutex());
  return static_cast<double>(map_.computed()) / static_cast<double>(map_.size());
}

bool StartMapJob::done() const { return workers_->done(); }
void StartMapJob::cancel() { workers_->cancel(); }
void StartMapJob::wait() { workers_->wait(); }

PowerCutJob::PowerCutJob(Design design, std::shared_ptr<const Library> library, std::function<void()> told)
    : design_{std::move(design)}, library_{std::move(library)} {
  const auto take = [this]() -> Workers::Work {
    if (std::exchange(taken_, true)) return {};
    return [this] { answer_ = run_power_cut(design_, *library_, {}, [this] { return !workers_->cancelled(); }); };
  };
  workers_ = std::make_unique<Workers>(take, [this] { return taken_; }, std::move(told));
  workers_->begin(1);
}

PowerCutJob::~PowerCutJob() { workers_->cancel(), workers_->wait(); }

AidsJob::AidsJob(AidsQuestion question, std::shared_ptr<const Library> library, std::function<void()> told,
                 std::size_t threads)
    : question_{std::move(question)}, library_{std::move(library)}, tasks_{aid_tasks()} {
  question_.library = library_.get();
  workers_ = std::make_unique<Workers>([this] { return take(); }, [this] { return next_ == tasks_.size(); }, std::move(told));
  workers_->begin(usual_threads(threads));
}

AidsJob::~AidsJob() { workers_->cancel(), workers_->wait(); }

Workers::Work AidsJob::take() {
  if (next_ == tasks_.size()) return {};
  const AidTask task = tasks_[next_++];
  return [this, task] {
    AidRow row = compute_aid(question_, task, [this] { return !workers_->cancelled(); });
    const std::lock_guard lock(workers_->mutex());
    if (!row.cancelled) rows_.push_back(std::move(row));
    workers_->changed();
  };
}

std::vector<AidRow> AidsJob::rows() const {
  const std::lock_guard lock(workers_->mutex());
  std::vector<AidRow> ranked = rows_;
  rank_aids(ranked);
  return ranked;
}

Ratio AidsJob::progress() const {
  const std::lock_guard lock(workers_->mutex());
  return static_cast<double>(rows_.size()) / static_cast<double>(tasks_.size());
}

bool AidsJob::done() const { return workers_->done(); }
void AidsJob::cancel() { workers_->cancel(); }
void AidsJob::wait() { workers_->wait(); }

}  // namespace fluewright
