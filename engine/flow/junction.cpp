// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/junction.hpp"

#include "engine/flow/bends.hpp"
#include "engine/flow/tees.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace fluewright {

namespace loss {
const LossFormula joining_into_branch{"tee, both legs into the branch", "C [1 + b^2 + 3 b^2 (q^2 - q)]", "of the branch",
                                      "Idelchik, Handbook of Hydraulic Resistance, diagram 7-29", Standing::published};
const LossFormula dividing_from_branch{"tee, branch into both legs", "1 + 0.3 (q b)^2", "of the branch",
                                       "Idelchik, Handbook of Hydraulic Resistance, diagram 7-29; 0.3 from memory",
                                       Standing::from_memory};
}  // namespace loss

Ratio joining_into_branch(Ratio share, Ratio area_ratio) {
  const double q = share;
  const double b = area_ratio;
  const double c = b <= 0.35 ? 1.0 : std::max(0.9 * (1.0 - q), 0.55);
  return c * (1.0 + b * b + 3.0 * b * b * (q * q - q));
}

Ratio dividing_from_branch(Ratio share, Ratio area_ratio) {
  const double ratio = share * area_ratio;
  return 1.0 + 0.3 * ratio * ratio;
}

namespace {

constexpr std::size_t in_port = 0;
constexpr std::size_t out_port = 1;
constexpr std::size_t branch_port = 2;
using Triple = std::array<double, 3>;

/// The flows over the whole flow, and a junction's shape in plain numbers.
struct Meeting {
  const JunctionForm* form;
  double area_ratio;
  Triple flow;  ///< into the junction, over the largest of the three

  /// Of the whole flow, what passes a port: negative a little way into the blend.
  [[nodiscard]] double share(std::size_t port, std::size_t whole) const { return -flow[port] / flow[whole]; }
};

/// What a turn by more than a right angle costs beyond Crane's right-angled tee, on the share of the flow that makes it
/// (chosen: SMACNA's growth of bends with their angle).
double sharper_turn(const Meeting& m, double right_angled_whole) {
  const Ratio factor = bend_angle_factor(180.0 * degree - m.form->angle);
  return (factor - 1.0) * right_angled_whole;
}

/// Coefficients of the two other ports where the whole flow comes in by (dividing) or leaves by (joining) a leg of the
/// run, `whole`; on its head.
Triple run_coefficients(const Meeting& m, std::size_t whole, bool dividing) {
  const double q = m.share(branch_port, whole);
  const std::size_t other = whole == in_port ? out_port : in_port;
  Triple k{};
  if (m.form->side_opening) {
    // The opening feels the static pressure of the run; a stream that joins through it is brought up to speed.
    k[branch_port] = dividing ? 1.0 : -1.0;
    k[other] = dividing ? diverging_run(q, m.area_ratio).value() : converging_run(q, m.area_ratio, 90.0 * degree).value();
    return k;
  }
  const bool gentle = whole == in_port;
  const Angle angle = gentle ? m.form->angle : 90.0 * degree;
  k[branch_port] = dividing ? diverging_branch(q, m.area_ratio, angle) : converging_branch(q, m.area_ratio, angle);
  k[other] = dividing ? diverging_run(q, m.area_ratio) : converging_run(q, m.area_ratio, angle);
  if (!gentle && m.form->angle < 90.0 * degree) {
    const Ratio all = dividing ? diverging_branch(1.0, m.area_ratio, angle) : converging_branch(1.0, m.area_ratio, angle);
    k[branch_port] += sharper_turn(m, all) * q * q;
  }
  return k;
}

/// The same where the whole flow is in the branch.
Triple branch_coefficients(const Meeting& m, bool dividing) {
  Triple k{};
  if (m.form->side_opening) return k;  // what passes a hole in the wall comes to rest in the run
  for (const std::size_t leg : {in_port, out_port}) {
    const double q = m.share(leg, branch_port);
    k[leg] = dividing ? dividing_from_branch(q, m.area_ratio) : joining_into_branch(q, m.area_ratio);
  }
  return k;
}

/// Total pressures against the port with the whole flow, over the whole flow squared over 2 rho.
Triple heads(const Meeting& m, std::size_t whole) {
  const bool dividing = m.flow[whole] > 0.0;
  const bool in_branch = whole == branch_port;
  Triple k = in_branch ? branch_coefficients(m, dividing) : run_coefficients(m, whole, dividing);
  const double area = in(in_branch ? m.form->branch : m.form->run, square_metre);
  const double scale = (dividing ? -1.0 : 1.0) * m.flow[whole] * m.flow[whole] / (area * area);
  for (double& value : k) value *= scale;
  return k;
}

std::size_t other_of(std::size_t a, std::size_t b) { return 3 - a - b; }

/// The port with the whole flow where `still` carries none: of the other two the one that keeps its role when `still`
/// takes the sign of `side`, positive into the junction.
std::size_t whole_port(const Triple& flow, std::size_t still, double side) {
  const std::size_t a = still == 0 ? 1 : 0;
  const std::size_t b = other_of(still, a);
  return (flow[a] > flow[b]) == (side < 0.0) ? a : b;
}

}  // namespace

JunctionHeads junction_heads(const JunctionForm& form, const JunctionFlows& flows, Density gas) {
  Triple flow{in(flows.run_in, kilogram_per_second), in(flows.run_out, kilogram_per_second),
              in(flows.branch, kilogram_per_second)};
  const double excess = (flow[0] + flow[1] + flow[2]) / 3.0;
  double whole = 0.0;
  for (double& f : flow) {
    f -= excess;
    whole = std::max(whole, std::abs(f));
  }
  if (whole == 0.0) return {};
  for (double& f : flow) f /= whole;
  const Meeting meeting{&form, in(form.branch / form.run, Ratio(1.0)), flow};

  const auto smaller = [](double a, double b) { return std::abs(a) < std::abs(b); };
  const auto still = static_cast<std::size_t>(std::min_element(flow.begin(), flow.end(), smaller) - flow.begin());
  Triple h{};
  if (std::abs(flow[still]) >= role_blend) {
    const auto most = static_cast<std::size_t>(std::max_element(flow.begin(), flow.end(), smaller) - flow.begin());
    h = heads(meeting, most);
  } else {
    const double x = 0.5 * (flow[still] / role_blend + 1.0);
    const double weight = x * x * (3.0 - 2.0 * x);
    Triple with_inflow = heads(meeting, whole_port(flow, still, 1.0));
    Triple with_outflow = heads(meeting, whole_port(flow, still, -1.0));
    for (std::size_t i = 0; i < 3; ++i) {
      h[i] = weight * (with_inflow[i] - with_inflow[in_port]) + (1.0 - weight) * (with_outflow[i] - with_outflow[in_port]);
    }
  }
  const auto scale = whole * whole * kilogram_per_second * kilogram_per_second / (2.0 * gas * square_metre * square_metre);
  return {(h[out_port] - h[in_port]) * Pressure(scale), (h[branch_port] - h[in_port]) * Pressure(scale)};
}

}  // namespace fluewright
