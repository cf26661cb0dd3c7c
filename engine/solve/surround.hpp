// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/flow/stretch.hpp"
#include "engine/gas/mixture.hpp"
#include "engine/layout/design.hpp"

namespace fluewright {

/// The air around the flue, worked out once from site, room and house.
struct Surround {
  Pressure absolute{};          ///< at the site's altitude
  Temperature outdoor;
  Temperature room;
  Temperature attic;            ///< midway between room and outdoors (chosen: no published value for a given roof)
  Temperature ground;
  Density outdoor_air{};
  Density room_air{};
  Ratio outdoor_water = 0.0;    ///< mole fraction of vapour
  Ratio room_water = 0.0;
  Length neutral_plane{};
  Pressure depressurisation{};  ///< of the house, by exhaust fans and measured suction
  Pressure cap_gauge{};         ///< wind at the cap, > 0 against the draft
  Velocity wind{};

  /// Room pressure against the outdoor air column at the same height.
  [[nodiscard]] Pressure room_gauge(Length height) const;
  /// The level towards which a wall in that place loses heat when everything is steady.
  [[nodiscard]] Temperature beyond(Place place, const Embedding& embedding) const;
  /// Gauge of the air that an end of a branch opens to.
  [[nodiscard]] Pressure gauge_at(const BranchEnd& end) const;
};

[[nodiscard]] Surround surround_of(const Design& design);

/// Whether a crack in the stretch's wall would let smoke into the room.
[[nodiscard]] bool opens_to_room(const Stretch& stretch);

}  // namespace fluewright
