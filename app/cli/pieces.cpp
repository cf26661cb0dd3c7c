// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.hpp"
#include "app/cli/unit_option.hpp"
#include "app/shared/library_reader.hpp"
#include "app/shared/report.hpp"

#include <CLI/CLI.hpp>

#include <iostream>

namespace fluewright {

namespace {

struct PiecesOptions {
  bool json = false;
  UnitSystem units = UnitSystem::metric;
};

}  // namespace

Command add_pieces(CLI::App& parser) {
  auto options = std::make_shared<PiecesOptions>();
  CLI::App* command = parser.add_subcommand("pieces", "The catalogue of pieces, every value with its source");
  command->add_flag("--json", options->json, "JSON instead of a list for reading");
  add_unit_option(*command, options->units);
  return {command, [options] {
            const auto library = shipped_library();
            if (options->json) {
              std::cout << catalogue_json(*library).dump(2) << '\n';
            } else {
              std::cout << catalogue_text(*library, options->units);
            }
            return ExitStatus::computed;
          }};
}

}  // namespace fluewright
