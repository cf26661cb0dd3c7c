// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The documents' examples are run: every ```console block holds `$ command` lines, each followed by what it prints.

#include "tests/guards/tree.hpp"

#include <gtest/gtest.h>

#include <array>
#include <cstdio>
#include <cstdlib>

namespace fluewright::guards {
namespace {

struct Example {
  std::string command;
  std::string wanted;  ///< output; a line "..." stands for any lines
  std::string where;
};

std::vector<Example> examples_in(const ProjectFile& file) {
  std::vector<Example> found;
  bool inside = false;
  for (std::size_t i = 0; i < file.lines.size(); ++i) {
    const std::string& line = file.lines[i];
    if (line.starts_with("```")) {
      inside = line == "```console";
    } else if (inside && line.starts_with("$ ")) {
      found.push_back({line.substr(2), {}, pointer_to(file, i)});
    } else if (inside && !found.empty()) {
      found.back().wanted += line + "\n";
    }
  }
  return found;
}

std::string output_of(const std::string& command) {
  std::string text;
  FILE* pipe = popen((command + " 2>&1").c_str(), "r");
  if (pipe == nullptr) return "could not be run";
  std::array<char, 4096> part{};
  while (std::fgets(part.data(), static_cast<int>(part.size()), pipe) != nullptr) text += part.data();
  pclose(pipe);
  return text;
}

/// What is wanted up to a line "..." must begin the output, what comes after it must end the output.
void expect_output(const std::string& output, const Example& example) {
  const std::string gap = "...\n";
  const std::size_t at = example.wanted.find(gap);
  if (at == std::string::npos) {
    EXPECT_EQ(output, example.wanted) << example.where;
    return;
  }
  const std::string head = example.wanted.substr(0, at);
  const std::string tail = example.wanted.substr(at + gap.size());
  EXPECT_EQ(output.substr(0, head.size()), head) << example.where;
  EXPECT_EQ(output.size() < tail.size() ? output : output.substr(output.size() - tail.size()), tail) << example.where;
}

TEST(TheExamples, PrintWhatTheDocumentsSay) {
  const std::string path = std::string(FLUEWRIGHT_CLI_FOLDER) + ":" + std::getenv("PATH");
  ASSERT_EQ(setenv("PATH", path.c_str(), 1), 0);
  std::filesystem::current_path(project_top());
  std::size_t run = 0;
  for (const auto& file : project_files("", {".md"})) {
    for (const Example& example : examples_in(file)) {
      expect_output(output_of(example.command), example);
      ++run;
    }
  }
  EXPECT_GT(run, 0u);
}

}  // namespace
}  // namespace fluewright::guards
