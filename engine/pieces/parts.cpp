// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/pieces/parts.hpp"

#include "engine/flow/local_loss.hpp"

#include <algorithm>
#include <cassert>
#include <utility>

namespace fluewright::parts {

namespace {

const Wall* wall_of(const PieceView& piece) { return piece.has("wall") ? piece.wall("wall") : nullptr; }

void set_wall(const PieceView& piece, Stretch& stretch) {
  if (const Wall* wall = wall_of(piece)) {
    for (const WallLayer& layer : wall->layers) {
      stretch.wall.push_back({piece.library().material(layer.material), layer.thickness});
    }
  }
}

void set_roughness(Stretch& stretch) {
  const Material* face = stretch.wall.empty() ? stretch.embedding.material : stretch.wall.front().material;
  if (face) {
    stretch.roughness = face->roughness;
    stretch.roughness_citation = face->roughness_citation;
  } else {
    stretch.roughness = bare_roughness;
    stretch.roughness_citation = {"a way without a wall of its own", Standing::chosen};
  }
}

Place place_named(std::string_view word) {
  if (word == "outdoors") return Place::outdoors;
  if (word == "attic") return Place::attic;
  if (word == "bench") return Place::mass;
  if (word == "ground") return Place::ground;
  return Place::room;
}

Place place_of(const PieceView& piece) {
  if (piece.has("place")) return place_named(piece.choice("place"));
  if (piece.has("mass_material")) return Place::mass;
  if (piece.has("soil")) return Place::ground;
  if (piece.has("jacketed") && piece.choice("jacketed") == yes) return Place::jacket;
  return Place::room;
}

Embedding embedding_of(const PieceView& piece, Place place) {
  Embedding embedding;
  if (place == Place::mass) {
    embedding.material = piece.material("mass_material");
    embedding.width = piece.length("mass_width");
    embedding.height = piece.length("mass_height");
    embedding.exposed_share = piece.ratio("exposed_share");
  } else if (place == Place::ground) {
    embedding.material = piece.material("soil");
    embedding.depth = piece.length("depth");
    embedding.under_open_sky = piece.choice("under_open_sky") == yes;
  }
  return embedding;
}

/// Outside size of the widest of the piece's sections.
struct Body {
  Length width;
  Length height;
};

Body body_of(const PieceView& piece) {
  std::vector<Section> sections{section_of(piece), out_section_of(piece)};
  if (piece.has("branch_bore")) sections.push_back(circle_of(piece, "branch_bore"));
  Body body{};
  for (const Section& s : sections) {
    const bool round = s.form() == Section::Form::circle;
    const Length height = round                                   ? s.first_size()
                          : s.form() == Section::Form::half_round ? 0.5 * s.first_size()
                                                                  : s.second_size();
    body.width = std::max(body.width, s.first_size());
    body.height = std::max(body.height, height);
  }
  const Length walls = 2.0 * wall_thickness(piece);
  return {body.width + walls, body.height + walls};
}

/// Steeper than half a right angle, a pipe loses heat as a wall does rather than as a lying cylinder (chosen).
bool is_upright(Length length, Length rise) { return bu::abs(rise) > 0.7071 * length; }

}  // namespace

Section section_of(const PieceView& piece) {
  if (piece.has("bore")) return Section::circle(piece.length("bore"));
  if (piece.has("half_barrel")) return Section::half_round(piece.length("half_barrel"));
  return Section::rectangle(piece.length("width"), piece.length("height"));
}

Section out_section_of(const PieceView& piece) {
  if (piece.has("out_bore")) return Section::circle(piece.length("out_bore"));
  if (piece.has("out_width")) return Section::rectangle(piece.length("out_width"), piece.length("out_height"));
  return section_of(piece);
}

Section circle_of(const PieceView& piece, std::string_view key) { return Section::circle(piece.length(key)); }

Length wall_thickness(const PieceView& piece) {
  Length sum{};
  if (const Wall* wall = wall_of(piece)) {
    for (const WallLayer& layer : wall->layers) sum += layer.thickness;
  }
  return sum;
}

Length outside_width(const PieceView& piece, const Section& section) {
  return section.first_size() + 2.0 * wall_thickness(piece);
}

Stretch stretch_of(const PieceView& piece, std::size_t index, const Section& section, Length length, Length rise) {
  Stretch stretch;
  stretch.piece = index;
  stretch.length = length;
  stretch.rise = rise;
  stretch.section = section;
  stretch.stands_upright = is_upright(length, rise);
  stretch.place = place_of(piece);
  stretch.embedding = embedding_of(piece, stretch.place);
  set_wall(piece, stretch);
  set_roughness(stretch);
  return stretch;
}

Stretch inner_stretch(const PieceView& piece, std::size_t index, const Section& section, Length length, Length rise) {
  Stretch stretch = stretch_of(piece, index, section, length, rise);
  stretch.wall.clear();
  stretch.roughness = {};
  stretch.roughness_citation = {"gas beside gas of the same piece", Standing::chosen};
  stretch.place = Place::jacket;
  stretch.embedding = {};
  return stretch;
}

Fan fan_of(const PieceView& piece) {
  const FanSheet* sheet = piece.fan("fan");
  assert(sheet && "an unknown fan is a finding before this call");
  return {FanCurve{*sheet}, piece.ratio("speed"), true, false};
}

std::vector<Stretch> reversed(std::vector<Stretch> stretches) {
  std::reverse(stretches.begin(), stretches.end());
  for (Stretch& s : stretches) {
    s.rise = -s.rise;
    std::swap(s.at_start, s.at_end);
    if (s.fan) {
      s.fan->blows_along = !s.fan->blows_along;
      s.fan->at_end = !s.fan->at_end;
    }
    for (auto* losses : {&s.at_start, &s.at_end}) {
      for (LocalLoss& l : *losses) std::swap(l.forward, l.backward);
    }
  }
  // An eased step lies between two stretches: it is noted on the one that now comes second.
  for (std::size_t i = stretches.size(); i-- > 1;)
    stretches[i].eased_step_at_start = stretches[i - 1].eased_step_at_start;
  if (!stretches.empty()) stretches.front().eased_step_at_start = false;
  return stretches;
}

std::vector<Stretch> entered_by(std::vector<Stretch> from_first, std::string_view first, std::string_view entry) {
  return entry == first ? from_first : reversed(std::move(from_first));
}

std::vector<Stretch> half_leg(const PieceView& piece, std::size_t index, std::string_view port, bool inwards) {
  const Position along = straight_step(piece);
  Stretch half = stretch_of(piece, index, section_of(piece), 0.5 * distance({}, along), 0.5 * along.z);
  // The half before the middle is written forward inwards, the one behind it outwards.
  const bool forward = (port == "in") == inwards;
  return forward ? std::vector{half} : reversed({half});
}

PortKind air_beside(const PieceView& piece) {
  const Place place = place_of(piece);
  return place == Place::outdoors || place == Place::attic ? PortKind::outdoor_air : PortKind::room_air;
}

Meeting side_opening(const PieceView& piece, const Opening& opening) {
  Meeting meeting;
  const Position along = straight_step(piece);
  meeting.at = position_of(piece.piece().at) + Position{0.5 * along.x, 0.5 * along.y, 0.5 * along.z};
  meeting.form.run = section_of(piece).area();
  meeting.form.branch = opening.area;
  meeting.form.side_opening = true;
  meeting.opening = opening;
  meeting.opens_to = air_beside(piece);
  return meeting;
}

LocalLoss open_end_loss(const PieceView& piece) {
  const Ratio thickness = wall_thickness(piece) / section_of(piece).hydraulic_diameter();
  return loss("open pipe end", thin_wall_entry(thickness), 0.0, loss::pipe_end_entry.citation());
}

LocalLoss loss(std::string name, Ratio forward, Ratio backward, Citation citation, LocalLoss::Reynolds correction) {
  return {forward, backward, correction, std::move(name), std::move(citation)};
}

Port joint_port(std::string name, const Position& at, const Heading& outward, const Section& section) {
  return open_port(std::move(name), PortKind::joint, at, outward, section);
}

Port open_port(std::string name, PortKind kind, const Position& at, const Heading& outward, const Section& section) {
  return {std::move(name), kind, at, outward, section, false};
}

Position straight_step(const PieceView& piece) {
  Position along = step_along(piece.piece().heading, piece.length("length"));
  if (piece.has("slope")) {
    const Length level = bu::sqrt(along.x * along.x + along.y * along.y);
    along.z += piece.ratio("slope") * level;
  }
  return along;
}

PieceGeometry straight(const PieceView& piece, End first, End second) {
  const Position start = position_of(piece.piece().at);
  const Position end = start + straight_step(piece);
  const Heading& heading = piece.piece().heading;
  const Section section = section_of(piece);
  PieceGeometry geometry;
  geometry.lines.push_back({{start, end}, outside_width(piece, section), false});
  geometry.ports = {open_port(std::string(first.name), first.kind, start, opposite(heading), section),
                    open_port(std::string(second.name), second.kind, end, heading, section)};
  return geometry;
}

Stretch straight_stretch(const PieceView& piece, std::size_t index) {
  const Position along = straight_step(piece);
  return stretch_of(piece, index, section_of(piece), distance({}, along), along.z);
}

Length rise(const Position& a, const Position& b) { return b.z - a.z; }

std::vector<FieldClash> embedding_clashes(const PieceView& piece) {
  std::vector<FieldClash> found;
  const Place place = place_of(piece);
  if (place != Place::mass && place != Place::ground) return found;
  const Body body = body_of(piece);
  const auto want_above = [&](std::string_view key, Length low) {
    const Length value = piece.length(key);
    if (value < low) found.push_back({std::string(key), value, FieldValue{low}, std::nullopt});
  };
  if (place == Place::mass) {
    want_above("mass_width", body.width + least_room);
    want_above("mass_height", body.height + least_room);
  } else {
    want_above("depth", 0.5 * (body.height + least_room));
  }
  return found;
}

void want_below(std::vector<FieldClash>& clashes, const PieceView& piece, std::string_view low_key, Length high,
                Length room) {
  const Length value = piece.length(low_key);
  if (value > high - room) clashes.push_back({std::string(low_key), value, std::nullopt, FieldValue{high - room}});
}

}  // namespace fluewright::parts
