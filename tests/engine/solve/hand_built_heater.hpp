// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A heater written down stretch by stretch, without pieces, so that the solver's tests depend on the solver alone.

#include "engine/solve/design_flow.hpp"
#include "engine/solve/operating_points.hpp"

#include <cmath>
#include <cstdlib>
#include <list>
#include <optional>
#include <string>

namespace fluewright::test {

inline Material material(std::string id, double rho, double k, double c) {
  Material m;
  m.id = m.name = std::move(id);
  m.density = rho * kilogram_per_cubic_metre;
  m.specific_heat = c * joule_per_kilogram_kelvin;
  m.conductivity_points = {{celsius(20.0), k * watt_per_metre_kelvin}};
  return m;
}

/// An invented heater of one bore. Everything is adjustable before `branch()`.
struct HandBuiltHeater {
  std::list<Material> materials{material("steel", 7800, 50, 450), material("fibre", 128, 0.12, 1050),
                                material("brick", 2000, 0.9, 900), material("cob", 1600, 0.7, 900),
                                material("rock wool", 100, 0.045, 840)};
  Length bore = 150.0 * millimetre;
  Length bench = 6.0 * metre;
  Length stack = 4.5 * metre;
  Length riser = 1.2 * metre;
  Length barrel = 560.0 * millimetre;
  Ratio free_share = 0.4;
  bool with_riser_in_barrel = true;
  std::optional<Fan> fan;  ///< at the foot of the stack

  [[nodiscard]] const Material& get(std::string_view id) const {
    for (const Material& m : materials) {
      if (m.id == id) return m;
    }
    std::abort();
  }

  [[nodiscard]] Branch branch() const {
    Branch b;
    Length z = 0.45 * metre;
    const auto add = [&](Stretch s) {
      s.start_height = z;
      z += s.rise;
      b.stretches.push_back(std::move(s));
    };
    b.from = {EndKind::room_air, 0, z};
    const auto plain = [&](Length length, Length rise, Place place, std::vector<WallLayerView> wall) {
      Stretch s;
      s.length = length;
      s.rise = rise;
      s.section = Section::circle(bore);
      s.roughness = 1.0 * millimetre;
      s.place = place;
      s.wall = std::move(wall);
      s.stands_upright = rise != Length{};
      return s;
    };
    const std::vector<WallLayerView> brick{{&get("brick"), 60.0 * millimetre}};
    const std::vector<WallLayerView> fibre{{&get("fibre"), 50.0 * millimetre}};
    const std::vector<WallLayerView> sheet{{&get("steel"), 0.7 * millimetre}};
    const std::vector<WallLayerView> insulated{{&get("steel"), 0.5 * millimetre}, {&get("rock wool"), 25.0 * millimetre},
                                               {&get("steel"), 0.5 * millimetre}};
    Stretch feed = plain(0.35 * metre, -0.35 * metre, Place::room, brick);
    const double phi = free_share;
    const double zeta = (1.0 + 0.707 * std::sqrt(1.0 - phi) - phi) * (1.0 + 0.707 * std::sqrt(1.0 - phi) - phi) / (phi * phi);
    feed.at_start = {{zeta, zeta, LocalLoss::Reynolds::none, "sticks in the feed", {}}};
    add(feed);
    Stretch tunnel = plain(0.5 * metre, Length{}, Place::room, brick);
    tunnel.fire = true;
    tunnel.at_start = {{1.2, 1.2, LocalLoss::Reynolds::mitre, "turn", {}}};
    tunnel.at_end = {{1.2, 1.2, LocalLoss::Reynolds::mitre, "turn", {}}};
    add(tunnel);
    add(plain(riser, riser, with_riser_in_barrel ? Place::jacket : Place::room, fibre));
    if (with_riser_in_barrel) {
      Stretch annulus = plain(0.9 * metre, -0.9 * metre, Place::room, {{&get("steel"), 1.2 * millimetre}});
      annulus.section = Section::annulus(barrel, bore + 100.0 * millimetre);
      annulus.lid = Lid{0.7854 * barrel * barrel, barrel, bore, 0.33 * bore};
      annulus.chamber = true;
      annulus.at_start = {{2.4, 2.4, LocalLoss::Reynolds::none, "turn at the lid", {}}};
      add(annulus);
    }
    Stretch run = plain(bench, Length{}, Place::mass, sheet);
    run.embedding = {&get("cob"), 0.5 * metre, 0.45 * metre, {}, 0.6, false};
    add(run);
    Stretch foot = plain(0.3 * metre, 0.3 * metre, Place::room, insulated);
    foot.at_start = {{1.25, 1.25, LocalLoss::Reynolds::none, "capped tee", {}}};
    foot.fan = fan;
    add(foot);
    add(plain(stack * 0.5, stack * 0.5, Place::room, insulated));
    Stretch top = plain(stack * 0.5, stack * 0.5, Place::outdoors, insulated);
    top.at_end = {{0.5, 0.5, LocalLoss::Reynolds::none, "cap", {}}};
    add(top);
    b.to = {EndKind::outdoor_air, 0, z};
    return b;
  }
};

inline Design a_day(double outdoor_celsius, double room_celsius) {
  Design d;
  d.site.outdoor_temperature = celsius(outdoor_celsius);
  d.room.temperature = celsius(room_celsius);
  d.site.wind_speed = 2.0 * metre_per_second;
  return d;
}

inline WoodFuel usual_wood() {
  return {{0.50, 0.062, 0.435, 0.003, 0.005, 18.9e6 * joule_per_kilogram}, 0.18, 0.03};
}

}  // namespace fluewright::test
