// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/words.hpp"

#include "app/shared/said.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace fluewright {

std::string_view word(Verdict verdict) {
  switch (verdict) {
    case Verdict::draws:
      return to_say("draws");
    case Verdict::marginal:
      return to_say("marginal");
    case Verdict::unsafe:
      return to_say("unsafe: the draft depends on a fan");
    case Verdict::will_not_draw:
      break;
  }
  return to_say("will not draw");
}

std::string_view word(BenchAge age) {
  switch (age) {
    case BenchAge::cold_bench:
      return to_say("cold bench");
    case BenchAge::one_hour:
      return to_say("one hour");
    case BenchAge::charged:
      break;
  }
  return to_say("charged");
}

std::string_view word(Severity severity) {
  switch (severity) {
    case Severity::fault:
      return to_say("fault");
    case Severity::unsafe:
      return to_say("unsafe");
    case Severity::caution:
      return to_say("caution");
    case Severity::note:
      break;
  }
  return to_say("note");
}

std::string_view word(Standing standing) {
  switch (standing) {
    case Standing::published:
      return to_say("published");
    case Standing::from_memory:
      return to_say("from memory");
    case Standing::common_practice:
      return to_say("common practice");
    case Standing::chosen:
      break;
  }
  return to_say("chosen");
}

std::string_view word(FanRange range) {
  switch (range) {
    case FanRange::within:
      return to_say("within");
    case FanRange::beyond:
      return to_say("beyond");
    case FanRange::backward:
      return to_say("backward");
    case FanRange::standing:
      break;
  }
  return to_say("standing");
}

std::string piece_name(const Design& design, const Library& library, std::size_t piece) {
  if (piece >= design.pieces.size()) return said("no piece");
  const Piece& named = design.pieces[piece];
  if (!named.label.empty()) return named.label;
  const PieceType* type = library.piece_type(named.type);
  const std::string name = type != nullptr ? type->name : said("Unknown piece “{}”", named.type);
  const auto alike = [&](const Piece& other) { return other.type == named.type; };
  const auto here = design.pieces.begin() + static_cast<std::ptrdiff_t>(piece);
  if (std::count_if(design.pieces.begin(), design.pieces.end(), alike) == 1) return name;
  return fmt::format("{} {}", name, std::count_if(design.pieces.begin(), here, alike) + 1);
}

std::string piece_name(const Design& design, const Library& library, std::string_view id) {
  const auto found =
      std::find_if(design.pieces.begin(), design.pieces.end(), [&](const Piece& piece) { return piece.id == id; });
  if (found == design.pieces.end()) return fmt::format("“{}”", id);
  return piece_name(design, library, static_cast<std::size_t>(found - design.pieces.begin()));
}

std::string condensation_sentence(const Assessment& assessment, const Design& design, const Library& library,
                                  UnitSystem units) {
  if (!assessment.condensation) return said("not known");
  const Condensation& wet = *assessment.condensation;
  if (!wet.starts_at || !wet.piece) return said("none");
  return said("in {}, {} along", piece_name(design, library, *wet.piece),
                     show(*wet.starts_at, units, Meaning::run_length).text());
}

std::vector<std::string> cautions() {
  return {
      said("A carbon-monoxide alarm belongs in the heater's room and near every bedroom."),
      said("Keep the clearances to everything that burns; wood behind masonry heats up too."),
      said("A bench weighs tonnes: let a qualified person judge the floor."),
      said("Local code and permit come first. A long run with bends breaks the usual rules for connectors: ask before "
      "building."),
      said("Have the chimney inspected by a licensed chimney professional before the first fire, and every year after."),
      said("The numbers are estimates for planning. Wood fires vary, and so do joints.")};
}

}  // namespace fluewright
