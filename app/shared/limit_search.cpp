// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/limit_search.hpp"

#include "app/shared/in_parallel.hpp"

#include <mutex>

namespace fluewright {

std::vector<LimitPoint> limit_curve(const LimitSearch& search, const LimitScale& scale, Length slice) {
  std::vector<LimitPoint> curve;
  for (FieldValue& x : limit_samples(scale, search.points)) curve.push_back({std::move(x), {}});
  std::mutex mutex;
  std::size_t done = 0;
  in_parallel(curve.size(), search.stop, [&](std::size_t i) {
    curve[i].margin = margin_at(search.kind, search.design, search.library, curve[i].x, slice);
    const std::lock_guard one_at_a_time(mutex);
    ++done;
    if (search.moved_on) search.moved_on(done, curve.size());
  });
  return curve;
}

std::optional<LimitAnswer> search_limit(const LimitSearch& search) {
  AssessOptions options;
  options.operating_points = false;
  const Assessment now = assess(search.design, search.library, options);
  const auto scale = limit_scale(search.kind, search.design, search.library, now);
  if (!scale) return std::nullopt;
  std::vector<LimitPoint> curve = limit_curve(search, *scale, options.slice);
  if (search.stop.stop_requested()) return std::nullopt;
  return find_limit(search.kind, search.design, search.library, search.wanted, *scale, std::move(curve));
}

}  // namespace fluewright
