// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/edit_support.hpp"

namespace fluewright {

namespace {

using edit::refused;

/// How a run is cut: the lengths before and behind the inserted piece. A zero length means no run there.
struct Cut {
  Length before{};
  Length behind{};
};

std::variant<Cut, Refusal> cut_run(const edit::StraightRun& run, Length along, Length own) {
  Cut cut{edit::tidy(along), edit::tidy(run.length - along - own)};
  for (Length* part : {&cut.before, &cut.behind}) {
    if (!(*part > -edit::length_tolerance)) {
      return Refusal::too_short;
    }
    if (*part < edit::length_tolerance) {
      *part = Length{};
    } else if (const std::optional<Refusal> why = edit::check_run_length(*run.type, *part)) {
      return *why;
    }
  }
  return cut;
}

/// The run's joint at `was`, if it has one, is from now on the joint at `now`.
void rejoin(Design& design, const edit::Link* link, const PortRef& was, const PortRef& now) {
  if (link != nullptr) {
    Joint& joint = design.joints[link->joint];
    (joint.a == was ? joint.a : joint.b) = now;
  }
}

/// Split the run at `at` around a piece that already stands in its place. Gives the port that now ends the run.
PortRef split(Design& design, const edit::JointIndex& index, std::size_t at, const edit::StraightRun& run,
              const Cut& cut, Piece piece, const edit::Through& through) {
  const PieceId run_id = design.pieces[at].id;
  const PortRef run_first{run_id, run.first.name};
  const PortRef run_last{run_id, run.last.name};
  const PortRef piece_entry{piece.id, through.entry.name};
  const PortRef piece_exit{piece.id, through.exit.name};
  const GridPoint behind_at = grid_point_near(through.exit.at);
  const edit::Link* at_first = index.link(at, run.first.name);
  const edit::Link* at_last = index.link(at, run.last.name);
  design.pieces.push_back(std::move(piece));
  design.pieces[at].fields["length"] = cut.before;

  if (cut.before == Length{}) {
    rejoin(design, at_first, run_first, piece_entry);
  }
  if (cut.behind == Length{}) {
    rejoin(design, at_last, run_last, piece_exit);
    if (cut.before == Length{}) {
      edit::erase_piece(design, at);
    } else {
      design.joints.push_back({run_last, piece_entry});
    }
    return piece_exit;
  }
  Piece behind = design.pieces[at];
  behind.fields["length"] = cut.behind;
  behind.at = behind_at;
  if (cut.before == Length{}) {
    design.pieces[at] = behind;
  } else {
    behind.id = design.fresh_id();
    behind.label.clear();
    behind.notes.clear();
    design.joints.push_back({run_last, piece_entry});
    rejoin(design, at_last, run_last, {behind.id, run.last.name});
    design.pieces.push_back(behind);
  }
  design.joints.push_back({piece_exit, {behind.id, run.first.name}});
  return {behind.id, run.last.name};
}

}  // namespace

EditResult insert_in_run(const Design& design, const Library& library, const PieceId& run_id, Length along,
                         std::string_view type, Turn turn) {
  const edit::JointIndex index{design};
  const std::optional<std::size_t> at = index.piece(run_id);
  const PieceType* known = edit::known_type(library, type);
  if (!at) {
    return refused(Refusal::unknown_piece);
  }
  if (known == nullptr || edit::known_type(library, design.pieces[*at].type) == nullptr) {
    return refused(Refusal::unknown_type);
  }
  const std::optional<edit::StraightRun> run = edit::straight_run(design, library, design.pieces[*at]);
  if (!run) {
    return refused(Refusal::not_a_run);
  }
  if (!edit::grid_point_at(run->last.at)) {
    return refused(Refusal::out_of_range);
  }
  Piece piece = edit::new_piece(design, library, index, *known, {*at, run->last, false});
  piece.turn = turn;
  piece.heading = design.pieces[*at].heading;
  const FieldValue* slope = edit::value_of(design.pieces[*at], *run->type, "slope");
  if (slope != nullptr && known->field("slope") != nullptr) {
    piece.fields.insert_or_assign("slope", *slope);
  }
  std::optional<edit::Through> through = edit::straight_through(*edit::geometry_of(design, library, piece));
  if (!through) {
    return refused(Refusal::does_not_fit);
  }
  const std::variant<Cut, Refusal> cutting = cut_run(*run, along, through->length);
  if (const Refusal* why = std::get_if<Refusal>(&cutting)) {
    return refused(*why);
  }
  const Cut& cut = std::get<Cut>(cutting);
  piece.at = grid_point_near(run->first.at + edit::stepped(run->way, cut.before));
  through = edit::straight_through(*edit::geometry_of(design, library, piece));
  PieceId id = piece.id;
  Design changed = design;
  const PortRef end = split(changed, index, *at, *run, cut, std::move(piece), *through);
  // The new end of the run stands where the old one stood, but for rounding and for a slope that the piece has not.
  if (!edit::mend_joint(changed, library, end)) {
    return refused(Refusal::does_not_fit);
  }
  return edit::done(std::move(changed), std::move(id));
}

}  // namespace fluewright
