// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/start_map.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright {
namespace {

/// The coarse picture has about this many cells a side.
constexpr std::size_t coarse_cells = 5;

TemperatureRow row_over(Temperature low, Temperature high, Temperature day, std::size_t count) {
  low = std::min(low, day);
  high = std::max(high, day);
  const double steps = static_cast<double>(count - 1);
  return {low, (high - low) / steps, count};
}

bool on_line(std::size_t i, std::size_t count, std::size_t stride) { return i % stride == 0 || i + 1 == count; }

/// The nearest lines at or below and at or above.
std::pair<std::size_t, std::size_t> around(std::size_t i, std::size_t count, std::size_t stride) {
  if (on_line(i, count, stride)) return {i, i};
  return {i - i % stride, std::min(i - i % stride + stride, count - 1)};
}

}  // namespace

std::size_t TemperatureRow::nearest(Temperature t) const {
  const double along = (t - first) / step;
  return static_cast<std::size_t>(std::clamp(std::round(along), 0.0, static_cast<double>(count - 1)));
}

bool TemperatureRow::holds(Temperature t) const { return t >= first && t <= at(count - 1); }

StartMapGrid usual_grid(const Design& design, std::size_t cells_a_side) {
  const std::size_t count = std::max<std::size_t>(cells_a_side, 2);
  return {row_over(celsius(-15.0), celsius(30.0), design.site.outdoor_temperature, count),
          row_over(celsius(0.0), celsius(25.0), design.room.temperature, count)};
}

StartMap::StartMap(const StartMapGrid& grid)
    : grid_{grid}, coarsest_{1}, cells_(grid.outdoors.count * grid.room.count) {
  const std::size_t side = std::min(grid.outdoors.count, grid.room.count);
  while (2 * coarsest_ * (coarse_cells - 1) < side) coarsest_ *= 2;
}

void StartMap::set(std::size_t index, const StartAnswer& answer) {
  StartCell& cell = cells_[index];
  if (cell.state != CellState::computed) ++computed_;
  cell = {CellState::computed, answer.start, answer.draws_with_fan, answer.certain};
}

std::vector<std::size_t> StartMap::lines(std::size_t count, std::size_t stride) const {
  std::vector<std::size_t> on;
  for (std::size_t i = 0; i < count; ++i) {
    if (on_line(i, count, stride)) on.push_back(i);
  }
  return on;
}

std::optional<StartClass> StartMap::agreed_around(std::size_t outdoors, std::size_t room, std::size_t stride) const {
  const auto [left, right] = around(outdoors, grid_.outdoors.count, stride);
  const auto [below, above] = around(room, grid_.room.count, stride);
  std::optional<StartClass> agreed;
  for (const std::size_t i : {index(left, below), index(right, below), index(left, above), index(right, above)}) {
    const StartCell& corner = cells_[i];
    if (corner.state == CellState::unknown || (agreed && *agreed != corner.start)) return std::nullopt;
    agreed = corner.start;
  }
  return agreed;
}

std::vector<std::size_t> StartMap::open_at(std::size_t stride) const {
  std::vector<std::size_t> open;
  for (const std::size_t r : lines(grid_.room.count, stride)) {
    for (const std::size_t o : lines(grid_.outdoors.count, stride)) {
      if (cells_[index(o, r)].state == CellState::computed) continue;
      if (stride == coarsest_ || !agreed_around(o, r, 2 * stride)) open.push_back(index(o, r));
    }
  }
  return open;
}

std::vector<std::size_t> StartMap::next() const {
  for (std::size_t stride = coarsest_; stride > 0; stride /= 2) {
    std::vector<std::size_t> open = open_at(stride);
    if (!open.empty()) return open;
  }
  std::vector<std::size_t> rest;
  for (std::size_t i = 0; i < cells_.size(); ++i) {
    if (cells_[i].state != CellState::computed) rest.push_back(i);
  }
  return rest;
}

void StartMap::fill_between() {
  for (std::size_t stride = coarsest_; stride > 0; stride /= 2) {
    for (std::size_t r = 0; r < grid_.room.count; ++r) {
      for (std::size_t o = 0; o < grid_.outdoors.count; ++o) {
        StartCell& cell = cells_[index(o, r)];
        if (cell.state == CellState::computed) continue;
        const bool itself = on_line(o, grid_.outdoors.count, stride) && on_line(r, grid_.room.count, stride);
        if (itself) continue;
        if (const auto agreed = agreed_around(o, r, stride)) {
          cell.state = CellState::between;
          cell.start = *agreed;
        }
      }
    }
  }
}

StartLimit StartMap::limit(Temperature room) const {
  StartLimit limit;
  const std::size_t r = grid_.room.nearest(room);
  limit.room = grid_.room.at(r);
  limit.known = true;
  for (std::size_t o = 0; o < grid_.outdoors.count; ++o) {
    const StartCell& cell = cells_[index(o, r)];
    if (cell.state != CellState::computed) limit.known = false;
    if (cell.state == CellState::unknown) continue;
    const TemperatureDifference over = limit.room - grid_.outdoors.at(o);
    const bool enough = cell.start == StartClass::by_itself || cell.start == StartClass::with_kindling;
    if (!enough && !limit.not_enough) {
      // The coldest day on which kindling is not enough.
      limit.not_enough = over;
      limit.then_needs = cell.start;
    }
    if (enough && !limit.not_enough) limit.enough = over;
  }
  return limit;
}

}  // namespace fluewright
