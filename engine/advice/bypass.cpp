// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/reshaping.hpp"
#include "engine/layout/edit.hpp"

#include <algorithm>
#include <array>

namespace fluewright::advice {

namespace {

constexpr std::string_view tee_type = "tee";
constexpr std::string_view link_type = "bypass_link";
constexpr std::string_view elbow_type = "elbow_smooth";
constexpr Angle quarter = 90.0 * degree;
/// Ends that are further out of line than this do not meet.
constexpr Length in_line = 0.05 * millimetre;
/// Level ways first: a pipe over the seat is in everybody's way, and under the bench is the floor.
constexpr std::array branch_turns{Turn::left, Turn::right, Turn::up};
constexpr std::array elbow_turns{Turn::left, Turn::right, Turn::up, Turn::down};

double along(const Heading& heading, const Position& step) {
  const Frame frame = frame_of(heading);
  return frame.forward[0].value() * in(step.x, metre) + frame.forward[1].value() * in(step.y, metre) +
         frame.forward[2].value() * in(step.z, metre);
}

Position without(const Position& step, const Heading& heading, double metres) {
  return step - step_along(heading, metres * metre);
}

double size_of(const Position& step) { return in(distance(step, Position{}), metre); }

/// How the way past the bench leaves one of its tees: the branch's turn, and an elbow's after it or none.
struct WayOut {
  Turn branch = Turn::left;
  std::optional<Turn> elbow;
};

Heading heading_of(const Heading& run, const WayOut& way) {
  const Heading branch = turned(run, way.branch, quarter);
  return way.elbow ? turned(branch, *way.elbow, quarter) : branch;
}

/// Where the tees stand in the first and the last run, from each run's entry.
struct Tees {
  Length first{};
  Length last{};
};

/// The design with a tee in either run, and the ports that the link has to reach.
struct Begun {
  Design design;
  PortRef from;
  PortRef to;
  Port from_port;
  Port to_port;
};

class Bypass {
 public:
  Bypass(const Design& design, const Library& library, const Parts& parts)
      : design_{design},
        library_{library},
        first_{design.pieces[parts.bench_runs.front()].id},
        last_{design.pieces[parts.bench_runs.back()].id} {}

  std::optional<Design> built() const {
    const auto body = tee_length();
    const Length end = length_of_run(last_);
    if (!body || !(end > *body)) return std::nullopt;
    const Tees at_the_ends{Length{}, Length(end - *body)};
    // Without elbows, then with one at either end, then with one at one of them.
    for (const auto& [first_bent, last_bent] :
         {std::pair{false, false}, std::pair{true, true}, std::pair{false, true}, std::pair{true, false}}) {
      for (const WayOut& from : ways_out(first_bent)) {
        for (const WayOut& to : ways_out(last_bent)) {
          const Heading out = heading_of(design_.piece(first_)->heading, from);
          if (!same_direction(out, opposite(heading_of(design_.piece(last_)->heading, to)))) continue;
          if (auto done = linked(from, to, at_the_ends)) return done;
        }
      }
    }
    return std::nullopt;
  }

 private:
  static std::vector<WayOut> ways_out(bool bent) {
    std::vector<WayOut> ways;
    for (const Turn branch : branch_turns) {
      if (!bent) ways.push_back({branch, std::nullopt});
      for (const Turn elbow : elbow_turns) {
        if (bent) ways.push_back({branch, elbow});
      }
    }
    return ways;
  }

  Length length_of_run(const PieceId& run) const {
    return length_of(design_, library_, static_cast<std::size_t>(design_.piece(run) - design_.pieces.data()), "length");
  }

  /// From end to end of the tee that fits the last run.
  std::optional<Length> tee_length() const {
    const EditResult tee = insert_in_run(design_, library_, last_, Length{}, tee_type);
    if (!tee.design) return std::nullopt;
    const auto ports = geometry_of(*tee.design, tee.touched).ports;
    return distance(ports[0].at, ports[1].at);
  }

  PieceGeometry geometry_of(const Design& design, const PieceId& piece) const {
    return geometries(design, library_)[static_cast<std::size_t>(design.piece(piece) - design.pieces.data())];
  }

  /// Tee and elbow of one end; the port that is open then.
  std::optional<PortRef> put_end(Design& design, const PieceId& run, Length at, const WayOut& way) const {
    const EditResult tee = insert_in_run(design, library_, run, at, tee_type, way.branch);
    if (!tee.design) return std::nullopt;
    design = *tee.design;
    const PortRef branch{tee.touched, "branch"};
    if (!way.elbow) return branch;
    const EditResult elbow = attach_piece(design, library_, branch, elbow_type, *way.elbow);
    if (!elbow.design) return std::nullopt;
    design = *elbow.design;
    const PortRef open{elbow.touched, "out"};
    const Length height = geometry_of(design, elbow.touched).port(open.port)->at.z;
    if (height > Length{}) (void)put_field_by_id(design, elbow.touched, "place", std::string("room"));
    return open;
  }

  bool put_field_by_id(Design& design, const PieceId& piece, std::string_view key, FieldValue value) const {
    return put_field(design, library_, static_cast<std::size_t>(design.piece(piece) - design.pieces.data()), key, std::move(value));
  }

  std::optional<Begun> begun(const WayOut& from, const WayOut& to, const Tees& tees) const {
    Begun b{design_, {}, {}, {}, {}};
    // The last run first: cutting the first one at its beginning would move it along where both are one run.
    const auto far = put_end(b.design, last_, tees.last, to);
    const auto near = far ? put_end(b.design, first_, tees.first, from) : std::nullopt;
    if (!near) return std::nullopt;
    b.from = *near;
    b.to = *far;
    const PieceGeometry start = geometry_of(b.design, b.from.piece);
    const PieceGeometry end = geometry_of(b.design, b.to.piece);
    b.from_port = *start.port(b.from.port);
    b.to_port = *end.port(b.to.port);
    return b;
  }

  /// Moves one of the tees along its run so that the ends come into line; nothing where that does not do it.
  std::optional<Tees> brought_into_line(const Begun& b, const Tees& tees) const {
    const Position gap = b.to_port.at - b.from_port.at;
    const Position aside = without(gap, b.from_port.outward, along(b.from_port.outward, gap));
    if (size_of(aside) < in(in_line, metre)) return tees;
    const Heading& first_way = design_.piece(first_)->heading;
    const double forward = along(first_way, aside);
    if (forward > 0.0 && size_of(without(aside, first_way, forward)) < in(in_line, metre)) {
      return Tees{tees.first + forward * metre, tees.last};
    }
    const Heading& last_way = design_.piece(last_)->heading;
    const double back = along(last_way, aside);
    if (back > 0.0 && size_of(without(aside, last_way, back)) < in(in_line, metre) && tees.last > back * metre - in_line) {
      return Tees{tees.first, std::max(Length{}, Length(tees.last - back * metre))};
    }
    return std::nullopt;
  }

  std::optional<Design> linked(const WayOut& from, const WayOut& to, const Tees& at_the_ends) const {
    auto b = begun(from, to, at_the_ends);
    const auto tees = b ? brought_into_line(*b, at_the_ends) : std::nullopt;
    if (tees && !(tees->first == at_the_ends.first && tees->last == at_the_ends.last)) b = begun(from, to, *tees);
    if (!tees || !b) return std::nullopt;
    const double length = along(b->from_port.outward, b->to_port.at - b->from_port.at);
    EditResult link = attach_piece(b->design, library_, b->from, link_type);
    if (!link.design) return std::nullopt;
    // Between two runs of the bench it lies in the mass, else it goes round it: under the floor where the bench is, or
    // through the room and clear of the floor.
    const bool in_the_mass = !from.elbow && !to.elbow;
    const Length height = b->from_port.at.z;
    const Length clear = b->from_port.section.equal_area_diameter();
    if (!in_the_mass && bu::abs(height) < clear) return std::nullopt;
    if (!in_the_mass && height > Length{} && !put_field_by_id(*link.design, link.touched, "place", std::string("room"))) return std::nullopt;
    if (!put_field_by_id(*link.design, link.touched, "length", Length(length * metre))) return std::nullopt;
    const EditResult closed = join_ports(*link.design, library_, b->to, {link.touched, "out"});
    if (!closed.design || !can_be_built(design_, *closed.design, library_)) return std::nullopt;
    return closed.design;
  }

  const Design& design_;
  const Library& library_;
  PieceId first_;
  PieceId last_;
};

}  // namespace

std::optional<Design> with_bypass(const Design& design, const Library& library, const TracedPath& path, const Parts& parts) {
  if (parts.bench_runs.empty() || !path.network.is_series()) return std::nullopt;
  return Bypass(design, library, parts).built();
}

}  // namespace fluewright::advice
