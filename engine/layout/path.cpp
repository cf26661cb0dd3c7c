// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/path.hpp"

#include "engine/layout/clash.hpp"
#include "engine/layout/house.hpp"

#include "engine/layout/port_graph.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

namespace fluewright {

namespace {

/// A way through one piece by port numbers.
struct Step {
  std::size_t piece = 0;
  std::size_t entry = 0;
  std::size_t exit = 0;
};

class Tracer {
 public:
  Tracer(const Design& design, const Library& library)
      : design_{design}, library_{library}, graph_{design, library}, findings_{graph_.findings()} {}

  TracedPath trace() {
    if (design_.pieces.empty()) {
      note(FindingCode::no_pieces, Severity::fault, no_piece);
    } else {
      count_ends();
      walk();
      check_the_rest();
    }
    return hand_over();
  }

 private:
  void note(FindingCode code, Severity severity, std::size_t piece, std::string field = {}) {
    Finding finding;
    finding.code = code;
    finding.severity = severity;
    if (piece != no_piece) finding.piece = design_.pieces[piece].id;
    finding.field = std::move(field);
    findings_.push_back(std::move(finding));
  }

  /// One inlet, one outlet, one fire.
  void count_ends() {
    const auto count = [this](const std::vector<PortAt>& ends, FindingCode none, FindingCode several) {
      if (ends.empty()) note(none, Severity::fault, no_piece);
      for (std::size_t i = 1; i < ends.size(); ++i) {
        note(several, Severity::fault, ends[i].piece, graph_.port(ends[i]).name);
      }
    };
    count(graph_.inlets(), FindingCode::no_inlet, FindingCode::several_inlets);
    count(graph_.outlets(), FindingCode::no_outlet, FindingCode::several_outlets);
    std::size_t fires = 0;
    for (std::size_t i = 0; i < design_.pieces.size(); ++i) {
      const Shape* shape = graph_.piece(i).known.shape;
      if (shape && shape->holds_fire() && ++fires > 1) note(FindingCode::several_fires, Severity::fault, i);
    }
    if (fires == 0) note(FindingCode::no_fire, Severity::fault, no_piece);
  }

  void walk() {
    if (graph_.inlets().empty()) return;
    const PortAt inlet = graph_.inlets().front();
    reach_ = graph_.reach_from(inlet.piece);
    const std::vector<PortAt>& outlets = graph_.outlets();
    const auto reached = std::find_if(outlets.begin(), outlets.end(),
                                      [this](const PortAt& outlet) { return reach_.steps[outlet.piece] != no_piece; });
    if (reached != outlets.end()) {
      steps_to(reached->piece, reached->port, inlet.port);
      ends_outdoors_ = true;
    } else {
      const std::size_t last = farthest_end();
      steps_to(last, open_exit(last, last == inlet.piece ? inlet.port : reach_.back[last].port), inlet.port);
    }
  }

  /// Where a partial path leads: the piece the most joints away that gas can go through.
  std::size_t farthest_end() const {
    std::size_t best = reach_.order.front();
    for (const std::size_t piece : reach_.order) {
      if (graph_.ports(piece).size() > 1 && reach_.steps[piece] > reach_.steps[best]) best = piece;
    }
    return best;
  }

  /// The port by which a partial path would go on: one that waits for a piece, else one that is shut, else any other
  /// than the entry; the first of its sort.
  std::size_t open_exit(std::size_t piece, std::size_t entry) const {
    const std::vector<Port>& ports = graph_.ports(piece);
    const auto rank = [&](std::size_t p) {
      if (p == entry) return 3;
      if (graph_.is_joined({piece, p})) return 2;
      return ports[p].may_stay_shut ? 1 : 0;
    };
    std::size_t best = 0;
    for (std::size_t p = 1; p < ports.size(); ++p) {
      if (rank(p) < rank(best)) best = p;
    }
    return best;
  }

  /// The way from the inlet to a piece's port, walked back along reach_.
  void steps_to(std::size_t piece, std::size_t exit, std::size_t inlet_port) {
    while (reach_.back[piece].piece != no_piece) {
      const PortAt entry = reach_.back[piece];
      steps_.push_back({piece, entry.port, exit});
      const PortAt before = graph_.joined(entry);
      piece = before.piece;
      exit = before.port;
    }
    steps_.push_back({piece, inlet_port, exit});
    std::reverse(steps_.begin(), steps_.end());
  }

  /// Open ends, loops and loose pieces.
  void check_the_rest() {
    const std::size_t start = reach_.order.empty() ? first_known() : reach_.order.front();
    if (start == no_piece) return;
    if (reach_.order.empty()) reach_ = graph_.reach_from(start);
    for (std::size_t i = 0; i < design_.pieces.size(); ++i) {
      if (reach_.steps[i] == no_piece) {
        if (graph_.piece(i).known.shape) note(FindingCode::unreached, Severity::caution, i);
      } else {
        check_open_ends(i);
        if (closes_a_loop(i)) note(FindingCode::loop, Severity::fault, i);
      }
    }
  }

  std::size_t first_known() const {
    for (std::size_t i = 0; i < design_.pieces.size(); ++i) {
      if (graph_.piece(i).known.shape) return i;
    }
    return no_piece;
  }

  void check_open_ends(std::size_t piece) {
    const std::vector<Port>& ports = graph_.ports(piece);
    for (std::size_t p = 0; p < ports.size(); ++p) {
      const bool needs_a_piece = ports[p].kind == PortKind::joint && !graph_.is_joined({piece, p});
      if (needs_a_piece && (!ports[p].may_stay_shut || is_last_exit(piece, p))) {
        note(FindingCode::open_end, Severity::fault, piece, ports[p].name);
      }
    }
  }

  /// A tee's shut ends are no open ends, but where the path stops at one the gas has nowhere to go.
  bool is_last_exit(std::size_t piece, std::size_t port) const {
    return !ends_outdoors_ && !steps_.empty() && steps_.back().piece == piece && steps_.back().exit == port;
  }

  /// A joint that the walk did not need leads back to where it has been. Told once, on the piece reached later.
  bool closes_a_loop(std::size_t piece) const {
    const std::vector<Port>& ports = graph_.ports(piece);
    for (std::size_t p = 0; p < ports.size(); ++p) {
      const PortAt there = graph_.joined({piece, p});
      if (there.piece == no_piece) continue;
      const bool back = reach_.back[piece].piece != no_piece && reach_.back[piece].port == p;
      const PortAt onward = reach_.back[there.piece];
      const bool forth = onward.piece != no_piece && onward.port == there.port;
      const bool later = std::pair{reach_.steps[piece], piece} >= std::pair{reach_.steps[there.piece], there.piece};
      if (!back && !forth && later) return true;
    }
    return false;
  }

  TracedPath hand_over() {
    TracedPath path;
    Branch branch;
    bool computed = true;
    for (const Step& step : steps_) {
      const std::vector<Port>& ports = graph_.ports(step.piece);
      path.passages.push_back({step.piece, ports[step.entry].name, ports[step.exit].name});
      computed = computed && append_stretches(branch, step);
    }
    const bool faultless = std::none_of(findings_.begin(), findings_.end(),
                                        [](const Finding& f) { return f.severity == Severity::fault; });
    path.complete = ends_outdoors_ && computed && faultless;
    if (!steps_.empty()) {
      set_ends(branch, path.network);
      path.network.branches.push_back(std::move(branch));
    }
    path.findings = std::move(findings_);
    return path;
  }

  /// False where the piece's values do not allow it.
  bool append_stretches(Branch& branch, const Step& step) {
    const KnownPiece& known = graph_.piece(step.piece).known;
    if (!graph_.piece(step.piece).sound) return false;
    const std::vector<Port>& ports = graph_.ports(step.piece);
    const PieceView view(design_, library_, design_.pieces[step.piece], *known.type);
    std::vector<Stretch> stretches =
        known.shape->passage(view, step.piece, ports[step.entry].name, ports[step.exit].name);
    Length height = ports[step.entry].at.z;
    if (!branch.stretches.empty()) close_joint(branch.stretches.back(), height);
    for (Stretch& stretch : stretches) {
      stretch.start_height = height;
      height += stretch.rise;
    }
    branch.stretches.insert(branch.stretches.end(), std::make_move_iterator(stretches.begin()),
                            std::make_move_iterator(stretches.end()));
    if (!known.shape->left_out().empty()) {
      note(FindingCode::left_out, Severity::note, step.piece, std::string(known.shape->left_out()));
    }
    return true;
  }

  /// Pieces stand on tenths of a millimetre, so heights at a joint may differ by as much: the play goes to the end of
  /// the stretch before, and heights along the path have no jumps.
  static void close_joint(Stretch& before, Length height) {
    const Length play = height - (before.start_height + before.rise);
    if (bu::abs(play) > joint_tolerance) return;
    before.rise += play;
    before.length = std::max(before.length, bu::abs(before.rise));
  }

  void set_ends(Branch& branch, FlueNetwork& network) const {
    const Port& inlet = graph_.port({steps_.front().piece, steps_.front().entry});
    const EndKind kind = inlet.kind == PortKind::room_air ? EndKind::room_air : EndKind::outdoor_air;
    branch.from = {kind, 0, inlet.at.z};
    const Length end =
        branch.stretches.empty() ? inlet.at.z : branch.stretches.back().start_height + branch.stretches.back().rise;
    branch.to = {ends_outdoors_ ? EndKind::outdoor_air : EndKind::node, 0, end};
    if (!ends_outdoors_) network.nodes.resize(1);
  }

  const Design& design_;
  const Library& library_;
  PortGraph graph_;
  std::vector<Finding> findings_;
  Reach reach_;
  std::vector<Step> steps_;
  bool ends_outdoors_ = false;
};

/// What stands where something else stands.
void add_place_findings(std::vector<Finding>& findings, const Design& design, const Library& library) {
  const std::vector<PieceGeometry> shapes = geometries(design, library);
  std::vector<const PieceGeometry*> bodies;
  bodies.reserve(shapes.size());
  for (const PieceGeometry& shape : shapes) bodies.push_back(&shape);
  for (const Clash& clash : clashes(design, bodies)) {
    Finding finding;
    finding.code = FindingCode::clash;
    finding.severity = Severity::caution;
    finding.piece = design.pieces[clash.a].id;
    finding.text = design.pieces[clash.b].id;
    finding.value = clash.depth;
    findings.push_back(std::move(finding));
  }
  for (const HouseCrossing& crossing : house_crossings(design, library, bodies)) {
    Finding finding;
    finding.code = FindingCode::through_house;
    finding.severity = Severity::caution;
    finding.piece = design.pieces[crossing.piece].id;
    finding.field = std::string(word(crossing.part));
    findings.push_back(std::move(finding));
  }
}

}  // namespace

TracedPath trace_path(const Design& design, const Library& library) {
  TracedPath path = Tracer(design, library).trace();
  add_place_findings(path.findings, design, library);
  return path;
}

}  // namespace fluewright
