// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/remedy.hpp"
#include "engine/advice/reshaping.hpp"
#include "engine/solve/least_margin.hpp"

#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>

namespace fluewright {

namespace {

/// Benches are cut to a step of the grid.
constexpr double cut_step = 0.025;  // m
/// Shares of the bench at which the margin is looked at, the longest first, and the one that a cut which does not reach
/// the wanted margin is made to (chosen).
constexpr std::array looked_at{0.85, 0.7, 0.55, 0.4, 0.25};
constexpr double cut_anyway = 0.5;

bool is_open_cut(const Change& change) {
  const auto* length = std::get_if<Length>(&change.amount);
  return change.kind == ChangeKind::shorten_bench && length != nullptr && *length == Length{};
}

double in_steps(double metres) { return std::floor(metres / cut_step + 1e-9) * cut_step; }

/// A remedy whose cut of the bench is still to be found.
class Cut {
 public:
  Cut(const Design& design, const Library& library, const Remedy& remedy)
      : design_{design}, library_{library}, remedy_{remedy} {
    now_ = in(advice::bench_length(design, library, advice::parts_of(design, library, trace_path(design, library))), metre);
  }

  std::optional<Remedy> found() const {
    if (!(now_ > cut_step)) return std::nullopt;
    const bool pair = remedy_.changes.size() > 1;
    const double over_now = over(now_);
    if (over_now >= 0.0) return std::nullopt;
    const auto longest = longest_that_holds(over_now);
    if (!longest && pair) return std::nullopt;
    return with(longest ? *longest : in_steps(cut_anyway * now_));
  }

 private:
  Remedy with(double metres) const {
    Remedy exact = remedy_;
    for (Change& change : exact.changes) {
      if (is_open_cut(change)) change.amount = Length(metres * metre);
    }
    return exact;
  }

  /// Margin over the wanted one [Pa]; far under it where such a design cannot be built.
  double over(double metres) const {
    constexpr double nowhere = -1e3;
    Remedy exact = with(metres);
    if (metres == now_) {
      exact.changes.erase(std::remove_if(exact.changes.begin(), exact.changes.end(),
                                         [](const Change& c) { return c.kind == ChangeKind::shorten_bench; }),
                          exact.changes.end());
    }
    const auto changed = exact.changes.empty() ? std::optional{design_} : remedied(design_, library_, exact);
    if (!changed) return nowhere;
    const auto margin = least_margin(*changed, library_);
    return margin ? in(Pressure(*margin - marginal_below), pascal) : nowhere;
  }
  bool holds(double metres) const { return over(metres) >= 0.0; }

  std::optional<double> longest_that_holds(double over_now) const {
    double longer = now_;
    double over_longer = over_now;
    for (const double share : looked_at) {
      const double length = in_steps(share * now_);
      const double over_length = length > 0.0 ? over(length) : -1.0;
      if (over_length >= 0.0) return between(length, over_length, longer, over_longer);
      longer = length;
      over_longer = over_length;
    }
    return std::nullopt;
  }

  /// The last step that still holds between one length that does and one that does not.
  double between(double good, double over_good, double bad, double over_bad) const {
    const auto near_a_step = [](double a, double b) { return std::abs(b - a) < 0.5 * cut_step; };
    std::uintmax_t evaluations = 40;
    if (over_good > 0.0 && over_bad < 0.0) {
      const auto found = boost::math::tools::toms748_solve([this](double x) { return over(x); }, good, bad, over_good,
                                                           over_bad, near_a_step, evaluations);
      double length = in_steps(found.second);
      while (length > good && !holds(length)) length -= cut_step;
      return std::max(length, good);
    }
    return good;
  }

  const Design& design_;
  const Library& library_;
  const Remedy& remedy_;
  double now_ = 0.0;
};

}  // namespace

std::optional<Remedy> worked_out(const Design& design, const Library& library, const Remedy& remedy) {
  if (std::none_of(remedy.changes.begin(), remedy.changes.end(), is_open_cut)) return remedy;
  return Cut(design, library, remedy).found();
}

}  // namespace fluewright
