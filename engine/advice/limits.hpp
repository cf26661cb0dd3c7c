// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// How far a design can go before its margin is no longer the wanted one: how long the bench may be, how short the stack.

#include "engine/solve/assessment.hpp"

#include <array>
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
  std::vector<LimitPoint> curve;    ///< by rising x, today's point among them
};

/// Nothing where the design lacks what the limit is about, or is incomplete.
[[nodiscard]] std::optional<LimitScale> limit_scale(LimitKind kind, const Design& design, const Library& library,
                                                    const Assessment& assessment);
/// Where the curve is sampled: `count` values evenly over the scale (whole numbers where x counts), and today's.
[[nodiscard]] std::vector<FieldValue> limit_samples(const LimitScale& scale, std::size_t count);
/// The design with that x; nothing where it cannot be built.
[[nodiscard]] std::optional<Design> at_limit_value(LimitKind kind, const Design& design, const Library& library,
                                                   const FieldValue& x);
/// The least margin of the three ages there.
[[nodiscard]] std::optional<Pressure> margin_at(LimitKind kind, const Design& design, const Library& library,
                                                const FieldValue& x, Length slice);
/// Slices of a curve that is wanted at once; the limit itself is found on the usual ones.
inline constexpr Length quick_slice = 500.0 * millimetre;

/// The value at which the margin falls under the wanted one, next to today's, by root-finding on the whole calculation
/// between the two points of the curve that hold it.
[[nodiscard]] LimitAnswer find_limit(LimitKind kind, const Design& design, const Library& library, Pressure wanted,
                                     const LimitScale& scale, std::vector<LimitPoint> curve);

/// A value of a scale as a plain number in SI units, and back: for axes and roots.
[[nodiscard]] double limit_number(const FieldValue& x);

}  // namespace fluewright
