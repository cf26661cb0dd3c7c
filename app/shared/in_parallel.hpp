// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <stop_token>
#include <thread>
#include <vector>

namespace fluewright {

/// Calls work(0) ... work(count - 1), each once, on as many threads as there are processors, in about that order; returns
/// when all are done. After a stop is asked for no further one begins. work must not throw.
template <class Work>
void in_parallel(std::size_t count, const std::stop_token& stop, const Work& work) {
  std::atomic<std::size_t> next{0};
  const auto take = [&] {
    for (std::size_t i = next++; i < count && !stop.stop_requested(); i = next++) work(i);
  };
  const std::size_t processors = std::max(1u, std::thread::hardware_concurrency());
  std::vector<std::jthread> helpers;
  for (std::size_t n = 1; n < std::min(processors, count); ++n) helpers.emplace_back(take);
  take();
}

}  // namespace fluewright
