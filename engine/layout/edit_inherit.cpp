// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/edit_inherit.hpp"
#include "engine/layout/edit_support.hpp"
#include "engine/layout/piece_check.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>
#include <string>
#include <utility>

namespace fluewright::edit {

namespace {

using Keys = std::span<const std::string_view>;

constexpr std::array<std::string_view, 7> surroundings{"mass_material", "mass_width",    "mass_height", "exposed_share",
                                                       "soil",          "depth",         "under_open_sky"};
/// How a piece is made, apart from its size.
constexpr std::array<std::string_view, 5> make{"wall", "place", "slope", "radius_ratio", "gores"};

/// How many fittings a run may be away and still count as the same pipe.
constexpr int fittings_looked_back = 4;

bool is_fitting(const PieceType& type) { return type.family == "fitting" || type.family == "helper"; }

/// Set a field where the type has it and allows the value; a value like the fallback needs no entry.
void take_over(const Design& design, const Library& library, Piece& piece, const PieceType& type, std::string_view key,
               const FieldValue& value) {
  const FieldSpec* spec = type.field(key);
  if (spec == nullptr || check_value(design, library, *spec, value)) {
    return;
  }
  if (value == spec->fallback) {
    piece.fields.erase(std::string{key});
  } else {
    piece.fields.insert_or_assign(std::string{key}, value);
  }
}

void take_over_all(const Design& design, const Library& library, Piece& piece, const PieceType& type, Keys keys,
                   const Piece& from, const PieceType& from_type) {
  for (const std::string_view key : keys) {
    if (const FieldValue* value = value_of(from, from_type, key)) {
      take_over(design, library, piece, type, key, *value);
    }
  }
}

/// The word for the place a piece is in. Types for the bench or the ground have no such field: they say it by the mass
/// or the soil they have.
std::string place_word(const Piece& piece, const PieceType& type) {
  const FieldValue* place = value_of(piece, type, "place");
  if (const auto* word = place != nullptr ? std::get_if<std::string>(place) : nullptr) {
    return *word;
  }
  return type.field("mass_material") != nullptr ? "bench" : type.field("soil") != nullptr ? "ground" : "room";
}

/// The nearest piece of the wanted type, going from the neighbour through fittings only.
const Piece* like_piece(const Design& design, const Library& library, const JointIndex& index, std::size_t neighbour,
                        std::string_view type) {
  std::vector<std::size_t> seen{neighbour};
  for (std::size_t next = 0; next < seen.size(); ++next) {
    const Piece& piece = design.pieces[seen[next]];
    if (piece.type == type) {
      return &piece;
    }
    const PieceType* known = library.piece_type(piece.type);
    if (known == nullptr || !is_fitting(*known) || seen.size() > fittings_looked_back) {
      continue;
    }
    for (const Link& link : index.links(seen[next])) {
      if (std::find(seen.begin(), seen.end(), link.other) == seen.end()) {
        seen.push_back(link.other);
      }
    }
  }
  return nullptr;
}

bool is_round(const PieceType& type) { return type.field("bore") != nullptr; }

struct Size {
  std::string_view key;
  Length value{};
};

/// The fields that may make a section of this form, the plainest first.
std::vector<std::vector<Size>> section_fields(const Section& section) {
  const Length first = section.first_size();
  const Length second = section.second_size();
  switch (section.form()) {
    case Section::Form::circle: return {{{"bore", first}}, {{"out_bore", first}}, {{"branch_bore", first}}};
    case Section::Form::rectangle:
      return {{{"width", first}, {"height", second}}, {{"out_width", first}, {"out_height", second}}};
    case Section::Form::half_round: return {{{"half_barrel", first}}};
    case Section::Form::annulus: return {};
  }
  return {};
}

/// The section of another form that passes as much, in whole millimetres.
Section equal_area_section(const Section& section, Section::Form form) {
  const auto whole = [](Length length) { return std::round(in(length, millimetre)) * millimetre; };
  if (form == Section::Form::circle) {
    return Section::circle(whole(section.equal_area_diameter()));
  }
  const Length side = whole(bu::sqrt(section.area()));
  return Section::rectangle(side, side);
}

std::optional<Section> section_at(const Design& design, const Library& library, const Piece& piece,
                                  std::string_view port) {
  const std::optional<PieceGeometry> geometry = geometry_of(design, library, piece);
  const Port* found = geometry ? geometry->port(port) : nullptr;
  return found != nullptr ? std::optional{found->section} : std::nullopt;
}

/// Sizes that are the same as the changed one in the catalogue, and that nobody has set, stay the same as it.
void follow_sizes(const Design& design, const Library& library, Piece& piece, const PieceType& type, const Size& size) {
  const FieldSpec* changed = type.field(size.key);
  const bool channel_outlet = type.field("out_width") != nullptr;
  for (const std::string_view key : {"bore", "out_bore", "branch_bore", "out_width", "out_height"}) {
    const FieldSpec* spec = type.field(key);
    if (spec == nullptr || changed == nullptr || spec->fallback != changed->fallback || piece.fields.count(key) != 0 ||
        (key == "out_height" && !channel_outlet)) {
      continue;
    }
    take_over(design, library, piece, type, key, size.value);
  }
}

bool take_section(const Design& design, const Library& library, Piece& piece, const PieceType& type,
                  std::string_view port, const Section& section) {
  for (const std::vector<Size>& sizes : section_fields(section)) {
    Piece trial = piece;
    for (const Size& size : sizes) {
      take_over(design, library, trial, type, size.key, size.value);
      follow_sizes(design, library, trial, type, size);
    }
    resolve_clashes(design, library, trial, type);
    if (section_at(design, library, trial, port) == section) {
      piece = std::move(trial);
      return true;
    }
  }
  return false;
}

/// Channels and masonry may be wider than the pipe that leads into them; pipes, feeds and tunnels follow either way.
bool wide_enough(const PieceType& type, const Section& own, const Section& wanted) {
  constexpr double slack = 0.03;  // what rounding to whole millimetres makes
  const double ratio = own.area() / wanted.area();
  const bool may_be_wider = own.form() != Section::Form::circle && (type.family == "bench" || type.family == "stack");
  return ratio > 1.0 - slack && (may_be_wider || ratio < 1.0 + slack);
}

}  // namespace

void follow_section(const Design& design, const Library& library, Piece& piece, const PieceType& type,
                    std::string_view port, const Section& section) {
  const std::optional<Section> own = section_at(design, library, piece, port);
  if (!own || *own == section || take_section(design, library, piece, type, port, section)) {
    return;
  }
  const bool other_form = own->form() == Section::Form::circle || own->form() == Section::Form::rectangle;
  if (other_form && own->form() != section.form() && !wide_enough(type, *own, section)) {
    (void)take_section(design, library, piece, type, port, equal_area_section(section, own->form()));
  }
}

namespace {

std::vector<Finding> faults_of(const Design& design, const Library& library, const Piece& piece, const PieceType& type) {
  return check_piece(design, library, piece, {&type, find_shape(type.shape)});
}

}  // namespace

bool has_new_faults(const Design& design, const Library& library, const Piece& before, const Piece& after,
                    const PieceType& type) {
  const std::vector<Finding> old = faults_of(design, library, before, type);
  const std::vector<Finding> now = faults_of(design, library, after, type);
  return std::any_of(now.begin(), now.end(), [&old](const Finding& fault) {
    return std::none_of(old.begin(), old.end(),
                        [&fault](const Finding& f) { return f.code == fault.code && f.field == fault.field; });
  });
}

void resolve_clashes(const Design& design, const Library& library, Piece& piece, const PieceType& type) {
  for (const Finding& fault : faults_of(design, library, piece, type)) {
    const std::optional<FieldValue>& limit = fault.highest ? fault.highest : fault.lowest;
    if (limit) {
      take_over(design, library, piece, type, fault.field, *limit);
    }
  }
}

void inherit_fields(const Design& design, const Library& library, const JointIndex& index, std::size_t neighbour,
                    Piece& piece, const PieceType& type) {
  if (const Piece* like = like_piece(design, library, index, neighbour, type.id)) {
    take_over_all(design, library, piece, type, make, *like, type);
    take_over_all(design, library, piece, type, surroundings, *like, type);
    return;
  }
  const Piece& from = design.pieces[neighbour];
  const PieceType* from_type = library.piece_type(from.type);
  if (from_type == nullptr) {
    return;
  }
  take_over_all(design, library, piece, type, surroundings, from, *from_type);
  if (is_fitting(type)) {
    take_over(design, library, piece, type, "place", place_word(from, *from_type));
  }
  const bool from_pipe = is_fitting(*from_type) || from_type->family == "bench" || from_type->family == "stack";
  if (is_fitting(type) && from_pipe && is_round(type) && is_round(*from_type)) {
    const std::array<std::string_view, 1> wall{"wall"};
    take_over_all(design, library, piece, type, wall, from, *from_type);
  }
}

Piece new_piece(const Design& design, const Library& library, const JointIndex& index, const PieceType& type,
                const OpenPort& open) {
  Piece piece;
  piece.id = design.fresh_id();
  piece.type = type.id;
  piece.at = design.pieces[open.piece].at;
  piece.heading = open.port.outward;
  inherit_fields(design, library, index, open.piece, piece, type);
  const PieceGeometry geometry = *geometry_of(design, library, piece);
  const std::vector<std::string> ports = joining_ports(geometry, open.upstream);
  if (!ports.empty()) {
    follow_section(design, library, piece, type, ports.front(), open.port.section);
    if (ports.front() != geometry.ports.front().name) {
      piece.heading = usual_heading(type, opposite(open.port.outward).azimuth);
    }
  }
  resolve_clashes(design, library, piece, type);
  return piece;
}

}  // namespace fluewright::edit
