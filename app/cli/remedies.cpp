// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.hpp"
#include "app/cli/progress.hpp"
#include "app/cli/read_design.hpp"
#include "app/cli/unit_option.hpp"
#include "app/shared/library_reader.hpp"
#include "app/shared/price_reader.hpp"
#include "app/shared/remedy_report.hpp"

#include <CLI/CLI.hpp>

#include <iostream>

namespace fluewright {

namespace {

struct RemediesOptions {
  std::string design;
  std::string prices;
  std::size_t most = 10;
  bool singles = false;
  bool json = false;
  UnitSystem units = UnitSystem::metric;
};

ExitStatus tell_remedies(const RemediesOptions& options) {
  const auto library = shipped_library();
  const auto document = opened_design(options.design, *library);
  if (!document) return ExitStatus::bad_input;
  PriceList prices = shipped_prices();
  if (!options.prices.empty()) {
    auto own = read_price_file(options.prices);
    if (const auto* fault = std::get_if<std::string>(&own)) {
      std::cerr << *fault << '\n';
      return ExitStatus::bad_input;
    }
    prices = std::get<PriceList>(std::move(own));
  }
  RemedyList list;
  {
    Progress progress("trying");
    RemedySearch search{document->design, *library, prices, !options.singles, {}, {}, {}};
    search.moved_on = [&progress](const SearchState& state) { progress.at(state.tried, state.of); };
    list = search_remedies(search);
  }
  if (options.json) {
    std::cout << remedies_json(list, document->design, *library, prices).dump(2) << '\n';
  } else {
    std::cout << remedies_text(list, document->design, *library, prices, options.units, options.most);
  }
  return list.before ? ExitStatus::computed : ExitStatus::bad_input;
}

}  // namespace

Command add_remedies(CLI::App& parser) {
  auto options = std::make_shared<RemediesOptions>();
  CLI::App* command = parser.add_subcommand("remedies", "What could be changed and what each change brings, best first");
  command->add_option("DESIGN", options->design, "A design file, or demo:ID for a demo that ships with the program")
      ->required();
  command->add_flag("--singles", options->singles, "Single changes only, no pairs");
  command->add_option("--most", options->most, "How many are listed (JSON has all)")->capture_default_str();
  command->add_option("--prices", options->prices, "Your own price list instead of the round figures that ship")
      ->type_name("FILE");
  command->add_flag("--json", options->json, "JSON with units in the keys instead of a list");
  add_unit_option(*command, options->units);
  return {command, [options] { return tell_remedies(*options); }};
}

}  // namespace fluewright
