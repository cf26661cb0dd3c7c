// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A check against a published number: it EXPECTs, and it leaves a row for the documentation. When the environment
// variable FLUEWRIGHT_CHECKS_OUT names a folder, every test writes its rows to <folder>/<suite>.<test>.md, so that
// tests running side by side do not write into one another's file; tests/checks joins them to a page.

#include "engine/library/citation.hpp"
#include "engine/quantities/quantities.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iomanip>
#include <string>
#include <string_view>

namespace fluewright::test {

inline constexpr Pressure one_atmosphere = 101325.0 * pascal;

/// How near is near enough.
struct Tolerance {
  double absolute = 0.0;
  double relative = 0.0;

  [[nodiscard]] double around(double published) const { return std::max(absolute, relative * std::abs(published)); }
};

[[nodiscard]] constexpr Tolerance within(double absolute) { return {absolute, 0.0}; }
[[nodiscard]] constexpr Tolerance within_percent(double percent) { return {0.0, 0.01 * percent}; }

[[nodiscard]] constexpr std::string_view word_for(Standing standing) {
  switch (standing) {
    case Standing::published:
      return "published";
    case Standing::from_memory:
      return "from memory";
    case Standing::common_practice:
      return "common practice";
    case Standing::chosen:
      return "chosen";
  }
  return "";
}

namespace detail {

/// Text for a cell of a table.
[[nodiscard]] inline std::string cell(std::string_view text) {
  std::string out;
  for (const char c : text) {
    out += c == '|' ? std::string{"\\|"} : std::string{c};
  }
  return out;
}

/// The running test's own file of rows, begun anew with the test.
inline void record(std::string_view quantity, std::string_view source, Standing standing, double published, double ours,
                   double allowed) {
  const char* const folder = std::getenv("FLUEWRIGHT_CHECKS_OUT");
  const ::testing::TestInfo* const test = ::testing::UnitTest::GetInstance()->current_test_info();
  if (folder == nullptr || *folder == '\0' || test == nullptr) {
    return;
  }
  static std::string begun;
  const std::string name = std::string{test->test_suite_name()} + "." + test->name();
  std::filesystem::create_directories(folder);
  std::ofstream file(std::filesystem::path{folder} / (name + ".md"), begun == name ? std::ios::app : std::ios::trunc);
  if (begun != name) {
    file << "| quantity | source | standing | published | ours | difference | allowed "
            "|\n|---|---|---|---:|---:|---:|---:|\n";
    begun = name;
  }
  file << "| " << cell(quantity) << " | " << cell(source) << " | " << word_for(standing) << std::setprecision(7)
       << " | " << published << " | " << ours << " | " << std::setprecision(2) << ours - published << " | " << allowed
       << " |\n";
}

}  // namespace detail

/// Expects `ours` within the tolerance of `published` and records the row. The quantity names its unit in brackets.
inline void published_check(std::string_view quantity, std::string_view source, Standing standing, double published,
                            double ours, Tolerance tolerance, const char* file = __builtin_FILE(),
                            int line = __builtin_LINE()) {
  const double allowed = tolerance.around(published);
  detail::record(quantity, source, standing, published, ours, allowed);
  if (!(std::abs(ours - published) <= allowed)) {
    ADD_FAILURE_AT(file, line) << quantity << ": published " << published << " (" << source << "), ours "
                               << std::setprecision(10) << ours << ", allowed +-" << allowed;
  }
}

}  // namespace fluewright::test
