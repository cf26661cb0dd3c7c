// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/finding_case.hpp"
#include "engine/advice/inlet_share.hpp"
#include "engine/advice/practice.hpp"
#include "engine/solve/surround.hpp"

namespace fluewright::advice {

namespace {

std::string_view age_id(BenchAge age) {
  switch (age) {
    case BenchAge::cold_bench: return "cold_bench";
    case BenchAge::one_hour: return "one_hour";
    case BenchAge::charged: break;
  }
  return "charged";
}

void find_margin(FindingCase& of) {
  const Assessment& a = of.assessment;
  if (!a.verdict || !a.worst_age || *a.verdict == Verdict::draws || *a.verdict == Verdict::unsafe) return;
  const bool fails = *a.verdict == Verdict::will_not_draw;
  Finding& f = of.add(fails ? FindingCode::will_not_draw : FindingCode::marginal,
                      fails ? Severity::fault : Severity::caution, {}, a.worst_margin);
  f.text = std::string(age_id(*a.worst_age));
}

void find_too_much_air(FindingCase& of) {
  const OperatingPoint* running = of.assessment.running_point();
  const Ratio limit = practice().choke_over.value;
  if (running == nullptr || running->excess_air_ratio <= limit || of.design.fire.wanted_excess_air >= limit) return;
  const auto share = wanted_inlet_share(of.design, of.library, of.assessment);
  if (!share || share->wanted >= share->now) return;
  Finding& f = of.add(FindingCode::choke_inlet, Severity::caution, share->piece, share->now);
  f.field = "free_share";
  f.highest = FieldValue(share->wanted);
  if (!share->reaches) f.text = "not enough";
}

}  // namespace

void find_draft(FindingCase& of) {
  const Assessment& a = of.assessment;
  find_margin(of);
  find_too_much_air(of);
  if (a.path.complete && a.exit_temperature && *a.exit_temperature > practice().exit_hottest.value) {
    of.add(FindingCode::exit_too_hot, Severity::caution, {}, *a.exit_temperature).highest =
        FieldValue(practice().exit_hottest.value);
  }
  const Pressure suction = surround_of(of.design).depressurisation;
  if (suction >= practice().house_suction.value) {
    of.add(FindingCode::house_suction, Severity::caution, {}, suction).highest = FieldValue(practice().house_suction.value);
  }
}

}  // namespace fluewright::advice
