// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

#include <functional>
#include <stop_token>
#include <thread>

namespace fluewright {

class BackgroundTask;

/// What work in the background has at hand: whether it should stop, and a way to bring results to the desk.
class Courier {
 public:
  Courier(BackgroundTask& task, quint64 number, std::stop_token stop) : task_{&task}, number_{number}, stop_{std::move(stop)} {}

  [[nodiscard]] const std::stop_token& stop() const { return stop_; }
  /// Runs on the desk's own thread, in order, unless other work has begun or this was called off since.
  void bring(std::function<void()> what) const;

 private:
  BackgroundTask* task_;
  quint64 number_;
  std::stop_token stop_;
};

/// One piece of work beside the desk. New work calls off the old and waits until it has let go.
class BackgroundTask : public QObject {
  Q_OBJECT

 public:
  using QObject::QObject;
  ~BackgroundTask() override;

  void start(std::function<void(const Courier&)> work);
  void call_off();
  [[nodiscard]] bool runs() const { return runs_; }

 signals:
  void ended();

 private:
  friend class Courier;

  quint64 number_ = 0;
  bool runs_ = false;
  std::jthread thread_;
};

}  // namespace fluewright
