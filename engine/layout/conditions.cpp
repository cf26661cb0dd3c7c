// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/conditions.hpp"

#include <algorithm>
#include <type_traits>

namespace fluewright {

namespace {

/// A condition over a member of a part of the design (site, room, fire).
template <auto Part, auto Member>
constexpr Condition condition(std::string_view key, FieldKind kind) {
  return {key, kind, [](const Design& d) -> FieldValue { return (d.*Part).*Member; },
          [](Design& d, const FieldValue& v) {
            auto& target = (d.*Part).*Member;
            target = std::get<std::remove_reference_t<decltype(target)>>(v);
          }};
}

constexpr Condition all_conditions[] = {
    condition<&Design::site, &Site::altitude>("site.altitude", FieldKind::length),
    condition<&Design::site, &Site::outdoor_temperature>("site.outdoor_temperature", FieldKind::temperature),
    condition<&Design::site, &Site::outdoor_humidity>("site.outdoor_humidity", FieldKind::ratio),
    condition<&Design::site, &Site::ground_temperature>("site.ground_temperature", FieldKind::temperature),
    condition<&Design::site, &Site::wind_speed>("site.wind_speed", FieldKind::velocity),
    condition<&Design::site, &Site::wind_coefficient>("site.wind_coefficient", FieldKind::ratio),
    condition<&Design::site, &Site::wind_allowance>("site.wind_allowance", FieldKind::pressure),
    condition<&Design::room, &Room::temperature>("room.temperature", FieldKind::temperature),
    condition<&Design::room, &Room::humidity>("room.humidity", FieldKind::ratio),
    condition<&Design::room, &Room::house_height>("room.house_height", FieldKind::length),
    condition<&Design::room, &Room::neutral_plane>("room.neutral_plane", FieldKind::length),
    condition<&Design::room, &Room::exhaust_flow>("room.exhaust_flow", FieldKind::volume_flow),
    condition<&Design::room, &Room::house_volume>("room.house_volume", FieldKind::volume),
    condition<&Design::room, &Room::air_changes_at_50_pascal>("room.air_changes_at_50_pascal", FieldKind::ratio),
    condition<&Design::room, &Room::extra_depressurisation>("room.extra_depressurisation", FieldKind::pressure),
    condition<&Design::fire, &Fire::burn_rate>("fire.burn_rate", FieldKind::mass_flow),
    condition<&Design::fire, &Fire::wood>("fire.wood", FieldKind::wood),
    condition<&Design::fire, &Fire::moisture>("fire.moisture", FieldKind::ratio),
    condition<&Design::fire, &Fire::wanted_excess_air>("fire.wanted_excess_air", FieldKind::ratio),
    condition<&Design::fire, &Fire::unburned_share>("fire.unburned_share", FieldKind::ratio),
    condition<&Design::fire, &Fire::flow_safety>("fire.flow_safety", FieldKind::ratio),
    condition<&Design::house, &House::highest_near>("house.highest_near", FieldKind::length),
    condition<&Design::house, &House::brush_length>("house.brush_length", FieldKind::length),
    condition<&Design::house, &House::floor_capacity>("house.floor_capacity", FieldKind::pressure),
    condition<&Design::house, &House::co_alarm>("house.co_alarm", FieldKind::choice),
};

}  // namespace

std::span<const Condition> conditions() { return all_conditions; }

const Condition* find_condition(std::string_view key) {
  const auto* found = std::find_if(std::begin(all_conditions), std::end(all_conditions),
                                   [key](const Condition& c) { return c.key == key; });
  return found == std::end(all_conditions) ? nullptr : found;
}

}  // namespace fluewright
