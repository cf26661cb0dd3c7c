// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/followed.hpp"

#include "engine/solve/fans.hpp"

#include <algorithm>
#include <utility>

namespace fluewright {

void judge_margins(Assessment& a) {
  const auto worst = std::min_element(a.design_flow.begin(), a.design_flow.end(),
                                      [](const DesignFlow& x, const DesignFlow& y) { return x.margin < y.margin; });
  if (worst == a.design_flow.end()) return;
  a.worst_age = worst->age;
  a.worst_margin = worst->margin;
  for (const DesignFlow& d : a.design_flow) {
    if (!d.margin_with_fans) continue;
    a.worst_margin_with_fans = std::min(*d.margin_with_fans, a.worst_margin_with_fans.value_or(*d.margin_with_fans));
  }
  a.verdict = worst->margin < Pressure{}       ? Verdict::will_not_draw
              : worst->margin < marginal_below ? Verdict::marginal
                                               : Verdict::draws;
}

void say_dependence(Assessment& a) {
  std::erase_if(a.findings, [](const Finding& f) { return f.code == FindingCode::fan_dependent; });
  if (!depends_on_fan(a)) return;
  Finding finding;
  finding.code = FindingCode::fan_dependent;
  finding.severity = Severity::unsafe;
  finding.value = a.worst_margin;
  if (a.worst_margin_with_fans) finding.highest = FieldValue{*a.worst_margin_with_fans};
  a.findings.push_back(std::move(finding));
}

Assessment with_design_flows(Assessment a, const std::vector<DesignFlow>& flows) {
  for (const DesignFlow& found : flows) {
    const auto old = std::find_if(a.design_flow.begin(), a.design_flow.end(), [&](const DesignFlow& d) { return d.age == found.age; });
    if (old == a.design_flow.end()) continue;
    std::vector<FanState> fans = std::move(old->fans);
    *old = found;
    old->fans = std::move(fans);
  }
  a.worst_margin_with_fans.reset();
  judge_margins(a);
  if (a.verdict && depends_on_fan(a)) a.verdict = Verdict::unsafe;
  say_dependence(a);
  std::stable_sort(a.findings.begin(), a.findings.end(),
                   [](const Finding& x, const Finding& y) { return x.severity > y.severity; });
  return a;
}

}  // namespace fluewright
