// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.hpp"
#include "app/cli/read_design.hpp"
#include "app/cli/unit_option.hpp"
#include "app/shared/burn_file.hpp"
#include "app/shared/burn_report.hpp"
#include "app/shared/library_reader.hpp"
#include "engine/burn/burn_run.hpp"

#include <fmt/format.h>
#include <spdlog/spdlog.h>
#include <CLI/CLI.hpp>

#include <algorithm>
#include <iostream>
#include <string>

namespace fluewright {
namespace {

struct RunOptions {
  std::string design;
  std::string events = "typical_evening";
  bool json = false;
  bool csv = false;
  UnitSystem units = UnitSystem::metric;
};

/// A preset by its id, else a file.
PlanReadResult read_events(const std::string& name, const Design& design, const Library& library) {
  const bool known = std::any_of(plan_presets.begin(), plan_presets.end(), [&](const PlanPreset& p) { return p.id == name; });
  if (!known) return read_plan_file(name);
  if (auto plan = preset_plan(name, design, library)) return *std::move(plan);
  return FileFault{{fmt::format("The preset “{}” wants a fan that this design does not have.", name)}};
}

ExitStatus burn(const RunOptions& options) {
  const auto library = shipped_library();
  const auto document = opened_design(options.design, *library);
  if (!document) return ExitStatus::bad_input;
  const Design& design = document->design;
  const PlanReadResult events = read_events(options.events, design, *library);
  if (const auto* fault = std::get_if<FileFault>(&events)) {
    std::cerr << fault->text() << '\n';
    return ExitStatus::bad_input;
  }
  const auto& plan = std::get<BurnPlan>(events);
  const std::vector<PlanFault> faults = check_plan(plan, design, *library);
  for (const PlanFault& fault : faults) std::cerr << sentence(fault, design, *library) << '\n';
  if (!faults.empty()) return ExitStatus::bad_input;

  const BurnRecord record = run_burn(design, *library, plan);
  spdlog::info("burnt {}: {} steps, {} rejected", options.design, record.steps, record.rejected_steps);
  if (record.end != BurnEnd::done) {
    std::cerr << sentence(record.end) << '\n';
    return ExitStatus::bad_input;
  }
  if (options.json) {
    std::cout << burn_json(design, plan, record).dump(1) << '\n';
  } else if (options.csv) {
    std::cout << burn_csv(record);
  } else {
    std::cout << burn_text(plan, record, options.units);
  }
  return ExitStatus::computed;
}

std::string preset_names() {
  std::string names;
  for (const PlanPreset& p : plan_presets) names += fmt::format("{}{}", names.empty() ? "" : ", ", p.id);
  return names;
}

}  // namespace

Command add_burn(CLI::App& parser) {
  auto options = std::make_shared<RunOptions>();
  CLI::App* command = parser.add_subcommand("burn", "From match to warm bench: the fire, the draft and the heat over time");
  command->add_option("DESIGN", options->design, "A design file, or demo:ID for a demo that ships with the program")
      ->required();
  command->add_option("--events", options->events, "A file of events, or one of " + preset_names())
      ->type_name("FILE|PRESET")
      ->capture_default_str();
  CLI::Option* json = command->add_flag("--json", options->json, "JSON with units in the keys instead of a table");
  command->add_flag("--csv", options->csv, "Comma-separated rows instead of a table")->excludes(json);
  add_unit_option(*command, options->units);
  return {command, [options] { return burn(*options); }};
}

}  // namespace fluewright
