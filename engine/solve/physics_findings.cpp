// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/physics_findings.hpp"

#include "engine/gas/species.hpp"
#include "engine/heat/gas_radiation.hpp"

#include <algorithm>

namespace fluewright {
namespace {

/// Under this excess air a stick fire starves, over the other it is cooled (common practice, no source).
constexpr double starving_below = 1.5;
constexpr double overdrawn_above = 6.0;

void say_leaks(Assessment& a, const Design& design) {
  std::vector<Pressure> above(design.pieces.size());
  for (const SliceState& row : a.profile) {
    if (row.beside_room) above[row.piece] = std::max(above[row.piece], Pressure(row.gauge - row.room_gauge));
  }
  for (std::size_t i = 0; i < above.size(); ++i) {
    if (above[i] > Pressure{}) {
      a.findings.push_back({FindingCode::smoke_leak, Severity::caution, design.pieces[i].id, {}, above[i], {}, {}, {}});
    }
  }
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

/// Materials whose published conductivities do not reach as far as the wall is hot.
void say_hot_materials(Assessment& a, const Design& design, const SlicedPath& path) {
  std::vector<const Material*> said;
  std::size_t slice = 0;
  for (const SliceState& row : a.profile) {
    const Stretch& stretch = path.stretch_of(path.slices[slice++]);
    for (const WallLayerView& layer : stretch.wall) {
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

void say_relation(Assessment& a, const Design& design, const ValidRange<Temperature>& range, std::size_t first,
                  Temperature SliceState::*of) {
  Furthest furthest;
  for (std::size_t i = first; i < a.profile.size(); ++i) {
    const Temperature level = a.profile[i].*of;
    const TemperatureDifference by = std::max(TemperatureDifference(range.low - level), TemperatureDifference(level - range.high));
    if (by > furthest.by) furthest = {by, &a.profile[i], level};
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

/// Relations of the gas that are taken beyond the temperatures for which they are published.
void say_relations(Assessment& a, const Design& design, const SlicedPath& path) {
  std::size_t burnt = 0;
  while (burnt < a.profile.size() && !path.stretch_of(path.slices[burnt]).fire) ++burnt;
  say_relation(a, design, gas_radiation_range(), burnt, &SliceState::gas);
  say_relation(a, design, narrowest(&viscosity_range), burnt, &SliceState::gas);
  say_relation(a, design, narrowest(&conductivity_range), burnt, &SliceState::gas);
  say_relation(a, design, narrowest(&heat_capacity_range), 0, &SliceState::gas);
}

}  // namespace

void add_physics_findings(Assessment& a, const Design& design, const SlicedPath& path) {
  if (a.path.complete) say_leaks(a, design);
  say_wet(a, design);
  say_air(a);
  say_narrow_masses(a, design, path);
  say_hot_materials(a, design, path);
  say_relations(a, design, path);
}

}  // namespace fluewright
