// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"

namespace fluewright {

/// The inside cross-section of a flue. Made by name; area, perimeters and hydraulic diameter are worked out once.
class Section {
 public:
  enum class Form : unsigned char { circle, rectangle, annulus, half_round };

  [[nodiscard]] static Section circle(Length diameter);
  /// Width across the floor, height upwards.
  [[nodiscard]] static Section rectangle(Length width, Length height);
  /// Between a round jacket of inside diameter `outer` and a round core of outside diameter `inner` < outer.
  [[nodiscard]] static Section annulus(Length outer, Length inner);
  /// Half a circle lying on its flat side: a split barrel over a channel floor.
  [[nodiscard]] static Section half_round(Length diameter);

  [[nodiscard]] Form form() const { return form_; }
  /// Free area [m2].
  [[nodiscard]] Area area() const { return area_; }
  /// All walls the gas rubs on [m].
  [[nodiscard]] Length wetted_perimeter() const { return wetted_; }
  /// The walls that give heat to the surroundings [m]: in an annulus only the outer one, else all.
  [[nodiscard]] Length heated_perimeter() const { return heated_; }
  /// Four times area over wetted perimeter [m].
  [[nodiscard]] Length hydraulic_diameter() const { return 4.0 * area_ / wetted_; }
  /// The diameter of a round flue with the same area [m].
  [[nodiscard]] Length equal_area_diameter() const;

  /// Diameter (circle, half round), width (rectangle) or outer diameter (annulus) [m].
  [[nodiscard]] Length first_size() const { return first_; }
  /// Height (rectangle), inner diameter (annulus), else zero [m].
  [[nodiscard]] Length second_size() const { return second_; }

  friend bool operator==(const Section& a, const Section& b) {
    return a.form_ == b.form_ && a.first_ == b.first_ && a.second_ == b.second_;
  }

 private:
  Section(Form form, Length first_size, Length second_size, Area area, Length wetted, Length heated)
      : form_{form}, first_{first_size}, second_{second_size}, area_{area}, wetted_{wetted}, heated_{heated} {}

  Form form_;
  Length first_;
  Length second_;
  Area area_;
  Length wetted_;
  Length heated_;
};

}  // namespace fluewright
