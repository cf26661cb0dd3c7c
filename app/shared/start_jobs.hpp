// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Many runs at once, on all cores, in the background: a start map and a comparison of aids. No Qt; whoever draws is told
// from a worker's thread and fetches a copy.

#include "engine/burn/aids.hpp"
#include "engine/burn/power_cut.hpp"
#include "engine/burn/start_map.hpp"

#include <atomic>
#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>
#include <vector>

namespace fluewright {

/// Hands out pieces of work to a thread a core until none is left or it is called off. Calling off takes effect at the
/// next step of every run, well within 50 ms.
class Workers {
 public:
  /// `take` gives the next piece of work, or nothing when there is none at the moment (then `finished` tells whether there
  /// will be none again). Both are called by any worker, one at a time.
  using Work = std::function<void()>;
  using Take = std::function<Work()>;
  using Finished = std::function<bool()>;

  Workers(Take take, Finished finished, std::function<void()> told);
  ~Workers();
  Workers(const Workers&) = delete;
  Workers& operator=(const Workers&) = delete;

  void begin(std::size_t threads);
  void cancel();
  void wait();
  [[nodiscard]] bool cancelled() const { return cancelled_; }
  [[nodiscard]] bool done() const { return running_ == 0; }
  /// To be held while looking at what take() and the work change.
  [[nodiscard]] std::mutex& mutex() { return mutex_; }
  /// After a piece of work has changed something (the mutex held): idle workers look again.
  void changed() { more_.notify_all(); }

 private:
  void run();

  Take take_;
  Finished finished_;
  std::function<void()> told_;
  std::mutex mutex_;
  std::condition_variable more_;
  std::atomic<bool> cancelled_{false};
  std::atomic<std::size_t> running_{0};
  std::vector<std::thread> threads_;
};

/// 0: as many threads as there are cores.
[[nodiscard]] std::size_t usual_threads(std::size_t wanted = 0);

/// A start map being computed.
class StartMapJob {
 public:
  /// `told` is called from a worker's thread after every cell and once at the end.
  StartMapJob(StartQuestion question, std::shared_ptr<const Library> library, const StartMapGrid& grid,
              std::function<void()> told = {}, std::size_t threads = 0);
  ~StartMapJob();

  [[nodiscard]] StartMap map() const;    ///< a copy of what there is
  [[nodiscard]] Ratio progress() const;
  [[nodiscard]] bool done() const;
  void cancel();
  void wait();
  [[nodiscard]] const StartQuestion& question() const { return question_; }

 private:
  Workers::Work take();

  StartQuestion question_;
  std::shared_ptr<const Library> library_;
  StartMap map_;
  std::vector<std::size_t> open_;   ///< of the present round, last first
  std::size_t under_way_ = 0;
  std::unique_ptr<Workers> workers_;
};

/// What a power cut does to the fans that a design runs, in the background.
class PowerCutJob {
 public:
  PowerCutJob(Design design, std::shared_ptr<const Library> library, std::function<void()> told = {});
  ~PowerCutJob();

  [[nodiscard]] bool done() const { return workers_->done(); }
  /// Once it is done; nothing where no fan runs.
  [[nodiscard]] const std::optional<PowerCutAnswer>& answer() const { return answer_; }
  void cancel() { workers_->cancel(); }

 private:
  Design design_;
  std::shared_ptr<const Library> library_;
  bool taken_ = false;
  std::optional<PowerCutAnswer> answer_;
  std::unique_ptr<Workers> workers_;
};

/// Aids being compared.
class AidsJob {
 public:
  AidsJob(AidsQuestion question, std::shared_ptr<const Library> library, std::function<void()> told = {},
          std::size_t threads = 0);
  ~AidsJob();

  [[nodiscard]] std::vector<AidRow> rows() const;  ///< ranked, of those that are computed
  [[nodiscard]] Ratio progress() const;
  [[nodiscard]] bool done() const;
  void cancel();
  void wait();

 private:
  Workers::Work take();

  AidsQuestion question_;
  std::shared_ptr<const Library> library_;
  std::vector<AidTask> tasks_;
  std::size_t next_ = 0;
  std::vector<AidRow> rows_;
  std::unique_ptr<Workers> workers_;
};

}  // namespace fluewright
