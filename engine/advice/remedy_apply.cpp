// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/remedy.hpp"
#include "engine/advice/reshaping.hpp"
#include "engine/layout/edit.hpp"

#include <algorithm>

namespace fluewright {

namespace {

using advice::Parts;

/// What an insulated stack is built from.
constexpr std::string_view insulated_type = "stack_insulated";
constexpr std::string_view insulated_wall = "pipe_insulated_25";
constexpr std::string_view roof_type = "roof_passage";
constexpr std::string_view tee_type = "cleanout_tee";
constexpr std::string_view duct_type = "outside_air_duct";

using Changed = std::optional<Design>;

Changed taken(EditResult result) { return std::move(result.design); }

bool is_bare(const Design& design, const Library& library, const Piece& piece) {
  const PieceType& type = *library.piece_type(piece.type);
  if (type.field("wall") == nullptr || type.field("bore") == nullptr) return false;
  const Wall* wall = PieceView(design, library, piece, type).wall("wall");
  return wall != nullptr && wall->layers.size() <= 1;
}

std::string place_of(const Design& design, const Library& library, const Piece& piece) {
  const PieceType& type = *library.piece_type(piece.type);
  return type.field("place") != nullptr ? PieceView(design, library, piece, type).choice("place") : std::string("room");
}

Changed insulate(const Design& design, const Library& library, const Parts& parts, bool all) {
  Changed changed = design;
  for (const std::size_t piece : parts.stack) {
    const Piece& now = design.pieces[piece];
    if (!is_bare(design, library, now) || (!all && place_of(design, library, now) == "room")) continue;
    const bool run = library.piece_type(now.type)->shape == "run";
    if (run) {
      // The new pipe brings its own wall; one given by hand would stay.
      changed->piece(now.id)->fields.erase("wall");
      changed = taken(set_type(*changed, library, now.id, insulated_type));
    } else {
      changed = taken(set_field(*changed, library, now.id, "wall", std::string(insulated_wall)));
    }
    if (!changed) return std::nullopt;
  }
  return changed;
}

/// Heights above the floor of a piece's two ends on the path.
struct Reach {
  Length foot{};
  Length top{};
};
Reach reach_of(const PieceGeometry& geometry) {
  Reach reach{geometry.ports.front().at.z, geometry.ports.front().at.z};
  for (const Port& port : geometry.ports) {
    reach.foot = std::min(reach.foot, port.at.z);
    reach.top = std::max(reach.top, port.at.z);
  }
  return reach;
}

/// What stands outdoors under the ceiling comes into the room; a run that reaches through gets a roof passage there.
Changed indoors(const Design& design, const Library& library, const Parts& parts) {
  const Length ceiling = design.room.house_height;
  Changed changed = design;
  for (const std::size_t piece : parts.stack) {
    const Piece& now = design.pieces[piece];
    if (place_of(design, library, now) != "outdoors") continue;
    const auto geometry = geometries(*changed, library);
    const auto at = static_cast<std::size_t>(changed->piece(now.id) - changed->pieces.data());
    const Reach reach = reach_of(geometry[at]);
    if (reach.foot >= ceiling) continue;
    if (reach.top > ceiling) {
      const EditResult through = insert_in_run(*changed, library, now.id, Length(ceiling - reach.foot), roof_type);
      if (!through.design) return std::nullopt;
      changed = through.design;
    }
    changed = taken(set_field(*changed, library, now.id, "place", std::string("room")));
    if (!changed) return std::nullopt;
  }
  return changed;
}

Changed ducted(const Design& design, const Library& library, const PieceId& feed) {
  const auto lidded = taken(set_field(design, library, feed, "air_from", std::string("duct")));
  if (!lidded) return std::nullopt;
  const auto geometry = geometries(*lidded, library);
  const auto at = static_cast<std::size_t>(lidded->piece(feed) - lidded->pieces.data());
  return taken(attach_piece(*lidded, library, {feed, geometry[at].ports.front().name}, duct_type));
}

Changed with_fire(const Design& design, const Library& library, std::string_view key, MassFlow Fire::*rate, const FieldValue& amount) {
  const FieldSpec* spec = library.condition(key);
  const auto flow = std::get<MassFlow>(amount);
  if (spec == nullptr || flow < std::get<MassFlow>(*spec->lowest) || flow > std::get<MassFlow>(*spec->highest)) return std::nullopt;
  Design changed = design;
  changed.fire.*rate = flow;
  return changed;
}

Changed applied(const Design& design, const Library& library, const Change& change) {
  const TracedPath path = trace_path(design, library);
  const Parts parts = advice::parts_of(design, library, path);
  switch (change.kind) {
    case ChangeKind::shorten_bench:
      return advice::with_bench_length(design, library, parts, std::get<Length>(change.amount));
    case ChangeKind::fewer_bends: {
      const Piece* bend = design.piece(change.piece);
      if (bend == nullptr) return std::nullopt;
      return advice::without_bend(design, library, path, static_cast<std::size_t>(bend - design.pieces.data()));
    }
    case ChangeKind::wider_flue: return advice::with_flue_bore(design, library, parts, std::get<Length>(change.amount));
    case ChangeKind::taller_stack: return advice::with_stack_height(design, library, parts, std::get<Length>(change.amount));
    case ChangeKind::insulate_stack: return insulate(design, library, parts, change.text == "all");
    case ChangeKind::stack_indoors: return indoors(design, library, parts);
    case ChangeKind::drier_wood: {
      Design changed = design;
      changed.fire.moisture = std::get<Ratio>(change.amount);
      return changed;
    }
    case ChangeKind::smaller_fire:
    case ChangeKind::larger_fire: return with_fire(design, library, "fire.burn_rate", &Fire::burn_rate, change.amount);
    case ChangeKind::outside_air: return ducted(design, library, change.piece);
    case ChangeKind::choke_inlet:
    case ChangeKind::open_inlet: return taken(set_field(design, library, change.piece, "free_share", change.amount));
    case ChangeKind::bypass: return advice::with_bypass(design, library, path, parts);
    case ChangeKind::priming_tee:
      return taken(insert_in_run(design, library, change.piece, std::get<Length>(change.amount), tee_type));
  }
  return std::nullopt;
}

}  // namespace

std::optional<Design> remedied(const Design& design, const Library& library, const Remedy& remedy) {
  Changed changed = design;
  for (const Change& change : remedy.changes) {
    changed = applied(*changed, library, change);
    if (!changed) return std::nullopt;
  }
  if (*changed == design || !advice::can_be_built(design, *changed, library)) return std::nullopt;
  return changed;
}

}  // namespace fluewright
