// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/pieces/parts.hpp"

#include <algorithm>
#include <array>

// One line a shape; its file defines the function of that name.
#define FLUEWRIGHT_SHAPES(shape)                                                                                \
  shape(feed) shape(door_slot) shape(intake) shape(regulator) shape(burn_tunnel) shape(batch_box) shape(barrel) \
      shape(bell) shape(chamber) shape(run) shape(bend) shape(tee) shape(taper) shape(end_cap) shape(damper)    \
          shape(stack_head) shape(fan) shape(fan_head) shape(leaky_joint)

namespace fluewright {

namespace shapes {
#define FLUEWRIGHT_DECLARE(name) const Shape& name();
FLUEWRIGHT_SHAPES(FLUEWRIGHT_DECLARE)
#undef FLUEWRIGHT_DECLARE
}  // namespace shapes

std::span<const Shape* const> all_shapes() {
#define FLUEWRIGHT_LIST(name) &shapes::name(),
  static const std::array all{FLUEWRIGHT_SHAPES(FLUEWRIGHT_LIST)};
#undef FLUEWRIGHT_LIST
  return all;
}

const Shape* find_shape(std::string_view id) {
  const auto all = all_shapes();
  const auto found = std::find_if(all.begin(), all.end(), [id](const Shape* shape) { return shape->id() == id; });
  return found == all.end() ? nullptr : *found;
}

const Port* PieceGeometry::port(std::string_view name) const {
  const auto found = std::find_if(ports.begin(), ports.end(), [name](const Port& p) { return p.name == name; });
  return found == ports.end() ? nullptr : &*found;
}

Heading usual_heading(const PieceType& type, Angle facing) {
  if (type.shape == "feed" || type.shape == "burn_tunnel") return heading_down(facing);
  const bool riser = type.family == "fire" && type.shape == "run";
  if (riser || type.family == "stack" || type.shape == "barrel" || type.shape == "fan_head") return heading_up(facing);
  return {facing, {}};
}

Turn usual_turn(const Heading& into) {
  constexpr Angle steep = 45.0 * degree;
  return into.elevation > steep ? Turn::down : Turn::up;
}

}  // namespace fluewright
