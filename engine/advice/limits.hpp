// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// How far a design can go before its margin is no longer the wanted one: how long the bench may be, how short the stack.

#include "engine/advice/reshaping.hpp"
#include "engine/solve/assessment.hpp"

#include <array>
#include <functional>
#include <vector>

namespace fluewright {

enum class LimitKind {
  longest_bench,       ///< x = length of all runs of the bench together
  shortest_stack,      ///< x = length of the stack's upright runs together
  smallest_bore,       ///< x = bore of the flue behind the exchangers
  most_bends,          ///< x = level bends on the path
  coldest_bench,       ///< x = temperature of the room, and so of the bench before lighting
  weakest_difference   ///< x = temperature outdoors, the room held
};
inline constexpr std::array limit_kinds{LimitKind::longest_bench, LimitKind::shortest_stack, LimitKind::smallest_bore,
                                        LimitKind::most_bends,    LimitKind::coldest_bench,  LimitKind::weakest_difference};

/// How the margins of the young bench are worked out: by the closed form of the quick estimate, or step by step in time
/// as young_design_flows() does. The charged bench is the same in both.
enum class MarginBy { estimate, steps_in_time };

/// Over which values a limit is looked for.
struct LimitScale {
  FieldValue lowest;
  FieldValue highest;
  FieldValue today;
};

/// One point of the curve. No margin where such a design cannot be built.
struct LimitPoint {
  FieldValue x;
  std::optional<Pressure> margin;
};

enum class LimitState {
  found,
  always,  ///< the margin is the wanted one or more over the whole scale, from today on
  never    ///< nowhere on the scale
};

struct LimitAnswer {
  LimitKind kind{};
  Pressure wanted{};
  LimitScale scale;
  LimitState state = LimitState::never;
  std::optional<FieldValue> found;  ///< the last value on the good side
  Pressure margin{};                ///< there
  MarginBy by = MarginBy::estimate;
  std::vector<LimitPoint> curve;    ///< by rising x, today's point among them
};

/// Nothing where the design lacks what the limit is about, or is incomplete.
[[nodiscard]] std::optional<LimitScale> limit_scale(LimitKind kind, const Design& design, const Library& library,
                                                    const Assessment& assessment);
/// Where the curve is sampled: `count` values evenly over the scale (whole numbers where x counts), and today's.
[[nodiscard]] std::vector<FieldValue> limit_samples(const LimitScale& scale, std::size_t count);
/// A design at one value of a scale after another; its parts are looked for once.
class LimitDesigns {
 public:
  /// Design and library must outlive it.
  LimitDesigns(LimitKind kind, const Design& design, const Library& library);

  /// The design with that x; nothing where it cannot be built.
  [[nodiscard]] std::optional<Design> at(const FieldValue& x) const;
  [[nodiscard]] const Library& library() const { return library_; }

 private:
  LimitKind kind_;
  const Design& design_;
  const Library& library_;
  advice::Parts parts_;
};
/// The least margin of the three ages there. Nothing where such a design cannot be built or where its steps in time do
/// not converge or `go_on` calls them off; those need a path without branches.
[[nodiscard]] std::optional<Pressure> margin_at(const LimitDesigns& designs, const FieldValue& x, Length slice,
                                                MarginBy by = MarginBy::estimate, const std::function<bool()>& go_on = {});
/// Whether margins of such a design can be worked out in steps in time.
[[nodiscard]] bool has_steps_in_time(const Assessment& assessment);
/// Slices of a curve that is wanted at once; the limit itself is found on the usual ones.
inline constexpr Length quick_slice = 500.0 * millimetre;

/// The value at which the margin falls under the wanted one, next to today's, by root-finding on the whole calculation
/// between the two points of the curve that hold it.
[[nodiscard]] LimitAnswer find_limit(LimitKind kind, const Design& design, const Library& library, Pressure wanted,
                                     const LimitScale& scale, std::vector<LimitPoint> curve,
                                     MarginBy by = MarginBy::estimate, const std::function<bool()>& go_on = {});

/// A value of a scale as a plain number in SI units, and back: for axes and roots.
[[nodiscard]] double limit_number(const FieldValue& x);

}  // namespace fluewright
