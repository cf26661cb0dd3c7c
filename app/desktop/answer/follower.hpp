// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"

#include <QObject>
#include <QTimer>

#include <atomic>
#include <memory>
#include <thread>
#include <vector>

namespace fluewright {

/// Finds out what takes longer than an edit may: the young ages of the bench followed in time, and what a power cut does
/// to the fans that run. On a thread of its own, once the hand has rested for a moment; the next edit calls it off. What
/// it finds goes to the Document, and only where that still shows the same design.
class Follower : public QObject {
  Q_OBJECT

 public:
  explicit Follower(Document& document, QObject* parent = nullptr);
  /// Calls off what runs and waits for it, a step of a run long.
  ~Follower() override;

  /// Waiting for the hand to rest, or at work.
  [[nodiscard]] bool busy() const { return pause_.isActive() || job_ != nullptr; }
  void call_off();
  /// Threads that are not put away yet, those called off among them.
  [[nodiscard]] std::size_t threads() const { return jobs_.size(); }

 signals:
  void busy_changed();

 private:
  struct Job {
    std::atomic<bool> wanted{true};
    Design design;
    std::thread thread;
  };
  void follow_document();
  void start();
  void run(const std::shared_ptr<Job>& job);
  void hand_over(const std::shared_ptr<Job>& job, const LateAnswer& late);
  void put_away(const std::shared_ptr<Job>& job);

  Document& document_;
  QTimer pause_;
  std::shared_ptr<Job> job_;                ///< the one whose answer is waited for
  std::vector<std::shared_ptr<Job>> jobs_;  ///< and those called off that still have to notice
};

}  // namespace fluewright
