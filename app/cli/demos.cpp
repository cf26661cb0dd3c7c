// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.hpp"
#include "app/shared/library_reader.hpp"
#include "app/shared/text_table.hpp"

#include <CLI/CLI.hpp>

#include <iostream>

namespace fluewright {

Command add_demos(CLI::App& parser) {
  CLI::App* command = parser.add_subcommand("demos", "The demo designs that ship with the program");
  return {command, [] {
            constexpr std::size_t width = 96;
            for (const Demo& demo : shipped_demos()) {
              std::cout << "demo:" << demo.id << "  " << demo.title << '\n' << wrapped(demo.scene, width, 4);
            }
            return ExitStatus::computed;
          }};
}

}  // namespace fluewright
