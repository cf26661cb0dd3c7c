// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/text_table.hpp"

#include <algorithm>
#include <sstream>

namespace fluewright {

std::size_t characters(std::string_view text) {
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0u) != 0x80u; }));
}

std::string TextTable::text(std::size_t indent) const {
  std::vector<std::size_t> widths;
  for (const auto& row : rows_) {
    widths.resize(std::max(widths.size(), row.size()));
    for (std::size_t i = 0; i < row.size(); ++i) widths[i] = std::max(widths[i], characters(row[i]));
  }
  std::string all;
  for (const auto& row : rows_) {
    std::string line(indent, ' ');
    for (std::size_t i = 0; i < row.size(); ++i) {
      const std::string padding(widths[i] - characters(row[i]), ' ');
      line += (i == 0 ? row[i] + padding : "  " + padding + row[i]);
    }
    line.erase(line.find_last_not_of(' ') + 1);
    all += line + "\n";
  }
  return all;
}

std::string wrapped(std::string_view text, std::size_t width, std::size_t indent, std::size_t hanging) {
  std::istringstream words{std::string(text)};
  std::string all;
  std::string line;
  std::string margin(indent, ' ');
  for (std::string word; words >> word;) {
    if (!line.empty() && margin.size() + characters(line) + 1 + characters(word) > width) {
      all += margin + line + "\n";
      margin = std::string(indent + hanging, ' ');
      line.clear();
    }
    line += (line.empty() ? "" : " ") + word;
  }
  if (!line.empty()) all += margin + line + "\n";
  return all;
}

}  // namespace fluewright
