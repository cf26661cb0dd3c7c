// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What could be changed about a design, and what each change brings. Every change is made on a copy with the drawing's
// own verbs and judged by the whole calculation; nothing is estimated from the old numbers.

#include "engine/advice/price.hpp"
#include "engine/solve/assessment.hpp"

#include <vector>

namespace fluewright {

/// What is done.
enum class ChangeKind {
  shorten_bench,   ///< amount = new length of all runs together; nothing: as little shorter as the wanted margin takes
  fewer_bends,     ///< piece = the bend that goes
  wider_flue,      ///< amount = new bore behind the exchangers
  taller_stack,    ///< amount = new length of the upright runs together
  insulate_stack,  ///< text = "outside" (outdoors and attic) or "all"
  stack_indoors,   ///< what stands outdoors below the heated space's top comes into the room
  drier_wood,      ///< amount = moisture
  smaller_fire,    ///< amount = burn rate
  larger_fire,     ///< amount = burn rate
  outside_air,     ///< piece = the feed that gets a duct
  choke_inlet,     ///< piece, amount = free share
  open_inlet,      ///< piece, amount = free share
  priming_tee,     ///< piece = the upright run that gets a tee at its foot; helps at lighting only
  bypass           ///< a pipe with a blade past the bench, its blade open
};

/// One change.
struct Change {
  ChangeKind kind{};
  PieceId piece;
  FieldValue amount;
  std::string text;
  friend bool operator==(const Change&, const Change&) = default;
};

/// One change, or two that go together.
struct Remedy {
  std::vector<Change> changes;
  friend bool operator==(const Remedy&, const Remedy&) = default;
};

/// What a design comes to, as far as remedies are compared by it.
struct Outcome {
  Verdict verdict = Verdict::will_not_draw;
  Pressure margin{};            ///< the least of the three ages
  BenchAge age = BenchAge::charged;
  Temperature exit;             ///< at the cap, where it settles, else at the wanted fire
  Power kept{};                 ///< to room and mass, where it settles; zero where it does not
  std::optional<Pressure> shut; ///< of a new bypass: the charged bench's margin with the blade shut, as it is fired then
  MassFlow water{};             ///< on wet walls
  Money parts;
  std::vector<Finding> findings;
};

/// The verdict that lasts: with a new bypass the worse of lighting, its blade open, and of the warm bench, its blade shut.
[[nodiscard]] Verdict lasting_verdict(const Outcome& outcome);

/// A remedy that was tried.
struct TriedRemedy {
  Remedy remedy;
  Outcome after;
  std::vector<Finding> mended;  ///< cautions and faults that are gone
  std::vector<Finding> raised;  ///< cautions and faults that have come
  Power lost{};                 ///< heat kept before and no longer; below nothing where nothing was kept before
};

/// All single changes worth trying; some may turn out not to be buildable. Empty while the path is incomplete.
[[nodiscard]] std::vector<Remedy> single_remedies(const Design& design, const Library& library, const Assessment& assessment);
/// Every two singles of different kinds that do not speak of the same thing.
[[nodiscard]] std::vector<Remedy> paired_remedies(const std::vector<Remedy>& singles);

/// The remedy with its open amount found: the bench is cut by no more than it takes, with the other change made too, to
/// leave marginal_below to spare, in steps of 25 mm. A single cut that cannot reach it is one to half the bench. Nothing
/// where the other change is enough or both are not.
[[nodiscard]] std::optional<Remedy> worked_out(const Design& design, const Library& library, const Remedy& remedy);

/// The changed design; nothing where it cannot be built. No amount may be open.
[[nodiscard]] std::optional<Design> remedied(const Design& design, const Library& library, const Remedy& remedy);

/// Where a design stands. Nothing while its path is incomplete.
[[nodiscard]] std::optional<Outcome> standing_of(const Design& design, const Library& library, const Assessment& assessment,
                                                  const PriceList& prices);

/// The remedy worked out, made on a copy and judged; nothing where it cannot be built.
[[nodiscard]] std::optional<TriedRemedy> try_remedy(const Design& design, const Library& library, const Outcome& before,
                                                    const Remedy& remedy, const PriceList& prices);

/// Whether it brings anything: a finding mended, more margin, or more heat kept.
[[nodiscard]] bool brings_something(const TriedRemedy& tried, const Outcome& before);

/// Better first. What reaches the wanted margin comes before what does not, and what lacks less of it before what lacks
/// more; a bypass has to reach it with its blade shut too, once the bench is warm. Among those that reach it: no new fault, least heat lost (in steps of 200 W), most mended of what the fire and the gas
/// do and least raised, least work, cheapest parts, most margin.
[[nodiscard]] bool ranks_before(const TriedRemedy& a, const TriedRemedy& b);

/// Whether a pair is worth a place beside one of its changes alone: it draws better, or as well and keeps more heat or
/// mends more.
[[nodiscard]] bool does_more(const TriedRemedy& pair, const TriedRemedy& single);

}  // namespace fluewright
