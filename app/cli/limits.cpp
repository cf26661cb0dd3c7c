// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.hpp"
#include "app/cli/progress.hpp"
#include "app/cli/read_design.hpp"
#include "app/cli/unit_option.hpp"
#include "app/shared/library_reader.hpp"
#include "app/shared/limit_report.hpp"
#include "app/shared/limit_search.hpp"

#include <CLI/CLI.hpp>

#include <iostream>

namespace fluewright {

namespace {

struct LimitsOptions {
  std::string design;
  std::string kind;  ///< empty: all
  double margin = in(marginal_below, pascal);
  std::size_t points = 12;
  bool refined = false;
  bool json = false;
  UnitSystem units = UnitSystem::metric;
};

/// One limit, or why there is none.
struct Told {
  LimitKind kind{};
  std::optional<LimitAnswer> answer;
};

std::vector<Told> search_all(const LimitsOptions& options, const Design& design, const Library& library) {
  std::vector<Told> told;
  for (const LimitKind kind : limit_kinds) {
    if (!options.kind.empty() && limit_name(kind) != options.kind) continue;
    Progress progress(limit_title(kind) + ":");
    LimitSearch search{kind, design, library, options.margin * pascal, options.points, {}, {}};
    search.moved_on = [&progress](std::size_t done, std::size_t of) { progress.at(done, of); };
    std::optional<LimitAnswer> answer = search_limit(search);
    if (answer && options.refined) {
      if (auto refined = refined_limit(search, *answer, {})) answer = std::move(refined);
    }
    told.push_back({kind, std::move(answer)});
  }
  return told;
}

ExitStatus tell_limits(const LimitsOptions& options) {
  const auto library = shipped_library();
  const auto document = opened_design(options.design, *library);
  if (!document) return ExitStatus::bad_input;
  const Design& design = document->design;
  AssessOptions quick;
  quick.operating_points = false;
  const bool has_answer = assess(design, *library, quick).verdict.has_value();
  const auto told = search_all(options, design, *library);
  if (options.json) {
    nlohmann::ordered_json json = {{"title", design.title}, {"limits", nlohmann::ordered_json::array()}};
    for (const Told& one : told) {
      if (one.answer) {
        json["limits"].push_back(limit_json(*one.answer, design));
      } else {
        json["limits"].push_back(
            {{"limit", limit_name(one.kind)}, {"state", "none"}, {"sentence", no_limit_sentence(one.kind, has_answer)}});
      }
    }
    std::cout << json.dump(2) << '\n';
  } else {
    std::cout << (design.title.empty() ? "Untitled" : design.title) << '\n';
    for (const Told& one : told) {
      std::cout << '\n';
      if (one.answer) {
        std::cout << limit_text(*one.answer, design, options.units);
      } else {
        std::cout << limit_title(one.kind) << "\n  " << no_limit_sentence(one.kind, has_answer) << '\n';
      }
    }
  }
  return has_answer ? ExitStatus::computed : ExitStatus::bad_input;
}

}  // namespace

Command add_limits(CLI::App& parser) {
  auto options = std::make_shared<LimitsOptions>();
  CLI::App* command =
      parser.add_subcommand("limits", "How long the bench may be, how short the stack, with the curve that led there");
  command->add_option("DESIGN", options->design, "A design file, or demo:ID for a demo that ships with the program")
      ->required();
  std::vector<std::string> names;
  for (const LimitKind kind : limit_kinds) names.emplace_back(limit_name(kind));
  command->add_option("--limit", options->kind, "This one only")->type_name("NAME")->check(CLI::IsMember(names));
  command->add_option("--margin", options->margin, "Draft that is to stay to spare, in pascals")
      ->type_name("PA")
      ->check(CLI::Range(-50.0, 100.0))
      ->capture_default_str();
  command->add_option("--points", options->points, "How many points the curve has")
      ->check(CLI::Range(4, 200))
      ->capture_default_str();
  command->add_flag("--refined", options->refined,
                    "Work the cold bench and the hour after out step by step in time instead of by the quick estimate");
  command->add_flag("--json", options->json, "JSON with units in the keys instead of tables");
  add_unit_option(*command, options->units);
  return {command, [options] { return tell_limits(*options); }};
}

}  // namespace fluewright
