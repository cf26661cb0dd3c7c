// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// What must hold for every type the program ships, by whatever port the gas comes and goes.

#include "app/shared/library_reader.hpp"
#include "engine/layout/path.hpp"
#include "engine/pieces/shape.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <set>

namespace fluewright {
namespace {

/// A design of one piece.
Design alone(Piece piece) {
  Design design;
  piece.id = "p1";
  design.pieces = {std::move(piece)};
  return design;
}

bool is_finite(Length l) { return std::isfinite(in(l, metre)); }

/// What is wrong with a stretch; empty if nothing.
std::string fault_of(const Stretch& s) {
  if (!is_finite(s.length) || !(s.length > Length{})) return "length";
  if (!is_finite(s.rise) || bu::abs(s.rise) > s.length * (1.0 + 1e-9)) return "rise";
  if (!(s.section.area() > Area{}) || !(s.section.hydraulic_diameter() > Length{})) return "section";
  if (!(s.section.heated_perimeter() > Length{})) return "perimeter";
  if (!is_finite(s.roughness) || s.roughness < Length{}) return "roughness";
  if (s.lid && s.lid->surface <= Area{}) return "lid";
  for (const auto* losses : {&s.at_start, &s.at_end}) {
    for (const LocalLoss& l : *losses) {
      if (!std::isfinite(l.forward) || l.forward.value() < 0.0) return l.name + " forward";
      if (!std::isfinite(l.backward) || l.backward.value() < 0.0) return l.name + " backward";
      if (l.name.empty() || l.citation.source.empty()) return "a loss without name or source";
    }
  }
  for (const WallLayerView& layer : s.wall) {
    if (!layer.material) return "wall";
  }
  const bool embedded = s.place == Place::mass || s.place == Place::ground;
  if (embedded != (s.embedding.material != nullptr)) return "embedding";
  return {};
}

double sum_of_losses(const std::vector<Stretch>& way, bool forward) {
  double sum = 0.0;
  for (const Stretch& s : way) {
    for (const auto* losses : {&s.at_start, &s.at_end}) {
      for (const LocalLoss& l : *losses) sum += forward ? l.forward : l.backward;
    }
  }
  return sum;
}

/// What is wrong with the way from one port to another; empty if nothing.
std::string fault_of(const PieceView& view, const Shape& shape, const Port& from, const Port& to) {
  const std::vector<Stretch> way = shape.passage(view, 7, from.name, to.name);
  const std::vector<Stretch> back = shape.passage(view, 7, to.name, from.name);
  if (way.empty()) return "no stretch";
  if (way.size() != back.size()) return "another number of stretches on the way back";
  Length rise{};
  for (std::size_t i = 0; i < way.size(); ++i) {
    if (std::string fault = fault_of(way[i]); !fault.empty()) return fault;
    if (way[i].piece != 7) return "index";
    const Stretch& mirrored = back[back.size() - 1 - i];
    if (!(way[i].section == mirrored.section) || bu::abs(way[i].rise + mirrored.rise) > 1e-9 * metre) return "mirror";
    rise += way[i].rise;
  }
  if (bu::abs(rise - (to.at.z - from.at.z)) > 1e-9 * metre) return "sum of rises";
  if (std::abs(sum_of_losses(way, true) - sum_of_losses(back, false)) > 1e-12) return "losses on the way back";
  if (way.front().eased_step_at_start) return "an eased step before the first stretch";
  return {};
}

/// Every ordered pair of ports.
std::string fault_of(const Design& design, const Library& library, const PieceType& type) {
  const PieceView view(design, library, design.pieces.front(), type);
  const Shape& shape = *find_shape(type.shape);
  const PieceGeometry geometry = shape.geometry(view);
  if (geometry.ports.empty() || geometry.lines.empty()) return "no port or no line";
  if (distance(geometry.ports.front().at, position_of(design.pieces.front().at)) > 1e-9 * metre) return "first port";
  for (const Port& from : geometry.ports) {
    if (geometry.port(from.name) != &from) return "a port name twice";
    for (const Port& to : geometry.ports) {
      if (from.name == to.name) continue;
      if (std::string fault = fault_of(view, shape, from, to); !fault.empty()) {
        return from.name + " to " + to.name + ": " + fault;
      }
    }
  }
  return {};
}

const Turn all_turns[] = {Turn::left, Turn::right, Turn::up, Turn::down};

TEST(EveryShape, IsNamedByAShippedTypeAndFoundByItsId) {
  std::set<std::string_view> used;
  for (const PieceType& type : shipped_library()->piece_types) used.insert(type.shape);
  for (const Shape* shape : all_shapes()) {
    EXPECT_TRUE(used.contains(shape->id())) << shape->id();
    EXPECT_EQ(find_shape(shape->id()), shape);
  }
  EXPECT_EQ(find_shape("teapot"), nullptr);
}

TEST(EveryType, HasTheFieldsItsShapeNeeds) {
  for (const PieceType& type : shipped_library()->piece_types) {
    const Shape* shape = find_shape(type.shape);
    ASSERT_NE(shape, nullptr) << type.id;
    for (const std::string_view key : shape->required_fields()) EXPECT_NE(type.field(key), nullptr) << type.id << key;
    const bool has_size =
        type.field("bore") || type.field("half_barrel") || (type.field("width") && type.field("height"));
    EXPECT_TRUE(has_size) << type.id;
    EXPECT_FALSE(type.summary.empty()) << type.id;
    EXPECT_FALSE(type.citations.empty()) << type.id;
  }
}

TEST(EveryType, IsSoundAsItComesFromTheRack) {
  const auto library = shipped_library();
  for (const PieceType& type : library->piece_types) {
    Piece piece;
    piece.type = type.id;
    piece.heading = usual_heading(type);
    piece.turn = usual_turn(piece.heading);
    const Design design = alone(piece);
    for (const Finding& f : check_values(design, *library)) ADD_FAILURE() << type.id << ": " << f.field;
    EXPECT_EQ(fault_of(design, *library, type), "") << type.id;
  }
}

TEST(EveryType, PassesGasBothWaysOnEveryHeadingAndTurn) {
  const auto library = shipped_library();
  const Heading headings[] = {heading_east,
                              heading_south,
                              heading_up(90.0 * degree),
                              heading_down(30.0 * degree),
                              {20.0 * degree, 30.0 * degree}};
  for (const PieceType& type : library->piece_types) {
    for (const Heading& heading : headings) {
      for (const Turn turn : all_turns) {
        Piece piece;
        piece.type = type.id;
        piece.heading = heading;
        piece.turn = turn;
        EXPECT_EQ(fault_of(alone(piece), *library, type), "") << type.id;
      }
    }
  }
}

/// A value of the field anywhere between its limits.
FieldValue any_value(const FieldSpec& spec) {
  const double share = *rc::gen::inRange(0, 1001) / 1000.0;
  return std::visit(
      [&](const auto& fallback) -> FieldValue {
        using Held = std::decay_t<decltype(fallback)>;
        if constexpr (std::is_same_v<Held, std::string>) {
          return spec.choices.empty() ? fallback : *rc::gen::elementOf(spec.choices);
        } else if constexpr (std::is_same_v<Held, Count>) {
          return Count{
              *rc::gen::inRange(std::get<Count>(*spec.lowest).value, std::get<Count>(*spec.highest).value + 1)};
        } else {
          const Held low = std::get<Held>(*spec.lowest);
          return low + share * (std::get<Held>(*spec.highest) - low);
        }
      },
      spec.fallback);
}

RC_GTEST_PROP(EveryType, IsSoundWithAnyAllowedValues, ()) {
  static const auto library = shipped_library();
  const auto index = *rc::gen::inRange<std::size_t>(0, library->piece_types.size());
  const PieceType& type = library->piece_types[index];
  Piece piece;
  piece.type = type.id;
  piece.heading = {*rc::gen::inRange(0, 360) * 1.0 * degree, *rc::gen::inRange(-90, 91) * 1.0 * degree};
  piece.turn = *rc::gen::element(Turn::left, Turn::right, Turn::up, Turn::down);
  for (const FieldSpec& spec : type.fields) {
    if (*rc::gen::inRange(0, 3) == 0) piece.fields[spec.key] = any_value(spec);
  }
  const Design design = alone(piece);
  const bool agrees = check_values(design, *library).empty();
  RC_CLASSIFY(agrees, "values that go together");
  if (agrees) {
    const std::string fault = fault_of(design, *library, type);
    RC_ASSERT(fault == "");
  }
  // What does not go together is still drawn.
  RC_ASSERT(!geometries(design, *library).front().ports.empty());
}

TEST(TheUsualHeading, LetsFeedsFallAndStacksAndRisersStand) {
  const auto library = shipped_library();
  const auto elevation = [&](const char* id) {
    return in(usual_heading(*library->piece_type(id), 90.0 * degree).elevation, degree);
  };
  EXPECT_DOUBLE_EQ(elevation("feed_tube"), -90.0);
  EXPECT_DOUBLE_EQ(elevation("burn_tunnel"), -90.0);
  EXPECT_DOUBLE_EQ(elevation("heat_riser"), 90.0);
  EXPECT_DOUBLE_EQ(elevation("stack_insulated"), 90.0);
  EXPECT_DOUBLE_EQ(elevation("barrel"), 90.0);
  EXPECT_DOUBLE_EQ(elevation("bench_pipe"), 0.0);
  EXPECT_DOUBLE_EQ(in(usual_heading(*library->piece_type("bench_pipe"), 90.0 * degree).azimuth, degree), 90.0);
}

}  // namespace
}  // namespace fluewright
