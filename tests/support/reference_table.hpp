// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Reads the plain number tables of tests/reference (made by make_reference.py: no quotes, no commas inside fields).

#include <gtest/gtest.h>

#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

namespace fluewright::test {

/// One row, by column name.
class ReferenceRow {
 public:
  void put(const std::string& column, const std::string& text) { fields_[column] = text; }
  [[nodiscard]] const std::string& text(const std::string& column) const { return fields_.at(column); }
  [[nodiscard]] bool has(const std::string& column) const { return !fields_.at(column).empty(); }
  [[nodiscard]] double number(const std::string& column) const { return std::stod(fields_.at(column)); }

 private:
  std::map<std::string, std::string> fields_;
};

inline std::vector<std::string> comma_fields(const std::string& line) {
  std::vector<std::string> fields;
  std::istringstream in(line + ",");
  for (std::string field; std::getline(in, field, ',');) {
    fields.push_back(field);
  }
  return fields;
}

/// All rows of tests/reference/<name>; fails the test when there are none.
inline std::vector<ReferenceRow> reference_table(const std::string& name) {
  std::ifstream file(std::string{FLUEWRIGHT_REFERENCE_DIR} + "/" + name);
  std::string line;
  std::getline(file, line);
  const std::vector<std::string> columns = comma_fields(line);
  std::vector<ReferenceRow> rows;
  while (std::getline(file, line)) {
    const std::vector<std::string> fields = comma_fields(line);
    ReferenceRow row;
    for (std::size_t i = 0; i < columns.size() && i < fields.size(); ++i) {
      row.put(columns[i], fields[i]);
    }
    rows.push_back(row);
  }
  EXPECT_FALSE(rows.empty()) << "no rows in tests/reference/" << name;
  return rows;
}

}  // namespace fluewright::test
