// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/burn/burn_run.hpp"
#include "engine/burn/fan_dependence.hpp"

#include <QObject>

#include <atomic>
#include <memory>
#include <optional>
#include <thread>
#include <vector>

namespace fluewright {

/// What a burn was computed from, and what came out.
struct KeptBurn {
  Design design;
  BurnPlan plan;
  std::shared_ptr<const BurnRecord> record;
  std::optional<FanDependence> fan;        ///< where a fan runs while something burns
  std::optional<PowerCutAnswer> standard;  ///< a standard start of the design's own fans, where any runs
};

/// Computes burns on a thread of its own, one at a time. A new one calls the old one off; what was called off is never
/// handed out. `done` and `called_off` arrive in the thread the runner lives in.
class BurnRunner : public QObject {
  Q_OBJECT

 public:
  explicit BurnRunner(const Library& library, QObject* parent = nullptr);
  /// Calls off what runs and waits for it.
  ~BurnRunner() override;

  void start(Design design, BurnPlan plan);
  void call_off();
  [[nodiscard]] bool running() const { return job_ != nullptr; }
  /// Share of the run that is done.
  [[nodiscard]] double progress() const;

 signals:
  void done(const std::shared_ptr<fluewright::KeptBurn>& burn);
  void called_off();

 private:
  struct Job {
    std::atomic<bool> wanted{true};
    std::atomic<double> progress{0.0};
    KeptBurn burn;
    std::thread thread;
  };
  void run(Job& job);
  void finish(const std::shared_ptr<Job>& job);

  const Library& library_;
  std::shared_ptr<Job> job_;                ///< the one whose result is waited for
  std::vector<std::shared_ptr<Job>> jobs_;  ///< and those called off that still have to notice
};

}  // namespace fluewright
