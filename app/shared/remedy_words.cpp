// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/remedy_words.hpp"

#include "app/shared/said.hpp"
#include "app/shared/words.hpp"
#include "engine/advice/reshaping.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

std::string share_text(const FieldValue& value, UnitSystem units) {
  return show(std::get<Ratio>(value), units, Meaning::share).text();
}

std::string piece_share(const Design& design, const Library& library, const PieceId& id, UnitSystem units) {
  const Piece* piece = design.piece(id);
  const PieceType* type = piece != nullptr ? library.piece_type(piece->type) : nullptr;
  if (type == nullptr || type->field("free_share") == nullptr) return "?";
  return show(PieceView(design, library, *piece, *type).ratio("free_share"), units, Meaning::share).text();
}

std::string change_sentence(const Change& change, const Design& design, const Library& library, UnitSystem units) {
  const auto parts = [&] { return advice::parts_of(design, library, trace_path(design, library)); };
  const auto run = [&](Length length) { return show(length, units, Meaning::run_length).text(); };
  const auto name = [&] { return piece_name(design, library, std::string_view(change.piece)); };
  switch (change.kind) {
    case ChangeKind::shorten_bench:
      return said("Shorten the bench from {} to {}", run(advice::bench_length(design, library, parts())),
                         run(std::get<Length>(change.amount)));
    case ChangeKind::fewer_bends: return said("Leave out {} and go straight on", name());
    case ChangeKind::wider_flue: {
      const auto now = advice::flue_bore(design, library, parts());
      return said("Widen the flue from {} to {}", now ? show(*now, units).text() : "?",
                         show(std::get<Length>(change.amount), units).text());
    }
    case ChangeKind::taller_stack:
      return said("Raise the chimney by {}",
                         run(Length(std::get<Length>(change.amount) - advice::stack_height(design, library, parts()))));
    case ChangeKind::insulate_stack:
      return change.text == "all" ? said("Insulate the whole chimney") : said("Insulate the chimney outside the room");
    case ChangeKind::stack_indoors: return said("Bring the chimney indoors up to the ceiling");
    case ChangeKind::drier_wood:
      return said("Burn drier wood: {} instead of {} ({})", share_text(change.amount, units),
                         show(design.fire.moisture, units, Meaning::share).text(), change.text);
    case ChangeKind::smaller_fire:
      return said("Burn less at a time: {} instead of {}", show(std::get<MassFlow>(change.amount), units).text(),
                         show(design.fire.burn_rate, units).text());
    case ChangeKind::larger_fire:
      return said("Burn more at a time: {} instead of {}", show(std::get<MassFlow>(change.amount), units).text(),
                         show(design.fire.burn_rate, units).text());
    case ChangeKind::outside_air: return said("Give {} air from outdoors by a duct", name());
    case ChangeKind::choke_inlet:
      return said("Choke {} from {} to {}", name(), piece_share(design, library, change.piece, units),
                         share_text(change.amount, units));
    case ChangeKind::open_inlet:
      return said("Open {} from {} to {}", name(), piece_share(design, library, change.piece, units),
                         share_text(change.amount, units));
    case ChangeKind::bypass: return said("Lead a bypass past the bench, open to light");
    case ChangeKind::priming_tee:
      return said("Put a tee at the foot of {}, for a priming fire", name());
  }
  return {};
}

}  // namespace

std::string_view change_name(ChangeKind kind) {
  switch (kind) {
    case ChangeKind::shorten_bench: return "shorten_bench";
    case ChangeKind::fewer_bends: return "fewer_bends";
    case ChangeKind::wider_flue: return "wider_flue";
    case ChangeKind::taller_stack: return "taller_stack";
    case ChangeKind::insulate_stack: return "insulate_stack";
    case ChangeKind::stack_indoors: return "stack_indoors";
    case ChangeKind::drier_wood: return "drier_wood";
    case ChangeKind::smaller_fire: return "smaller_fire";
    case ChangeKind::larger_fire: return "larger_fire";
    case ChangeKind::outside_air: return "outside_air";
    case ChangeKind::choke_inlet: return "choke_inlet";
    case ChangeKind::open_inlet: return "open_inlet";
    case ChangeKind::priming_tee: return "priming_tee";
    case ChangeKind::bypass: return "bypass";
  }
  return {};
}

std::string remedy_sentence(const Remedy& remedy, const Design& design, const Library& library, UnitSystem units) {
  constexpr const char* joined = to_say("{}, and {}");
  // In other languages what begins a sentence may be written large for good: there whole sentences are joined.
  const bool small = said(joined) == joined;
  std::string text;
  for (const Change& change : remedy.changes) {
    std::string one = change_sentence(change, design, library, units);
    if (!text.empty() && small) one.front() = static_cast<char>(one.front() - 'A' + 'a');
    text = text.empty() ? one : said("{}, and {}", text, one);
  }
  return text;
}

std::string finding_title(FindingCode code) {
  std::string title(finding_name(code));
  std::replace(title.begin(), title.end(), '_', ' ');
  return said(title);
}

std::string money_text(Money difference, const std::string& currency) {
  const double whole = std::round(difference.amount);
  return fmt::format("{}{:.0f} {}", whole > 0.0 ? "+" : whole < 0.0 ? "−" : "", std::abs(whole), currency);
}

}  // namespace fluewright
