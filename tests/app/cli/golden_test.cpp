// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Every folder under golden/ is a case: its `arguments` (one a line) are given to the real program, run in designs/,
// and what it prints, what it complains and how it ends must be what stands there. When the numbers are meant to
// change, FLUEWRIGHT_UPDATE_GOLDEN=1 writes them anew: look at the difference before committing it.

#include "tests/app/cli/run_program.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <sstream>

namespace fluewright {
namespace {

namespace fs = std::filesystem;

const fs::path here = FLUEWRIGHT_CLI_TESTS;

std::string content(const fs::path& path) {
  std::stringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  return text.str();
}

std::vector<std::string> lines(const fs::path& path) {
  std::ifstream file(path);
  std::vector<std::string> all;
  for (std::string line; std::getline(file, line);) all.push_back(line);
  return all;
}

std::vector<std::string> case_names() {
  std::vector<std::string> names;
  for (const auto& entry : fs::directory_iterator(here / "golden")) names.push_back(entry.path().filename().string());
  std::sort(names.begin(), names.end());
  return names;
}

class CommandLine : public testing::TestWithParam<std::string> {};

TEST_P(CommandLine, SaysWhatItShould) {
  const fs::path folder = here / "golden" / GetParam();
  const ProgramRun run = run_cli(lines(folder / "arguments"), here / "designs");
  if (std::getenv("FLUEWRIGHT_UPDATE_GOLDEN") != nullptr) {
    std::ofstream(folder / "output") << run.output;
    std::ofstream(folder / "errors") << run.errors;
    std::ofstream(folder / "status") << run.status << '\n';
    FAIL() << "written anew: look at what changed, then run without FLUEWRIGHT_UPDATE_GOLDEN";
  }
  EXPECT_EQ(run.output, content(folder / "output"));
  EXPECT_EQ(run.errors, content(folder / "errors"));
  EXPECT_EQ(std::to_string(run.status) + "\n", content(folder / "status"));
}

INSTANTIATE_TEST_SUITE_P(Golden, CommandLine, testing::ValuesIn(case_names()),
                         [](const testing::TestParamInfo<std::string>& named) { return named.param; });

}  // namespace
}  // namespace fluewright
