// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/fans.hpp"

#include "engine/solve/followed.hpp"

#include <algorithm>

namespace fluewright {
namespace {

/// A fan of the path with the stretch it stands in.
struct Placed {
  const Stretch* stretch = nullptr;
  const Fan* fan = nullptr;
};

std::vector<Placed> placed_fans(const FlueNetwork& network) {
  std::vector<Placed> found;
  for (const Branch& branch : network.branches) {
    for (const Stretch& stretch : branch.stretches) {
      if (stretch.fan) found.push_back({&stretch, &*stretch.fan});
    }
  }
  return found;
}

const FanState* state_of(const std::vector<FanState>& states, std::size_t piece) {
  const auto found = std::find_if(states.begin(), states.end(), [piece](const FanState& s) { return s.piece == piece; });
  return found == states.end() ? nullptr : &*found;
}

/// The state the answer shows: where the heater settles, else the design flow with a charged bench.
const FanState* shown_state(const Assessment& a, std::size_t piece) {
  if (const OperatingPoint* p = a.running_point()) return state_of(p->fans, piece);
  return a.design_flow.empty() ? nullptr : state_of(a.design_flow.back().fans, piece);
}

Temperature hottest_gas(const Assessment& a, std::size_t piece) {
  Temperature hottest = kelvins(0.0);
  const auto look = [&](const std::vector<FanState>& states) {
    if (const FanState* s = state_of(states, piece)) hottest = std::max(hottest, s->gas);
  };
  for (const DesignFlow& d : a.design_flow) look(d.fans);
  if (const OperatingPoint* p = a.running_point()) look(p->fans);
  if (a.fans_off && a.fans_off->running_point() != nullptr) look(a.fans_off->running_point()->fans);
  return hottest;
}

/// A motor in the stream gets wet where the wall beside it does, or while a cold bench cools the gas itself so far.
void look_for_dew(const Assessment& a, std::size_t piece, FanAnswer& answer) {
  const auto note = [&answer](Temperature level, Temperature dew) {
    if (answer.wet || level > dew) return;
    answer.wet = true;
    answer.dew_point = dew;
    answer.wet_at = level;
  };
  for (const SliceState& row : a.profile) {
    if (row.piece == piece) note(row.wall, row.dew_point);
  }
  if (a.design_flow.empty()) return;
  if (const FanState* cold = state_of(a.design_flow.front().fans, piece)) note(cold->gas, cold->dew_point);
}

Finding finding_on(FindingCode code, Severity severity, const Design& design, std::size_t piece) {
  Finding finding;
  finding.code = code;
  finding.severity = severity;
  finding.piece = design.pieces[piece].id;
  return finding;
}

void say_temperatures(Assessment& a, const Design& design, const FanAnswer& fan, const FanSheet& sheet) {
  const auto too_hot = [&](FindingCode code, Temperature level, Temperature rated) {
    if (level <= rated) return;
    Finding finding = finding_on(code, Severity::caution, design, fan.state.piece);
    finding.value = level;
    finding.highest = FieldValue{rated};
    a.findings.push_back(std::move(finding));
  };
  // Gas over a motor in its stream is said once.
  if (!sheet.motor_in_stream || sheet.rated_gas < sheet.rated_motor) {
    too_hot(FindingCode::fan_gas_too_hot, fan.hottest_gas, sheet.rated_gas);
  }
  if (!sheet.motor_in_stream || sheet.rated_motor <= sheet.rated_gas) {
    too_hot(FindingCode::fan_motor_too_hot, fan.motor, sheet.rated_motor);
  }
  if (!fan.wet) return;
  Finding wet = finding_on(FindingCode::fan_motor_wet, Severity::caution, design, fan.state.piece);
  wet.value = fan.dew_point;
  wet.lowest = FieldValue{fan.wet_at};
  a.findings.push_back(std::move(wet));
}

void say_curve(Assessment& a, const Design& design, const FanAnswer& fan, const Fan& placed) {
  if (!(placed.speed > 0.0)) return;
  const FanSheet& sheet = placed.curve.sheet();
  if (const auto rising = placed.curve.rising()) {
    Finding finding = finding_on(FindingCode::fan_curve_rises, Severity::caution, design, fan.state.piece);
    finding.text = sheet.name;
    finding.lowest = FieldValue{VolumeFlow(placed.speed * rising->low)};
    finding.highest = FieldValue{VolumeFlow(placed.speed * rising->high)};
    const auto forward = std::count_if(a.operating_points.begin(), a.operating_points.end(),
                                       [](const OperatingPoint& p) { return p.forward; });
    finding.value = Count{static_cast<int>(forward)};
    a.findings.push_back(std::move(finding));
  }
  const FanRange range = fan.state.effect.range;
  if (a.running && (range == FanRange::beyond || range == FanRange::backward) && placed.blows_along) {
    Finding finding = finding_on(FindingCode::fan_beyond_sheet, Severity::caution, design, fan.state.piece);
    finding.text = sheet.name;
    finding.value = fan.state.flow;
    finding.highest = FieldValue{VolumeFlow(placed.speed * placed.curve.last_flow())};
    a.findings.push_back(std::move(finding));
  }
}

}  // namespace

bool has_running_fan(const FlueNetwork& network) {
  const std::vector<Placed> fans = placed_fans(network);
  return std::any_of(fans.begin(), fans.end(), [](const Placed& p) { return p.fan->speed > 0.0; });
}

FlueNetwork with_fans_off(FlueNetwork network) {
  for (Branch& branch : network.branches) {
    for (Stretch& stretch : branch.stretches) {
      if (stretch.fan) stretch.fan->speed = 0.0;
    }
  }
  return network;
}

void add_fan_answers(Assessment& a, const Surround& surround) {
  for (const Placed& placed : placed_fans(a.path.network)) {
    const FanState* shown = shown_state(a, placed.stretch->piece);
    if (shown == nullptr) continue;
    FanAnswer answer;
    answer.state = *shown;
    answer.power = a.running ? fan_power(*placed.fan, shown->density) : Power{};
    answer.hottest_gas = hottest_gas(a, shown->piece);
    answer.motor = motor_temperature(placed.fan->curve.sheet(), answer.hottest_gas,
                                     surround.beyond(placed.stretch->place, placed.stretch->embedding));
    if (placed.fan->curve.sheet().motor_in_stream) look_for_dew(a, shown->piece, answer);
    a.fans.push_back(answer);
  }
}

bool depends_on_fan(const Assessment& a) {
  if (!a.worst_margin_with_fans) return false;
  if (a.worst_margin < Pressure{} && *a.worst_margin_with_fans >= Pressure{}) return true;
  return a.fans_off && a.running && !a.fans_off->running;
}

void add_fan_findings(Assessment& a, const Design& design) {
  say_dependence(a);
  const std::vector<Placed> placed = placed_fans(a.path.network);
  for (const Placed& p : placed) {
    if (!p.fan->blows_along && p.fan->speed > 0.0) {
      a.findings.push_back(finding_on(FindingCode::fan_against_flow, Severity::caution, design, p.stretch->piece));
    }
    const auto answer = std::find_if(a.fans.begin(), a.fans.end(),
                                     [&](const FanAnswer& f) { return f.state.piece == p.stretch->piece; });
    if (answer == a.fans.end()) continue;
    say_temperatures(a, design, *answer, p.fan->curve.sheet());
    say_curve(a, design, *answer, *p.fan);
  }
}

}  // namespace fluewright
