// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/working/explain_network.hpp"

#include "engine/working/sheet.hpp"
#include "engine/working/slice_case.hpp"

#include <algorithm>

namespace fluewright {

namespace {

Citation nasa() { return published("NASA TM-4513"); }

GasMixture leaving_gas(const BranchFlow& f) { return mixture_of(f.leaving); }

/// The streams that meet at a node and the temperature of what they make.
void add_mixing(Sheet& sheet, const RetracedNetwork& n, std::size_t node, const std::string& name) {
  const FlueNetwork& network = *n.sliced.network;
  const NodeState& state = n.solution.state.nodes[node];
  std::string heat;
  std::string flow;
  for (std::size_t b = 0; b < network.branches.size(); ++b) {
    const BranchFlow& f = n.solution.state.branches[b];
    const BranchEnd& sink = f.forward ? network.branches[b].to : network.branches[b].from;
    if (sink.kind != EndKind::node || sink.node != node || !(f.outflow() > MassFlow{})) continue;
    const std::string i = std::to_string(b + 1) + "_" + name;
    sheet.given("mdot_" + i, "what branch " + std::to_string(b + 1) + " brings", f.outflow(), from_the_walk())
        .remark("from the balance of flows and pressures");
    sheet.given("T_" + i, "its gas there", f.totals.exit, from_the_walk());
    sheet.read("h_" + i, "its enthalpy, nought at 25 degC", {"T_" + i}, leaving_gas(f).specific_enthalpy(f.totals.exit),
               nasa(), "by polynomial, of the gas the branch carries");
    heat += (heat.empty() ? "" : " + ") + ("mdot_" + i) + " * h_" + i;
    flow += (flow.empty() ? "" : " + ") + ("mdot_" + i);
  }
  if (heat.empty()) return;
  const SpecificEnergy mixed = state.gas->specific_enthalpy(state.mixed);
  sheet.step("h_m" + name, "enthalpy of what has mixed", "(" + heat + ") / (" + flow + ")", mixed, published("first law"),
             Carries::sum);
  sheet.read("T_m" + name, "its temperature", {"h_m" + name}, state.mixed, nasa(),
             "by polynomial: the temperature at which the mixed gas holds that enthalpy")
      .piece(network.nodes[node].piece);
}

/// What a branch of the main path takes from its gas.
void add_branch(Sheet& sheet, const Retrace& run, std::size_t b, const std::string& name) {
  const RetracedNetwork& n = *run.network;
  const BranchFlow& f = n.solution.state.branches[b];
  const bool burns = b == n.sliced.fire_branch;
  Temperature start = run.totals.fire;
  Power lost{};
  bool met = !burns;
  for (std::size_t row = 0; row < run.rows.size(); ++row) {
    const RowSource& source = n.sources[row];
    if (source.branch != b) continue;
    if (source.first && !burns) start = source.entering;
    met = met || run.visits[row].setting.flue_gas;
    if (met) lost += run.visits[row].heat.through_wall - run.visits[row].gained;
  }
  const GasMixture gas = leaving_gas(f);
  sheet.part("Branch " + std::to_string(b + 1));
  sheet.given("mdot_" + name, "gas in the branch", f.outflow(), from_the_walk())
      .remark("from the balance of flows and pressures");
  sheet.given("T_a" + name, burns ? "gas behind the fire" : "gas that comes in, as it has mixed", start, from_the_walk());
  sheet.read("h_a" + name, "its enthalpy, nought at 25 degC", {"T_a" + name}, gas.specific_enthalpy(start), nasa(),
             "by polynomial");
  sheet.given("q_" + name, "heat the gas loses in the branch", lost, from_the_walk())
      .remark("added over the branch's slices");
  sheet.step("h_b" + name, "enthalpy of the gas that leaves", "h_a" + name + " - q_" + name + " / mdot_" + name,
             gas.specific_enthalpy(f.totals.exit), published("first law"), Carries::sum);
  sheet.read("T_b" + name, "gas that leaves the branch", {"h_b" + name}, f.totals.exit, nasa(),
             "by polynomial: the temperature at which the gas holds that enthalpy");
}

}  // namespace

Working explain_network_exit(const Retrace& run) {
  Sheet sheet{"temperature of the gas that leaves"};
  const RetracedNetwork& n = *run.network;
  const FlueNetwork& network = *n.sliced.network;
  const auto fire = std::find(network.main_path.begin(), network.main_path.end(), *n.sliced.fire_branch);
  for (auto b = fire; b != network.main_path.end(); ++b) {
    const std::string name = std::to_string(*b + 1);
    add_branch(sheet, run, *b, name);
    const BranchEnd& to = network.branches[*b].to;
    if (to.kind != EndKind::node) continue;
    sheet.part("Where branch " + name + " ends");
    add_mixing(sheet, n, to.node, "at" + std::to_string(to.node + 1));
  }
  sheet.part("Exit");
  sheet.given("T_exit", "gas at the cap", run.totals.exit, from_the_walk()).remark("what the last branch leaves");
  return sheet.take();
}

Working explain_network_stack(const Retrace& run) {
  Sheet sheet{"heat that leaves with the gas"};
  const RetracedNetwork& n = *run.network;
  const FlueNetwork& network = *n.sliced.network;
  sheet.part("Ends that are open to the air");
  std::string sum;
  Power heat{};
  const auto add = [&](const std::string& name, const char* what, MassFlow flow, Temperature t, const GasMixture& gas,
                       bool leaves) {
    sheet.given("mdot_" + name, what, flow, from_the_walk());
    sheet.given("T_" + name, "how warm it is there", t, from_the_walk());
    const SpecificEnergy h = gas.specific_enthalpy(t);
    sheet.read("h_" + name, "its enthalpy, nought at 25 degC", {"T_" + name}, h, nasa(), "by polynomial");
    sum += std::string(leaves ? (sum.empty() ? "" : " + ") : (sum.empty() ? "-" : " - ")) + "mdot_" + name + " * h_" + name;
    heat += (leaves ? 1.0 : -1.0) * (flow * h);
  };
  for (std::size_t b = 0; b < network.branches.size(); ++b) {
    const BranchFlow& f = n.solution.state.branches[b];
    const std::string name = std::to_string(b + 1);
    const BranchEnd& source = f.forward ? network.branches[b].from : network.branches[b].to;
    const BranchEnd& sink = f.forward ? network.branches[b].to : network.branches[b].from;
    if (sink.kind != EndKind::node) {
      add("o" + name, "gas that goes out", f.outflow(), f.totals.exit, leaving_gas(f), true);
    }
    if (source.kind == EndKind::node) continue;
    const Temperature t = source.kind == EndKind::room_air ? run.surround.room : run.surround.outdoor;
    add("i" + name, "air that comes in", f.inflow(), t, mixture_of(n.march->composition_at(source, n.solution.state)), false);
  }
  sheet.part("Stack");
  sheet.step("Q_stack", "heat that leaves with the gas, above the air that came in", sum, heat, published("first law"),
             Carries::sum);
  return sheet.take();
}

}  // namespace fluewright
