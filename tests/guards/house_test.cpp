// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The rules of the house that no compiler checks. What each is for stands in DEVELOPERS.md.

#include "tests/guards/tree.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <regex>
#include <set>

namespace fluewright::guards {
namespace {

const std::vector<std::string> cxx{".cpp", ".hpp"};

std::set<std::string> words_of(const std::filesystem::path& path) {
  std::ifstream in(path);
  return {std::istream_iterator<std::string>(in), {}};
}

TEST(TheHouse, HoldsAtItsTopOnlyWhatBelongsThere) {
  const std::set<std::string> wanted{"CMakeLists.txt", "CMakePresets.json", "DEVELOPERS.md", "LICENSE", "README.md",
                                     "app",            "cmake",             "engine",        "resources", "tests"};
  std::set<std::string> found;
  for (const auto& entry : std::filesystem::directory_iterator(project_top())) {
    const std::string name = entry.path().filename().string();
    const bool passing = name == "build" || name == "out" || name == "compile_commands.json" || name.starts_with('.');
    if (!passing) found.insert(name);
  }
  EXPECT_EQ(found, wanted);
  EXPECT_TRUE(std::filesystem::is_regular_file(project_top() / ".ci" / "run"));
}

TEST(TheHouse, KeepsEveryFileUnderFourHundredLines) {
  for (const auto& file : project_files("", {".cpp", ".hpp", ".sh", ".cmake", "CMakeLists.txt"})) {
    EXPECT_LT(file.lines.size(), 400u) << file.path;
  }
}

TEST(TheHouse, NamesOwnerAndLicenceOnTopOfEverySource) {
  for (const auto& file : project_files("", {".cpp", ".hpp", ".sh"})) {
    // A script's first line names its interpreter.
    const std::size_t first = !file.lines.empty() && file.lines[0].starts_with("#!") ? 1 : 0;
    ASSERT_GT(file.lines.size(), first + 1) << file.path;
    EXPECT_TRUE(file.lines[first].ends_with("SPDX-FileCopyrightText: The Fluewright developers")) << file.path;
    EXPECT_TRUE(file.lines[first + 1].ends_with("SPDX-License-Identifier: GPL-3.0-or-later")) << file.path;
  }
}

TEST(TheHouse, IncludesEveryHeaderOnceOnly) {
  for (const auto& file : project_files("", {".hpp"})) {
    EXPECT_NE(std::find(file.lines.begin(), file.lines.end(), "#pragma once"), file.lines.end()) << file.path;
  }
}

TEST(TheHouse, LeavesNoWordsOfUnfinishedWork) {
  // Written in halves, so that this file passes its own check.
  const std::regex unfinished("\\b(TO" "DO|FIX" "ME|XX" "X|not implem" "ented|place" "holder|st" "ub|tran" "script|seed doc" "ument)\\b",
                              std::regex::icase | std::regex::optimize);
  const std::regex never("/wor" "k/|\\.\\./sha" "red\\b|\\biss" "ue #?[0-9]|DISAB" "LED_|GTEST_" "SKIP|SUCC" "EED\\(\\)|EXPECT_TRUE\\(tr" "ue\\)",
                         std::regex::optimize);
  for (const auto& file : project_files("", {".cpp", ".hpp", ".sh", ".cmake", ".txt", ".json", ".md", ".fluepath", "run"})) {
    for (std::size_t i = 0; i < file.lines.size(); ++i) {
      EXPECT_FALSE(std::regex_search(file.lines[i], unfinished)) << pointer_to(file, i);
      EXPECT_FALSE(std::regex_search(file.lines[i], never)) << pointer_to(file, i);
    }
  }
}

/// The names in angle brackets or quotes after #include, with where they stand.
struct Include {
  std::string name;
  bool system;
  std::string where;
};
std::vector<Include> includes_of(const ProjectFile& file) {
  static const std::regex include("^\\s*#\\s*include\\s*([<\"])([^>\"]+)[>\"]", std::regex::optimize);
  std::vector<Include> found;
  std::smatch match;
  for (std::size_t i = 0; i < file.lines.size(); ++i) {
    if (std::regex_search(file.lines[i], match, include)) {
      found.push_back({match[2], match[1] == "<", pointer_to(file, i)});
    }
  }
  return found;
}

TEST(TheWall, LetsOnlyItsOwnHeadersBoostEigenAndPlainStandardOnesIntoTheEngine) {
  // Nothing here opens a file, prints, looks at a clock, starts a thread or throws dice.
  const std::set<std::string> plain{"algorithm", "array",     "bit",       "cassert",     "charconv",    "cmath",
                                    "compare",   "complex",   "concepts",  "cstddef",     "cstdint",     "cstdlib",
                                    "deque",     "functional", "initializer_list", "iterator", "limits",  "map",
                                    "memory",    "numbers",   "numeric",   "optional",    "queue",       "set",
                                    "span",      "string",    "string_view", "system_error", "tuple",    "type_traits",
                                    "unordered_map", "unordered_set", "utility", "variant", "vector"};
  for (const auto& file : project_files("engine", cxx)) {
    for (const auto& include : includes_of(file)) {
      const bool ours = !include.system && include.name.starts_with("engine/");
      const bool boost = include.system && include.name.starts_with("boost/");
      const bool eigen = include.system && include.name.starts_with("Eigen/");
      const bool standard = include.system && plain.contains(include.name);
      EXPECT_TRUE(ours || boost || eigen || standard) << include.where;
    }
  }
}

TEST(TheWall, KeepsTheEngineFromPrintingReadingTheSurroundingsAndKeepingState) {
  const std::regex outward("\\b(printf|fprintf|puts|getenv|system|fopen|rand|time|abort)\\s*\\(|std::c(out|err|log)\\b",
                           std::regex::optimize);
  // `static` or `thread_local` data that is not constant; functions have a parenthesis on the line.
  const std::regex state("^\\s*(static|thread_local|inline)\\s+(?!.*\\b(const|constexpr|consteval)\\b)[^(]*(;|=|\\{)",
                         std::regex::optimize);
  for (const auto& file : project_files("engine", cxx)) {
    for (std::size_t i = 0; i < file.lines.size(); ++i) {
      const std::string code = file.lines[i].substr(0, file.lines[i].find("//"));
      EXPECT_FALSE(std::regex_search(code, outward)) << pointer_to(file, i);
      EXPECT_FALSE(std::regex_search(code, state)) << pointer_to(file, i);
    }
  }
}

TEST(TheWall, LinksTheEngineToTheHeadersOfBoostAndEigenAlone) {
  const std::set<std::string> links = words_of(FLUEWRIGHT_ENGINE_LINKS);
  EXPECT_TRUE(links.contains("Boost::headers"));
  EXPECT_TRUE(links.contains("Eigen3::Eigen"));
  for (const auto& link : links) {
    EXPECT_TRUE(link == "Boost::headers" || link == "Eigen3::Eigen" || link == "fluewright_warnings") << link;
  }
}

#ifdef FLUEWRIGHT_WITH_APPS
TEST(TheWall, KeepsQtInDesktopAndPaper) {
  const std::regex qt("^(Q[A-Z][A-Za-z]*|Qt[A-Z].*|qcustomplot\\.h)(/.*)?$", std::regex::optimize);
  for (const std::string room : {"engine", "app/shared", "app/cli", "tests/engine"}) {
    for (const auto& file : project_files(room, cxx)) {
      for (const auto& include : includes_of(file)) {
        EXPECT_FALSE(std::regex_match(include.name, qt)) << include.where;
      }
    }
  }
}

TEST(TheWall, LetsTheCommandLineSeePaperThroughItsOneDoorWithoutQt) {
  const std::regex qt("^(Q[A-Z][A-Za-z]*|Qt[A-Z].*)(/.*)?$", std::regex::optimize);
  std::size_t doors = 0;
  for (const auto& file : project_files("app/cli", cxx)) {
    for (const auto& include : includes_of(file)) {
      if (!include.name.starts_with("app/paper/")) continue;
      ++doors;
      EXPECT_EQ(include.name, "app/paper/paper.hpp") << include.where;
    }
  }
  EXPECT_GT(doors, 0u);
  for (const auto& file : project_files("app/paper", {".hpp"})) {
    if (file.path != "app/paper/paper.hpp") continue;
    for (const auto& include : includes_of(file)) {
      EXPECT_FALSE(std::regex_match(include.name, qt)) << include.where;
      EXPECT_TRUE(include.system || include.name.starts_with("engine/") || include.name.starts_with("app/shared/")) << include.where;
    }
  }
}

TEST(TheWall, LetsPaperShareOnlyTheProjectionWithTheDesk) {
  const std::set<std::string> shared{"app/desktop/desk/projection.hpp", "app/desktop/desk/tube.hpp"};
  for (const auto& file : project_files("app/paper", cxx)) {
    for (const auto& include : includes_of(file)) {
      if (include.name.starts_with("app/desktop/")) EXPECT_TRUE(shared.contains(include.name)) << include.where;
    }
  }
}

TEST(TheWall, KeepsTheDesktopOutOfTheRoomsBelowIt) {
  for (const std::string room : {"app/shared", "app/cli"}) {
    for (const auto& file : project_files(room, cxx)) {
      for (const auto& include : includes_of(file)) {
        EXPECT_FALSE(include.name.starts_with("app/desktop/")) << include.where;
      }
    }
  }
}
#endif

TEST(TheDocuments, NameOnlyFunctionsThatExist) {
  std::set<std::string> known;
  const std::regex word("[A-Za-z_][A-Za-z_0-9]*", std::regex::optimize);
  for (const std::string room : {"engine", "app", "tests"}) {
    for (const auto& file : project_files(room, cxx)) {
      for (const auto& line : file.lines) known.insert(std::sregex_token_iterator(line.begin(), line.end(), word), {});
    }
  }
  const std::regex named("`([A-Za-z_][A-Za-z_0-9]*)\\(\\)", std::regex::optimize);
  std::size_t seen = 0;
  for (const auto& file : project_files("", {".md"})) {
    for (std::size_t i = 0; i < file.lines.size(); ++i) {
      const std::string& line = file.lines[i];
      for (auto it = std::sregex_iterator(line.begin(), line.end(), named); it != std::sregex_iterator{}; ++it) {
        ++seen;
        EXPECT_TRUE(known.contains((*it)[1])) << (*it)[1] << " at " << pointer_to(file, i);
      }
    }
  }
  EXPECT_GT(seen, 20u);
}

TEST(TheDocuments, LinkOnlyToWhatIsThere) {
  const std::regex link("\\]\\(([^)#]+)(#[^)]*)?\\)", std::regex::optimize);
  for (const auto& file : project_files("", {".md"})) {
    for (std::size_t i = 0; i < file.lines.size(); ++i) {
      const std::string& line = file.lines[i];
      for (auto it = std::sregex_iterator(line.begin(), line.end(), link); it != std::sregex_iterator{}; ++it) {
        const std::string target = (*it)[1];
        if (target.find("://") != std::string::npos) continue;
        const auto from = (project_top() / file.path).parent_path();
        EXPECT_TRUE(std::filesystem::exists(from / target)) << pointer_to(file, i);
      }
    }
  }
}

}  // namespace
}  // namespace fluewright::guards
