// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Compiled twice, see CMakeLists.txt: SLICE_KERNEL names the function that comes out.

#include "tests/benchmarks/slice_kernel.hpp"

#include "engine/fuel/combustion.hpp"
#include "engine/solve/burning.hpp"
#include "engine/solve/march.hpp"

namespace fluewright {
namespace {

Material material(const char* name, double density, double heat, double conductivity) {
  Material m;
  m.id = m.name = name;
  m.density = density * kilogram_per_cubic_metre;
  m.specific_heat = heat * joule_per_kilogram_kelvin;
  m.conductivity_points = {{celsius(20.0), conductivity * watt_per_metre_kelvin}};
  return m;
}

/// An invented heater, 150 mm, every kind of wall and surroundings in it.
struct Heater {
  Material fibre = material("ceramic fibre", 128.0, 1050.0, 0.15);
  Material steel = material("steel", 7800.0, 450.0, 50.0);
  Material cob = material("cob", 1600.0, 900.0, 0.65);
  Branch branch;
  Surround surround;
  SlicedPath path;

  Heater() {
    surround.absolute = 101325.0 * pascal;
    surround.outdoor = celsius(5.0);
    surround.room = surround.attic = surround.ground = celsius(18.0);
    surround.outdoor_air = 1.27 * kilogram_per_cubic_metre;
    surround.room_air = 1.21 * kilogram_per_cubic_metre;
    surround.neutral_plane = 2.5 * metre;
    branch.from = {EndKind::room_air, 0, 0.4 * metre};
    branch.to = {EndKind::outdoor_air, 0, 6.0 * metre};
    const Section bore = Section::circle(150.0 * millimetre);

    Stretch tunnel = stretch(bore, 0.6, 0.0, Place::room, {&fibre, 50.0 * millimetre});
    tunnel.fire = true;
    Stretch riser = stretch(bore, 1.2, 1.2, Place::jacket, {&fibre, 50.0 * millimetre});
    Stretch barrel = stretch(Section::annulus(560.0 * millimetre, 260.0 * millimetre), 0.9, -0.9, Place::room,
                             {&steel, 1.2 * millimetre});
    barrel.chamber = barrel.stands_upright = true;
    barrel.lid = Lid{0.25 * square_metre, 560.0 * millimetre, 150.0 * millimetre, 50.0 * millimetre};
    Stretch bench = stretch(bore, 6.0, 0.0, Place::mass, {&steel, 0.7 * millimetre});
    bench.embedding = {&cob, 600.0 * millimetre, 500.0 * millimetre, {}, 0.5, false};
    bench.at_start.push_back({0.42, 0.42, LocalLoss::Reynolds::none, {}, {}});
    bench.at_end.push_back({1.2, 1.2, LocalLoss::Reynolds::mitre, {}, {}});
    Stretch stack = stretch(bore, 5.0, 5.0, Place::outdoors, {&steel, 0.7 * millimetre});
    stack.stands_upright = true;
    branch.stretches = {tunnel, riser, barrel, bench, stack};
    path = slice_branch(branch, 50.0 * millimetre);
  }

  static Stretch stretch(const Section& section, double length, double rise, Place place, WallLayerView layer) {
    Stretch s;
    s.section = section;
    s.length = length * metre;
    s.rise = rise * metre;
    s.roughness = 1.0 * millimetre;
    s.wall = {layer};
    s.place = place;
    return s;
  }
};

}  // namespace
}  // namespace fluewright

namespace slice_kernel {

Result SLICE_KERNEL(int repeats) {
  using namespace fluewright;
  static const Heater heater;
  static const Burning burning{WoodFuel{}, 3.0 * kilogram_per_hour, 0.01};
  static const FireState fire = burning.at_excess_air(2.5);
  static const GasTable air{moist_air(0.01)};
  static const GasTable gas = burning.gas(fire);
  const March march{heater.path, heater.surround};
  MarchTotals totals;
  for (int i = 0; i < repeats; ++i) totals = march.run(fire, air, gas, {}, nullptr);
  return {in(totals.buoyancy, pascal), in(totals.loss(), pascal), in_kelvin(totals.exit),
          static_cast<int>(heater.path.slices.size())};
}

}  // namespace slice_kernel
