// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/words.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace fluewright {

std::string_view word(Verdict verdict) {
  switch (verdict) {
    case Verdict::draws:
      return "draws";
    case Verdict::marginal:
      return "marginal";
    case Verdict::unsafe:
      return "unsafe: the draft depends on a fan";
    case Verdict::will_not_draw:
      break;
  }
  return "will not draw";
}

std::string_view word(BenchAge age) {
  switch (age) {
    case BenchAge::cold_bench:
      return "cold bench";
    case BenchAge::one_hour:
      return "one hour";
    case BenchAge::charged:
      break;
  }
  return "charged";
}

std::string_view word(Severity severity) {
  switch (severity) {
    case Severity::fault:
      return "fault";
    case Severity::unsafe:
      return "unsafe";
    case Severity::caution:
      return "caution";
    case Severity::note:
      break;
  }
  return "note";
}

std::string_view word(Standing standing) {
  switch (standing) {
    case Standing::published:
      return "published";
    case Standing::from_memory:
      return "from memory";
    case Standing::common_practice:
      return "common practice";
    case Standing::chosen:
      break;
  }
  return "chosen";
}

std::string_view word(FanRange range) {
  switch (range) {
    case FanRange::within:
      return "within";
    case FanRange::beyond:
      return "beyond";
    case FanRange::backward:
      return "backward";
    case FanRange::standing:
      break;
  }
  return "standing";
}

std::string piece_name(const Design& design, const Library& library, std::size_t piece) {
  if (piece >= design.pieces.size()) return "no piece";
  const Piece& named = design.pieces[piece];
  if (!named.label.empty()) return named.label;
  const PieceType* type = library.piece_type(named.type);
  const std::string name = type != nullptr ? type->name : fmt::format("Unknown piece “{}”", named.type);
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
  if (!assessment.condensation) return "not known";
  const Condensation& wet = *assessment.condensation;
  if (!wet.starts_at || !wet.piece) return "none";
  return fmt::format("in {}, {} along", piece_name(design, library, *wet.piece),
                     show(*wet.starts_at, units, Meaning::run_length).text());
}

const std::vector<std::string>& cautions() {
  static const std::vector<std::string> all{
      "A carbon-monoxide alarm belongs in the heater's room and near every bedroom.",
      "Keep the clearances to everything that burns; wood behind masonry heats up too.",
      "A bench weighs tonnes: let a qualified person judge the floor.",
      "Local code and permit come first. A long run with bends breaks the usual rules for connectors: ask before "
      "building.",
      "Have the chimney inspected by a licensed chimney professional before the first fire, and every year after.",
      "The numbers are estimates for planning. Wood fires vary, and so do joints."};
  return all;
}

}  // namespace fluewright
