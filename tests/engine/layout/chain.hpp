// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/library_reader.hpp"
#include "engine/layout/path.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <optional>
#include <string>
#include <utility>

namespace fluewright::test {

/// A drawing that grows piece by piece, each pushed onto an open port of one before.
class Chain {
 public:
  Design design;

  /// The first piece of a group, wherever one likes.
  Piece& place(std::string_view type, GridPoint at, Heading heading, Turn turn = Turn::left) {
    Piece piece;
    piece.id = design.fresh_id();
    piece.type = std::string(type);
    piece.at = at;
    piece.heading = heading;
    piece.turn = turn;
    design.pieces.push_back(std::move(piece));
    return design.pieces.back();
  }

  /// On the second port of the last piece, in the plane of the path unless a turn is named.
  Piece& add(std::string_view type, std::optional<Turn> turn = {}) {
    return add_on(design.pieces.back().id, "", type, turn);
  }

  /// On a named port of a named piece ("" is its second port).
  Piece& add_on(PieceId id, std::string port_name, std::string_view type, std::optional<Turn> turn = {}) {
    const PieceGeometry geometry = geometry_of(id);
    const Port port = port_name.empty() ? geometry.ports.at(1) : *geometry.port(port_name);
    Piece& piece = place(type, grid_point_near(port.at), port.outward, turn.value_or(usual_turn(port.outward)));
    design.joints.push_back({{id, port.name}, {piece.id, geometry_of(piece.id).ports.at(0).name}});
    return piece;
  }

  [[nodiscard]] PieceGeometry geometry_of(const PieceId& id) const {
    const std::vector<PieceGeometry> all = geometries(design, *shipped_library());
    const auto index = static_cast<std::size_t>(design.piece(id) - design.pieces.data());
    return all.at(index);
  }

  [[nodiscard]] TracedPath trace() const { return trace_path(design, *shipped_library()); }
};

/// A small heater, 150 mm throughout: p1 feed, p2 burn tunnel, p3 riser, p4 barrel, p5 bench pipe, p6 elbow, p7 stack,
/// p8 cap.
[[nodiscard]] inline Chain small_heater() {
  Chain chain;
  chain.place("feed_tube", {0, 0, 6000}, heading_down());
  chain.add("burn_tunnel");
  chain.add("heat_riser");
  chain.add("barrel");
  chain.add("bench_pipe").fields["length"] = 3.0 * metre;
  chain.add("bench_elbow", Turn::up);
  chain.add("stack_insulated").fields["length"] = 4.0 * metre;
  chain.add("cap_rain");
  return chain;
}

[[nodiscard]] inline std::size_t count(const std::vector<Finding>& findings, FindingCode code) {
  return static_cast<std::size_t>(
      std::count_if(findings.begin(), findings.end(), [code](const Finding& f) { return f.code == code; }));
}

/// The only finding of its code; fails the test where there is not exactly one.
[[nodiscard]] inline Finding the_one(const std::vector<Finding>& findings, FindingCode code) {
  EXPECT_EQ(count(findings, code), 1u);
  const auto found =
      std::find_if(findings.begin(), findings.end(), [code](const Finding& f) { return f.code == code; });
  return found == findings.end() ? Finding{} : *found;
}

/// "p1:mouth>out p2:in>out"
[[nodiscard]] inline std::string way_of(const Design& design, const TracedPath& path) {
  std::string text;
  for (const Passage& p : path.passages) {
    text += (text.empty() ? "" : " ") + design.pieces[p.piece].id + ":" + p.entry + ">" + p.exit;
  }
  return text;
}

}  // namespace fluewright::test
