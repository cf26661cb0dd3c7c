// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/burn_cells.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace fluewright::kernel {
namespace {

/// A lid has no gas of its own; it is lent this much of the slice after it (chosen: every state needs some storage).
constexpr double gas_under_lid = 0.1;
/// Gas that a junction without a size holds: a litre (chosen).
constexpr double least_node_volume = 1e-3;  // [m3]
constexpr double thickness_of_holes = 0.01;  // [m]

EndLoss losses_of(const std::vector<LocalLoss>& losses, double area) {
  EndLoss sum;
  const double scale = 1.0 / (area * area);
  for (const LocalLoss& loss : losses) {
    const bool mitre = loss.correction == LocalLoss::Reynolds::mitre;
    (mitre ? sum.mitre_forward : sum.forward) += scale * loss.forward;
    (mitre ? sum.mitre_backward : sum.backward) += scale * loss.backward;
  }
  return sum;
}

template <class Table, class... Key>
std::size_t found_in(const std::vector<Table>& tables, const Key&... key) {
  const auto it = std::find_if(tables.begin(), tables.end(), [&](const Table& t) { return t.is_for(key...); });
  return static_cast<std::size_t>(it - tables.begin());
}

bool conducts_alike(const Material* m) { return m == nullptr || m->conductivity_points.size() < 2; }

}  // namespace

BurnCells::BurnCells(const SlicedPath& path, const GasPair& gas, const AirRange& air, const BurnGrid& grid) {
  add_branch(path, gas, air, grid);
  main_path = {0};
  number();
}

BurnCells::BurnCells(const FlueNetwork& network, const std::vector<SlicedPath>& paths, std::optional<std::size_t> priming_hole,
                     const GasPair& gas, const AirRange& air, const BurnGrid& grid)
    : main_path{network.main_path} {
  for (const NetworkNode& node : network.nodes) {
    JunctionCell junction;
    junction.piece = node.piece;
    const double run = in(node.form.run, square_metre);
    junction.volume = std::max(run * std::sqrt(run), least_node_volume);
    if (run > 0.0) junction.form = node.form;
    junctions.push_back(junction);
  }
  for (std::size_t b = 0; b < network.branches.size(); ++b) {
    if (network.branches[b].opening) {
      add_hole(network.branches[b], priming_hole == b);
    } else {
      add_branch(paths[b], gas, air, grid);
    }
  }
  number();
}

void BurnCells::number() {
  for (Cell& cell : cells) {
    cell.base = unknowns;
    unknowns += 2 + cell.node_count;
  }
  for (JunctionCell& junction : junctions) {
    junction.base = unknowns;
    unknowns += 2;
  }
  for (FlapCell& flap : flaps) flap.unknown = unknowns++;
  for (std::size_t b = 0; b < branches.size(); ++b) {
    branches[b].flow = unknowns++;
    if (branches[b].fire != nowhere) fire_branch = b;
  }
}

void BurnCells::add_hole(const Branch& branch, bool priming_tee) {
  const Opening& o = *branch.opening;
  BranchCells b;
  b.first = b.last = cells.size();
  b.from = branch.from;
  b.to = branch.to;
  HoleCell hole;
  hole.area = in(o.area, square_metre);
  hole.shut_area = in(o.shut_area, square_metre);
  hole.priming_tee = priming_tee;
  // The air that a jet sets going: about as long as the hole is wide on either side (chosen; it is over in no time).
  const double width = std::sqrt(hole.area);
  b.inertia = (width + thickness_of_holes) / hole.area;
  if (o.set_draft) {
    hole.flap = flaps.size();
    flaps.push_back({0, in(*o.set_draft, pascal), in(o.span, pascal)});
  }
  b.hole = hole;
  branches.push_back(std::move(b));
}

void BurnCells::add_branch(const SlicedPath& path, const GasPair& gas, const AirRange& air, const BurnGrid& grid) {
  BranchCells b;
  b.first = cells.size();
  b.from = path.branch->from;
  b.to = path.branch->to;
  for (std::size_t i = 0; i < path.slices.size(); ++i) {
    add_cell(path, i, gas, air, grid);
    const Cell& cell = cells.back();
    b.inertia += cell.length / cell.area;
    if (cell.fire) b.fire = cells.size() - 1;
  }
  b.last = cells.size();
  for (std::size_t i = b.first; i + 1 < b.last; ++i) {
    if (!cells[i].lid) continue;
    const double lent = gas_under_lid * cells[i + 1].volume;
    cells[i].volume = lent;
    cells[i + 1].volume -= lent;
  }
  for (const JacketGroup& g : path.jackets) {
    CellJacket j{b.first + g.first, b.first + g.chamber, b.first + g.last, 0.0};
    for (std::size_t i = j.chamber; i < j.last; ++i) j.chamber_surface += cells[i].surface;
    b.jackets.push_back(j);
  }
  if (b.to.kind == EndKind::outdoor_air) {
    for (std::size_t i = b.last; i-- > b.first && cells[i].rise > 0.0;) b.foot = i;
  }
  branches.push_back(std::move(b));
}

void BurnCells::add_cell(const SlicedPath& path, std::size_t index, const GasPair& gas, const AirRange& air,
                         const BurnGrid& grid) {
  const Slice& slice = path.slices[index];
  const Stretch& stretch = path.stretch_of(slice);
  const WallGeometry& wall = path.walls[slice.stretch];
  Cell c;
  c.slice = index;
  c.piece = stretch.piece;
  c.place = stretch.place;
  c.under_sky = stretch.embedding.under_open_sky;
  c.lid = slice.lid;
  c.chamber = stretch.chamber;
  c.opens = slice.opens_stretch;
  c.closes = slice.closes_stretch;
  c.fire = stretch.fire && slice.opens_stretch;
  c.length = in(slice.length, metre);
  c.rise = in(slice.rise, metre);
  c.end_height = in(slice.end_height, metre);
  c.area = in(stretch.section.area(), square_metre);
  c.diameter = in(stretch.section.hydraulic_diameter(), metre);
  c.surface = in(slice.surface, square_metre);
  c.volume = c.length * c.area;
  c.friction = c.length / c.diameter / (c.area * c.area);
  if (c.opens) {
    c.at_start = losses_of(stretch.at_start, c.area);
    const AreaStep& step = path.steps[slice.stretch];
    if (step.narrow > Area{}) {
      const double narrow = in(step.narrow, square_metre);
      c.step_forward = step.forward / (narrow * narrow);
      c.step_backward = step.backward / (narrow * narrow);
    }
  }
  if (c.closes) c.at_end = losses_of(stretch.at_end, c.area);
  if (stretch.fan && (stretch.fan->at_end ? c.closes : c.opens)) c.fan = &*stretch.fan;
  c.upright_height = in(wall.upright_height, metre);
  if (stretch.lid) c.lid_shape = &*stretch.lid;
  const Ratio share = c.place == Place::mass ? wall.seat_share : wall.outer_share;
  c.outer_surface = c.surface * share;

  const double roughness = in(stretch.roughness, metre) / c.diameter;
  const double over_run = path.diameter_over_run[slice.stretch];
  c.film = found_in(tables.films, roughness, over_run);
  if (c.film == tables.films.size()) tables.films.emplace_back(roughness, over_run);
  c.radiation = found_in(tables.radiations, c.diameter);
  if (c.radiation == tables.radiations.size()) tables.radiations.emplace_back(gas, c.diameter, air.absolute);
  if (c.place != Place::ground && c.place != Place::jacket) c.outer = outer_film(outer_kind(stretch, wall, c.lid), air);

  const std::vector<WallNode> own = wall_nodes(stretch, wall, slice.surface, grid);
  c.first_node = nodes.size();
  c.node_count = own.size();
  for (const WallNode& node : own) {
    c.variable = c.variable || !conducts_alike(node.material) || !conducts_alike(node.gap_material);
    nodes.push_back(node);
  }
  cells.push_back(c);
}

std::size_t BurnCells::outer_film(const OuterKind& kind, const AirRange& air) {
  const auto it = std::find_if(tables.outers.begin(), tables.outers.end(), [&](const OuterFilm& f) { return f.kind() == kind; });
  if (it != tables.outers.end()) return static_cast<std::size_t>(it - tables.outers.begin());
  double coldest = air.room;
  double warmest = air.room;
  if (kind.place == Place::outdoors) {
    coldest = air.coldest_outdoors;
    warmest = air.warmest_outdoors;
  } else if (kind.place == Place::attic) {
    coldest = 0.5 * (air.room + air.coldest_outdoors);
    warmest = 0.5 * (air.room + air.warmest_outdoors);
  }
  tables.outers.emplace_back(kind, coldest, warmest, air.absolute, air.wind);
  return tables.outers.size() - 1;
}

}  // namespace fluewright::kernel
