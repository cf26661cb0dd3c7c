// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.hpp"
#include "app/cli/read_design.hpp"
#include "app/cli/unit_option.hpp"
#include "app/shared/library_reader.hpp"
#include "app/shared/words.hpp"
#include "app/shared/working_report.hpp"
#include "engine/working/explain.hpp"

#include <fmt/format.h>
#include <CLI/CLI.hpp>

#include <iostream>
#include <optional>
#include <string>
#include <variant>

namespace fluewright {

namespace {

struct ExplainOptions {
  std::string design;
  std::string piece;
  std::string headline;
  std::optional<BenchAge> age;
  std::size_t slice = 0;  ///< within the piece, from 1; 0: the one in its middle
  bool json = false;
  UnitSystem units = UnitSystem::metric;
};

/// A working, or why there is none.
using Answer = std::variant<Working, std::string>;

std::string known_pieces(const Design& design, const Library& library) {
  std::string known;
  for (std::size_t i = 0; i < design.pieces.size(); ++i) {
    known += fmt::format("{}{} ({})", known.empty() ? "" : ", ", design.pieces[i].id, piece_name(design, library, i));
  }
  return known;
}

/// By id, else by label or name; nothing if none or several answer to it.
std::optional<std::size_t> find_piece(const Design& design, const Library& library, const std::string& wanted) {
  std::optional<std::size_t> found;
  for (std::size_t i = 0; i < design.pieces.size(); ++i) {
    if (design.pieces[i].id == wanted) return i;
  }
  for (std::size_t i = 0; i < design.pieces.size(); ++i) {
    if (design.pieces[i].label != wanted && piece_name(design, library, i) != wanted) continue;
    if (found) return std::nullopt;
    found = i;
  }
  return found;
}

Answer of_piece(const ExplainOptions& options, const Design& design, const Library& library, const Assessment& answer) {
  const auto piece = find_piece(design, library, options.piece);
  if (!piece) {
    return fmt::format("No one piece is called “{}”; the pieces are {}.", options.piece, known_pieces(design, library));
  }
  const auto run = retrace_piece(design, library, answer, *piece, options.age);
  if (run == nullptr && !answer.branches.empty()) {
    return fmt::format("{}: no gas passes it forwards in this state, or gas that has burnt before feeds the fire; that is not worked.",
                       piece_name(design, library, *piece));
  }
  if (run == nullptr) return "The drawing has no path with a fire on it yet: there is nothing to work.";
  const auto rows = rows_of_piece(*run, *piece);
  if (rows.empty()) return fmt::format("The gas does not pass {}.", piece_name(design, library, *piece));
  if (options.slice == 0) return *explain_piece(*run, *piece);
  if (options.slice > rows.size()) {
    return fmt::format("{} has {} slices; --slice must be one of 1 to {}.", piece_name(design, library, *piece), rows.size(),
                       rows.size());
  }
  return explain_slice(*run, rows[options.slice - 1]);
}

Answer of_headline(const ExplainOptions& options, const Design& design, const Library& library,
                   const Assessment& answer) {
  for (const NamedHeadline& known : headlines()) {
    if (known.name != options.headline) continue;
    if (auto working = explain_headline(design, library, answer, known.headline)) return *std::move(working);
    return fmt::format("There is no {} to explain: the path is not complete, nothing keeps running, or gas runs backwards on it.", known.name);
  }
  return fmt::format("There is no headline “{}”.", options.headline);
}

ExitStatus explain(const ExplainOptions& options) {
  const auto library = shipped_library();
  const auto document = opened_design(options.design, *library);
  if (!document) return ExitStatus::bad_input;
  const Design& design = document->design;
  const Assessment answer = assess(design, *library);
  const Answer result = options.headline.empty() ? of_piece(options, design, *library, answer)
                                                 : of_headline(options, design, *library, answer);
  if (const auto* why = std::get_if<std::string>(&result)) {
    std::cerr << *why << '\n';
    return ExitStatus::bad_input;
  }
  const auto& working = std::get<Working>(result);
  if (options.json) {
    std::cout << working_json(working, design, *library).dump(2) << '\n';
  } else {
    std::cout << working_text(working, design, *library, options.units);
  }
  return ExitStatus::computed;
}

void add_age_option(CLI::App& command, ExplainOptions& options) {
  static const std::map<std::string, BenchAge> ages{{"cold_bench", BenchAge::cold_bench},
                                                    {"one_hour", BenchAge::one_hour},
                                                    {"charged", BenchAge::charged}};
  command
      .add_option_function<std::string>(
          "--age", [&options](const std::string& word) { options.age = ages.at(word); },
          "The piece at the wanted fire and that age of the bench, instead of where the heater settles")
      ->check(CLI::IsMember({"cold_bench", "one_hour", "charged"}));
}

}  // namespace

Command add_explain(CLI::App& parser) {
  auto options = std::make_shared<ExplainOptions>();
  CLI::App* command = parser.add_subcommand(
      "explain", "The working of a piece or a headline number: relations, values with units, sources, step by step");
  command->add_option("DESIGN", options->design, "A design file, or demo:ID for a demo that ships with the program")
      ->required();
  CLI::Option* piece =
      command->add_option("PIECE", options->piece, "A piece by its id, its label or its name along the path");
  std::vector<std::string> names;
  for (const NamedHeadline& known : headlines()) names.emplace_back(known.name);
  CLI::Option* headline = command->add_option("--headline", options->headline, "A number of the answer instead of a piece")
                              ->type_name("NAME")
                              ->check(CLI::IsMember(names));
  headline->excludes(piece);
  command->add_option("--slice", options->slice, "This slice of the piece, from 1, instead of the one in its middle")
      ->type_name("N")
      ->needs(piece)
      ->check(CLI::PositiveNumber);
  add_age_option(*command, *options);
  command->add_flag("--json", options->json, "JSON instead of text");
  add_unit_option(*command, options->units);
  command->final_callback([options] {
    if (options->piece.empty() && options->headline.empty()) {
      throw CLI::RequiredError("explain: a PIECE or --headline NAME");
    }
  });
  return {command, [options] { return explain(*options); }};
}

}  // namespace fluewright
