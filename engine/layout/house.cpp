// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/house.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

constexpr Length sample_step = 20.0 * millimetre;

bool within(Length value, Length low, Length high) { return value > low && value < high; }

}  // namespace

std::string_view word(HousePart part) {
  switch (part) {
    case HousePart::wall: return "wall";
    case HousePart::ceiling: return "ceiling";
    case HousePart::roof: return "roof";
  }
  return {};
}

bool ridge_runs_east(const HouseOutline& house) { return house.east - house.west >= house.north - house.south; }

Length roof_height_at(const HouseOutline& house, const Position& at) {
  const bool east = ridge_runs_east(house);
  const Length low = (east ? house.south : house.west) - house.wall;
  const Length high = (east ? house.north : house.east) + house.wall;
  const Length half = 0.5 * (high - low);
  const Ratio away = bu::abs((east ? at.y : at.x) - (low + half)) / half;
  return house.eaves + (house.ridge - house.eaves) * (1.0 - static_cast<double>(away));
}

std::optional<HousePart> house_part_at(const HouseOutline& house, const Position& at) {
  const bool inside = within(at.x, house.west, house.east) && within(at.y, house.south, house.north);
  const bool covered = within(at.x, house.west - house.wall, house.east + house.wall) &&
                       within(at.y, house.south - house.wall, house.north + house.wall);
  if (!covered) return std::nullopt;
  if (bu::abs(at.z - roof_height_at(house, at)) < 0.5 * house.wall) return HousePart::roof;
  if (inside && within(at.z, house.ceiling, house.ceiling + house.ceiling_thickness)) return HousePart::ceiling;
  if (!inside && within(at.z, 0.0 * metre, roof_height_at(house, at))) return HousePart::wall;
  return std::nullopt;
}

std::vector<HouseCrossing> house_crossings(const Design& design, const Library& library,
                                           const std::vector<const PieceGeometry*>& geometries) {
  std::vector<HouseCrossing> found;
  if (!design.building) return found;
  for (std::size_t i = 0; i < geometries.size() && i < design.pieces.size(); ++i) {
    const PieceType* type = library.piece_type(design.pieces[i].type);
    if (geometries[i] == nullptr || type == nullptr || type->passes_house) continue;
    bool seen[3] = {false, false, false};
    for (const CentreLine& line : geometries[i]->lines) {
      for (std::size_t p = 1; p < line.points.size(); ++p) {
        const Position from = line.points[p - 1];
        const Position step = line.points[p] - from;
        const int samples = std::max(1, static_cast<int>(std::ceil(static_cast<double>(distance({}, step) / sample_step))));
        for (int s = 0; s <= samples; ++s) {
          const double share = static_cast<double>(s) / samples;
          const auto part = house_part_at(*design.building, {from.x + share * step.x, from.y + share * step.y, from.z + share * step.z});
          if (!part || seen[static_cast<int>(*part)]) continue;
          seen[static_cast<int>(*part)] = true;
          found.push_back({i, *part});
        }
      }
    }
  }
  return found;
}

HouseOutline house_around(const std::vector<PieceGeometry>& geometries, Length clearance) {
  HouseOutline house;
  bool first = true;
  Length top{};
  for (const PieceGeometry& geometry : geometries) {
    for (const CentreLine& line : geometry.lines) {
      const Length half = 0.5 * line.width;
      for (const Position& point : line.points) {
        if (first) {
          house.west = house.east = point.x;
          house.south = house.north = point.y;
          first = false;
        }
        house.west = std::min(house.west, point.x - half);
        house.east = std::max(house.east, point.x + half);
        house.south = std::min(house.south, point.y - half);
        house.north = std::max(house.north, point.y + half);
        top = std::max(top, point.z);
      }
    }
  }
  if (first) return HouseOutline{};
  house.west -= clearance;
  house.east += clearance;
  house.south -= clearance;
  house.north += clearance;
  const Length ridge = top - 0.5 * metre;
  if (ridge > house.ceiling + 0.8 * metre && ridge < house.ridge) {
    house.ridge = ridge;
    house.eaves = std::min(house.eaves, ridge - 0.5 * metre);
  }
  return house;
}

}  // namespace fluewright
