// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Fans put into a copy of a design, to see what they would do.

#include "engine/layout/design.hpp"

#include <optional>
#include <string_view>
#include <vector>

namespace fluewright {

/// Where a fan sits in the stack.
enum class FanSeat {
  stack_foot, ///< in the lowest upright run of the stack that has room for it
  under_cap,  ///< in the highest
  on_top      ///< in place of the cap
};

/// The fans of a design, in the order of its pieces.
[[nodiscard]] std::vector<PieceId> fans_of(const Design& design, const Library& library);
/// The data sheet of a fan; nothing where the piece is none.
[[nodiscard]] std::optional<FanSheet> sheet_of(const Design& design, const Library& library, std::string_view fan);

/// A design with a fan in it.
struct FanFitted {
  Design design;
  PieceId fan;
  bool own = false;  ///< it was there already
};

/// The design itself where it has a fan of that type, else a copy with one put in at that seat, blowing up the stack;
/// nothing where no run has room for it. The run's length stays what it was.
[[nodiscard]] std::optional<FanFitted> fit_fan(const Design& design, const Library& library, std::string_view type,
                                               FanSeat seat);

}  // namespace fluewright
