// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.hpp"

namespace fluewright {

std::vector<Command> add_all_commands(CLI::App& parser) {
  std::vector<Command> all{add_check(parser),     add_findings(parser), add_remedies(parser), add_limits(parser), add_burn(parser),
                           add_start_map(parser), add_aids(parser),     add_explain(parser),  add_pieces(parser), add_demos(parser)};
#ifdef FLUEWRIGHT_WITH_PAPER
  all.push_back(add_sheet(parser));
  all.push_back(add_export(parser));
#endif
  return all;
}

}  // namespace fluewright
