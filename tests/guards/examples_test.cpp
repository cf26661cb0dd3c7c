// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The documents' examples are run: every ```console block holds `$ command` lines, each followed by what it prints.
// After a wanted change, FLUEWRIGHT_UPDATE_EXAMPLES=1 writes them anew: look at the difference before committing it.

#include "tests/guards/tree.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace fluewright::guards {
namespace {

struct Example {
  std::string command;
  std::string wanted;  ///< output; a line "..." stands for any lines
  std::string where;
  std::filesystem::path file;
};

std::vector<Example> examples_in(const ProjectFile& file) {
  std::vector<Example> found;
  bool inside = false;
  for (std::size_t i = 0; i < file.lines.size(); ++i) {
    const std::string& line = file.lines[i];
    if (line.starts_with("```")) {
      inside = line == "```console";
    } else if (inside && line.starts_with("$ ")) {
      found.push_back({line.substr(2), {}, pointer_to(file, i), file.path});
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

/// As many lines from the start of the output and from its end as the example wants around its gap.
std::string shortened(const std::string& output, const Example& example) {
  const std::string gap = "...\n";
  const std::size_t at = example.wanted.find(gap);
  if (at == std::string::npos) return output;
  auto head = std::count(example.wanted.begin(), example.wanted.begin() + static_cast<std::ptrdiff_t>(at), '\n');
  auto tail = std::count(example.wanted.begin(), example.wanted.end(), '\n') - head - 1;
  auto first = output.begin();
  for (; first != output.end() && head > 0; ++first) head -= *first == '\n' ? 1 : 0;
  auto last = output.end();
  for (; last != first; --last) {
    if (*(last - 1) == '\n' && tail-- == 0) break;
  }
  return std::string(output.begin(), first) + gap + std::string(last, output.end());
}

/// Puts the output in the document where the wanted text stood.
void write_anew(const Example& example, const std::string& output) {
  std::stringstream text;
  text << std::ifstream(example.file).rdbuf();
  std::string document = text.str();
  const std::string head = "$ " + example.command + "\n";
  const std::size_t at = document.find(head + example.wanted);
  ASSERT_NE(at, std::string::npos) << example.where;
  document.replace(at + head.size(), example.wanted.size(), shortened(output, example));
  std::ofstream(example.file) << document;
}

TEST(TheExamples, PrintWhatTheDocumentsSay) {
  const std::string path = std::string(FLUEWRIGHT_CLI_FOLDER) + ":" + std::getenv("PATH");
  ASSERT_EQ(setenv("PATH", path.c_str(), 1), 0);
  std::filesystem::current_path(project_top());
  const bool anew = std::getenv("FLUEWRIGHT_UPDATE_EXAMPLES") != nullptr;
  std::size_t run = 0;
  for (const auto& file : project_files("", {".md"})) {
    for (const Example& example : examples_in(file)) {
      const std::string output = output_of(example.command);
      expect_output(output, example);
      if (anew) write_anew(example, output);
      ++run;
    }
  }
  EXPECT_GT(run, 0u);
}

}  // namespace
}  // namespace fluewright::guards
