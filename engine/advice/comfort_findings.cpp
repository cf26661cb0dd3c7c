// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/finding_case.hpp"
#include "engine/advice/practice.hpp"

#include <algorithm>

namespace fluewright::advice {

namespace {

/// Pipes and channels, where a speed says something: neither chambers nor the fire's own ways.
bool is_flue(const FindingCase& of, const SliceState& row) {
  const std::string& family = of.family(row.piece);
  return family == "bench" || family == "stack" || family == "fitting";
}

void find_speeds(FindingCase& of) {
  const SliceState* fastest = nullptr;
  const SliceState* slowest = nullptr;
  for (const SliceState& row : of.assessment.profile) {
    if (!is_flue(of, row)) continue;
    if (fastest == nullptr || row.velocity > fastest->velocity) fastest = &row;
    if (slowest == nullptr || row.velocity < slowest->velocity) slowest = &row;
  }
  if (fastest != nullptr && fastest->velocity > practice().gas_fastest.value) {
    of.add(FindingCode::gas_too_fast, Severity::caution, fastest->piece, fastest->velocity).highest =
        FieldValue(practice().gas_fastest.value);
  }
  if (slowest != nullptr && slowest->velocity < practice().gas_slowest.value) {
    of.add(FindingCode::gas_too_slow, Severity::note, slowest->piece, slowest->velocity).lowest =
        FieldValue(practice().gas_slowest.value);
  }
}

/// Somebody sits on it: a run lying in a mass.
bool is_seat(const FindingCase& of, std::size_t piece) {
  return of.family(piece) == "bench" && of.sound(piece) && of.view(piece).has("mass_material");
}

void find_hot_seat(FindingCase& of) {
  const SliceState* hottest = nullptr;
  for (const SliceState& row : of.assessment.profile) {
    if (is_seat(of, row.piece) && (hottest == nullptr || row.surface > hottest->surface)) hottest = &row;
  }
  if (hottest == nullptr || hottest->surface <= practice().seat_hottest.value) return;
  of.add(FindingCode::seat_too_hot, Severity::caution, hottest->piece, hottest->surface).highest =
      FieldValue(practice().seat_hottest.value);
}

void find_heavy_bench(FindingCase& of) {
  std::optional<std::size_t> heaviest;
  Pressure most{};
  for (std::size_t i = 0; i < of.design.pieces.size(); ++i) {
    if (!of.sound(i) || !is_seat(of, i)) continue;
    const PieceView view = of.view(i);
    const Material* mass = view.material("mass_material");
    const Length width = view.length("mass_width");
    const Length height = view.length("mass_height");
    if (mass == nullptr || of.drawn[i].geometry.lines.empty()) continue;
    // The flue takes its own room out of the mass.
    const Area flue = of.drawn[i].geometry.ports.front().section.area();
    const Pressure load = mass->density * standard_gravity * (width * height - flue) / width;
    if (load > most) {
      most = load;
      heaviest = i;
    }
  }
  if (!heaviest || most <= of.design.house.floor_capacity) return;
  Finding& f = of.add(FindingCode::floor_overloaded, Severity::caution, heaviest, most);
  f.field = "house.floor_capacity";
  f.highest = FieldValue(of.design.house.floor_capacity);
}

}  // namespace

void find_comfort(FindingCase& of) {
  if (of.assessment.path.complete) {
    find_speeds(of);
    find_hot_seat(of);
  }
  find_heavy_bench(of);
  if (!of.design.pieces.empty() && of.design.house.co_alarm != "yes") {
    of.add(FindingCode::no_alarm_note, Severity::caution, {}, of.design.house.co_alarm).field = "house.co_alarm";
  }
}

}  // namespace fluewright::advice
