// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace fluewright {

/// What a program said and how it ended.
struct ProgramRun {
  int status = -1;
  std::string output;
  std::string errors;
};

/// Runs the real command line in a folder, with a log folder of its own.
[[nodiscard]] ProgramRun run_cli(const std::vector<std::string>& arguments, const std::filesystem::path& folder);

}  // namespace fluewright
