// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/network_answer.hpp"

#include "engine/flow/crack.hpp"
#include "engine/solve/fans.hpp"
#include "engine/solve/network_design_flow.hpp"
#include "engine/solve/network_profile.hpp"
#include "engine/solve/network_run.hpp"

#include <algorithm>
#include <utility>

namespace fluewright {

namespace {

/// The network cut up fine for the answer and coarse for finding where to look.
struct Cut {
  SlicedNetwork fine;
  SlicedNetwork coarse;

  Cut(const FlueNetwork& network, Length slice)
      : fine{slice_network(network, slice)}, coarse{slice_network(network, scan_slice)} {}
};

/// What the numbers of a design are worked from.
struct Question {
  const Design* design = nullptr;
  const Surround* surround = nullptr;
  const WoodFuel* fuel = nullptr;

  [[nodiscard]] NetworkMarch march(const SlicedNetwork& network, WallAge age) const {
    return {network, *surround, *fuel, design->fire.burn_rate, age};
  }
};

const BranchEnd& source_of(const Branch& branch, const BranchFlow& flow) { return flow.forward ? branch.from : branch.to; }

Ratio flap_of(const Branch& branch, const NetworkMarch& march, const NetworkSolution& solution) {
  const Opening& flap = *branch.opening;
  return flap_opening(total_at(march, solution, branch.from) - total_at(march, solution, branch.to), *flap.set_draft,
                      flap.span);
}

BranchState state_of(std::size_t b, const NetworkMarch& march, const NetworkSolution& solution) {
  const FlueNetwork& network = march.network();
  const Branch& branch = network.branches[b];
  const BranchFlow& f = solution.state.branches[b];
  const BranchEnd& source = source_of(branch, f);
  BranchState s;
  s.branch = b;
  s.on_main_path = std::find(network.main_path.begin(), network.main_path.end(), b) != network.main_path.end();
  s.flow = f.forward ? f.at_from : f.at_to;
  s.share = abs(s.flow) / abs(solution.state.branches[march.sliced().stack].at_to);
  s.entering = source.kind == EndKind::node        ? solution.state.nodes[source.node].temperature
               : source.kind == EndKind::room_air ? march.surround().room
                                                  : march.surround().outdoor;
  s.leaving = f.totals.exit;
  s.flue_share = f.flue_share;
  if (branch.opening && branch.opening->set_draft) s.flap = flap_of(branch, march, solution);
  return s;
}

/// Profile and branches from a solved state.
void show_state(Assessment& a, const NetworkMarch& march, const NetworkSolution& solution) {
  std::vector<BranchProfile> profiles = branch_profiles(march, solution);
  a.profile = main_path_rows(march, solution, profiles);
  a.branches.clear();
  a.meetings.clear();
  for (std::size_t n = 0; n < solution.state.nodes.size(); ++n) {
    a.meetings.push_back({solution.node_gauges[n], solution.state.nodes[n].temperature});
  }
  for (std::size_t b = 0; b < profiles.size(); ++b) {
    a.branches.push_back(state_of(b, march, solution));
    if (!a.branches.back().on_main_path) a.branches.back().profile = std::move(profiles[b].rows);
  }
}

/// The check at an age, started from a state of another.
std::optional<NetworkDesignFlow> check_age(const Cut& cut, const Question& q, BenchAge age, const NetworkSolution* other) {
  const NetworkMarch fine = q.march(cut.fine, wall_age(age));
  const NetworkMarch coarse = q.march(cut.coarse, wall_age(age));
  NetworkSolution near;
  if (other != nullptr) {
    near = *other;
    near.walked = nullptr;  // by another march
    near.slopes.resize(0, 0);
  }
  std::optional<NetworkDesignFlow> found =
      check_network_design_flow(coarse, fine, *q.design, age, other != nullptr ? &near : nullptr);
  if (found) found->solution.walked = nullptr;  // the march ends here
  return found;
}

/// With every fan standing still, and where some run with them too.
void check_three_ages(Assessment& a, const Cut& still, const Cut* running, const Question& q) {
  std::optional<NetworkDesignFlow> last;
  for (const BenchAge age : bench_ages) {
    std::optional<NetworkDesignFlow> found = check_age(still, q, age, last ? &last->solution : nullptr);
    const std::optional<NetworkDesignFlow> fans =
        found && running != nullptr ? check_age(*running, q, age, &found->solution) : std::nullopt;
    if (!found || (running != nullptr && !fans)) {
      a.findings.push_back({FindingCode::unsolved, Severity::fault, {}, {}, {}, {}, {}, {}});
      a.design_flow.clear();
      return;
    }
    if (fans) found->check.margin_with_fans = fans->check.margin;
    a.design_flow.push_back(found->check);
    if (age == BenchAge::charged) show_state(a, q.march(still.fine, wall_age(age)), found->solution);
    last = std::move(found);
  }
}

std::vector<NetworkPoint> states_of(const NetworkMarch& fine, const Cut& cut, const Question& q) {
  const NetworkMarch coarse = q.march(cut.coarse, {});
  return NetworkRun{fine, coarse}.points();
}

std::vector<OperatingPoint> points_of(const std::vector<NetworkPoint>& states) {
  std::vector<OperatingPoint> points;
  for (const NetworkPoint& state : states) points.push_back(state.point);
  return points;
}

void find_states(Assessment& a, const Cut& cut, const Question& q) {
  const NetworkMarch fine = q.march(cut.fine, {});
  const std::vector<NetworkPoint> states = states_of(fine, cut, q);
  a.operating_points = points_of(states);
  a.running = running_of(a.operating_points);
  if (!a.running) return;
  show_state(a, fine, states[*a.running].solution);
  a.profile_is_operating = true;
}

/// The same with every fan standing still.
FansOff find_states_without_power(const Cut& cut, const Question& q) {
  const NetworkMarch fine = q.march(cut.fine, {});
  FansOff off;
  off.operating_points = points_of(states_of(fine, cut, q));
  off.running = running_of(off.operating_points);
  return off;
}

}  // namespace

std::optional<std::size_t> running_of(const std::vector<OperatingPoint>& points) {
  const auto running =
      std::find_if(points.begin(), points.end(), [](const OperatingPoint& p) { return p.stable && p.forward; });
  if (running == points.end()) return std::nullopt;
  return static_cast<std::size_t>(running - points.begin());
}

SlicedNetwork answer_network(Assessment& a, const Design& design, const Surround& surround, const WoodFuel& fuel,
                             const AssessOptions& options) {
  const FlueNetwork& network = a.path.network;
  const Question question{&design, &surround, &fuel};
  Cut cut{network, options.slice};
  for (const std::size_t b : network.main_path) a.path_length += cut.fine.paths[b].length;
  a.standing_draft = standing_draft(cut.fine, surround);
  if (!has_running_fan(network)) {
    check_three_ages(a, cut, nullptr, question);
    if (options.operating_points) find_states(a, cut, question);
    return std::move(cut.fine);
  }
  const FlueNetwork still = with_fans_off(network);
  const Cut still_cut{still, options.slice};
  check_three_ages(a, still_cut, &cut, question);
  if (options.operating_points) {
    find_states(a, cut, question);
    a.fans_off = find_states_without_power(still_cut, question);
  }
  return std::move(cut.fine);
}

}  // namespace fluewright
