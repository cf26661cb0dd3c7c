// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A subcommand of the command line: one file, one line in all_commands().

#include <functional>
#include <memory>
#include <vector>

namespace CLI {
class App;
}

namespace fluewright {

/// What the exit status says.
enum class ExitStatus {
  computed = 0,
  below_limit = 1,  ///< computed, and the worst margin is under --fail-below
  bad_input = 2
};

/// Adds a subcommand to the parser and hands back what runs it once its options are read.
struct Command {
  CLI::App* parser = nullptr;
  std::function<ExitStatus()> run;
};

[[nodiscard]] Command add_burn(CLI::App& parser);
[[nodiscard]] Command add_check(CLI::App& parser);
[[nodiscard]] Command add_findings(CLI::App& parser);
[[nodiscard]] Command add_remedies(CLI::App& parser);
[[nodiscard]] Command add_limits(CLI::App& parser);
[[nodiscard]] Command add_explain(CLI::App& parser);
[[nodiscard]] Command add_pieces(CLI::App& parser);
[[nodiscard]] Command add_demos(CLI::App& parser);
[[nodiscard]] Command add_sheet(CLI::App& parser);   ///< needs app/paper
[[nodiscard]] Command add_export(CLI::App& parser);  ///< needs app/paper
[[nodiscard]] Command add_start_map(CLI::App& parser);
[[nodiscard]] Command add_aids(CLI::App& parser);

[[nodiscard]] std::vector<Command> add_all_commands(CLI::App& parser);

}  // namespace fluewright
