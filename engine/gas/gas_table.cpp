// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/gas/gas_table.hpp"

#include "engine/gas/species_data.hpp"

namespace fluewright {

namespace {

/// What every mixture shares at a node: the species' properties and Wilke's factors between them.
struct SpeciesNode {
  std::array<double, species_count> viscosity;
  std::array<double, species_count> conductivity;
  std::array<std::array<double, species_count>, species_count> factor;
};

using SpeciesNodes = std::array<SpeciesNode, GasTable::node_count>;

SpeciesNodes make_species_nodes() {
  SpeciesNodes nodes{};
  for (std::size_t n = 0; n < nodes.size(); ++n) {
    const double t = GasTable::first_node + GasTable::node_spacing * static_cast<double>(n);
    SpeciesNode& node = nodes[n];
    for (std::size_t i = 0; i < species_count; ++i) {
      node.viscosity[i] = gas_data::viscosity[i].at(t);
      node.conductivity[i] = gas_data::conductivity[i].at(t);
    }
    for (std::size_t i = 0; i < species_count; ++i) {
      for (std::size_t j = 0; j < species_count; ++j) {
        node.factor[i][j] = gas_data::wilke_factor(node.viscosity[i], node.viscosity[j], gas_data::molar_mass[i],
                                                   gas_data::molar_mass[j]);
      }
    }
  }
  return nodes;
}

const SpeciesNodes& species_nodes() {
  static const SpeciesNodes nodes = make_species_nodes();
  return nodes;
}

}  // namespace

void GasTable::set_slopes(Column& column) {
  // Central differences inside, three-point differences at the two ends: second order everywhere.
  for (std::size_t n = 1; n + 1 < node_count; ++n) {
    column[n].slope = 0.5 * (column[n + 1].value - column[n - 1].value);
  }
  column[0].slope = -1.5 * column[0].value + 2.0 * column[1].value - 0.5 * column[2].value;
  column[node_count - 1].slope =
      1.5 * column[node_count - 1].value - 2.0 * column[node_count - 2].value + 0.5 * column[node_count - 3].value;
}

GasTable::GasTable(const GasMixture& mixture)
    : mixture_{mixture}, gas_constant_{in(mixture.gas_constant(), joule_per_kilogram_kelvin)} {
  const SpeciesNodes& nodes = species_nodes();
  const auto& y = mixture.fractions();
  for (std::size_t n = 0; n < node_count; ++n) {
    const SpeciesNode& node = nodes[n];
    double mu = 0.0;
    double k = 0.0;
    for (std::size_t i = 0; i < species_count; ++i) {
      double weight = 0.0;
      for (std::size_t j = 0; j < species_count; ++j) {
        weight += y[j] * node.factor[i][j];
      }
      const double share = y[i] / weight;
      mu += share * node.viscosity[i];
      k += share * node.conductivity[i];
    }
    viscosity_[n].value = mu;
    conductivity_[n].value = k;
  }
  set_slopes(viscosity_);
  set_slopes(conductivity_);
}

}  // namespace fluewright
