// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.hpp"
#include "app/shared/log.hpp"

#include <spdlog/spdlog.h>
#include <CLI/CLI.hpp>

#include <iostream>

namespace {

/// What the parser has to say, and the status that goes with it.
int tell(const CLI::App& parser, const CLI::ParseError& error) {
  const int status = parser.exit(error, std::cout, std::cerr);
  return status == 0 ? 0 : static_cast<int>(fluewright::ExitStatus::bad_input);
}

/// A result that did not reach its reader (a full disk, a closed pipe) is no result.
int finished(fluewright::ExitStatus status) {
  if (std::cout.flush()) return static_cast<int>(status);
  std::cerr << "The result could not be written.\n";
  return static_cast<int>(fluewright::ExitStatus::bad_input);
}

}  // namespace

int main(int argc, char** argv) {
  using namespace fluewright;
  CLI::App parser{"Fluewright: does the flue path of a wood-fired mass heater draw?", "fluewright-cli"};
  parser.set_version_flag("--version", std::string("fluewright-cli ") + FLUEWRIGHT_VERSION);
  std::string level = "warn";
  parser.add_option("--log-level", level, "What is logged on standard error: trace, debug, info, warn, error or off")
      ->check(CLI::IsMember(std::vector<std::string>(std::begin(log_levels), std::end(log_levels))))
      ->capture_default_str();
  parser.require_subcommand(1);
  parser.footer("Exit status: 0 computed, 1 the draft to spare is under --fail-below, 2 bad input.");
  const auto commands = add_all_commands(parser);
  try {
    parser.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    return tell(parser, error);
  }
  try {
    start_logging("fluewright-cli", level);
    for (const Command& command : commands) {
      if (command.parser->parsed()) return finished(command.run());
    }
  } catch (const std::exception& error) {
    spdlog::error("{}", error.what());
    std::cerr << "This should not have happened: " << error.what() << '\n';
  }
  return static_cast<int>(ExitStatus::bad_input);
}
