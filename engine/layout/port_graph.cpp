// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/port_graph.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace fluewright {

namespace {

/// Sections whose areas differ by more than this share do not fit (chosen: a sheet-metal lap is less).
constexpr double fitting_tolerance = 0.02;

bool fits(const Section& a, const Section& b) {
  const double ratio = a.area() / b.area();
  return ratio > 1.0 - fitting_tolerance && ratio < 1.0 / (1.0 - fitting_tolerance);
}

Angle angle_between(const Heading& a, const Heading& b) {
  const Frame fa = frame_of(a);
  const Frame fb = frame_of(b);
  double cosine = 0.0;
  for (int i = 0; i < 3; ++i) cosine += fa.forward[i] * fb.forward[i];
  return std::acos(std::clamp(cosine, -1.0, 1.0)) * radian;
}

}  // namespace

PortGraph::PortGraph(const Design& design, const Library& library) : pieces_{drawn_pieces(design, library)} {
  std::unordered_map<std::string_view, std::size_t> by_id;
  by_id.reserve(design.pieces.size());
  joined_.reserve(design.pieces.size());
  for (std::size_t i = 0; i < design.pieces.size(); ++i) {
    by_id.try_emplace(design.pieces[i].id, i);
    const std::vector<Port>& ports = this->ports(i);
    joined_.emplace_back(ports.size());
    for (std::size_t p = 0; p < ports.size(); ++p) {
      if (ports[p].beside_the_way) continue;
      const bool outdoors = ports[p].kind == PortKind::outdoor_air;
      if (ports[p].kind == PortKind::room_air || (outdoors && p == 0)) inlets_.push_back({i, p});
      if (outdoors && p != 0) outlets_.push_back({i, p});
    }
  }
  for (const Joint& joint : design.joints) join(joint, by_id);
}

void PortGraph::join(const Joint& joint, const std::unordered_map<std::string_view, std::size_t>& by_id) {
  const std::optional<PortAt> a = find(joint.a, by_id);
  const std::optional<PortAt> b = find(joint.b, by_id);
  if (!a || !b) return;
  const bool a_free = is_free(*a, joint.a);
  const bool b_free = is_free(*b, joint.b);
  if (!a_free || !b_free) return;
  joined_[a->piece][a->port] = *b;
  joined_[b->piece][b->port] = *a;
  compare(joint, port(*a), port(*b));
}

std::optional<PortAt> PortGraph::find(const PortRef& ref,
                                      const std::unordered_map<std::string_view, std::size_t>& by_id) {
  const auto piece = by_id.find(ref.piece);
  if (piece != by_id.end()) {
    const std::vector<Port>& ports = this->ports(piece->second);
    for (std::size_t p = 0; p < ports.size(); ++p) {
      if (ports[p].name == ref.port) return PortAt{piece->second, p};
    }
    if (!pieces_[piece->second].known.shape)
      return std::nullopt;  // a piece of unknown type has no ports; that is said already
  }
  note(FindingCode::unknown_port, Severity::fault, ref);
  return std::nullopt;
}

bool PortGraph::is_free(PortAt at, const PortRef& ref) {
  if (port(at).kind != PortKind::joint) {
    note(FindingCode::joined_to_air, Severity::fault, ref);
    return false;
  }
  if (is_joined(at)) {
    note(FindingCode::port_taken, Severity::fault, ref);
    return false;
  }
  return true;
}

void PortGraph::compare(const Joint& joint, const Port& a, const Port& b) {
  const Length apart = distance(a.at, b.at);
  if (apart > joint_tolerance) {
    note(FindingCode::gap, Severity::fault, joint.a, apart, joint.b.piece);
  } else if (!same_direction(a.outward, opposite(b.outward))) {
    note(FindingCode::gap, Severity::fault, joint.a, angle_between(a.outward, opposite(b.outward)), joint.b.piece);
  }
  if (!fits(a.section, b.section)) {
    note(FindingCode::bore_mismatch, Severity::caution, joint.a, a.section.equal_area_diameter(), joint.b.piece);
    findings_.back().highest = b.section.equal_area_diameter();
  }
}

void PortGraph::note(FindingCode code, Severity severity, const PortRef& ref, FieldValue value, std::string text) {
  Finding finding;
  finding.code = code;
  finding.severity = severity;
  finding.piece = ref.piece;
  finding.field = ref.port;
  finding.value = std::move(value);
  finding.text = std::move(text);
  findings_.push_back(std::move(finding));
}

Reach PortGraph::reach_from(std::size_t piece) const {
  const std::size_t count = pieces_.size();
  Reach reach{std::vector<PortAt>(count), {piece}, std::vector<std::size_t>(count, no_piece)};
  reach.steps[piece] = 0;
  for (std::size_t next = 0; next < reach.order.size(); ++next) {
    const std::size_t here = reach.order[next];
    for (const PortAt& there : joined_[here]) {
      if (there.piece == no_piece || reach.steps[there.piece] != no_piece) continue;
      reach.steps[there.piece] = reach.steps[here] + 1;
      reach.back[there.piece] = there;
      reach.order.push_back(there.piece);
    }
  }
  return reach;
}

}  // namespace fluewright
