// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace fluewright {

/// Rows of text in columns that line up, counted in characters and not in bytes. The first column stands left, all
/// others right.
class TextTable {
 public:
  void row(std::vector<std::string> cells) { rows_.push_back(std::move(cells)); }
  /// Every row on a line of its own behind `indent` spaces.
  [[nodiscard]] std::string text(std::size_t indent = 2) const;

 private:
  std::vector<std::vector<std::string>> rows_;
};

/// How many characters a UTF-8 text has.
[[nodiscard]] std::size_t characters(std::string_view text);

/// Width of the lines of every report on a terminal.
inline constexpr std::size_t report_width = 96;

/// The text in lines of at most `width` characters, broken at spaces, each behind `indent` spaces; all but the first
/// stand `hanging` further in.
[[nodiscard]] std::string wrapped(std::string_view text, std::size_t width, std::size_t indent,
                                  std::size_t hanging = 0);

}  // namespace fluewright
