// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/working/path_sums.hpp"

#include <algorithm>

namespace fluewright {

namespace {

/// A riser whose loss comes back to the gas in the chamber around it.
bool loss_comes_back(const Retrace& run, std::size_t slice, Place place) {
  return place == Place::jacket && std::any_of(run.path.jackets.begin(), run.path.jackets.end(), [slice](const JacketGroup& g) {
           return g.first <= slice && slice < g.last;
         });
}

void add_heat(const Retrace& run, std::size_t row, PieceSum& sum) {
  const SliceVisit& visit = run.visits[row];
  const Place place = run.path.stretch_of(run.path.slices[visit.slice]).place;
  const Power heat = visit.heat.through_wall;
  sum.lost += heat - visit.gained;
  if (loss_comes_back(run, visit.slice, place)) {
    if (run.age && *run.age != BenchAge::charged) sum.into_mass += heat;
    return;
  }
  if (place == Place::mass || place == Place::ground) sum.into_mass += heat;
  if (place == Place::room || place == Place::jacket) sum.to_room += heat;
}

}  // namespace

std::vector<PieceSum> piece_sums(const Retrace& run) {
  std::vector<PieceSum> sums;
  for (std::size_t i = 0; i < run.rows.size(); ++i) {
    const SliceState& row = run.rows[i];
    if (sums.empty() || sums.back().piece != row.piece) {
      PieceSum next;
      next.piece = row.piece;
      next.first = i;
      sums.push_back(next);
    }
    PieceSum& sum = sums.back();
    sum.last = i + 1;
    sum.buoyancy += row.buoyancy;
    sum.resistance += row.friction + row.local;
    sum.acceleration += row.acceleration;
    sum.fan += row.fan;
    add_heat(run, i, sum);
  }
  return sums;
}

}  // namespace fluewright
