// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.hpp"
#include "app/cli/read_design.hpp"
#include "app/cli/unit_option.hpp"
#include "app/shared/library_reader.hpp"
#include "app/shared/report.hpp"
#include "app/shared/start_report.hpp"
#include "app/shared/words.hpp"

#include <spdlog/spdlog.h>
#include <CLI/CLI.hpp>

#include <cmath>
#include <iostream>
#include <optional>

namespace fluewright {

namespace {

struct CheckOptions {
  std::string design;
  bool json = false;
  UnitSystem units = UnitSystem::metric;
  std::optional<double> fail_below;  ///< Pa
};

/// What keeps the drawing from being computed.
void tell_faults(const Design& design, const Library& library, const Assessment& assessment, UnitSystem units) {
  for (const Finding& finding : assessment.findings) {
    if (finding.severity == Severity::fault) std::cerr << sentence(finding, design, library, units) << '\n';
  }
}

ExitStatus check(const CheckOptions& options) {
  const auto library = shipped_library();
  const auto document = opened_design(options.design, *library);
  if (!document) return ExitStatus::bad_input;
  const Assessment assessment = assess(document->design, *library);
  spdlog::info("checked {}: {} pieces, {} findings", options.design, document->design.pieces.size(),
               assessment.findings.size());
  // What a power cut does to the fans that run stands above all else; no option leaves it out.
  const auto cut = assessment.verdict ? run_power_cut(document->design, *library) : std::nullopt;
  if (options.json) {
    auto json = assessment_json(document->design, *library, assessment);
    if (cut) json["power_cut_run"] = power_cut_json(*cut);
    std::cout << json.dump(2) << '\n';
  } else {
    if (cut) std::cout << power_cut_text(*cut) << '\n';
    std::cout << assessment_text(document->design, *library, assessment, options.units);
  }
  if (!assessment.verdict) {
    tell_faults(document->design, *library, assessment, options.units);
    return ExitStatus::bad_input;
  }
  if (options.fail_below && assessment.worst_margin < *options.fail_below * pascal) return ExitStatus::below_limit;
  return ExitStatus::computed;
}

}  // namespace

Command add_check(CLI::App& parser) {
  auto options = std::make_shared<CheckOptions>();
  CLI::App* command =
      parser.add_subcommand("check", "Does it draw? Draft to spare, temperatures, wet walls, pressures along the path");
  command->add_option("DESIGN", options->design, "A design file, or demo:ID for a demo that ships with the program")
      ->required();
  command->add_flag("--json", options->json, "JSON with units in the keys instead of a table");
  add_unit_option(*command, options->units);
  command
      ->add_option("--fail-below", options->fail_below,
                   "Exit with status 1 if the least draft to spare is under this many pascals")
      ->type_name("PA")
      ->check([](const std::string& text) {
        double number = 0.0;
        return CLI::detail::lexical_cast(text, number) && std::isfinite(number) ? std::string{}
                                                                                : "a number of pascals is wanted";
      });
  return {command, [options] { return check(*options); }};
}

}  // namespace fluewright
