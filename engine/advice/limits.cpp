// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/limits.hpp"

#include "engine/advice/reshaping.hpp"
#include "engine/burn/start_margins.hpp"
#include "engine/layout/trace_ways.hpp"
#include "engine/solve/least_margin.hpp"

#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace fluewright {

namespace {

using advice::Parts;

/// How far beyond today's value a scale reaches (chosen: what a client might still ask for).
constexpr Length shortest_bench = 0.5 * metre;
constexpr Length least_longest_bench = 12.0 * metre;
constexpr double bench_reach = 2.0;
constexpr Length lowest_stack = 0.5 * metre;
constexpr Length stack_reach = 4.0 * metre;
constexpr Length least_bore = 60.0 * millimetre;
constexpr double bore_reach = 1.6;
constexpr int bends_reach = 8;
const Temperature coldest_room = celsius(-15.0);
const Temperature warmest_room = celsius(30.0);
const Temperature coldest_outdoors = celsius(-30.0);
const Temperature warmest_outdoors = celsius(35.0);

FieldValue like(const FieldValue& shape, double number) {
  if (std::holds_alternative<Length>(shape)) return Length(number * metre);
  if (std::holds_alternative<Temperature>(shape)) return kelvins(number);
  return Count{static_cast<int>(std::lround(number))};
}

bool holds_low(LimitKind kind) {
  return kind == LimitKind::longest_bench || kind == LimitKind::most_bends || kind == LimitKind::weakest_difference;
}

std::optional<Design> with_bends(const Design& design, const Library& library, int wanted) {
  Design changed = design;
  for (int guard = 0; guard < 100; ++guard) {
    const TracedPath path = trace_ways(changed, library);
    const Parts parts = advice::parts_of(changed, library, path);
    const int now = static_cast<int>(parts.level_bends.size());
    if (now == wanted) return changed;
    std::optional<Design> next;
    if (now < wanted) {
      next = advice::with_bend(changed, library, path, parts);
    } else {
      for (auto bend = parts.level_bends.rbegin(); bend != parts.level_bends.rend() && !next; ++bend) {
        next = advice::without_bend(changed, library, path, *bend);
      }
    }
    if (!next) return std::nullopt;
    changed = *std::move(next);
  }
  return std::nullopt;
}

}  // namespace

double limit_number(const FieldValue& x) {
  if (const auto* length = std::get_if<Length>(&x)) return in(*length, metre);
  if (const auto* temperature = std::get_if<Temperature>(&x)) return in_kelvin(*temperature);
  return std::get<Count>(x).value;
}

std::optional<LimitScale> limit_scale(LimitKind kind, const Design& design, const Library& library, const Assessment& a) {
  if (!a.verdict) return std::nullopt;
  const Parts parts = advice::parts_of(design, library, a.path);
  switch (kind) {
    case LimitKind::longest_bench: {
      const Length now = advice::bench_length(design, library, parts);
      if (!(now > Length{})) return std::nullopt;
      return LimitScale{std::min(shortest_bench, now), std::max(Length(bench_reach * now), least_longest_bench), now};
    }
    case LimitKind::shortest_stack: {
      const Length now = advice::stack_height(design, library, parts);
      if (!(now > Length{})) return std::nullopt;
      return LimitScale{std::min(lowest_stack, now), Length(now + stack_reach), now};
    }
    case LimitKind::smallest_bore: {
      const auto now = advice::flue_bore(design, library, parts);
      if (!now) return std::nullopt;
      return LimitScale{std::min(least_bore, *now), Length(bore_reach * *now), *now};
    }
    case LimitKind::most_bends: {
      if (parts.bench_runs.empty()) return std::nullopt;
      const int now = static_cast<int>(parts.level_bends.size());
      return LimitScale{Count{0}, Count{now + bends_reach}, Count{now}};
    }
    case LimitKind::coldest_bench:
      return LimitScale{std::min(coldest_room, design.room.temperature), std::max(warmest_room, design.room.temperature),
                        design.room.temperature};
    case LimitKind::weakest_difference: {
      const Temperature now = design.site.outdoor_temperature;
      return LimitScale{std::min(coldest_outdoors, now), std::max(warmest_outdoors, now), now};
    }
  }
  return std::nullopt;
}

std::vector<FieldValue> limit_samples(const LimitScale& scale, std::size_t count) {
  const double low = limit_number(scale.lowest);
  const double high = limit_number(scale.highest);
  std::vector<double> numbers{limit_number(scale.today)};
  if (std::holds_alternative<Count>(scale.today)) {
    for (double x = low; x <= high; x += 1.0) numbers.push_back(x);
  } else {
    for (std::size_t i = 0; i < count; ++i) {
      numbers.push_back(low + (high - low) * static_cast<double>(i) / static_cast<double>(count - 1));
    }
  }
  std::sort(numbers.begin(), numbers.end());
  numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end());
  std::vector<FieldValue> samples;
  for (const double x : numbers) samples.push_back(like(scale.today, x));
  return samples;
}

LimitDesigns::LimitDesigns(LimitKind kind, const Design& design, const Library& library)
    : kind_{kind}, design_{design}, library_{library}, parts_{advice::parts_of(design, library, trace_ways(design, library))} {}

std::optional<Design> LimitDesigns::at(const FieldValue& x) const {
  switch (kind_) {
    case LimitKind::longest_bench: return advice::with_bench_length(design_, library_, parts_, std::get<Length>(x));
    case LimitKind::shortest_stack: return advice::with_stack_height(design_, library_, parts_, std::get<Length>(x));
    case LimitKind::smallest_bore: return advice::with_flue_bore(design_, library_, parts_, std::get<Length>(x));
    case LimitKind::most_bends: return with_bends(design_, library_, std::get<Count>(x).value);
    case LimitKind::coldest_bench: {
      Design changed = design_;
      changed.room.temperature = std::get<Temperature>(x);
      return changed;
    }
    case LimitKind::weakest_difference: {
      Design changed = design_;
      changed.site.outdoor_temperature = std::get<Temperature>(x);
      return changed;
    }
  }
  return std::nullopt;
}

std::optional<Pressure> margin_at(const LimitDesigns& designs, const FieldValue& x, Length slice, MarginBy by,
                                  const std::function<bool()>& go_on) {
  const auto changed = designs.at(x);
  if (!changed) return std::nullopt;
  if (by == MarginBy::estimate) return least_margin(*changed, designs.library(), slice);
  AssessOptions options;
  options.slice = slice;
  options.operating_points = false;
  const Assessment a = assess(*changed, designs.library(), options);
  const auto young = a.verdict ? young_design_flows(*changed, designs.library(), {}, {}, go_on) : std::nullopt;
  if (!young) return std::nullopt;
  Pressure least = a.design_flow.back().margin;
  for (const DesignFlow& flow : *young) least = std::min(least, flow.margin);
  return least;
}

bool has_steps_in_time(const Assessment& assessment) {
  return assessment.verdict.has_value() && assessment.path.network.is_series();
}

namespace {

/// Two neighbours on the curve, the one that holds and the one that does not.
struct Crossing {
  FieldValue holds;
  FieldValue fails;
};

/// From today's point on: towards the bad side while it holds, else towards the good side until it does.
std::variant<Crossing, LimitState> crossing_by(const std::vector<LimitPoint>& curve, const FieldValue& today, Pressure wanted,
                                               bool good_is_low) {
  const auto at_today = std::find_if(curve.begin(), curve.end(), [&](const LimitPoint& p) { return p.x == today; });
  if (at_today == curve.end()) return LimitState::never;
  const auto holds = [wanted](const LimitPoint& p) { return p.margin && *p.margin >= wanted; };
  const bool now = holds(*at_today);
  const std::ptrdiff_t step = now == good_is_low ? 1 : -1;
  auto i = at_today - curve.begin();
  const auto last = static_cast<std::ptrdiff_t>(curve.size()) - 1;
  for (auto next = i + step; next >= 0 && next <= last; i = next, next += step) {
    const LimitPoint& from = curve[static_cast<std::size_t>(i)];
    const LimitPoint& to = curve[static_cast<std::size_t>(next)];
    if (!to.margin) break;  // cannot be built so
    if (holds(to) != now) return now ? Crossing{from.x, to.x} : Crossing{to.x, from.x};
  }
  return now ? LimitState::always : LimitState::never;
}

}  // namespace

LimitAnswer find_limit(LimitKind kind, const Design& design, const Library& library, Pressure wanted, const LimitScale& scale,
                       std::vector<LimitPoint> curve, MarginBy by, const std::function<bool()>& go_on) {
  LimitAnswer answer{kind, wanted, scale, LimitState::never, {}, {}, by, std::move(curve)};
  const auto crossing = crossing_by(answer.curve, scale.today, wanted, holds_low(kind));
  if (const auto* state = std::get_if<LimitState>(&crossing)) {
    answer.state = *state;
    return answer;
  }
  const Length usual_slice = AssessOptions{}.slice;
  const LimitDesigns designs(kind, design, library);
  const auto over = [&](double x) {
    const auto margin = margin_at(designs, like(scale.today, x), usual_slice, by, go_on);
    return margin ? in(Pressure(*margin - wanted), pascal) : -1e3;
  };
  const auto& [good, bad] = std::get<Crossing>(crossing);
  double a = limit_number(good);
  double b = limit_number(bad);
  double over_a = over(a);
  double over_b = over(b);
  if (!std::holds_alternative<Count>(scale.today)) {
    // On the usual slices the curve may cross a little to the side of where the quick one does.
    for (int i = 0; i < 4 && over_a < 0.0; ++i) over_a = over(a -= b - a);
    for (int i = 0; i < 4 && over_b >= 0.0; ++i) over_b = over(b += b - a);
    if (over_a < 0.0 || over_b >= 0.0) return answer;
    std::uintmax_t evaluations = 60;
    const bool rising = a > b;
    // Steps in time are worked out to a thousandth of a pascal at best.
    const boost::math::tools::eps_tolerance<double> close_enough(by == MarginBy::estimate ? 34 : 18);
    const auto found = rising ? boost::math::tools::toms748_solve(over, b, a, over_b, over_a, close_enough, evaluations)
                              : boost::math::tools::toms748_solve(over, a, b, over_a, over_b, close_enough, evaluations);
    a = rising ? found.second : found.first;
    over_a = over(a);
  } else {
    while (over_a < 0.0 && a != limit_number(scale.lowest)) over_a = over(a += a > b ? 1.0 : -1.0);
    if (over_a < 0.0) return answer;
  }
  answer.state = LimitState::found;
  answer.found = like(scale.today, a);
  answer.margin = wanted + over_a * pascal;
  return answer;
}

}  // namespace fluewright
