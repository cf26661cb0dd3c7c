// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/operating_points.hpp"

#include "engine/solve/flow_scan.hpp"

#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>

namespace fluewright {
namespace {

/// Bits to which a root is first found on the coarse path, then on the fine one.
constexpr int rough_bits = 20;
constexpr int fine_bits = 36;
constexpr int bracket_widenings = 5;
constexpr double bracket_share = 2e-3;
constexpr std::uintmax_t root_evaluations = 60;
/// A root must balance to this.
constexpr Pressure balanced_within = 1e-7 * pascal;
/// From the coarse path's root the fine one's is a few steps of the secant rule away: so many at most, until the balance
/// is as good as this, and no farther than this share of the flow.
constexpr int secant_steps = 6;
constexpr Pressure settled_within = 1e-9 * pascal;
constexpr double near_share = 0.3;
/// Share of the flow over which the coarse path's slope is taken.
constexpr double slope_share = 1e-3;

/// Flows tried along the curve of a fan that rises, up to somewhat beyond its last point.
constexpr int fan_samples = 48;
constexpr double fan_reach = 1.2;
/// Gas of a stack, to turn a fan's flow into a mass flow where the scan should look.
constexpr Density scan_density = 0.9 * kilogram_per_cubic_metre;

Ratio vapour_of_inlet(const SlicedPath& path, const Surround& surround) {
  return path.branch->from.kind == EndKind::room_air ? surround.room_water : surround.outdoor_water;
}

}  // namespace

FreeRun::FreeRun(const SlicedPath& fine, const SlicedPath& coarse, const Surround& surround, const WoodFuel& fuel,
                 MassFlow wanted_burn_rate)
    : fine_{&fine},
      coarse_{&coarse},
      surround_{&surround},
      forward_{fuel, wanted_burn_rate, vapour_of_inlet(fine, surround)},
      backward_{fuel, wanted_burn_rate, surround.outdoor_water},
      room_air_{moist_air(vapour_of_inlet(fine, surround))},
      outdoor_air_{moist_air(surround.outdoor_water)} {}

FireState FreeRun::fire_at(MassFlow flow) const {
  return flow >= MassFlow{} ? forward_.from_flue_flow(std::max(flow, still_air))
                            : backward_.from_air_flow(std::max(MassFlow(-flow), still_air));
}

MarchTotals FreeRun::march(MassFlow flow, std::vector<SliceState>* rows, bool on_coarse) const {
  const FireState fire = fire_at(flow);
  const Burning& burning = fire.forward ? forward_ : backward_;
  const GasTable gas = burning.gas(fire);
  return March{on_coarse ? *coarse_ : *fine_, *surround_}.run(fire, fire.forward ? room_air_ : outdoor_air_, gas, {}, rows);
}

Pressure FreeRun::balance(const MarchTotals& totals, bool forward) const {
  const Pressure drive = surround_->gauge_at(fine_->branch->from) + totals.buoyancy + totals.fan - surround_->cap_gauge;
  return forward ? Pressure(drive - totals.loss()) : Pressure(drive + totals.loss());
}

Pressure FreeRun::residual(MassFlow flow, bool on_coarse) const {
  return balance(march(flow, nullptr, on_coarse), flow >= MassFlow{});
}

std::vector<MassFlow> FreeRun::flows_of_rising_fans() const {
  std::vector<MassFlow> flows;
  for (const Stretch& stretch : fine_->branch->stretches) {
    if (!stretch.fan || !(stretch.fan->speed > 0.0) || !stretch.fan->curve.rising()) continue;
    const MassFlow last = fan_reach * stretch.fan->speed * stretch.fan->curve.last_flow() * scan_density;
    for (int i = 1; i <= fan_samples; ++i) flows.push_back(last * (static_cast<double>(i) / fan_samples));
  }
  return flows;
}

std::vector<FreeRun::Sample> FreeRun::scan() const {
  const MassFlow widest = forward_.flue_flow(widest_excess_air);
  std::vector<Sample> samples;
  for (const double side : {-1.0, 1.0}) {
    for (const double share : scan_shares) {
      const MassFlow flow = side * share * widest;
      samples.push_back({flow, residual(flow, true)});
    }
    // Far out losses win: the residual must be negative forward, positive backward.
    MassFlow flow = side * widest;
    for (int i = 0; i < widenings && side * samples.back().residual > Pressure{}; ++i) {
      flow *= widening;
      samples.push_back({flow, residual(flow, true)});
    }
  }
  for (const MassFlow& flow : flows_of_rising_fans()) samples.push_back({flow, residual(flow, true)});
  std::sort(samples.begin(), samples.end(), [](const Sample& a, const Sample& b) { return a.flow < b.flow; });
  return samples;
}

OperatingPoint FreeRun::point_at(MassFlow flow, const MarchTotals& totals) const {
  const FireState fire = fire_at(flow);
  OperatingPoint p;
  p.forward = fire.forward;
  p.flue_gas = flow;
  p.excess_air_ratio = fire.excess_air_ratio;
  p.burn_rate = fire.burn_rate;
  p.short_of_air = fire.short_of_air;
  p.fire_temperature = totals.fire;
  p.exit_temperature = totals.exit;
  p.residual = balance(totals, fire.forward);
  p.fans = totals.fans;
  HeatBalance& h = p.heat;
  h.released = fire.released;
  h.unburned = fire.released - fire.added;
  h.to_room = totals.to_room;
  h.into_mass = totals.into_mass;
  h.to_outdoors = totals.to_outdoors;
  h.stack_loss = totals.stack;
  const Power accounted = h.unburned + h.to_room + h.into_mass + h.to_outdoors + h.stack_loss;
  h.closure = std::abs(((h.released - accounted) / h.released).value());
  return p;
}

std::optional<FreeRun::Bracket> FreeRun::narrowed(Bracket bracket, bool on_coarse, int bits) const {
  const double way = bracket.rises ? -1.0 : 1.0;
  const auto f = [&](double m) { return way * in(residual(m * kilogram_per_second, on_coarse), pascal); };
  double a = in(bracket.low, kilogram_per_second);
  double b = in(bracket.high, kilogram_per_second);
  double fa = f(a);
  double fb = f(b);
  // The other path may have its change of sign a little to the side.
  for (int i = 0; i < bracket_widenings && !(fa > 0.0 && fb <= 0.0); ++i) {
    const double width = std::max(b - a, bracket_share * std::max(std::abs(a), std::abs(b)));
    a -= width;
    b += width;
    fa = f(a);
    fb = f(b);
  }
  if (!(fa > 0.0 && fb <= 0.0)) return std::nullopt;  // a touch of the coarse path, not a state
  std::uintmax_t evaluations = root_evaluations;
  const boost::math::tools::eps_tolerance<double> close_enough(static_cast<unsigned>(bits));
  const auto found = boost::math::tools::toms748_solve(f, a, b, fa, fb, close_enough, evaluations);
  return Bracket{found.first * kilogram_per_second, found.second * kilogram_per_second, bracket.rises};
}

std::optional<OperatingPoint> FreeRun::settled(const Bracket& rough) const {
  const MassFlow start = 0.5 * (rough.low + rough.high);
  const bool forward = start >= MassFlow{};
  const MassFlow aside = slope_share * start;
  auto slope = (residual(start + aside, true) - residual(start, true)) / aside;
  MassFlow last{};
  Pressure last_left{};
  MassFlow flow = start;
  for (int step = 0; step < secant_steps; ++step) {
    const MarchTotals totals = march(flow);
    const Pressure left = balance(totals, forward);
    if (step > 0 && flow != last) slope = (left - last_left) / (flow - last);
    // A state of the other kind, or a jump: the bracket has to decide.
    if (!((slope > decltype(slope){}) == rough.rises)) return std::nullopt;
    if (abs(left) < settled_within) {
      OperatingPoint point = point_at(flow, totals);
      point.stable = !rough.rises;
      return point;
    }
    last = flow;
    last_left = left;
    flow -= left / slope;
    if (!(abs(flow - start) < near_share * abs(start))) return std::nullopt;
  }
  return std::nullopt;
}

std::optional<OperatingPoint> FreeRun::enclosed(const Bracket& rough) const {
  const auto fine = narrowed(rough, false, fine_bits);
  if (!fine) return std::nullopt;
  const MassFlow flow = 0.5 * (fine->low + fine->high);
  OperatingPoint point = point_at(flow, march(flow));
  point.stable = !fine->rises;
  // Where the flow turns round the residual may jump; a jump is no balance.
  return abs(point.residual) < balanced_within ? std::optional(point) : std::nullopt;
}

std::vector<OperatingPoint> FreeRun::points() const {
  const std::vector<Sample> samples = scan();
  const bool with_unstable = !flows_of_rising_fans().empty();
  std::vector<OperatingPoint> found;
  for (std::size_t i = 0; i + 1 < samples.size(); ++i) {
    // Drive to spare below, none above: a state that comes back by itself when disturbed.
    const bool above = samples[i].residual > Pressure{};
    const bool above_next = samples[i + 1].residual > Pressure{};
    if (above == above_next || (above_next && !with_unstable)) continue;
    const auto rough = narrowed({samples[i].flow, samples[i + 1].flow, above_next}, true, rough_bits);
    if (!rough) continue;
    std::optional<OperatingPoint> point = settled(*rough);
    if (!point) point = enclosed(*rough);
    if (point) found.push_back(std::move(*point));
  }
  std::reverse(found.begin(), found.end());  // forward before backward, larger flows first
  return found;
}

}  // namespace fluewright
