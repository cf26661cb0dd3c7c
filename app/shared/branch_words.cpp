// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/branch_words.hpp"

#include "app/shared/said.hpp"
#include "app/shared/words.hpp"

#include <fmt/format.h>

#include <utility>

namespace fluewright {

namespace {

std::string end_words(const BranchEnd& end, const FlueNetwork& network, const Design& design, const Library& library) {
  switch (end.kind) {
    case EndKind::room_air: return said("room");
    case EndKind::outdoor_air: return said("outdoors");
    case EndKind::node: break;
  }
  return piece_name(design, library, network.nodes[end.node].piece);
}

/// The first piece that is more than the leg of a tee, else the first.
std::size_t telling_piece(const std::vector<Passage>& way) {
  for (const Passage& passage : way) {
    if (!passage.entry.empty() && !passage.exit.empty()) return passage.piece;
  }
  return way.front().piece;
}

}  // namespace

BranchWords branch_words(const Assessment& assessment, const BranchState& state, const Design& design,
                         const Library& library) {
  const FlueNetwork& network = assessment.path.network;
  const Branch& branch = network.branches[state.branch];
  BranchWords words;
  words.name = state.on_main_path ? said("main path") : piece_name(design, library, telling_piece(assessment.path.ways[state.branch]));
  words.from = end_words(branch.from, network, design, library);
  words.to = end_words(branch.to, network, design, library);
  if (state.flow < MassFlow{}) std::swap(words.from, words.to);
  return words;
}

std::string state_words(const OperatingPoint& point) {
  return fmt::format("{}, {}", said(point.forward ? to_say("forward") : to_say("backward")),
                     said(point.stable ? to_say("stable") : to_say("will not last")));
}

}  // namespace fluewright
