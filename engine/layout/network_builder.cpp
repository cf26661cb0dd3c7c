// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/network_builder.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

namespace fluewright {

namespace {

/// Pieces stand on tenths of a millimetre, so heights at a joint may differ by as much: the play goes to the end of
/// the stretch before, and heights along the path have no jumps.
void close_joint(Stretch& before, Length height) {
  const Length play = height - (before.start_height + before.rise);
  if (bu::abs(play) > joint_tolerance) return;
  before.rise += play;
  before.length = std::max(before.length, bu::abs(before.rise));
}

/// The ports of a piece in which streams meet are called in, out and branch.
JunctionPort junction_port(std::string_view name) {
  if (name == "out") return JunctionPort::run_out;
  return name == "branch" ? JunctionPort::branch : JunctionPort::run_in;
}

EndKind kind_of(PortKind kind) { return kind == PortKind::room_air ? EndKind::room_air : EndKind::outdoor_air; }

}  // namespace

std::vector<WayStep> straight_through(const std::vector<Way>& main_path) {
  std::vector<WayStep> steps;
  for (const Way& way : main_path) {
    for (const WayStep& step : way.steps) {
      if (step.entry == the_meeting && !steps.empty()) {
        steps.back().exit = step.exit;
      } else {
        steps.push_back(step);
      }
    }
  }
  return steps;
}

std::vector<Passage> passages_of(const std::vector<WayStep>& steps, const PortGraph& graph) {
  std::vector<Passage> passages;
  for (const WayStep& step : steps) {
    const std::vector<Port>& ports = graph.ports(step.piece);
    const auto name = [&](std::size_t port) { return port == the_meeting ? std::string{} : ports[port].name; };
    passages.push_back({step.piece, name(step.entry), name(step.exit)});
  }
  return passages;
}

PieceView NetworkBuilder::view(std::size_t piece) const {
  return {design_, library_, design_.pieces[piece], *graph_.piece(piece).known.type};
}

/// False where the piece's values do not allow it.
bool NetworkBuilder::append(Branch& branch, const WayStep& step) {
  if (!graph_.piece(step.piece).sound) return false;
  const std::vector<Port>& ports = graph_.ports(step.piece);
  const PieceView piece = view(step.piece);
  std::vector<Stretch> stretches;
  Length height{};
  if (step.entry == the_meeting) {
    stretches = shape(step.piece).leg(piece, step.piece, ports[step.exit].name, false);
    height = shape(step.piece).meeting(piece, step.piece)->at.z;
  } else {
    stretches = step.exit == the_meeting
                    ? shape(step.piece).leg(piece, step.piece, ports[step.entry].name, true)
                    : shape(step.piece).passage(piece, step.piece, ports[step.entry].name, ports[step.exit].name);
    height = ports[step.entry].at.z;
  }
  if (!branch.stretches.empty()) close_joint(branch.stretches.back(), height);
  for (Stretch& stretch : stretches) {
    stretch.start_height = height;
    height += stretch.rise;
  }
  branch.stretches.insert(branch.stretches.end(), std::make_move_iterator(stretches.begin()),
                          std::make_move_iterator(stretches.end()));
  const bool told = std::find(left_out_.begin(), left_out_.end(), step.piece) != left_out_.end();
  if (!told && !shape(step.piece).left_out().empty()) left_out_.push_back(step.piece);
  return true;
}

std::size_t NetworkBuilder::node_at(std::size_t piece) {
  auto& nodes = network_.nodes;
  const auto found = std::find_if(nodes.begin(), nodes.end(), [piece](const NetworkNode& n) { return n.piece == piece; });
  if (found != nodes.end()) return static_cast<std::size_t>(found - nodes.begin());
  const Meeting meeting = *shape(piece).meeting(view(piece), piece);
  nodes.push_back({piece, meeting.at.z, meeting.form});
  return nodes.size() - 1;
}

BranchEnd NetworkBuilder::end_at(std::size_t piece, std::size_t port, std::size_t leg, Length height) {
  if (port == the_meeting) {
    return {EndKind::node, node_at(piece), height, junction_port(graph_.ports(piece)[leg].name), false};
  }
  const auto& outlets = graph_.outlets();
  const bool cap = std::any_of(outlets.begin(), outlets.end(),
                               [&](const PortAt& o) { return o.piece == piece && o.port == port; });
  return {kind_of(graph_.port({piece, port}).kind), 0, height, JunctionPort::run_in, cap};
}

bool NetworkBuilder::add_way(const Way& way) {
  Branch branch;
  for (const WayStep& step : way.steps) {
    if (!append(branch, step)) return false;
  }
  const WayStep& first = way.steps.front();
  const WayStep& last = way.steps.back();
  const Stretch& end = branch.stretches.back();
  branch.from = end_at(first.piece, first.entry, first.exit, branch.stretches.front().start_height);
  branch.to = end_at(last.piece, last.exit, last.entry, end.start_height + end.rise);
  network_.branches.push_back(std::move(branch));
  ways_.push_back(passages_of(way.steps, graph_));
  return true;
}

void NetworkBuilder::add_opening(std::size_t node) {
  const std::size_t piece = network_.nodes[node].piece;
  const Meeting meeting = *shape(piece).meeting(view(piece), piece);
  if (!meeting.opening) return;
  Branch branch;
  branch.from = {kind_of(meeting.opens_to), 0, meeting.at.z, JunctionPort::run_in, false};
  branch.to = {EndKind::node, node, meeting.at.z, JunctionPort::branch, false};
  branch.opening = meeting.opening;
  network_.branches.push_back(std::move(branch));
  ways_.push_back({{piece, {}, {}}});
}

bool NetworkBuilder::add_all(const std::vector<Way>& main_path, const std::vector<Way>& side_ways) {
  // A meeting's form and place are asked of its shape, which needs sound values.
  for (const auto* ways : {&main_path, &side_ways}) {
    for (const Way& way : *ways) {
      for (const WayStep& step : way.steps) {
        if (!graph_.piece(step.piece).sound) return false;
      }
    }
  }
  network_.main_path.clear();
  for (const Way& way : main_path) {
    network_.main_path.push_back(network_.branches.size());
    if (!add_way(way)) return false;
  }
  for (const Way& way : side_ways) {
    if (!add_way(way)) return false;
  }
  for (std::size_t n = 0; n < network_.nodes.size(); ++n) add_opening(n);
  return true;
}

bool NetworkBuilder::add_one(const std::vector<WayStep>& steps, bool ends_outdoors) {
  Branch branch;
  bool computed = true;
  for (const WayStep& step : steps) computed = computed && append(branch, step);
  const Port& inlet = graph_.port({steps.front().piece, steps.front().entry});
  branch.from = {kind_of(inlet.kind), 0, inlet.at.z};
  const Length end = branch.stretches.empty()
                         ? inlet.at.z
                         : Length(branch.stretches.back().start_height + branch.stretches.back().rise);
  branch.to = {ends_outdoors ? EndKind::outdoor_air : EndKind::node, 0, end};
  branch.to.cap = ends_outdoors;
  if (!ends_outdoors) network_.nodes.resize(1);
  network_.branches.push_back(std::move(branch));
  ways_.push_back(passages_of(steps, graph_));
  return computed;
}

}  // namespace fluewright
