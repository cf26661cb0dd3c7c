// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/burning_flue.hpp"

#include "engine/solve/stretch_slices.hpp"

#include <algorithm>
#include <array>
#include <numbers>
#include <string_view>
#include <utility>

namespace fluewright::kernel {

std::optional<PrimingTee> priming_tee(const Design& design, const Library& library, const TracedPath& traced,
                                      const PieceId& wanted) {
  std::optional<PrimingTee> found;
  for (const Passage& passage : traced.passages) {
    const Piece& piece = design.pieces[passage.piece];
    const PieceType* type = library.piece_type(piece.type);
    if (type == nullptr || type->shape != "tee") continue;
    if (!wanted.empty() && piece.id != wanted) continue;
    static constexpr std::array<std::string_view, 3> ports{"in", "out", "branch"};
    const auto shut = std::find_if(ports.begin(), ports.end(), [&](std::string_view p) { return p != passage.entry && p != passage.exit; });
    const PieceView view{design, library, piece, *type};
    const Length bore = view.length(*shut == "branch" ? "branch_bore" : "bore");
    found = PrimingTee{passage.piece, 0.25 * std::numbers::pi * bore * bore};
  }
  return found;
}

std::optional<std::size_t> open_tee(FlueNetwork& network, const PrimingTee& tee) {
  for (const std::size_t b : network.main_path) {
    std::vector<Stretch>& stretches = network.branches[b].stretches;
    const auto behind = std::find_if(stretches.rbegin(), stretches.rend(), [&](const Stretch& s) { return s.piece == tee.piece; }).base();
    if (behind == stretches.begin() || behind == stretches.end()) continue;
    Branch stack;
    stack.stretches.assign(std::make_move_iterator(behind), std::make_move_iterator(stretches.end()));
    stretches.erase(behind, stretches.end());
    BranchEnd meeting;
    meeting.kind = EndKind::node;
    meeting.node = network.nodes.size();
    meeting.height = stack.stretches.front().start_height;
    NetworkNode node;
    node.piece = tee.piece;
    node.height = meeting.height;
    network.nodes.push_back(node);
    stack.to = std::exchange(network.branches[b].to, meeting);
    stack.from = meeting;
    Branch hole;
    hole.from.kind = EndKind::room_air;
    hole.from.height = meeting.height;
    hole.to = meeting;
    Opening opening;
    opening.piece = tee.piece;
    opening.area = tee.mouth;
    hole.opening = opening;
    const auto after = std::find(network.main_path.begin(), network.main_path.end(), b) + 1;
    network.main_path.insert(after, network.branches.size());
    network.branches.push_back(std::move(stack));
    network.branches.push_back(std::move(hole));
    return network.branches.size() - 1;
  }
  return std::nullopt;
}

BurningFlue::BurningFlue(FlueNetwork made_of, std::optional<std::size_t> priming_hole, const GasPair& gas, const AirRange& air,
                         const BurnGrid& grid, const Surround& surround, Ratio outdoor_humidity)
    : network{std::move(made_of)} {
  for (const Branch& branch : network.branches) {
    paths.push_back(slice_stretches(branch, [&grid](const Stretch& stretch) { return grid.longest_slice(stretch); }));
  }
  cells = std::make_unique<BurnCells>(network, paths, priming_hole, gas, air, grid);
  equations = std::make_unique<BurnEquations>(*cells, gas, surround, outdoor_humidity);
}

}  // namespace fluewright::kernel
