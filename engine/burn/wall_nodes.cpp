// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/wall_nodes.hpp"

#include "engine/solve/slice_heat.hpp"

#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace fluewright::kernel {
namespace {

/// A layer that holds less heat than this is a resistance only: still air, not wool (chosen).
constexpr double negligible_capacity = 200.0;  // [J/(m2 K)]
/// What a wall without a layer that counts holds: a millimetre of soot and mortar (chosen; it must be something).
constexpr double bare_capacity = 1000.0;  // [J/(m2 K)]

double heat_capacity(const Material& m) {
  return in(m.density, kilogram_per_cubic_metre) * in(m.specific_heat, joule_per_kilogram_kelvin);
}

/// Cuts one material into nodes between two radii of a run so long that its bore has the slice's surface.
struct Cutter {
  double run;  ///< [m]
  std::vector<WallNode> nodes;

  void add(const Material& material, double from, const std::vector<double>& thicknesses, bool embedding) {
    double r = from;
    for (const double t : thicknesses) {
      const double middle = r + 0.5 * t;
      WallNode node;
      node.material = &material;
      node.embedding = embedding;
      node.capacity = heat_capacity(material) * std::numbers::pi * t * (2.0 * r + t) * run;
      node.inner = std::log(middle / r) / (2.0 * std::numbers::pi * run);
      node.outer = std::log((r + t) / middle) / (2.0 * std::numbers::pi * run);
      nodes.push_back(node);
      r += t;
    }
  }
};

/// Scales what the outer half of nodes [first, end) resists so that together they resist `wanted`.
void set_total(std::vector<WallNode>& nodes, std::size_t first, double wanted) {
  double total = 0.0;
  for (std::size_t i = first; i < nodes.size(); ++i) total += nodes[i].inner + nodes[i].outer;
  const std::size_t half = first + (nodes.size() - first) / 2;
  double outer = 0.0;
  for (std::size_t i = half; i < nodes.size(); ++i) outer += nodes[i].inner + nodes[i].outer;
  // Where even that is not enough (a mass hardly wider than its pipe) all share the difference.
  const bool enough = outer > 1.5 * std::abs(total - wanted);
  const double factor = enough ? 1.0 + (wanted - total) / outer : wanted / total;
  for (std::size_t i = enough ? half : first; i < nodes.size(); ++i) {
    nodes[i].inner *= factor;
    nodes[i].outer *= factor;
  }
}

void add_embedding(Cutter& cut, const Stretch& stretch, const WallGeometry& wall, double surface, const BurnGrid& grid) {
  const double r = 0.5 * in(wall.outside_diameter, metre);
  const double spread = in(wall.embedding_spread, metre) / surface;  // what it all resists [1/m]
  const double steady_ratio = std::exp(2.0 * std::numbers::pi * cut.run * spread);
  double outer = r * steady_ratio;
  if (stretch.place == Place::mass && !wall.mass_too_narrow) {
    const double section = in(stretch.embedding.width, metre) * in(stretch.embedding.height, metre);
    outer = std::max(std::sqrt(section / std::numbers::pi), 1.02 * r);
  }
  const std::size_t first = cut.nodes.size();
  cut.add(*stretch.embedding.material, r, widening(outer - r, in(grid.first_node, metre), grid.mass_nodes), true);
  set_total(cut.nodes, first, spread);
}

}  // namespace

std::vector<double> widening(double total, double first, std::size_t count) {
  const auto n = static_cast<double>(count);
  if (count < 2 || first * n >= total) return std::vector<double>(count, total / n);
  const auto excess = [&](double q) { return first * (std::pow(q, n) - 1.0) / (q - 1.0) - total; };
  std::uintmax_t evaluations = 100;
  const auto found = boost::math::tools::toms748_solve(excess, 1.0 + 1e-9, 1.0 + total / first,
                                                       boost::math::tools::eps_tolerance<double>(30), evaluations);
  const double q = 0.5 * (found.first + found.second);
  std::vector<double> thicknesses(count);
  double t = first;
  double sum = 0.0;
  for (double& each : thicknesses) {
    each = t;
    sum += t;
    t *= q;
  }
  for (double& each : thicknesses) each *= total / sum;
  return thicknesses;
}

std::vector<WallNode> wall_nodes(const Stretch& stretch, const WallGeometry& wall, Area surface_area,
                                 const BurnGrid& grid) {
  const double surface = in(surface_area, square_metre);
  Cutter cut{surface / (std::numbers::pi * in(wall.bore, metre)), {}};
  double r = 0.5 * in(wall.bore, metre);
  double lead_gap = 0.0;  // an empty layer before the first node
  const Material* lead_material = nullptr;
  for (const WallGeometry::Layer& layer : wall.layers) {
    const double t = in(layer.thickness, metre);
    if (heat_capacity(*layer.material) * t < negligible_capacity) {
      const double gap = in(layer.spread, metre) / surface;
      if (cut.nodes.empty()) {
        lead_gap = gap;
        lead_material = layer.material;
      } else {
        cut.nodes.back().gap = gap;
        cut.nodes.back().gap_material = layer.material;
      }
    } else {
      const bool thin = layer.thickness <= thin_layer;
      cut.add(*layer.material, r, widening(t, in(grid.first_node, metre), thin ? 1 : grid.layer_nodes), false);
    }
    r += t;
  }
  if (stretch.place == Place::mass || stretch.place == Place::ground) add_embedding(cut, stretch, wall, surface, grid);
  if (cut.nodes.empty()) {
    WallNode bare;
    bare.capacity = bare_capacity * surface;
    bare.material = lead_material;
    bare.inner = bare.outer = lead_material != nullptr ? 0.5 * lead_gap : 0.0;
    cut.nodes.push_back(bare);
  } else if (lead_material != nullptr) {
    // As if it were of the first node's material: what counts is what it resists, at room temperature.
    const Temperature level = celsius(20.0);
    cut.nodes.front().inner +=
        lead_gap * (cut.nodes.front().material->conductivity(level) / lead_material->conductivity(level)).value();
  }
  return cut.nodes;
}

}  // namespace fluewright::kernel
