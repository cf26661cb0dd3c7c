// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/findings.hpp"

#include "engine/advice/finding_case.hpp"

#include <algorithm>

namespace fluewright {

namespace advice {

Finding& FindingCase::add(FindingCode code, Severity severity, std::optional<std::size_t> piece, FieldValue value) {
  Finding finding;
  finding.code = code;
  finding.severity = severity;
  if (piece) finding.piece = design.pieces[*piece].id;
  finding.value = std::move(value);
  found.push_back(std::move(finding));
  return found.back();
}

bool has_lid(const FindingCase& of, std::size_t piece) {
  const PieceId& id = of.design.pieces[piece].id;
  return std::any_of(of.drawn[piece].geometry.ports.begin(), of.drawn[piece].geometry.ports.end(), [&](const Port& port) {
    if (port.kind != PortKind::joint) return false;
    const auto other = of.design.joined_to({id, port.name});
    if (!other) return port.may_stay_shut;
    const Piece* lid = of.design.piece(other->piece);
    const PieceType* type = lid != nullptr ? of.library.piece_type(lid->type) : nullptr;
    return type != nullptr && type->shape == "end_cap";
  });
}

}  // namespace advice

namespace {

/// Among findings of one severity the one that costs most comes first.
int weight(FindingCode code) {
  switch (code) {
    case FindingCode::unreached:
    case FindingCode::fan_dependent:
    case FindingCode::will_not_draw: return 0;
    case FindingCode::near_combustibles:
    case FindingCode::hidden_single_wall: return 1;
    case FindingCode::never_draws_forward: return 2;
    case FindingCode::can_run_backwards: return 3;
    case FindingCode::marginal: return 4;
    case FindingCode::smoke_leak: return 5;
    case FindingCode::house_suction: return 6;
    case FindingCode::no_alarm_note: return 7;
    case FindingCode::short_of_air: return 8;
    case FindingCode::low_outlet: return 9;
    case FindingCode::floor_overloaded: return 10;
    case FindingCode::seat_too_hot: return 11;
    case FindingCode::overdrawn:
    case FindingCode::choke_inlet: return 12;
    case FindingCode::exit_too_hot: return 13;
    case FindingCode::water_pools: return 14;
    case FindingCode::wet_wall: return 15;
    case FindingCode::missing_cleanout: return 17;
    default: break;
  }
  return 16;
}

/// The main path's stretches one after another; of a path that is not complete as far as it leads.
std::vector<Stretch> main_way(const FlueNetwork& network) {
  std::vector<Stretch> way;
  if (network.branches.empty()) return way;
  for (const std::size_t branch : network.main_path) {
    const auto& stretches = network.branches[branch].stretches;
    way.insert(way.end(), stretches.begin(), stretches.end());
  }
  return way;
}

/// Says something of gas that nothing carries to the open air yet.
bool speaks_of_gas(FindingCode code) {
  switch (code) {
    case FindingCode::smoke_leak:
    case FindingCode::wet_wall:
    case FindingCode::short_of_air:
    case FindingCode::overdrawn:
    case FindingCode::beyond_validity:
    case FindingCode::relation_left:
    case FindingCode::fan_gas_too_hot:
    case FindingCode::fan_motor_too_hot:
    case FindingCode::fan_motor_wet:
    case FindingCode::fan_beyond_sheet: return true;
    default: break;
  }
  return false;
}

}  // namespace

std::vector<Finding> all_findings(const Design& design, const Library& library, const Assessment& assessment) {
  std::vector<Finding> found = assessment.findings;
  advice::FindingCase of{design, library, assessment, drawn_pieces(design, library), found, main_way(assessment.path.network)};
  advice::find_draft(of);
  advice::find_on_drawing(of);
  advice::find_water(of);
  advice::find_cleanouts(of);
  advice::find_comfort(of);
  if (!assessment.path.complete) {
    found.erase(std::remove_if(found.begin(), found.end(), [](const Finding& f) { return speaks_of_gas(f.code); }), found.end());
  }
  std::stable_sort(found.begin(), found.end(), [](const Finding& a, const Finding& b) {
    if (a.severity != b.severity) return a.severity > b.severity;
    return weight(a.code) < weight(b.code);
  });
  return found;
}

std::string acknowledged_as(const Finding& finding) {
  std::string name(finding_name(finding.code));
  const bool may_come_twice = finding.code == FindingCode::low_outlet || finding.code == FindingCode::out_of_range;
  return may_come_twice && !finding.field.empty() ? name + '.' + finding.field : name;
}

const Acknowledgement* acknowledgement_of(const Finding& finding, const Design& design) {
  const std::string name = acknowledged_as(finding);
  const auto it = std::find_if(design.acknowledged.begin(), design.acknowledged.end(), [&](const Acknowledgement& a) {
    return a.finding == name && a.piece == finding.piece;
  });
  return it == design.acknowledged.end() ? nullptr : &*it;
}

Design acknowledged(const Design& design, const Finding& finding, const std::string& reason) {
  Design changed = design;
  const std::string name = acknowledged_as(finding);
  const auto it = std::find_if(changed.acknowledged.begin(), changed.acknowledged.end(), [&](const Acknowledgement& a) {
    return a.finding == name && a.piece == finding.piece;
  });
  if (reason.empty()) {
    if (it != changed.acknowledged.end()) changed.acknowledged.erase(it);
  } else if (it != changed.acknowledged.end()) {
    it->reason = reason;
  } else {
    changed.acknowledged.push_back({name, finding.piece, reason});
  }
  return changed;
}

bool same_matter(const Finding& a, const Finding& b) {
  return a.code == b.code && a.piece == b.piece && a.field == b.field;
}

}  // namespace fluewright
