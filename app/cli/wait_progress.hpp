// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdio>
#include <unistd.h>

#include <chrono>
#include <iostream>
#include <string>
#include <string_view>
#include <thread>

namespace fluewright {

/// Waits for a job in the background; tells how far it is on the error stream, where that is a terminal.
template <class Job>
void wait_with_progress(Job& job, std::string_view what) {
  const bool terminal = isatty(fileno(stderr)) != 0;
  constexpr auto glance = std::chrono::milliseconds(100);
  while (!job.done()) {
    if (terminal) std::cerr << '\r' << what << ' ' << static_cast<int>(100.0 * job.progress().value()) << " % " << std::flush;
    std::this_thread::sleep_for(glance);
  }
  if (terminal) std::cerr << '\r' << std::string(what.size() + 12, ' ') << '\r' << std::flush;
  job.wait();
}

}  // namespace fluewright
