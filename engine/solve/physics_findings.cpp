// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/physics_findings.hpp"

#include "engine/gas/species.hpp"
#include "engine/heat/gas_radiation.hpp"

#include <algorithm>
#include <span>

namespace fluewright {
namespace {

/// Under this excess air a stick fire starves, over the other it is cooled (common practice, no source).
constexpr double starving_below = 1.5;
constexpr double overdrawn_above = 6.0;

/// Every stretch of rows in a row that lie above the room beside them.
void say_leaks_along(Assessment& a, const Design& design, const std::vector<SliceState>& rows) {
  const auto above = [](const SliceState& row) {
    return row.beside_room ? Pressure(row.gauge - row.room_gauge) : Pressure{};
  };
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (!(above(rows[i]) > Pressure{})) continue;
    const std::size_t first = i;
    Pressure most{};
    for (; i < rows.size() && above(rows[i]) > Pressure{}; ++i) most = std::max(most, above(rows[i]));
    const PieceId& from = design.pieces[rows[first].piece].id;
    const PieceId& to = design.pieces[rows[i - 1].piece].id;
    a.findings.push_back({FindingCode::smoke_leak, Severity::caution, from, {}, most, {}, {}, from == to ? PieceId{} : to});
  }
}

void say_leaks(Assessment& a, const Design& design) {
  say_leaks_along(a, design, a.profile);
  for (const BranchState& s : a.branches) {
    if (s.flue_share > Ratio(0.0)) say_leaks_along(a, design, s.profile);  // air that leaks out is no smoke
  }
}

/// Whether what a branch written from free air joins has been through the fire.
bool joins_flue_gas(const Assessment& a, const Branch& branch) {
  return std::any_of(a.branches.begin(), a.branches.end(), [&](const BranchState& s) {
    const Branch& other = a.path.network.branches[s.branch];
    const BranchEnd& sink = s.flow < MassFlow{} ? other.from : other.to;
    return sink.kind == EndKind::node && sink.node == branch.to.node && s.flue_share > Ratio(0.0);
  });
}

void say_wet(Assessment& a, const Design& design) {
  if (a.condensation && a.condensation->piece) {
    a.findings.push_back({FindingCode::wet_wall, Severity::caution, design.pieces[*a.condensation->piece].id, {},
                          a.condensation->into_piece, {}, {}, {}});
  }
}

void say_air(Assessment& a) {
  if (!a.path.complete || a.design_flow.empty()) return;
  const OperatingPoint* p = a.running_point();
  if (p == nullptr) {
    a.findings.push_back({FindingCode::never_draws_forward, Severity::caution, {}, {}, Ratio(0.0), {}, {}, {}});
  } else if (p->excess_air_ratio < starving_below) {
    a.findings.push_back({FindingCode::short_of_air, Severity::caution, {}, {}, p->excess_air_ratio, {}, {}, {}});
  } else if (p->excess_air_ratio > overdrawn_above) {
    a.findings.push_back({FindingCode::overdrawn, Severity::caution, {}, {}, p->excess_air_ratio, {}, {}, {}});
  }
  const bool backwards = std::any_of(a.operating_points.begin(), a.operating_points.end(),
                                     [](const OperatingPoint& q) { return q.stable && !q.forward; });
  if (backwards) {
    // A fire lit while air stands in the flue goes the way the air goes.
    const Severity severity = a.standing_draft > Pressure{} ? Severity::note : Severity::caution;
    a.findings.push_back({FindingCode::can_run_backwards, severity, {}, {}, a.standing_draft, {}, {}, {}});
  }
}

void say_narrow_masses(Assessment& a, const Design& design, const SlicedPath& path) {
  for (std::size_t i = 0; i < path.walls.size(); ++i) {
    if (!path.walls[i].mass_too_narrow) continue;
    const Stretch& stretch = path.branch->stretches[i];
    const Length least = std::min(stretch.embedding.width, stretch.embedding.height);
    a.findings.push_back({FindingCode::out_of_range, Severity::caution, design.pieces[stretch.piece].id,
                          stretch.embedding.width < stretch.embedding.height ? "mass_width" : "mass_height", least,
                          FieldValue(path.walls[i].outside_diameter), {}, {}});
  }
}

/// Materials whose published conductivities do not reach as far as the wall is hot. `rows` are the path's own, one a
/// slice.
void say_hot_materials(Assessment& a, const Design& design, const SlicedPath& path, std::span<const SliceState> rows,
                       std::vector<const Material*>& said) {
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const SliceState& row = rows[i];
    for (const WallLayerView& layer : path.stretch_of(path.slices[i]).wall) {
      if (layer.material->covers(row.wall) || std::find(said.begin(), said.end(), layer.material) != said.end()) continue;
      said.push_back(layer.material);
      const ValidRange<Temperature> known = layer.material->covered();
      Finding finding{FindingCode::beyond_validity, Severity::note, design.pieces[row.piece].id, {}, row.wall, {},
                      FieldValue{known.high}, layer.material->name};
      if (known.low > kelvins(0.0)) finding.lowest = FieldValue{known.low};
      a.findings.push_back(std::move(finding));
    }
  }
}

/// How far a relation is taken outside its published temperatures along the path.
struct Furthest {
  TemperatureDifference by{};
  const SliceState* row = nullptr;
  Temperature level;
};

using Rows = std::vector<const SliceState*>;

void say_relation(Assessment& a, const Design& design, const ValidRange<Temperature>& range, const Rows& rows) {
  Furthest furthest;
  for (const SliceState* row : rows) {
    const Temperature level = row->gas;
    const TemperatureDifference by = std::max(TemperatureDifference(range.low - level), TemperatureDifference(level - range.high));
    if (by > furthest.by) furthest = {by, row, level};
  }
  if (furthest.row == nullptr) return;
  a.findings.push_back({FindingCode::relation_left, Severity::note, design.pieces[furthest.row->piece].id, {}, furthest.level,
                        FieldValue{range.low}, FieldValue{range.high},
                        std::string(range.relation) + " (" + std::string(range.source) + ")"});
}

/// The narrowest of the ranges of a property over the gases of the flue.
ValidRange<Temperature> narrowest(ValidRange<Temperature> (*range_of)(Species)) {
  ValidRange<Temperature> all = range_of(all_species.front());
  for (const Species s : all_species) {
    const ValidRange<Temperature> one = range_of(s);
    all.low = std::max(all.low, one.low);
    all.high = std::min(all.high, one.high);
  }
  return all;
}

/// Relations of the gas that are taken beyond the temperatures for which they are published: by rows of gas that has
/// been through the fire, and by all rows.
void say_relations(Assessment& a, const Design& design, const Rows& burnt, const Rows& all) {
  say_relation(a, design, gas_radiation_range(), burnt);
  say_relation(a, design, narrowest(&viscosity_range), burnt);
  say_relation(a, design, narrowest(&conductivity_range), burnt);
  say_relation(a, design, narrowest(&heat_capacity_range), all);
}

/// Share of the gas at the cap under which room air that joins behind the fire is not worth a word (chosen: what a
/// stack's joints let in anyway).
constexpr double worth_a_word = 0.02;

/// What a side branch from free air does.
void say_of_way_in(Assessment& a, const Design& design, const BranchState& s, const Branch& branch) {
  const std::size_t opens_at = a.path.ways[s.branch].front().piece;
  const PieceId& piece = design.pieces[opens_at].id;
  const bool into_room = branch.from.kind == EndKind::room_air;
  const bool outwards = s.flow < MassFlow{};
  if (outwards && into_room && s.flue_share > Ratio(0.0)) {
    a.findings.push_back({FindingCode::branch_smokes, Severity::caution, piece, {}, MassFlow(-s.flow), {}, {}, {}});
  } else if (outwards && s.share > Ratio(worth_a_word)) {
    a.findings.push_back({FindingCode::branch_blows_out, Severity::note, piece, {}, MassFlow(-s.flow), {}, {}, {}});
  } else if (s.flap && *s.flap > Ratio(0.0)) {
    a.findings.push_back({FindingCode::flap_opens, Severity::note, piece, {}, *s.flap, {}, {}, {}});
  } else if (!outwards && !s.on_main_path && s.share > Ratio(worth_a_word) && joins_flue_gas(a, branch)) {
    a.findings.push_back({FindingCode::branch_draws_air, Severity::note, piece, {}, s.share, {}, {}, {}});
  }
}

}  // namespace

void say_about_walls(Assessment& a, const Design& design, const SlicedPath& path) {
  std::vector<const Material*> said;
  say_narrow_masses(a, design, path);
  say_hot_materials(a, design, path, a.profile, said);
  Rows burnt;
  Rows all;
  for (std::size_t i = 0; i < a.profile.size(); ++i) {
    all.push_back(&a.profile[i]);
    if (!burnt.empty() || path.stretch_of(path.slices[i]).fire) burnt.push_back(&a.profile[i]);
  }
  say_relations(a, design, burnt, all);
}

void say_about_walls(Assessment& a, const Design& design, const SlicedNetwork& network) {
  std::vector<const Material*> said;
  Rows burnt;
  Rows all;
  const auto look = [&](const BranchState& s, std::span<const SliceState> rows) {
    const SlicedPath& path = network.paths[s.branch];
    say_hot_materials(a, design, path, rows, said);
    bool met = s.branch != network.fire_branch && s.flue_share > Ratio(0.0);
    for (std::size_t i = 0; i < rows.size(); ++i) {
      met = met || path.stretch_of(path.slices[i]).fire;
      all.push_back(&rows[i]);
      if (met) burnt.push_back(&rows[i]);
    }
  };
  for (const SlicedPath& path : network.paths) say_narrow_masses(a, design, path);
  std::size_t before = 0;
  for (const BranchState& s : a.branches) {
    const std::size_t slices = network.paths[s.branch].slices.size();
    // The main path's branches come first, in its order.
    look(s, s.on_main_path ? std::span<const SliceState>(a.profile).subspan(before, slices) : s.profile);
    if (s.on_main_path) before += slices;
  }
  say_relations(a, design, burnt, all);
}

void say_about_branches(Assessment& a, const Design& design) {
  for (const BranchState& s : a.branches) {
    const Branch& branch = a.path.network.branches[s.branch];
    // The main path's own inlet may be the one that blows out.
    const bool inlet = s.branch == a.path.network.main_path.front();
    if (branch.from.kind != EndKind::node && (!s.on_main_path || inlet)) say_of_way_in(a, design, s, branch);
  }
}

void add_physics_findings(Assessment& a, const Design& design) {
  if (a.path.complete) say_leaks(a, design);
  say_wet(a, design);
  say_air(a);
}

}  // namespace fluewright
