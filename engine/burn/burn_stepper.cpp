// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/burn_stepper.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace fluewright::kernel {
namespace {

using Table = std::array<std::array<double, 4>, 4>;

constexpr double gamma = 4.3586652150845900e-01;
constexpr Table alpha{{{0, 0, 0, 0},
                       {8.7173304301691801e-01, 0, 0, 0},
                       {8.4457060015369423e-01, -1.1299064236484185e-01, 0, 0},
                       {0, 0, 1.0, 0}}};
constexpr Table gammas{{{gamma, 0, 0, 0},
                        {-8.7173304301691801e-01, gamma, 0, 0},
                        {-9.0338057013044082e-01, 5.4180672388095326e-02, gamma, 0},
                        {2.4212380706095346e-01, -1.2232505839045147e+00, 5.4526025533510214e-01, gamma}}};
constexpr std::array<double, 4> weights{2.4212380706095346e-01, -1.2232505839045147e+00, 1.5452602553351020e+00, gamma};
constexpr std::array<double, 4> embedded{3.7810903145819369e-01, -9.6042292212423178e-02, 0.5, 2.1793326075422950e-01};

/// The method in the variables u = gammas k, which saves multiplying by the Jacobian (Hairer & Wanner II, IV.7).
struct Method {
  Table a{};                        ///< alpha / gammas
  Table c{};                        ///< 1/gamma - 1/gammas
  std::array<double, 4> m{};        ///< weights / gammas
  std::array<double, 4> e{};        ///< (weights - embedded) / gammas
  std::array<double, 4> at{};       ///< times of the stages
};

constexpr Method made() {
  Table inverse{};
  for (std::size_t j = 0; j < 4; ++j) {
    inverse[j][j] = 1.0 / gamma;
    for (std::size_t i = j + 1; i < 4; ++i) {
      double sum = 0.0;
      for (std::size_t k = j; k < i; ++k) sum += gammas[i][k] * inverse[k][j];
      inverse[i][j] = -sum / gamma;
    }
  }
  Method method;
  for (std::size_t i = 0; i < 4; ++i) {
    for (std::size_t j = 0; j < 4; ++j) {
      for (std::size_t k = 0; k < 4; ++k) method.a[i][j] += alpha[i][k] * inverse[k][j];
      method.c[i][j] = (i == j ? 1.0 / gamma : 0.0) - inverse[i][j];
      method.m[i] += weights[j] * inverse[j][i];
      method.e[i] += (weights[j] - embedded[j]) * inverse[j][i];
      method.at[i] += alpha[i][j];
    }
  }
  return method;
}

constexpr Method method = made();

constexpr double first_step = 0.1;     // [s] after something was switched
constexpr double after_bend = 60.0;    // [s] where only the outdoor course bends
constexpr double shortest_step = 1e-4; // [s]
constexpr double most_growth = 5.0;
constexpr double most_shrinking = 0.2;
constexpr double safety = 0.85;
/// What an error in the share of flue gas may be.
constexpr double share_error = 4e-3;
/// What an error in a flap's opening may be.
constexpr double flap_error = 0.01;

}  // namespace

BurnStepper::BurnStepper(BurnEquations& equations, const BurnAccuracy& accuracy)
    : equations_{&equations}, implicit_{equations.cells()}, accuracy_{accuracy} {}

void BurnStepper::start(std::vector<double> state, double time) {
  state_ = std::move(state);
  time_ = time;
  rate_.assign(state_.size(), 0.0);
  trial_ = error_ = rate_;
  for (auto& u : u_) u = rate_;
  lines_.fill(0.0);
  counts_ = {};
  fresh_ = false;
}

void BurnStepper::enter(const Interval& interval) {
  interval_ = interval;
  next_ = interval.goes_on ? std::min(next_, after_bend) : first_step;
  fresh_ = false;
}

void BurnStepper::use(BurnEquations& equations) {
  equations_ = &equations;
  implicit_ = ImplicitStep{equations.cells()};
  fresh_ = false;
}

void BurnStepper::refresh() {
  equations_->rates(time_, interval_, state_.data(), rate_.data(), &line_rates_, &slopes_);
  ++counts_.rates;
  fresh_ = true;
}

double BurnStepper::error_of(const std::vector<double>& error) const {
  const BurnCells& cells = equations_->cells();
  const double room = equations_->air_at(time_, interval_).room;
  const double relative = accuracy_.relative;
  const double gas_part = in(accuracy_.gas, kelvin);
  const double wall_part = in(accuracy_.wall, kelvin);
  double gas = 0.0;
  double share = 0.0;
  double wall = 0.0;
  const auto squared = [](double x) { return x * x; };
  for (const Cell& cell : cells.cells) {
    const double* e = error.data() + cell.base;
    const double* s = state_.data() + cell.base;
    gas += squared(e[0] / (gas_part + relative * std::abs(s[0] - room)));
    share += squared(e[1] / share_error);
    for (std::size_t j = 0; j < cell.node_count; ++j) {
      wall += squared(e[2 + j] / (wall_part + relative * std::abs(s[2 + j] - room)));
    }
  }
  const auto count = static_cast<double>(cells.cells.size());
  double worst = std::max({gas / count, share / count, wall / static_cast<double>(cells.nodes.size())});
  for (const JunctionCell& j : cells.junctions) {
    worst = std::max(worst, squared(error[j.base] / (gas_part + relative * std::abs(state_[j.base] - room))));
    worst = std::max(worst, squared(error[j.base + 1] / share_error));
  }
  for (const FlapCell& flap : cells.flaps) worst = std::max(worst, squared(error[flap.unknown] / flap_error));
  for (const BranchCells& b : cells.branches) {
    const double flow = in(accuracy_.flow, kilogram_per_second) + relative * std::abs(state_[b.flow]);
    worst = std::max(worst, squared(error[b.flow] / flow));
  }
  return std::sqrt(worst);
}

double BurnStepper::attempt(double h) {
  const std::size_t size = state_.size();
  implicit_.prepare(slopes_, state_.data(), 1.0 / (gamma * h));
  trial_lines_ = lines_;
  Lines stage_lines = line_rates_;
  std::array<Lines, stages> k{};
  for (std::size_t i = 0; i < stages; ++i) {
    std::vector<double>& u = u_[i];
    if (i == 0) {
      u = rate_;
    } else {
      trial_ = state_;
      for (std::size_t j = 0; j < i; ++j) {
        const double a = method.a[i][j];
        if (a == 0.0) continue;
        for (std::size_t n = 0; n < size; ++n) trial_[n] += a * u_[j][n];
      }
      equations_->rates(time_ + method.at[i] * h, interval_, trial_.data(), u.data(), &stage_lines);
      ++counts_.rates;
      for (std::size_t j = 0; j < i; ++j) {
        const double c = method.c[i][j] / h;
        for (std::size_t n = 0; n < size; ++n) u[n] += c * u_[j][n];
      }
    }
    implicit_.solve(u);
    k[i] = stage_lines;
    implicit_.add_lines(u, equations_->gas(), k[i]);
  }
  trial_ = state_;
  for (std::size_t n = 0; n < size; ++n) {
    double step = 0.0;
    double error = 0.0;
    for (std::size_t i = 0; i < stages; ++i) {
      step += method.m[i] * u_[i][n];
      error += method.e[i] * u_[i][n];
    }
    trial_[n] += step;
    error_[n] = error;
  }
  for (std::size_t i = 0; i < stages; ++i) {
    for (std::size_t l = 0; l < line_count; ++l) trial_lines_[l] += h * weights[i] * k[i][l];
  }
  return error_of(error_);
}

bool BurnStepper::step(double limit, double longest) {
  if (!fresh_) refresh();
  double h = std::min({next_, limit - time_, longest});
  // No sliver left over at the end.
  if (limit - time_ < 1.5 * h) h = limit - time_ < 1.01 * h ? limit - time_ : 0.5 * (limit - time_);
  for (;;) {
    const double error = attempt(h);
    const double factor = std::isfinite(error) ? safety / std::cbrt(std::max(error, 1e-8)) : most_shrinking;
    if (std::isfinite(error) && error <= 1.0) {
      time_ = limit - (time_ + h) < 1e-9 * h ? limit : time_ + h;
      next_ = h * std::clamp(factor, most_shrinking, most_growth);
      std::swap(state_, trial_);
      lines_ = trial_lines_;
      ++counts_.accepted;
      refresh();
      return true;
    }
    ++counts_.rejected;
    h *= std::clamp(factor, most_shrinking, 0.9);
    if (h < shortest_step) return false;
  }
}

}  // namespace fluewright::kernel
