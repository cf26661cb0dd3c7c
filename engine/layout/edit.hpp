// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The drawing's verbs. Each takes a design and gives back a changed one or says why not; a connected path stays
// connected. The desk wraps them in undo commands; tests call them directly.

#include "engine/layout/design.hpp"
#include "engine/layout/finding.hpp"
#include "engine/pieces/shape.hpp"

#include <optional>
#include <string>
#include <variant>

namespace fluewright {

/// Why an edit was refused.
enum class Refusal {
  too_short,        ///< no room: the run is shorter than what should go into it
  not_an_open_end,
  not_a_run,        ///< only a straight run can be split or stretched
  does_not_fit,     ///< the ports cannot be made to meet
  unknown_piece,
  unknown_type,
  out_of_range
};

struct EditResult {
  std::optional<Design> design;   ///< the changed design, or nothing
  Refusal refusal{};              ///< valid where there is no design
  PieceId touched;                ///< the piece a person would want selected afterwards
};

/// Place a first piece of a type: its first port at `at`, heading so.
[[nodiscard]] EditResult place_piece(const Design&, const Library&, std::string_view type, GridPoint at, Heading heading);

/// Push a piece of a type onto an open port; the bore follows the port where the type has a bore field.
[[nodiscard]] EditResult attach_piece(const Design&, const Library&, const PortRef& open_port, std::string_view type,
                                      Turn turn = Turn::left);

/// Push two open ports together: the group of `moving` goes to `fixed`, which stays. Within one group only ports that
/// meet already can be joined (a loop).
[[nodiscard]] EditResult join_ports(const Design&, const Library&, const PortRef& fixed, const PortRef& moving);

/// Grow from an open port towards `heading` until `length` is reached: straight on, a run of type `run_type` (or the
/// last run grows if it is of that type); across, a bend of `bend_type` is put in first. `length` is counted from the port
/// along `heading`, the bend's own leg included.
[[nodiscard]] EditResult grow(const Design&, const Library&, const PortRef& open_port, Heading heading, Length length,
                              std::string_view run_type, std::string_view bend_type);

/// Put a piece of a type into a straight run, its first port `along` from the run's entry; the run splits around it.
[[nodiscard]] EditResult insert_in_run(const Design&, const Library&, const PieceId& run, Length along,
                                       std::string_view type, Turn turn = Turn::left);

/// Move a joint: the straight runs parallel to the step's components on either side stretch or shrink, everything
/// between moves along, and the path stays connected.
[[nodiscard]] EditResult move_joint(const Design&, const Library&, const PortRef& port, GridPoint to);

/// Set one field; everything downstream moves so that the ports still meet. The piece's first port stays; if nothing is
/// joined there (a feed's mouth, the first pipe of an unfinished path) its joined port does, and nothing else moves.
[[nodiscard]] EditResult set_field(const Design&, const Library&, const PieceId&, std::string_view key, FieldValue value);

/// Turn a piece (its `turn`) or give it another type; downstream follows.
[[nodiscard]] EditResult set_turn(const Design&, const Library&, const PieceId&, Turn turn);
[[nodiscard]] EditResult set_type(const Design&, const Library&, const PieceId&, std::string_view type);

/// Take a piece out. Its neighbours close up where their ports still face one another; otherwise a gap of two open
/// ends stays and is reported by trace_path.
[[nodiscard]] EditResult remove_piece(const Design&, const Library&, const PieceId&);

/// Move a whole connected group by a step.
[[nodiscard]] EditResult move_group(const Design&, const Library&, const PieceId& member, GridPoint step);

/// Put every piece where its joints say, starting from `anchor` (which does not move). Used after every edit.
void settle(Design& design, const Library& library, const PieceId& anchor);

/// Ports that are joined to nothing and need something. Of a tee that can be capped at any port all free ones, until
/// two are in use.
struct OpenEnd {
  PortRef ref;
  Port port;
};
[[nodiscard]] std::vector<OpenEnd> open_ends(const Design& design, const Library& library);
/// All ports that something can be pushed onto: the open ends and the capped ports.
[[nodiscard]] std::vector<OpenEnd> free_ports(const Design& design, const Library& library);

}  // namespace fluewright
