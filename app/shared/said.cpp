// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/said.hpp"

namespace fluewright {

namespace {

struct Speech {
  Translation translation = nullptr;
  char decimal_mark = '.';
};

Speech& speech() {
  static Speech now;
  return now;
}

thread_local int in_english = 0;

}  // namespace

void speak_by(Translation translation, char decimal_mark) { speech() = {translation, decimal_mark}; }

InEnglish::InEnglish() { ++in_english; }
InEnglish::~InEnglish() { --in_english; }

std::string said(const char* english) {
  const Translation translation = in_english > 0 ? nullptr : speech().translation;
  return translation == nullptr ? std::string(english) : translation(english);
}

std::string said(std::string_view english) { return said(std::string(english).c_str()); }

std::string said_with(const char* pattern, fmt::format_args values) {
  try {
    return fmt::vformat(said(pattern), values);
  } catch (const fmt::format_error&) {
    // A translation that asks for a value there is not. The English pattern was checked when it was compiled.
    return fmt::vformat(pattern, values);
  }
}

char decimal_mark() { return in_english > 0 ? '.' : speech().decimal_mark; }

std::string with_decimal_mark(std::string number) {
  const auto point = number.find('.');
  if (point != std::string::npos) number[point] = decimal_mark();
  return number;
}

std::string decimal_text(double number, int decimals) { return with_decimal_mark(fmt::format("{:.{}f}", number, decimals)); }

}  // namespace fluewright
