// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/advice/background_task.hpp"

#include <utility>

namespace fluewright {

void Courier::bring(std::function<void()> what) const {
  BackgroundTask* task = task_;
  const quint64 number = number_;
  QMetaObject::invokeMethod(
      task,
      [task, number, what = std::move(what)] {
        if (task->number_ == number) what();
      },
      Qt::QueuedConnection);
}

BackgroundTask::~BackgroundTask() { call_off(); }

void BackgroundTask::start(std::function<void(const Courier&)> work) {
  call_off();
  runs_ = true;
  const quint64 number = number_;
  thread_ = std::jthread([this, number, work = std::move(work)](const std::stop_token& stop) {
    const Courier courier(*this, number, stop);
    work(courier);
    courier.bring([this] {
      runs_ = false;
      emit ended();
    });
  });
}

void BackgroundTask::call_off() {
  ++number_;
  runs_ = false;
  if (!thread_.joinable()) return;
  thread_.request_stop();
  thread_.join();
}

}  // namespace fluewright
