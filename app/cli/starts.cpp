// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.hpp"
#include "app/cli/wait_progress.hpp"
#include "app/cli/read_design.hpp"
#include "app/cli/unit_option.hpp"
#include "app/shared/aid_figures.hpp"
#include "app/shared/library_reader.hpp"
#include "app/shared/start_jobs.hpp"
#include "app/shared/start_report.hpp"

#include <spdlog/spdlog.h>
#include <CLI/CLI.hpp>

#include <iostream>
#include <optional>
#include <string>

namespace fluewright {
namespace {

struct StartOptions {
  std::string design;
  bool json = false;
  UnitSystem units = UnitSystem::metric;
  std::size_t cells = 41;
  std::string figures;
  std::optional<double> outdoors;  ///< degC
  std::optional<double> room;
};

constexpr auto nothing_burns = "The drawing has no complete path with a fire on it yet: nothing can burn.";

/// The design with its day as asked for; nothing (and said why) where it cannot be read.
std::optional<Design> read(const StartOptions& options, const Library& library) {
  auto document = opened_design(options.design, library);
  if (!document) return std::nullopt;
  if (options.outdoors) document->design.site.outdoor_temperature = celsius(*options.outdoors);
  if (options.room) document->design.room.temperature = celsius(*options.room);
  return std::move(document->design);
}

/// What a power cut does to the fans that the design runs stands above all else.
void tell_power_cut(const Design& design, const Library& library) {
  if (const auto cut = run_power_cut(design, library)) std::cout << power_cut_text(*cut) << '\n';
}

ExitStatus start_map(const StartOptions& options) {
  const auto library = shipped_library();
  const auto design = read(options, *library);
  if (!design) return ExitStatus::bad_input;
  auto question = ask_for_start(*design, *library);
  if (!question) {
    std::cerr << nothing_burns << '\n';
    return ExitStatus::bad_input;
  }
  StartMapJob job(*std::move(question), library, usual_grid(*design, options.cells));
  wait_with_progress(job, "Starts");
  const StartMap map = job.map();
  spdlog::info("start map of {}: {} cells", options.design, map.size());
  if (options.json) {
    auto json = start_map_json(map, job.question());
    const auto cut = run_power_cut(*design, *library);
    json["power_cut"] = cut ? power_cut_json(*cut) : nlohmann::ordered_json(nullptr);
    std::cout << json.dump(1) << '\n';
  } else {
    tell_power_cut(*design, *library);
    std::cout << start_map_text(map, job.question(), options.units);
  }
  return ExitStatus::computed;
}

ExitStatus aids(const StartOptions& options) {
  const auto library = shipped_library();
  const auto design = read(options, *library);
  if (!design) return ExitStatus::bad_input;
  if (!ask_for_start(*design, *library)) {
    std::cerr << nothing_burns << '\n';
    return ExitStatus::bad_input;
  }
  AidsQuestion question{*design, library.get(), shipped_aid_figures(), {}};
  if (!options.figures.empty()) {
    const FiguresResult figures = read_aid_figures_file(options.figures);
    if (const auto* fault = std::get_if<FileFault>(&figures)) {
      std::cerr << fault->text() << '\n';
      return ExitStatus::bad_input;
    }
    question.figures = std::get<AidFigures>(figures);
  }
  AidsJob job(question, library);
  wait_with_progress(job, "Aids");
  if (options.json) {
    auto json = aids_json(job.rows(), question);
    const auto cut = run_power_cut(*design, *library);
    json["power_cut"] = cut ? power_cut_json(*cut) : nlohmann::ordered_json(nullptr);
    std::cout << json.dump(1) << '\n';
  } else {
    tell_power_cut(*design, *library);
    std::cout << aids_text(job.rows(), question, options.units);
  }
  return ExitStatus::computed;
}

void add_common(CLI::App& command, StartOptions& options) {
  command.add_option("DESIGN", options.design, "A design file, or demo:ID for a demo that ships with the program")->required();
  command.add_flag("--json", options.json, "JSON with units in the keys instead of a table");
  add_unit_option(command, options.units);
}

}  // namespace

Command add_start_map(CLI::App& parser) {
  auto options = std::make_shared<StartOptions>();
  CLI::App* command = parser.add_subcommand("startmap", "Will it start? A map over outdoor and room temperature");
  add_common(*command, *options);
  command->add_option("--cells", options->cells, "Cells a side")->check(CLI::Range(2, 101))->capture_default_str();
  return {command, [options] { return start_map(*options); }};
}

Command add_aids(CLI::App& parser) {
  auto options = std::make_shared<StartOptions>();
  CLI::App* command = parser.add_subcommand("aids", "Starting aids side by side: kindling, priming, bypass, fans");
  add_common(*command, *options);
  command->add_option("--figures", options->figures, "A file with your own prices, laid out as resources/aid_figures.json")
      ->type_name("FILE");
  command->add_option("--outdoors", options->outdoors, "Outdoor temperature in degrees Celsius instead of the design's")
      ->type_name("C")->check(CLI::Range(-50.0, 45.0));
  command->add_option("--room", options->room, "Room temperature in degrees Celsius instead of the design's")
      ->type_name("C")->check(CLI::Range(-30.0, 40.0));
  return {command, [options] { return aids(*options); }};
}

}  // namespace fluewright
