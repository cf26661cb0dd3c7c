// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.hpp"
#include "app/cli/read_design.hpp"
#include "app/cli/unit_option.hpp"
#include "app/cli/wait_progress.hpp"
#include "app/paper/paper.hpp"
#include "app/shared/library_reader.hpp"
#include "app/shared/report.hpp"
#include "engine/solve/assessment.hpp"

#include <CLI/CLI.hpp>

#include <ctime>
#include <iostream>

namespace fluewright {

namespace {

struct SheetOptions {
  std::string design;
  std::string out;
  std::string before;
  std::string date;
  double stock_mm = 3000.0;
  double kerf_mm = 3.0;
  double overlap_mm = 40.0;
  double sand = 3.0;
  double clay = 1.0;
  PaperOptions paper;
};

struct ExportOptions {
  std::string design;
  std::string out;
  ViewOptions view;
};

std::string today() {
  const std::time_t now = std::time(nullptr);
  std::tm local{};
  localtime_r(&now, &local);
  char text[16];
  return {text, std::strftime(text, sizeof text, "%Y-%m-%d", &local)};
}

ExitStatus told(const PaperFault& fault) {
  if (!fault) return ExitStatus::computed;
  std::cerr << *fault << '\n';
  return ExitStatus::bad_input;
}

ExitStatus sheet(SheetOptions& options) {
  const auto library = shipped_library();
  const auto document = opened_design(options.design, *library);
  if (!document) return ExitStatus::bad_input;
  options.paper.variant_name = document->variant_name;
  if (!options.before.empty()) {
    const auto before = opened_design(options.before, *library);
    if (!before) return ExitStatus::bad_input;
    options.paper.before = PaperVariant{before->design, before->variant_name};
  } else if (!document->others.empty()) {
    // The variant that this one was made from stands before it.
    const Variant& other = document->others[document->place > 0 ? document->place - 1 : 0];
    options.paper.before = PaperVariant{other.design, other.name};
  }
  if (options.paper.page == PaperPage::card) {
    if (const auto job = CardTableJob::begin(document->design, library, card_days(options.paper.units))) {
      wait_with_progress(*job, "Starts");
      options.paper.starts = job->table();
    }
  }
  options.paper.stamp = {std::filesystem::path(options.design).filename().string(),
                         options.date.empty() ? today() : options.date, FLUEWRIGHT_VERSION};
  options.paper.stock = {options.stock_mm * millimetre, options.kerf_mm * millimetre, options.overlap_mm * millimetre};
  options.paper.recipe.sand = options.sand;
  options.paper.recipe.clay = options.clay;
  return told(write_paper(document->design, *library, options.paper, options.out));
}

ExitStatus export_design(const ExportOptions& options) {
  const auto library = shipped_library();
  const auto document = opened_design(options.design, *library);
  if (!document) return ExitStatus::bad_input;
  const std::filesystem::path path = options.out;
  if (path.extension() == ".csv") return told(write_file(path, parts_csv(document->design, *library)));
  if (path.extension() == ".json") {
    const Assessment assessment = assess(document->design, *library);
    return told(write_file(path, assessment_json(document->design, *library, assessment).dump(2) + "\n"));
  }
  return told(write_view(document->design, *library, options.view, path));
}

/// One of a few words for a value.
template <class Value>
void add_choice(CLI::App& command, const std::string& name, Value& into, const std::map<std::string, Value>& words,
                const std::string& first, const std::string& help) {
  std::vector<std::string> known;
  for (const auto& [word, value] : words) known.push_back(word);
  command
      .add_option_function<std::string>(
          name, [&into, words](const std::string& word) { into = words.at(word); }, help)
      ->check(CLI::IsMember(known))
      ->default_str(first);
}

const std::map<std::string, PaperSize>& sizes() {
  static const std::map<std::string, PaperSize> all{{"a4", PaperSize::a4}, {"letter", PaperSize::letter}};
  return all;
}

constexpr const char* design_help = "A design file, or demo:ID for a demo that ships with the program";

}  // namespace

Command add_sheet(CLI::App& parser) {
  auto options = std::make_shared<SheetOptions>();
  CLI::App* command =
      parser.add_subcommand("sheet", "Paper as PDF: for whoever builds, owns, lights or checks the heater");
  command->add_option("DESIGN", options->design, design_help)->required();
  command->add_option("--out", options->out, "The PDF file to write")->required()->type_name("FILE.pdf");
  add_choice<PaperPage>(*command, "--page", options->paper.page,
                        {{"build", PaperPage::build},
                         {"client", PaperPage::client},
                         {"card", PaperPage::card},
                         {"working", PaperPage::working}},
                        "build", "Which: build sheet, client's page, lighting card, working pages");
  add_choice<PaperSize>(*command, "--paper", options->paper.size, sizes(), "a4", "Size of the paper");
  add_unit_option(*command, options->paper.units);
  command->add_option("--before", options->before, "A design to compare with on the client's page; of a file with variants its variant before, unless said otherwise")
      ->type_name("DESIGN");
  command->add_option("--date", options->date, "Date in the title block instead of today's")->type_name("TEXT");
  const auto positive = CLI::Range(0.0, 1e6);
  command->add_option("--stock", options->stock_mm, "Length that pipe is sold in")
      ->type_name("MM")
      ->check(positive)
      ->capture_default_str();
  command->add_option("--kerf", options->kerf_mm, "What a saw cut takes")
      ->type_name("MM")
      ->check(positive)
      ->capture_default_str();
  command->add_option("--overlap", options->overlap_mm, "What of a pipe is pushed into the next")
      ->type_name("MM")
      ->check(positive)
      ->capture_default_str();
  command->add_option("--sand", options->sand, "Parts of sand in the cob, by volume")
      ->type_name("PARTS")
      ->check(positive)
      ->capture_default_str();
  command->add_option("--clay", options->clay, "Parts of clay in the cob, by volume")
      ->type_name("PARTS")
      ->check(positive)
      ->capture_default_str();
  return {command, [options] { return sheet(*options); }};
}

Command add_export(CLI::App& parser) {
  auto options = std::make_shared<ExportOptions>();
  CLI::App* command = parser.add_subcommand(
      "export",
      "A view as .pdf, .svg, .png or .dxf, the parts list as .csv, the answer as .json: by the file's suffix");
  command->add_option("DESIGN", options->design, design_help)->required();
  command->add_option("--out", options->out, "The file to write")->required()->type_name("FILE");
  add_choice<PaperView>(*command, "--view", options->view.view,
                        {{"plan", PaperView::plan},
                         {"front", PaperView::front},
                         {"side", PaperView::side},
                         {"isometric", PaperView::isometric}},
                        "isometric", "From where: from above, the south, the east or the corner between");
  add_choice<PaperSize>(*command, "--paper", options->view.size, sizes(), "a4",
                        "Size of the paper that the scale is chosen for");
  add_unit_option(*command, options->view.units);
  return {command, [options] { return export_design(*options); }};
}

}  // namespace fluewright
