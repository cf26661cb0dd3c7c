// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/branch_words.hpp"
#include "app/shared/report.hpp"
#include "app/shared/text_table.hpp"
#include "app/shared/words.hpp"
#include "engine/advice/findings.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace fluewright {

namespace {

constexpr std::size_t step_in = 2;

/// A part of the report: a heading and what stands under it. Nothing at all if nothing stands there.
std::string part(std::string_view heading, const std::string& body) {
  return body.empty() ? std::string{} : fmt::format("\n{}\n{}", heading, body);
}

std::string verdict_line(const Assessment& assessment, UnitSystem units) {
  if (!assessment.verdict || !assessment.worst_age) return "  not known: the faults below come first\n";
  return fmt::format("  {}: {} to spare at the least ({}{})\n", word(*assessment.verdict),
                     show(assessment.worst_margin, units).text(), word(*assessment.worst_age),
                     assessment.worst_margin_with_fans ? ", fan off" : "");
}

std::string margin_table(const Assessment& assessment, UnitSystem units) {
  if (assessment.design_flow.empty()) return {};
  TextTable table;
  // With a fan running the margin stands for the fan off, and what is left with it on beside it.
  const bool fans = assessment.worst_margin_with_fans.has_value();
  std::vector<std::string> head{"", fans ? "fan off" : "margin", "buoyancy", "resistance", "room", "exit", ""};
  if (fans) head.insert(head.begin() + 2, "fan on");
  table.row(std::move(head));
  for (const DesignFlow& flow : assessment.design_flow) {
    std::vector<std::string> row{std::string(word(flow.age)), show(flow.margin, units).text(),
                                 show(flow.buoyancy, units).text(), show(flow.resistance, units).text(),
                                 show(flow.room_gauge, units).text(), show(flow.exit_temperature, units).text(),
                                 flow.quick_estimate ? "quick estimate" : ""};
    if (fans) row.insert(row.begin() + 2, flow.margin_with_fans ? show(*flow.margin_with_fans, units).text() : "");
    table.row(std::move(row));
  }
  return table.text(step_in);
}

std::string running_table(const Assessment& assessment, UnitSystem units) {
  const OperatingPoint* point = assessment.running_point();
  if (point == nullptr)
    return !assessment.design_flow.empty() ? "  nowhere: no flow from the inlet to the cap holds itself\n" : "";
  TextTable table;
  table.row({"excess air", show(point->excess_air_ratio, units).text()});
  table.row({"flue gas", show(point->flue_gas, units, Meaning::mass_flow_gas).text()});
  table.row({"burn rate", show(point->burn_rate, units).text()});
  table.row({"fire", show(point->fire_temperature, units).text()});
  table.row({"exit", show(point->exit_temperature, units).text()});
  table.row({"heat released", show(point->heat.released, units).text()});
  table.row({"  to the room", show(point->heat.to_room, units).text()});
  table.row({"  into the mass", show(point->heat.into_mass, units).text()});
  table.row({"  to outdoors", show(point->heat.to_outdoors, units).text()});
  table.row({"  up the stack", show(point->heat.stack_loss, units).text()});
  table.row({"  unburned", show(point->heat.unburned, units).text()});
  return table.text(step_in);
}

/// Where on its curve a fan stands, for people.
std::string_view range_words(FanRange range) {
  switch (range) {
    case FanRange::within:
      return "";
    case FanRange::beyond:
      return "beyond its sheet";
    case FanRange::backward:
      return "gas runs backward";
    case FanRange::standing:
      break;
  }
  return "standing still";
}

std::string fan_table(const Design& design, const Library& library, const Assessment& assessment, UnitSystem units) {
  if (assessment.fans.empty()) return {};
  TextTable table;
  table.row({"", "speed", "flow", "head", "in the way", "gas", "motor", "power", ""});
  for (const FanAnswer& fan : assessment.fans) {
    table.row({piece_name(design, library, fan.state.piece), show(fan.state.speed, units, Meaning::share).text(),
               show(fan.state.flow, units).text(), show(fan.state.effect.head, units).text(),
               show(fan.state.effect.loss, units).text(), show(fan.hottest_gas, units).text(),
               show(fan.motor, units).text(), show(fan.power, units, Meaning::electric_power).text(),
               std::string(range_words(fan.state.effect.range))});
  }
  return table.text(step_in);
}

std::string power_cut_lines(const Assessment& assessment, UnitSystem units) {
  if (!assessment.fans_off) return {};
  const OperatingPoint* point = assessment.fans_off->running_point();
  TextTable table;
  table.row({"margin", show(assessment.worst_margin, units).text()});
  if (point == nullptr) {
    table.row({"settles", "nowhere: no flow from the inlet to the cap holds itself"});
    return table.text(step_in);
  }
  table.row({"excess air", show(point->excess_air_ratio, units).text()});
  table.row({"burn rate", show(point->burn_rate, units).text()});
  table.row({"flue gas", show(point->flue_gas, units, Meaning::mass_flow_gas).text()});
  table.row({"exit", show(point->exit_temperature, units).text()});
  return table.text(step_in);
}

/// Every state that a scan of signed flows finds, where there is more than one.
std::string states_table(const Assessment& assessment, UnitSystem units) {
  if (assessment.operating_points.size() < 2) return {};
  TextTable table;
  table.row({"", "at the cap", "excess air", "leaving"});
  for (const OperatingPoint& point : assessment.operating_points) {
    table.row({state_words(point), show(point.flue_gas, units, Meaning::mass_flow_gas).text(),
               show(point.excess_air_ratio, units).text(), show(point.exit_temperature, units).text()});
  }
  return table.text(step_in);
}

/// One row a branch, the way its gas runs.
std::string branch_table(const Design& design, const Library& library, const Assessment& assessment, UnitSystem units) {
  if (assessment.branches.empty()) return {};
  TextTable table;
  table.row({"branch", "from", "to", "gas", "of the cap's", "comes in", "leaves", "been through the fire"});
  for (const BranchState& state : assessment.branches) {
    const BranchWords words = branch_words(assessment, state, design, library);
    table.row({words.name, words.from, words.to, show(MassFlow(abs(state.flow)), units, Meaning::mass_flow_gas).text(),
               fmt::format("{:.0f} %", 100.0 * state.share.value()), show(state.entering, units).text(),
               show(state.leaving, units).text(), fmt::format("{:.0f} %", 100.0 * state.flue_share.value())});
  }
  return table.text(step_in);
}

std::string wet_lines(const Design& design, const Library& library, const Assessment& assessment, UnitSystem units) {
  if (!assessment.condensation) return {};
  const Condensation& wet = *assessment.condensation;
  TextTable table;
  table.row({"begins", condensation_sentence(assessment, design, library, units)});
  table.row({"dew point", show(wet.dew_point, units).text()});
  if (wet.starts_at) table.row({"water", show(wet.rate, units, Meaning::water_rate).text()});
  return table.text(step_in);
}

/// One row a piece: how the gas leaves it.
std::string piece_table(const Design& design, const Library& library, const Assessment& assessment, UnitSystem units) {
  if (assessment.profile.empty()) return {};
  TextTable table;
  const bool fans = !assessment.fans.empty();
  std::vector<std::string> head{"leaving", "along", "height", "gas",  "wall",    "outside",
                                "gauge",   "room",  "speed",  "loss", "buoyancy"};
  if (fans) head.emplace_back("fan");
  table.row(std::move(head));
  Pressure fan{};
  Pressure loss{};
  Pressure buoyancy{};
  for (std::size_t i = 0; i < assessment.profile.size(); ++i) {
    const SliceState& slice = assessment.profile[i];
    loss += slice.loss;
    buoyancy += slice.buoyancy;
    fan += slice.fan;
    const bool last_of_piece = i + 1 == assessment.profile.size() || assessment.profile[i + 1].piece != slice.piece;
    if (!last_of_piece) continue;
    std::vector<std::string> row{piece_name(design, library, slice.piece),
                                 show(slice.s, units, Meaning::run_length).text(),
                                 show(slice.z, units, Meaning::height).text(),
                                 show(slice.gas, units).text(),
                                 show(slice.wall, units).text(),
                                 show(slice.surface, units).text(),
                                 show(slice.gauge, units).text(),
                                 show(slice.room_gauge, units).text(),
                                 show(slice.velocity, units).text(),
                                 show(loss, units).text(),
                                 show(buoyancy, units).text()};
    if (fans) row.push_back(show(fan, units).text());
    table.row(std::move(row));
    loss = {};
    buoyancy = {};
    fan = {};
  }
  return table.text(step_in);
}

std::string finding_lines(const Design& design, const Library& library, const Assessment& assessment,
                          UnitSystem units) {
  std::string lines;
  for (const Finding& finding : all_findings(design, library, assessment)) {
    const std::string text = fmt::format("{}: {}", word(finding.severity), sentence(finding, design, library, units));
    lines += wrapped(text, report_width, step_in, step_in);
    if (const Acknowledgement* acknowledged = acknowledgement_of(finding, design)) {
      lines += wrapped("acknowledged: " + acknowledged->reason, report_width, 2 * step_in, step_in);
    }
  }
  if (!lines.empty()) {
    lines += "\n  Why each matters and what it rests on: fluewright-cli findings.";
    lines += assessment.verdict ? " What would help: fluewright-cli remedies.\n" : "\n";
  }
  return lines;
}

std::string caution_lines() {
  std::string lines;
  for (const std::string& caution : cautions()) lines += wrapped("- " + caution, report_width, step_in, step_in);
  return lines;
}

}  // namespace

std::string assessment_text(const Design& design, const Library& library, const Assessment& assessment,
                            UnitSystem units) {
  std::string text = (design.title.empty() ? "Untitled" : design.title) + "\n";
  text += wrapped(design.scene, report_width, step_in);
  text += part("Does it draw?", verdict_line(assessment, units));
  text += part("Draft to spare at the wanted fire", margin_table(assessment, units));
  text += part("Where it settles", running_table(assessment, units));
  text += part("Fans", fan_table(design, library, assessment, units));
  text += part("When the power fails", power_cut_lines(assessment, units));
  text += part("All states it can settle in", states_table(assessment, units));
  text += part(assessment.profile_is_operating ? "Branches, where it settles" : "Branches, at the wanted fire",
               branch_table(design, library, assessment, units));
  text += part("Wet walls", wet_lines(design, library, assessment, units));
  text += part("Worth knowing", finding_lines(design, library, assessment, units));
  text +=
      part(assessment.profile_is_operating ? "Along the path, where it settles" : "Along the path, at the wanted fire",
           piece_table(design, library, assessment, units));
  text += part("Before anyone builds", caution_lines());
  return text;
}

}  // namespace fluewright
