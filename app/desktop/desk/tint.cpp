// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/tint.hpp"

#include "app/desktop/theme/theme.hpp"
#include "app/shared/units.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace fluewright {

namespace {

/// The temperature scale is stretched at its cold end, where benches live: a step of this many kelvin above the
/// coldest gas counts as much as the next doubling. Our own choice.
constexpr double stretch_kelvin = 60.0;

/// Round ends, so that the colours keep still while a drag changes the numbers a little.
constexpr std::array round_celsius{100.0, 150.0, 200.0, 300.0, 400.0, 600.0, 800.0, 1000.0, 1200.0, 1500.0};
constexpr std::array round_pascal{1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0};
constexpr std::array marks_celsius{0.0, 20.0, 50.0, 100.0, 200.0, 400.0, 800.0, 1200.0};
constexpr std::array marks_fahrenheit{32.0, 70.0, 120.0, 200.0, 400.0, 800.0, 1500.0, 2200.0};

template <class Steps>
double round_up(double value, const Steps& steps) {
  for (const double step : steps) {
    if (value <= step) return step;
  }
  return value;
}

}  // namespace

Tint::Tint(const Assessment& assessment, Document::Tint what) : what_{what} {
  add_rows(assessment.profile);
  for (const BranchState& side : assessment.branches) add_rows(side.profile);
  choose_range();
}

/// Pieces that have their rows already keep them: a tee belongs to the main path before its side branch.
void Tint::add_rows(const std::vector<SliceState>& profile) {
  const auto value = [this](const SliceState& slice) {
    return what_ == Document::Tint::gas_temperature ? in_celsius(slice.gas) : in(slice.gauge, pascal);
  };
  for (std::size_t first = 0; first < profile.size();) {
    std::size_t past = first;
    double whole = 0.0;
    while (past < profile.size() && profile[past].piece == profile[first].piece) {
      whole += in(profile[past].length, metre);
      ++past;
    }
    const std::size_t piece = profile[first].piece;
    if (piece >= rows_of_piece_.size()) rows_of_piece_.resize(piece + 1, {0, 0});
    if (rows_of_piece_[piece].first != rows_of_piece_[piece].second) {
      first = past;
      continue;
    }
    rows_of_piece_[piece] = {rows_.size(), rows_.size() + (past - first)};
    double before = value(profile[first > 0 ? first - 1 : 0]);
    double done = 0.0;
    for (std::size_t i = first; i < past; ++i) {
      const double from = whole > 0.0 ? done / whole : 0.0;
      done += in(profile[i].length, metre);
      const double to = whole > 0.0 ? done / whole : 1.0;
      rows_.push_back({piece, from, to, before, value(profile[i]), std::nullopt});
      before = value(profile[i]);
    }
    first = past;
  }
}

Tint::Tint(const Moment& moment) : what_{Document::Tint::gas_temperature} {
  const std::vector<BurnSlice>& slices = moment.burn().slices;
  for (std::size_t first = 0; first < slices.size();) {
    const std::size_t piece = slices[first].piece;
    std::size_t past = first;
    while (past < slices.size() && slices[past].piece == piece && slices[past].branch == slices[first].branch) ++past;
    if (piece >= rows_of_piece_.size()) rows_of_piece_.resize(piece + 1, {0, 0});
    rows_of_piece_[piece] = {rows_.size(), rows_.size() + (past - first)};
    const Length begin = slices[first].from_s;
    const Length whole = slices[past - 1].to_s - begin;
    for (std::size_t i = first; i < past; ++i) {
      const double t = in_celsius(moment.gas(i));
      const double from = whole > Length{} ? Ratio((slices[i].from_s - begin) / whole).value() : 0.0;
      const double to = whole > Length{} ? Ratio((slices[i].to_s - begin) / whole).value() : 1.0;
      const double before = i > first ? rows_.back().end : t;
      rows_.push_back({piece, from, to, before, t, moment.speed(i)});
    }
    first = past;
  }
  double least = 0.0;
  for (const BurnRow& row : moment.burn().rows) least = std::min(least, in_celsius(row.outdoors));
  low_ = std::floor(least / 10.0) * 10.0;
  high_ = round_up(in_celsius(moment.burn().summary.hottest_gas), round_celsius);
}

void Tint::choose_range() {
  if (rows_.empty()) return;
  double least = rows_.front().end;
  double most = least;
  for (const Row& row : rows_) {
    least = std::min(least, row.end);
    most = std::max(most, row.end);
  }
  if (what_ == Document::Tint::gas_temperature) {
    low_ = std::min(0.0, std::floor(least / 10.0) * 10.0);
    high_ = round_up(most, round_celsius);
  } else {
    // Level sits in the middle of a diverging scale.
    high_ = round_up(std::max(std::abs(least), std::abs(most)), round_pascal);
    low_ = -high_;
  }
}

double Tint::share_of(double value) const {
  if (what_ == Document::Tint::gas_temperature) {
    return std::log1p(std::max(0.0, value - low_) / stretch_kelvin) / std::log1p((high_ - low_) / stretch_kelvin);
  }
  return (value - low_) / (high_ - low_);
}

const Tint::Row* Tint::row_at(std::size_t piece, double share) const {
  if (piece >= rows_of_piece_.size()) return nullptr;
  const auto [first, past] = rows_of_piece_[piece];
  if (first == past) return nullptr;
  const Row* row = &rows_[first];
  for (std::size_t i = first; i < past; ++i) {
    row = &rows_[i];
    if (share <= row->to) break;
  }
  return row;
}

std::optional<Velocity> Tint::speed(std::size_t piece, Ratio share) const {
  const Row* row = row_at(piece, share);
  return row == nullptr ? std::nullopt : row->speed;
}

std::optional<QColor> Tint::at(std::size_t piece, Ratio share) const {
  const Row* row = row_at(piece, share);
  if (row == nullptr) return std::nullopt;
  const double part = row->to > row->from ? std::clamp((share - row->from) / (row->to - row->from), 0.0, 1.0) : 1.0;
  return scale().at(share_of(row->start + part * (row->end - row->start)));
}

const ColourScale& Tint::scale() const {
  const Sheet sheet = theme().sheet;
  return what_ == Document::Tint::gas_temperature ? sequential_scale(sheet) : diverging_scale(sheet);
}

std::vector<Tint::Mark> Tint::marks(UnitSystem units) const {
  std::vector<Mark> marks;
  if (what_ == Document::Tint::gas_temperature) {
    const auto& steps = units == UnitSystem::metric ? marks_celsius : marks_fahrenheit;
    for (const double step : steps) {
      const Temperature level = units == UnitSystem::metric ? celsius(step) : fahrenheit(step);
      const double t = in_celsius(level);
      if (t < low_ - 0.5 || t > high_ + 0.5) continue;
      marks.push_back({share_of(t), QString::fromStdString(show(level, units).number)});
    }
    return marks;
  }
  for (const double part : {-1.0, -0.5, 0.0, 0.5, 1.0}) {
    marks.push_back({0.5 + 0.5 * part, QString::fromStdString(show(part * high_ * pascal, units).number)});
  }
  return marks;
}

}  // namespace fluewright
