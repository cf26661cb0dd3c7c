// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/reshaping.hpp"
#include "engine/layout/edit.hpp"

#include <algorithm>

namespace fluewright::advice {

namespace {

/// The way through a piece by port names.
const Passage* passage_of(const TracedPath& path, std::size_t piece) {
  const auto found = std::find_if(path.passages.begin(), path.passages.end(),
                                  [piece](const Passage& p) { return p.piece == piece; });
  return found == path.passages.end() ? nullptr : &*found;
}

/// The joint port of a piece that nothing is joined to.
std::optional<PortRef> open_port_of(const Design& design, const Library& library, const PieceId& piece) {
  for (const OpenEnd& end : open_ends(design, library)) {
    if (end.ref.piece == piece) return end.ref;
  }
  return std::nullopt;
}

/// The bend to set in: as those the bench has already, else the elbow or turn that goes with the run.
std::string bend_type(const Design& design, const Library& library, const Parts& parts, std::size_t run) {
  if (!parts.level_bends.empty()) return design.pieces[parts.level_bends.front()].type;
  const PieceType& type = *library.piece_type(design.pieces[run].type);
  return type.field("bore") != nullptr ? "bench_elbow" : "channel_turn";
}

}  // namespace

std::optional<Design> without_bend(const Design& design, const Library& library, const TracedPath& path, std::size_t bend) {
  const auto at = std::find_if(path.passages.begin(), path.passages.end(), [bend](const Passage& p) { return p.piece == bend; });
  if (at == path.passages.end() || at == path.passages.begin() || std::next(at) == path.passages.end()) return std::nullopt;
  const PortRef before{design.pieces[std::prev(at)->piece].id, std::prev(at)->exit};
  const PortRef after{design.pieces[std::next(at)->piece].id, std::next(at)->entry};
  EditResult removed = remove_piece(design, library, design.pieces[bend].id);
  if (!removed.design) return std::nullopt;
  if (removed.design->joined_to(before)) return std::move(removed.design);
  return join_ports(*removed.design, library, before, after).design;
}

std::optional<Design> with_bend(const Design& design, const Library& library, const TracedPath& path, const Parts& parts) {
  const auto longest = std::max_element(parts.bench_runs.begin(), parts.bench_runs.end(), [&](std::size_t a, std::size_t b) {
    return length_of(design, library, a, "length") < length_of(design, library, b, "length");
  });
  if (longest == parts.bench_runs.end()) return std::nullopt;
  const std::size_t run = *longest;
  const Passage* passage = passage_of(path, run);
  const PortRef end{design.pieces[run].id, passage->exit};
  const auto next = design.joined_to(end);
  if (!next) return std::nullopt;
  const FieldValue half = Length(0.5 * length_of(design, library, run, "length"));

  Design cut = design;
  cut.joints.erase(std::remove_if(cut.joints.begin(), cut.joints.end(), [&end](const Joint& j) { return j.a == end || j.b == end; }),
                   cut.joints.end());
  const Turn turn = parts.level_bends.size() % 2 == 0 ? Turn::left : Turn::right;
  const EditResult shorter = set_field(cut, library, design.pieces[run].id, "length", half);
  if (!shorter.design) return std::nullopt;
  const EditResult bent = attach_piece(*shorter.design, library, end, bend_type(design, library, parts, run), turn);
  const auto bend_end = bent.design ? open_port_of(*bent.design, library, bent.touched) : std::nullopt;
  if (!bend_end) return std::nullopt;
  const EditResult onward = attach_piece(*bent.design, library, *bend_end, design.pieces[run].type);
  if (!onward.design) return std::nullopt;
  Design grown = *onward.design;
  grown.piece(onward.touched)->fields = shorter.design->piece(design.pieces[run].id)->fields;
  settle(grown, library, design.pieces[run].id);
  const auto run_end = open_port_of(grown, library, onward.touched);
  if (!run_end) return std::nullopt;
  return join_ports(grown, library, *run_end, *next).design;
}

}  // namespace fluewright::advice
