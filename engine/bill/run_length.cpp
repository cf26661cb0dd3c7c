// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/bill/run_length.hpp"

#include "engine/layout/edit.hpp"

#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

/// One run of the bench as drawn.
struct Run {
  PieceId piece;
  Length length{};
};

std::vector<Run> bench_runs(const Design& design, const Library& library, const TracedPath& path) {
  std::vector<Run> runs;
  for (const Passage& passage : path.passages) {
    const Piece& piece = design.pieces[passage.piece];
    const PieceType* type = library.piece_type(piece.type);
    if (type == nullptr || type->family != "bench" || type->shape != "run") continue;
    constexpr Angle steep = 45.0 * degree;
    if (bu::abs(piece.heading.elevation) > steep) continue;
    runs.push_back({piece.id, PieceView{design, library, piece, *type}.length("length")});
  }
  return runs;
}

Length total(const std::vector<Run>& runs) {
  Length sum{};
  for (const Run& run : runs) sum += run.length;
  return sum;
}

/// The design with its bench runs that many times as long; nothing where a field does not go that far.
std::optional<Design> scaled(const Design& design, const Library& library, const std::vector<Run>& runs,
                             double factor) {
  Design changed = design;
  for (const Run& run : runs) {
    EditResult result = set_field(changed, library, run.piece, "length", FieldValue{factor * run.length});
    if (!result.design) return std::nullopt;
    changed = *std::move(result.design);
  }
  return changed;
}

std::optional<Pressure> worst_margin(const Design& design, const Library& library) {
  AssessOptions options;
  options.operating_points = false;
  const Assessment answer = assess(design, library, options);
  if (!answer.worst_age) return std::nullopt;
  return answer.worst_margin;
}

class Curve {
 public:
  Curve(const Design& design, const Library& library, std::vector<Run> runs)
      : design_{design}, library_{library}, runs_{std::move(runs)}, drawn_{total(runs_)} {}

  [[nodiscard]] Length drawn() const { return drawn_; }
  [[nodiscard]] std::optional<Pressure> margin(Length bench) const {
    const std::optional<Design> changed = scaled(design_, library_, runs_, bench / drawn_);
    return changed ? worst_margin(*changed, library_) : std::nullopt;
  }

  /// Between two points of unlike sign.
  [[nodiscard]] std::optional<Length> zero_between(const LengthPoint& a, const LengthPoint& b) const {
    bool lost = false;
    const auto pascals = [&](double metres) {
      const std::optional<Pressure> m = margin(metres * metre);
      if (!m) lost = true;
      return m ? in(*m, pascal) : 0.0;
    };
    std::uintmax_t steps = 24;
    const auto close = [](double low, double high) { return std::abs(high - low) < 0.005; };  // half a centimetre
    const auto root = boost::math::tools::toms748_solve(pascals, in(a.bench, metre), in(b.bench, metre),
                                                        in(a.margin, pascal), in(b.margin, pascal), close, steps);
    if (lost) return std::nullopt;
    return 0.5 * (root.first + root.second) * metre;
  }

 private:
  const Design& design_;
  const Library& library_;
  std::vector<Run> runs_;
  Length drawn_;
};

std::optional<Length> longest_that_draws(const Curve& curve, const LengthCurve& found) {
  const bool draws = found.yours.margin >= Pressure{};
  std::optional<Length> longest;
  for (std::size_t i = 0; i + 1 < found.points.size(); ++i) {
    const LengthPoint& a = found.points[i];
    const LengthPoint& b = found.points[i + 1];
    if (!(a.margin >= Pressure{} && b.margin < Pressure{})) continue;
    if (draws && b.bench <= found.yours.bench) continue;
    if (!draws && a.bench >= found.yours.bench) break;
    longest = curve.zero_between(a, b);
    if (draws) break;
  }
  return longest;
}

}  // namespace

std::optional<LengthCurve> margin_against_length(const Design& design, const Library& library,
                                                 const LengthCurveOptions& options) {
  const TracedPath path = trace_path(design, library);
  if (!path.complete || options.points < 2) return std::nullopt;
  const Curve curve(design, library, bench_runs(design, library, path));
  if (!(curve.drawn() > Length{})) return std::nullopt;
  const std::optional<Pressure> yours = curve.margin(curve.drawn());
  if (!yours) return std::nullopt;
  LengthCurve found;
  found.yours = {curve.drawn(), *yours};
  // From a quarter of what is drawn to well past it, in equal proportions, through what is drawn itself.
  const double low = 0.25;
  const double high = std::max(1.5, std::min(5.0, in(options.at_most, curve.drawn())));
  std::vector<double> factors{1.0};
  for (std::size_t i = 0; i < options.points; ++i) {
    factors.push_back(low * std::pow(high / low, static_cast<double>(i) / static_cast<double>(options.points - 1)));
  }
  std::sort(factors.begin(), factors.end());
  for (const double factor : factors) {
    const Length bench = factor * curve.drawn();
    if (const auto margin = factor == 1.0 ? yours : curve.margin(bench)) found.points.push_back({bench, *margin});
  }
  found.longest = longest_that_draws(curve, found);
  return found;
}

}  // namespace fluewright
