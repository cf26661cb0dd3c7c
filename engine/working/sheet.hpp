// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/valid_range.hpp"
#include "engine/working/working.hpp"

namespace fluewright {

/// How the rounding of a relation's inputs comes back in its result.
enum class Carries {
  product,  ///< relative errors: as many digits as the poorest input
  sum       ///< absolute errors: as fine as the coarsest input
};

/// A working being written.
class Sheet {
 public:
  /// The last step, for what not every step has.
  class Last {
   public:
    explicit Last(WorkingStep& step) : step_{&step} {}
    Last remark(std::string text) const;
    Last piece(std::size_t index) const;
    Last within(std::string text, bool holds) const;
    /// A difference of two near numbers is in it: `size` of the numbers over the difference is what is lost.
    Last losing(Ratio size_over_difference) const;

   private:
    WorkingStep* step_;
  };

  explicit Sheet(std::string subject) { working_.subject = std::move(subject); }

  /// The heading of the steps that follow.
  void part(std::string heading) { part_ = std::move(heading); }

  /// A value that stands at the start: drawn, set, known.
  Last given(std::string symbol, std::string meaning, WorkingValue value, Citation citation);
  /// A value read from a table or worked out by a polynomial from `uses`.
  Last read(std::string symbol, std::string meaning, std::vector<std::string> uses, WorkingValue value,
            Citation citation, std::string how);
  /// A relation in symbols of earlier steps.
  Last step(std::string symbol, std::string meaning, std::string relation, WorkingValue value, Citation citation,
            Carries carries = Carries::product);

  [[nodiscard]] bool has(std::string_view symbol) const { return working_.step(symbol) != nullptr; }
  /// The value of an earlier step.
  template <class Quantity>
  [[nodiscard]] Quantity value(std::string_view symbol) const {
    return std::get<Quantity>(working_.step(symbol)->value);
  }
  [[nodiscard]] Working take() { return std::move(working_); }

 private:
  Last add(WorkingStep step);

  Working working_;
  std::string part_;
};

/// Standings in short.
[[nodiscard]] Citation published(std::string source);
[[nodiscard]] Citation from_memory(std::string source);
[[nodiscard]] Citation common_practice(std::string source);
[[nodiscard]] Citation chosen(std::string source);
/// What a relation is where it only says what a word means.
[[nodiscard]] Citation by_definition();
/// A value of the drawing or the conditions.
[[nodiscard]] Citation as_drawn();
/// A value that the walk along the path brought here.
[[nodiscard]] Citation from_the_walk();

}  // namespace fluewright
