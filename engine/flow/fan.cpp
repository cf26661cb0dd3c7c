// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/fan.hpp"

#include <boost/math/interpolators/pchip.hpp>

#include <algorithm>

namespace fluewright {

namespace {

constexpr VolumeFlow unit_flow = cubic_metre / second;
/// boost::math wants this many points. More on the line through the last two change nothing between the others.
constexpr std::size_t least_points = 4;

double slope_between(const FanPoint& a, const FanPoint& b) {
  return in(b.head - a.head, pascal) / in(b.flow - a.flow, unit_flow);
}

std::optional<FlowRange> rising_range(const std::vector<FanPoint>& points) {
  std::optional<FlowRange> range;
  for (std::size_t i = 0; i + 1 < points.size(); ++i) {
    if (!(points[i + 1].head > points[i].head)) continue;
    if (!range) range = FlowRange{points[i].flow, {}};
    range->high = points[i + 1].flow;
  }
  return range;
}

}  // namespace

struct FanCurve::Spline {
  boost::math::interpolators::pchip<std::vector<double>> head;
  double slope_beyond;
};

FanCurve::FanCurve(const FanSheet& sheet) : sheet_{std::make_shared<const FanSheet>(sheet)} {
  const std::vector<FanPoint>& points = sheet_->points;
  if (!makes_a_curve(points)) return;
  std::vector<double> flows;
  std::vector<double> heads;
  for (const FanPoint& p : points) {
    flows.push_back(in(p.flow, unit_flow));
    heads.push_back(in(p.head, pascal));
  }
  const double last_slope = slope_between(points[points.size() - 2], points.back());
  const double step = flows.back() - flows[flows.size() - 2];
  while (flows.size() < least_points) {
    flows.push_back(flows.back() + step);
    heads.push_back(heads.back() + last_slope * step);
  }
  last_flow_ = points.back().flow;
  for (const FanPoint& p : points) largest_head_ = std::max(largest_head_, p.head);
  rising_ = rising_range(points);
  const double beyond = last_slope < 0.0 ? last_slope : -in(largest_head_, pascal) / in(last_flow_, unit_flow);
  spline_ = std::make_shared<const Spline>(Spline{{std::move(flows), std::move(heads)}, beyond});
}

Pressure FanCurve::head(VolumeFlow flow) const {
  if (!spline_) return {};
  return spline_->head(std::clamp(in(flow, unit_flow), 0.0, in(last_flow_, unit_flow))) * pascal;
}

Pressure FanCurve::head_beyond(VolumeFlow flow) const {
  if (!spline_) return {};
  return head(last_flow_) + spline_->slope_beyond * in(flow - last_flow_, unit_flow) * pascal;
}

FanEffect fan_effect(const Fan& fan, VolumeFlow flow, Density gas, Area area) {
  const FanSheet& sheet = fan.curve.sheet();
  const double n = fan.speed;
  const Ratio zeta = sheet.off_loss;
  const auto head_of = [&](VolumeFlow q) { return Pressure(0.5 * gas * (q / area) * (q / area)); };
  if (!(n > 0.0)) return {{}, zeta * head_of(flow), FanRange::standing};
  const Ratio scale = n * n * (gas / sheet.reference_density);
  if (flow < VolumeFlow{}) return {scale * fan.curve.head({}), zeta * head_of(flow), FanRange::backward};
  const VolumeFlow last = n * fan.curve.last_flow();
  if (flow <= last) return {scale * fan.curve.head(flow / n), {}, FanRange::within};
  return {scale * fan.curve.head_beyond(flow / n), zeta * (head_of(flow) - head_of(last)), FanRange::beyond};
}

Power fan_power(const Fan& fan, Density gas) {
  const FanSheet& sheet = fan.curve.sheet();
  return sheet.power * (fan.speed * fan.speed * fan.speed * (gas / sheet.reference_density));
}

Temperature motor_temperature(const FanSheet& sheet, Temperature gas, Temperature surroundings) {
  return sheet.motor_in_stream ? gas : surroundings + motor_outside_share * (gas - surroundings);
}

}  // namespace fluewright
