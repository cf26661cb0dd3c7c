// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/time_sight.hpp"

#include "app/desktop/burn/plan_numbers.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace fluewright {

namespace {

constexpr Time closest = 2.0 * minute;
constexpr double snap_pixels = 4.0;
constexpr double mark_pixels = 62.0;
constexpr std::array steps{5.0,    15.0,   30.0,   60.0,    300.0,   600.0,   900.0,
                           1800.0, 3600.0, 7200.0, 10800.0, 21600.0, 43200.0, 86400.0};  // [s]

Time step_of_at_least(Time wanted) {
  for (const double step : steps) {
    if (step * second >= wanted) return step * second;
  }
  return steps.back() * second;
}

double across(int width) { return std::max(10, width - TimeSight::gutter - TimeSight::margin); }

}  // namespace

void TimeSight::set_length(Time length) {
  if (!(length > Time{}) || length == length_) return;
  const bool all = from_ == Time{} && to_ == length_;
  length_ = length;
  if (all) {
    set({}, length);
  } else {
    set(from_, to_);
  }
}

void TimeSight::show_all() { set({}, length_); }

void TimeSight::zoom(Time about, double factor) {
  const Time span = std::clamp(Time((to_ - from_) / factor), std::min(closest, length_), length_);
  const double part = in(about - from_, second) / in(to_ - from_, second);
  set(about - part * span, about - part * span + span);
}

void TimeSight::pan(Time by) { set(from_ + by, to_ + by); }

void TimeSight::keep_in_sight(Time at) {
  const Time span = to_ - from_;
  if (at < from_) set(at - 0.1 * span, at + 0.9 * span);
  if (at > to_) set(at - 0.9 * span, at + 0.1 * span);
}

void TimeSight::set(Time from, Time to) {
  const Time span = std::min(Time(to - from), length_);
  from = std::clamp(from, Time{}, Time(length_ - span));
  to = from + span;
  if (from == from_ && to == to_) return;
  from_ = from;
  to_ = to;
  emit changed();
}

double TimeSight::x_of(Time at, int width) const {
  return gutter + in(at - from_, second) / in(to_ - from_, second) * across(width);
}

Time TimeSight::at(double x, int width) const { return from_ + (x - gutter) / across(width) * (to_ - from_); }

Time TimeSight::snap(int width) const { return step_of_at_least(snap_pixels / across(width) * (to_ - from_)); }

std::vector<TimeSight::Mark> TimeSight::marks(int width) const {
  const Time step = step_of_at_least(mark_pixels / across(width) * (to_ - from_));
  std::vector<Mark> found;
  for (double i = std::ceil(in(from_, second) / in(step, second) - 1e-9); i * step <= to_ + 1e-6 * second; ++i) {
    found.push_back({i * step, QString::fromStdString(moment_text(i * step))});
  }
  return found;
}

}  // namespace fluewright
