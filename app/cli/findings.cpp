// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.hpp"
#include "app/cli/read_design.hpp"
#include "app/cli/unit_option.hpp"
#include "app/shared/finding_report.hpp"
#include "app/shared/library_reader.hpp"

#include <CLI/CLI.hpp>

#include <iostream>

namespace fluewright {

namespace {

struct FindingsOptions {
  std::string design;
  bool json = false;
  UnitSystem units = UnitSystem::metric;
};

ExitStatus tell_findings(const FindingsOptions& options) {
  const auto library = shipped_library();
  const auto document = opened_design(options.design, *library);
  if (!document) return ExitStatus::bad_input;
  const Design& design = document->design;
  const auto findings = all_findings(design, *library, assess(design, *library));
  if (options.json) {
    nlohmann::ordered_json json = {{"title", design.title}, {"findings", nlohmann::ordered_json::array()}};
    for (const Finding& finding : findings) json["findings"].push_back(finding_json(finding, design, *library));
    std::cout << json.dump(2) << '\n';
  } else {
    std::cout << (design.title.empty() ? "Untitled" : design.title) << "\n\nWorth knowing\n"
              << findings_text(findings, design, *library, options.units);
  }
  return ExitStatus::computed;
}

}  // namespace

Command add_findings(CLI::App& parser) {
  auto options = std::make_shared<FindingsOptions>();
  CLI::App* command =
      parser.add_subcommand("findings", "What is wrong or worth knowing, most serious first, why it matters and what it rests on");
  command->add_option("DESIGN", options->design, "A design file, or demo:ID for a demo that ships with the program")
      ->required();
  command->add_flag("--json", options->json, "JSON instead of a list");
  add_unit_option(*command, options->units);
  return {command, [options] { return tell_findings(*options); }};
}

}  // namespace fluewright
