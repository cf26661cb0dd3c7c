// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace fluewright {

/// The published range of a relation's argument, as data: laws do not clamp in silence, they say where
/// they stop being the published thing, and callers report having left it.
template <class Quantity>
struct ValidRange {
  Quantity low{};
  Quantity high{};
  /// What the range belongs to, in a few words ("viscosity of water vapour").
  std::string_view relation;
  /// Where the relation and its range are published.
  std::string_view source;

  [[nodiscard]] constexpr bool contains(const Quantity& value) const { return !(value < low) && !(high < value); }
};

}  // namespace fluewright
