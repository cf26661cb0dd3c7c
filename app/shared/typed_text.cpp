// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/typed_text.hpp"

#include "app/shared/said.hpp"

#include <fmt/format.h>

#include <charconv>
#include <cmath>

namespace fluewright {

namespace {

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }
constexpr char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

struct Substitute {
  std::string_view sign;
  std::string_view plain;
};

constexpr Substitute substitutes[] = {
    {"\u2212", "-"},   {"\u2013", "-"},                                      // minus, en dash
    {"\u00A0", " "},   {"\u202F", " "}, {"\u2009", " "},  {"\t", " "},       // no-break, narrow and thin spaces
    {"\u2032", "'"},   {"\u2019", "'"}, {"\u2033", "\""}, {"\u201D", "\""},  // primes and curly quotes
    {"\u00B0", "deg"}, {"\u00B2", "2"}, {"\u00B3", "3"},
};

std::string plain_text(std::string_view typed) {
  std::string text;
  for (std::size_t i = 0; i < typed.size();) {
    const Substitute* found = nullptr;
    for (const Substitute& s : substitutes) {
      if (typed.substr(i, s.sign.size()) == s.sign) found = &s;
    }
    if (found != nullptr) {
      text += found->plain;
      i += found->sign.size();
    } else {
      text += lower(typed[i++]);
    }
  }
  return text;
}

}  // namespace

TypedText::TypedText(std::string_view typed) : text_{plain_text(typed)} {
  text_.erase(text_.find_last_not_of(' ') + 1);
  skip_spaces();
}

void TypedText::skip_spaces() {
  while (!at_end() && text_[position_] == ' ') ++position_;
}

double TypedText::take_sign() {
  double sign = 1.0;
  if (!at_end() && (text_[position_] == '-' || text_[position_] == '+')) {
    sign = text_[position_++] == '-' ? -1.0 : 1.0;
  }
  skip_spaces();
  return sign;
}

std::size_t TypedText::digits_from(std::size_t from) const {
  std::size_t end = from;
  while (end < text_.size() && is_digit(text_[end])) ++end;
  return end - from;
}

/// "3/4" at the present place; nothing, and no step taken, if there is none.
std::optional<double> TypedText::take_fraction() {
  const std::size_t over = digits_from(position_);
  const std::size_t slash = position_ + over;
  if (over == 0 || slash >= text_.size() || text_[slash] != '/') return std::nullopt;
  const std::size_t under = digits_from(slash + 1);
  double top = 0.0;
  double bottom = 0.0;
  const char* const start = text_.data();
  std::from_chars(start + position_, start + slash, top);
  std::from_chars(start + slash + 1, start + slash + 1 + under, bottom);
  if (under == 0 || !(bottom > 0.0)) return std::nullopt;
  position_ = slash + 1 + under;
  return top / bottom;
}

TypedNumber TypedText::take_number() {
  if (const auto fraction = take_fraction()) {
    skip_spaces();
    return {fraction, {}};
  }
  const std::size_t whole = digits_from(position_);
  std::size_t end = position_ + whole;
  std::size_t decimals = 0;
  if (end < text_.size() && (text_[end] == '.' || text_[end] == ',')) {
    decimals = digits_from(end + 1);
    // "1,200" is 1.2 to half the world and 1200 to the other half: ask instead of guessing. Whose numbers are shown with
    // a comma means it, and is asked about the point.
    const char doubtful = decimal_mark() == ',' ? '.' : ',';
    if (text_[end] == doubtful && decimals == 3 && whole > 0 && whole <= 3 && text_[position_] != '0') {
      const std::string before = text_.substr(position_, whole);
      const std::string after = text_.substr(end + 1, decimals);
      return {std::nullopt,
              said("“{0}{2}{1}” could mean {0}{3}{1} or {0}{1}: write it one of these ways.", before, after, doubtful, decimal_mark())};
    }
    if (decimals > 0) {
      text_[end] = '.';
      end += 1 + decimals;
    } else if (whole > 0) {
      text_[end] = ' ';  // "5." is 5
    }
  }
  if (whole == 0 && decimals == 0) return {};
  // from_chars wants a digit before the dot in some libraries; a zero in front harms none.
  const std::string digits = "0" + text_.substr(position_, end - position_);
  double value = 0.0;
  const auto [stop, error] =
      std::from_chars(digits.data(), digits.data() + digits.size(), value, std::chars_format::fixed);
  if (error != std::errc{} || stop != digits.data() + digits.size() || !std::isfinite(value)) return {};
  position_ = end;
  if (position_ < text_.size() && (text_[position_] == '.' || text_[position_] == ',')) return {};
  skip_spaces();
  if (decimals == 0) {
    if (const auto fraction = take_fraction()) {
      value += *fraction;
      skip_spaces();
    }
  }
  return {value, {}};
}

std::string TypedText::take_unit() {
  const std::size_t start = position_;
  while (!at_end() && !is_digit(text_[position_]) && text_[position_] != ' ' && text_[position_] != '-') ++position_;
  std::string unit = text_.substr(start, position_ - start);
  while (!unit.empty() && (unit.back() == '.' || unit.back() == ',')) unit.pop_back();
  skip_spaces();
  return unit;
}

std::string TypedText::take_rest_as_unit() {
  std::string unit;
  for (; !at_end(); ++position_) {
    if (text_[position_] != ' ' && text_[position_] != '.') unit += text_[position_];
  }
  return unit;
}

void TypedText::skip_hyphen() {
  if (!at_end() && text_[position_] == '-') ++position_;
  skip_spaces();
}

}  // namespace fluewright
