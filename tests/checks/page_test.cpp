// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Whether the page of checks among the documents says what the tests say today.

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <string>
#include <vector>

namespace {

std::vector<std::string> lines_of(const char* path) {
  std::ifstream file(path);
  std::vector<std::string> lines;
  for (std::string line; std::getline(file, line);) lines.push_back(line);
  return lines;
}

/// The cells of a table's row; a bar within a cell is written "\|".
std::vector<std::string> cells_of(const std::string& line) {
  std::vector<std::string> cells(1);
  for (std::size_t i = 0; i < line.size(); ++i) {
    if (line[i] == '|' && (i == 0 || line[i - 1] != '\\')) {
      cells.emplace_back();
    } else {
      cells.back() += line[i];
    }
  }
  return cells;
}

bool number(const std::string& cell, double& value) {
  char* end = nullptr;
  value = std::strtod(cell.c_str(), &end);
  return end != cell.c_str() && std::all_of<const char*>(end, cell.c_str() + cell.size(), [](char c) { return c == ' '; });
}

/// Two compilers may round the last digits apart: a hundred-thousandth of the row's largest number, and the second
/// digit of a difference, which has no more.
constexpr double noise = 1e-5;
constexpr double second_digit = 0.06;

void expect_same_row(const std::string& committed, const std::string& written) {
  const auto a = cells_of(committed);
  const auto b = cells_of(written);
  ASSERT_EQ(a.size(), b.size()) << written;
  double largest = 0.0;
  double value = 0.0;
  for (const std::string& cell : b) {
    if (number(cell, value)) largest = std::max(largest, std::abs(value));
  }
  for (std::size_t i = 0; i < a.size(); ++i) {
    double here = 0.0;
    double there = 0.0;
    if (number(a[i], here) && number(b[i], there)) {
      const bool difference = i + 3 == a.size();  // the last cell but one
      const double allowed = noise * largest + (difference ? second_digit * std::abs(there) : 0.0);
      EXPECT_NEAR(here, there, allowed) << "the page is stale (ninja update_checks_page): " << written;
    } else {
      EXPECT_EQ(a[i], b[i]) << "the page is stale (ninja update_checks_page)";
    }
  }
}

TEST(TheChecksPage, SaysWhatTheTestsSay) {
  const auto committed = lines_of(FLUEWRIGHT_CHECKS_COMMITTED);
  const auto written = lines_of(FLUEWRIGHT_CHECKS_WRITTEN);
  ASSERT_GT(written.size(), 100u) << FLUEWRIGHT_CHECKS_WRITTEN;
  ASSERT_EQ(committed.size(), written.size()) << "checks came or went: ninja update_checks_page";
  for (std::size_t i = 0; i < committed.size(); ++i) expect_same_row(committed[i], written[i]);
}

}  // namespace
