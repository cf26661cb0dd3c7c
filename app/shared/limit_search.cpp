// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/limit_search.hpp"

#include "app/shared/in_parallel.hpp"

#include <algorithm>
#include <cmath>
#include <mutex>
#include <numeric>

namespace fluewright {

namespace {

/// Indices in the curve by how far they lie from the limit, or from today's point where there is no limit.
std::vector<std::size_t> nearest_first(const LimitAnswer& answer) {
  const double centre = limit_number(answer.found ? *answer.found : answer.scale.today);
  std::vector<std::size_t> order(answer.curve.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return std::abs(limit_number(answer.curve[a].x) - centre) < std::abs(limit_number(answer.curve[b].x) - centre);
  });
  return order;
}

}  // namespace

std::vector<LimitPoint> limit_curve(const LimitSearch& search, const LimitScale& scale, Length slice) {
  const auto go_on = [&search] { return !search.stop.stop_requested(); };
  std::vector<LimitPoint> curve;
  for (FieldValue& x : limit_samples(scale, search.points)) curve.push_back({std::move(x), {}});
  const LimitDesigns designs(search.kind, search.design, search.library);
  std::mutex mutex;
  std::size_t done = 0;
  in_parallel(curve.size(), search.stop, [&](std::size_t i) {
    curve[i].margin = margin_at(designs, curve[i].x, slice, search.by, go_on);
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
  return find_limit(search.kind, search.design, search.library, search.wanted, *scale, std::move(curve), search.by);
}

std::optional<LimitAnswer> refined_limit(const LimitSearch& search, const LimitAnswer& quick,
                                         const std::function<void(std::size_t index, const LimitPoint& point)>& brought) {
  AssessOptions options;
  options.operating_points = false;
  if (!has_steps_in_time(assess(search.design, search.library, options))) return std::nullopt;
  std::vector<LimitPoint> curve = quick.curve;
  const LimitDesigns designs(search.kind, search.design, search.library);
  std::mutex mutex;
  std::size_t done = 0;
  const std::vector<std::size_t> order = nearest_first(quick);
  const auto go_on = [&search] { return !search.stop.stop_requested(); };
  in_parallel(order.size(), search.stop, [&](std::size_t i) {
    LimitPoint& point = curve[order[i]];
    if (point.margin) {
      point.margin = margin_at(designs, point.x, options.slice, MarginBy::steps_in_time, go_on);
    }
    const std::lock_guard one_at_a_time(mutex);
    if (search.stop.stop_requested()) return;
    ++done;
    if (brought) brought(order[i], point);
    if (search.moved_on) search.moved_on(done, curve.size());
  });
  if (search.stop.stop_requested()) return std::nullopt;
  LimitAnswer answer = find_limit(search.kind, search.design, search.library, search.wanted, quick.scale,
                                  std::move(curve), MarginBy::steps_in_time, go_on);
  if (search.stop.stop_requested()) return std::nullopt;
  return answer;
}

}  // namespace fluewright
