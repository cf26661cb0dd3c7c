// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace fluewright {

/// A number someone typed, or why it is none.
struct TypedNumber {
  std::optional<double> value;
  std::string complaint;  ///< a sentence, where there is more to say than "not a number"
};

/// Typed text on its way to numbers and units. The typographic signs that the programs show and that keyboards and
/// clipboards bring along (minus, primes, no-break spaces, the degree sign, raised digits) become plain ones first.
class TypedText {
 public:
  explicit TypedText(std::string_view typed);

  [[nodiscard]] bool at_end() const { return position_ == text_.size(); }
  /// -1 and one step on after a minus, else +1.
  double take_sign();
  /// Digits with a dot or a comma, "1/2", or "6 1/2". Not negative.
  TypedNumber take_number();
  /// Letters and signs up to the next digit or space: "mm", "in", "'".
  std::string take_unit();
  /// All the rest, without spaces and dots: "kg/h", "inwc".
  std::string take_rest_as_unit();
  void skip_hyphen();

 private:
  void skip_spaces();
  [[nodiscard]] std::size_t digits_from(std::size_t from) const;
  [[nodiscard]] std::optional<double> take_fraction();

  std::string text_;
  std::size_t position_ = 0;
};

}  // namespace fluewright
