// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The page of the twenty questions: each has its place, and what it sends people to exists.

#include "tests/app/cli/run_program.hpp"

#include <gtest/gtest.h>

#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <sstream>

namespace fluewright {
namespace {

namespace fs = std::filesystem;

/// The rows of the table: question by number, and where it is answered.
std::map<int, std::string> answers_by_number() {
  std::map<int, std::string> answers;
  std::ifstream file(fs::path(FLUEWRIGHT_DOCUMENTATION) / "questions.md");
  const std::regex row(R"(\| (\d+) \| ([^|]+) \| ([^|]+) \|)");
  for (std::string line; std::getline(file, line);) {
    std::smatch found;
    if (std::regex_match(line, found, row)) answers[std::stoi(found[1])] = found[3];
  }
  return answers;
}

std::set<std::string> all_matches(const std::string& text, const std::regex& what) {
  std::set<std::string> found;
  for (auto m = std::sregex_iterator(text.begin(), text.end(), what); m != std::sregex_iterator(); ++m) found.insert((*m)[1]);
  return found;
}

TEST(TheTwentyQuestions, AllHaveAPlace) {
  const auto answers = answers_by_number();
  ASSERT_EQ(answers.size(), 20u);
  EXPECT_EQ(answers.begin()->first, 1);
  EXPECT_EQ(answers.rbegin()->first, 20);
}

TEST(TheTwentyQuestions, SayNotYetOnlyWhereWeatherRangesOrLogsWouldBeNeeded) {
  for (const auto& [number, answer] : answers_by_number()) {
    EXPECT_TRUE(answer.find("fluewright-cli") != std::string::npos || answer.find("**") != std::string::npos) << number;
    const std::regex missing("([a-z ]+), not yet");
    for (const std::string& what : all_matches(answer, missing)) {
      EXPECT_TRUE(std::regex_search(what, std::regex("hourly weather$|ranges$|measured logs$"))) << number << ": " << what;
    }
    // No other wording of it.
    std::string rest = std::regex_replace(answer, missing, "");
    EXPECT_EQ(rest.find("not yet"), std::string::npos) << number;
  }
}

TEST(TheTwentyQuestions, NameCommandsAndOptionsThatExist) {
  std::string text;
  for (const auto& [number, answer] : answers_by_number()) text += answer + '\n';
  const std::set<std::string> commands = all_matches(text, std::regex("fluewright-cli ([a-z]+)"));
  EXPECT_GE(commands.size(), 8u);
  std::string options;
  for (const std::string& command : commands) {
    const ProgramRun run = run_cli({command, "--help"}, fs::path(FLUEWRIGHT_CLI_TESTS) / "designs");
    EXPECT_EQ(run.status, 0) << command;
    options += run.output;
  }
  for (const std::string& option : all_matches(text, std::regex("(--[a-z]+)"))) {
    EXPECT_NE(options.find(option), std::string::npos) << option;
  }
  for (const std::string& limit : all_matches(text, std::regex("--limit ([a-z_]+)"))) {
    EXPECT_NE(options.find(limit), std::string::npos) << limit;
  }
}

}  // namespace
}  // namespace fluewright
