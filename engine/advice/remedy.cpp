// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/remedy.hpp"

#include "engine/advice/findings.hpp"

#include <algorithm>
#include <cmath>

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

namespace {

/// The charged bench's margin with the blade of the bypass shut that the remedy brought.
std::optional<Pressure> margin_with_blade_shut(const Design& before, const Design& after, const Library& library) {
  Design shut = after;
  const auto link = std::find_if(shut.pieces.begin(), shut.pieces.end(), [&](const Piece& piece) {
    return piece.type == "bypass_link" && before.piece(piece.id) == nullptr;
  });
  if (link == shut.pieces.end()) return std::nullopt;
  link->fields.insert_or_assign("blade_angle", Angle(90.0 * degree));
  AssessOptions margins_only;
  margins_only.operating_points = false;
  const Assessment a = assess(shut, library, margins_only);
  if (a.design_flow.empty()) return std::nullopt;
  return a.design_flow.back().margin;
}

}  // namespace

std::optional<TriedRemedy> try_remedy(const Design& design, const Library& library, const Outcome& before,
                                      const Remedy& remedy, const PriceList& prices) {
  std::optional<Remedy> exact = worked_out(design, library, remedy);
  const std::optional<Design> changed = exact ? remedied(design, library, *exact) : std::nullopt;
  if (!changed) return std::nullopt;
  std::optional<Outcome> after = standing_of(*changed, library, assess(*changed, library), prices);
  if (!after) return std::nullopt;
  after->shut = margin_with_blade_shut(design, *changed, library);
  TriedRemedy tried;
  tried.remedy = *std::move(exact);
  const bool kept_before = before.kept > Power{};
  tried.lost = kept_before ? std::max(Power{}, Power(before.kept - after->kept)) : Power(-after->kept);
  tried.mended = gone(before.findings, after->findings);
  tried.raised = gone(after->findings, before.findings);
  tried.after = *std::move(after);
  return tried;
}

bool brings_something(const TriedRemedy& tried, const Outcome& before) {
  return !tried.mended.empty() || tried.after.margin > before.margin + least_gain ||
         tried.after.kept > least_heat_gain * before.kept;
}

namespace {

/// Heat that is not worth ranking by (chosen: a few per cent of what a small heater keeps).
constexpr Power heat_step = 200.0 * watt;

/// How much of a builder's work a change is, for ranking: how one fires, one part, a part of the heater anew (chosen).
int work_of(ChangeKind kind) {
  switch (kind) {
    case ChangeKind::drier_wood:
    case ChangeKind::smaller_fire:
    case ChangeKind::larger_fire:
    case ChangeKind::choke_inlet:
    case ChangeKind::open_inlet: return 1;
    case ChangeKind::taller_stack:
    case ChangeKind::insulate_stack:
    case ChangeKind::outside_air:
    case ChangeKind::priming_tee: return 2;
    case ChangeKind::shorten_bench:
    case ChangeKind::fewer_bends:
    case ChangeKind::wider_flue:
    case ChangeKind::stack_indoors:
    case ChangeKind::bypass: break;
  }
  return 4;
}

int work_of(const Remedy& remedy) {
  int work = 0;
  for (const Change& change : remedy.changes) work += work_of(change.kind);
  return work;
}

/// What a remedy is sought for: how it draws and burns, not how it is cleaned or what the floor carries, which a bench
/// half gone would mend as well.
bool is_about_running(FindingCode code) {
  switch (code) {
    case FindingCode::missing_cleanout:
    case FindingCode::floor_overloaded:
    case FindingCode::narrowing:
    case FindingCode::low_outlet:
    case FindingCode::near_combustibles:
    case FindingCode::hidden_single_wall:
    case FindingCode::no_alarm_note:
    case FindingCode::clash:
    case FindingCode::through_house:
    case FindingCode::bore_mismatch: return false;
    default: break;
  }
  return true;
}

std::ptrdiff_t balance(const TriedRemedy& tried) {
  const auto mended = std::count_if(tried.mended.begin(), tried.mended.end(),
                                    [](const Finding& finding) { return is_about_running(finding.code); });
  return mended - static_cast<std::ptrdiff_t>(tried.raised.size());
}

std::ptrdiff_t new_faults(const TriedRemedy& tried) {
  return std::count_if(tried.raised.begin(), tried.raised.end(),
                       [](const Finding& finding) { return finding.severity >= Severity::fault; });
}

/// The margin that goes with the verdict that lasts.
Pressure lasting_margin(const Outcome& outcome) { return outcome.shut ? std::min(outcome.margin, *outcome.shut) : outcome.margin; }

double heat_steps(const TriedRemedy& tried) { return std::floor((tried.lost / heat_step).value()); }

}  // namespace

Verdict lasting_verdict(const Outcome& outcome) {
  const Pressure margin = lasting_margin(outcome);
  const Verdict by_margin = margin < Pressure{}       ? Verdict::will_not_draw
                            : margin < marginal_below ? Verdict::marginal
                                                      : Verdict::draws;
  return std::max(outcome.verdict, by_margin);
}

bool ranks_before(const TriedRemedy& a, const TriedRemedy& b) {
  const Verdict of_a = lasting_verdict(a.after);
  const Verdict of_b = lasting_verdict(b.after);
  if (of_a != of_b) return of_a < of_b;
  if (of_a != Verdict::draws && lasting_margin(a.after) != lasting_margin(b.after)) return lasting_margin(a.after) > lasting_margin(b.after);
  if (new_faults(a) != new_faults(b)) return new_faults(a) < new_faults(b);
  if (heat_steps(a) != heat_steps(b)) return heat_steps(a) < heat_steps(b);
  if (balance(a) != balance(b)) return balance(a) > balance(b);
  if (work_of(a.remedy) != work_of(b.remedy)) return work_of(a.remedy) < work_of(b.remedy);
  if (a.after.parts != b.after.parts) return a.after.parts < b.after.parts;
  return lasting_margin(a.after) > lasting_margin(b.after);
}

bool does_more(const TriedRemedy& pair, const TriedRemedy& single) {
  const Verdict together = lasting_verdict(pair.after);
  if (together != lasting_verdict(single.after)) return together < lasting_verdict(single.after);
  if (together == Verdict::draws && heat_steps(pair) != heat_steps(single)) {
    return heat_steps(pair) < heat_steps(single);
  }
  return balance(pair) > balance(single);
}

}  // namespace fluewright
