// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/remedy.hpp"

#include "engine/advice/findings.hpp"

#include <algorithm>

namespace fluewright {

namespace {

/// Less than this is no gain to speak of.
constexpr Pressure least_gain = 0.1 * pascal;
constexpr double least_heat_gain = 1.02;

bool counts(const Finding& finding) { return finding.severity != Severity::note; }

/// What a has and b has not. A finding that only went to another piece is neither gone nor new; nor is a margin that
/// is still small the price of one that was none.
std::vector<Finding> gone(const std::vector<Finding>& a, const std::vector<Finding>& b) {
  std::vector<Finding> left;
  std::vector<char> answered(b.size(), 0);
  const auto answer = [&](const Finding& finding, auto same) {
    for (std::size_t i = 0; i < b.size(); ++i) {
      if (answered[i] == 0 && same(finding, b[i])) {
        answered[i] = 1;
        return true;
      }
    }
    return false;
  };
  std::vector<Finding> moved;
  for (const Finding& finding : a) {
    if (counts(finding) && !answer(finding, same_matter)) moved.push_back(finding);
  }
  const auto same_code = [](const Finding& x, const Finding& y) {
    return x.code == y.code || (x.code == FindingCode::marginal && y.code == FindingCode::will_not_draw);
  };
  for (const Finding& finding : moved) {
    if (!answer(finding, same_code)) left.push_back(finding);
  }
  return left;
}

}  // namespace

std::optional<Outcome> standing_of(const Design& design, const Library& library, const Assessment& a,
                                   const PriceList& prices) {
  if (!a.verdict || !a.worst_age || !a.exit_temperature) return std::nullopt;
  Outcome outcome;
  outcome.verdict = *a.verdict;
  outcome.margin = a.worst_margin;
  outcome.age = *a.worst_age;
  outcome.exit = *a.exit_temperature;
  if (const OperatingPoint* running = a.running_point()) outcome.kept = running->heat.to_room + running->heat.into_mass;
  if (a.condensation) outcome.water = a.condensation->rate;
  outcome.parts = parts_cost(design, library, prices).total;
  outcome.findings = all_findings(design, library, a);
  return outcome;
}

std::optional<TriedRemedy> try_remedy(const Design& design, const Library& library, const Outcome& before,
                                      const Remedy& remedy, const PriceList& prices) {
  const std::optional<Design> changed = remedied(design, library, remedy);
  if (!changed) return std::nullopt;
  std::optional<Outcome> after = standing_of(*changed, library, assess(*changed, library), prices);
  if (!after) return std::nullopt;
  TriedRemedy tried;
  tried.remedy = remedy;
  tried.mended = gone(before.findings, after->findings);
  tried.raised = gone(after->findings, before.findings);
  tried.after = *std::move(after);
  return tried;
}

bool brings_something(const TriedRemedy& tried, const Outcome& before) {
  return !tried.mended.empty() || tried.after.margin > before.margin + least_gain ||
         tried.after.kept > least_heat_gain * before.kept;
}

bool ranks_before(const TriedRemedy& a, const TriedRemedy& b) {
  if (a.after.verdict != b.after.verdict) return a.after.verdict < b.after.verdict;
  const auto balance = [](const TriedRemedy& t) {
    return static_cast<std::ptrdiff_t>(t.mended.size()) - static_cast<std::ptrdiff_t>(t.raised.size());
  };
  if (balance(a) != balance(b)) return balance(a) > balance(b);
  if (a.remedy.changes.size() != b.remedy.changes.size()) return a.remedy.changes.size() < b.remedy.changes.size();
  return a.after.margin > b.after.margin;
}

}  // namespace fluewright
