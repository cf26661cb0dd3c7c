// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/path.hpp"

#include "engine/layout/clash.hpp"
#include "engine/layout/flue_map.hpp"
#include "engine/layout/house.hpp"
#include "engine/layout/network_builder.hpp"
#include "engine/layout/trace_ways.hpp"

#include <algorithm>
#include <utility>

namespace fluewright {

namespace {

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

  /// At least one inlet, one outlet, one fire.
  void count_ends() {
    if (graph_.inlets().empty()) note(FindingCode::no_inlet, Severity::fault, no_piece);
    const std::vector<PortAt>& outlets = graph_.outlets();
    if (outlets.empty()) note(FindingCode::no_outlet, Severity::fault, no_piece);
    for (std::size_t i = 1; i < outlets.size(); ++i) {
      note(FindingCode::several_outlets, Severity::fault, outlets[i].piece, graph_.port(outlets[i]).name);
    }
    std::size_t fires = 0;
    for (std::size_t i = 0; i < design_.pieces.size(); ++i) {
      const Shape* shape = graph_.piece(i).known.shape;
      if (shape && shape->holds_fire() && ++fires > 1) note(FindingCode::several_fires, Severity::fault, i);
    }
    has_fire_ = fires > 0;
    if (fires == 0) note(FindingCode::no_fire, Severity::fault, no_piece);
  }

  void walk() {
    if (graph_.inlets().empty()) return;
    const PortAt inlet = first_inlet();
    reach_ = graph_.reach_from(inlet.piece);
    const std::vector<PortAt>& outlets = graph_.outlets();
    const auto reached = std::find_if(outlets.begin(), outlets.end(),
                                      [this](const PortAt& outlet) { return reach_.steps[outlet.piece] != no_piece; });
    if (reached != outlets.end()) {
      ends_outdoors_ = true;
      map_ways(inlet, *reached);
    } else {
      const std::size_t last = farthest_end();
      steps_to(last, open_exit(last, last == inlet.piece ? inlet.port : reach_.back[last].port), inlet.port);
      if (goes_round()) note(FindingCode::loop, Severity::fault, last);
    }
    check_inlets();
  }

  /// The first one that is joined to anything, else the first.
  PortAt first_inlet() const {
    const std::vector<PortAt>& inlets = graph_.inlets();
    const auto joined = std::find_if(inlets.begin(), inlets.end(), [this](const PortAt& inlet) {
      for (std::size_t p = 0; p < graph_.ports(inlet.piece).size(); ++p) {
        if (graph_.is_joined({inlet.piece, p})) return true;
      }
      return false;
    });
    return joined != inlets.end() ? *joined : inlets.front();
  }

  /// The main path and whatever branches off it; where no way leads through a fire, the shortest to the open air.
  void map_ways(PortAt inlet, PortAt outlet) {
    const FlueMap map{graph_, reach_};
    main_ = map.main_path();
    if (main_.empty()) {
      if (has_fire_) note(FindingCode::no_fire, Severity::fault, no_piece);  // there is one, but not on the way
      steps_to(outlet.piece, outlet.port, inlet.port);
      return;
    }
    sides_ = map.side_ways(main_);
    steps_ = straight_through(main_);
    std::vector<Way> all = main_;
    all.insert(all.end(), sides_.begin(), sides_.end());
    for (const std::size_t piece : map.rings_that_lead_nowhere(all)) note(FindingCode::loop, Severity::fault, piece);
  }

  /// A way in for air that is joined to nothing the path passes is one too many.
  void check_inlets() {
    for (const PortAt& inlet : graph_.inlets()) {
      if (reach_.steps[inlet.piece] == no_piece) {
        note(FindingCode::several_inlets, Severity::fault, inlet.piece, graph_.port(inlet).name);
      }
    }
  }

  /// No end is left that a piece could be joined to: the path bites its tail.
  bool goes_round() const {
    std::size_t joined = 0;
    for (const std::size_t piece : reach_.order) {
      for (std::size_t p = 0; p < graph_.ports(piece).size(); ++p) {
        if (graph_.port({piece, p}).kind != PortKind::joint) continue;
        if (!graph_.is_joined({piece, p})) return false;
        ++joined;
      }
    }
    return joined / 2 >= reach_.order.size();
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

  /// Open ends and loose pieces.
  void check_the_rest() {
    const std::size_t start = reach_.order.empty() ? first_known() : reach_.order.front();
    if (start == no_piece) return;
    if (reach_.order.empty()) reach_ = graph_.reach_from(start);
    for (std::size_t i = 0; i < design_.pieces.size(); ++i) {
      if (reach_.steps[i] == no_piece) {
        if (graph_.piece(i).known.shape) note(FindingCode::unreached, Severity::caution, i);
      } else {
        check_open_ends(i);
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

  [[nodiscard]] bool is_faultless() const {
    return std::none_of(findings_.begin(), findings_.end(),
                        [](const Finding& f) { return f.severity == Severity::fault; });
  }

  void take_over(NetworkBuilder& builder, TracedPath& path) {
    for (const std::size_t piece : builder.left_out()) {
      note(FindingCode::left_out, Severity::note, piece, std::string(graph_.piece(piece).known.shape->left_out()));
    }
    path.network = std::move(builder.network());
    path.ways = std::move(builder.ways());
  }

  TracedPath hand_over() {
    TracedPath path;
    path.passages = passages_of(steps_, graph_);
    if (ends_outdoors_ && !main_.empty() && is_faultless()) {
      NetworkBuilder whole{design_, library_, graph_};
      path.complete = whole.add_all(main_, sides_);
      if (path.complete) take_over(whole, path);
    }
    if (!path.complete && !steps_.empty()) {
      NetworkBuilder one{design_, library_, graph_};
      path.complete = one.add_one(steps_, ends_outdoors_) && ends_outdoors_ && is_faultless();
      take_over(one, path);
    }
    path.findings = std::move(findings_);
    return path;
  }

  const Design& design_;
  const Library& library_;
  PortGraph graph_;
  std::vector<Finding> findings_;
  Reach reach_;
  std::vector<Way> main_;
  std::vector<Way> sides_;
  std::vector<WayStep> steps_;
  bool ends_outdoors_ = false;
  bool has_fire_ = false;
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

TracedPath trace_ways(const Design& design, const Library& library) { return Tracer(design, library).trace(); }

TracedPath trace_path(const Design& design, const Library& library) {
  TracedPath path = trace_ways(design, library);
  add_place_findings(path.findings, design, library);
  return path;
}

}  // namespace fluewright
