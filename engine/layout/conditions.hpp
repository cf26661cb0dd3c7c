// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Site, room and fire by key ("site.altitude", "room.neutral_plane", "fire.burn_rate"), so that the file reader,
// the range check and the editor walk one list instead of three.

#include "engine/layout/design.hpp"

#include <span>
#include <string_view>

namespace fluewright {

/// One condition: its key, its kind, and how to read and write it in a design.
struct Condition {
  std::string_view key;
  FieldKind kind;
  FieldValue (*get)(const Design&);
  void (*set)(Design&, const FieldValue&);  ///< the value must hold the alternative of `kind`
};

/// All conditions, in the order in which a person would fill them in.
[[nodiscard]] std::span<const Condition> conditions();
[[nodiscard]] const Condition* find_condition(std::string_view key);

}  // namespace fluewright
