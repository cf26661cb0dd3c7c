// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// How the words of this room come into a person's language. The room itself writes English and knows no other; a program
// that speaks another language hands over its translation once, at its start.

#include <fmt/format.h>

#include <string>
#include <string_view>

namespace fluewright {

/// The text in the language in force; of a pattern with its "{}", which a translation may number to change their order.
using Translation = std::string (*)(const char* english);

/// For the whole program, before anything is said. Null: English, with a decimal point.
void speak_by(Translation translation, char decimal_mark);

/// As long as one lives, its thread says everything in English with a decimal point: for files that programs read.
class InEnglish {
 public:
  InEnglish();
  ~InEnglish();
  InEnglish(const InEnglish&) = delete;
  InEnglish& operator=(const InEnglish&) = delete;
};

/// Marks an English text that stands in a table and is said later; it stays as it is.
[[nodiscard]] constexpr const char* to_say(const char* english) { return english; }

/// An English text in the language in force.
[[nodiscard]] std::string said(const char* english);
[[nodiscard]] std::string said(std::string_view english);
[[nodiscard]] std::string said_with(const char* pattern, fmt::format_args values);

/// The same of a pattern, its values put in.
template <class First, class... Rest>
[[nodiscard]] std::string said(fmt::format_string<const First&, const Rest&...> pattern, const First& first, const Rest&... rest) {
  return said_with(static_cast<fmt::string_view>(pattern).data(), fmt::make_format_args(first, rest...));
}

/// What stands between a number's whole and its fraction.
[[nodiscard]] char decimal_mark();
/// A number with so many decimals and the language's own mark before them.
[[nodiscard]] std::string decimal_text(double number, int decimals);
/// The point of a written number exchanged for the language's own mark.
[[nodiscard]] std::string with_decimal_mark(std::string number);

}  // namespace fluewright
