// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/surround.hpp"

#include "engine/site/atmosphere.hpp"
#include "engine/site/house.hpp"

namespace fluewright {

Pressure Surround::room_gauge(Length height) const {
  return fluewright::room_gauge(height, neutral_plane, outdoor_air, room_air, depressurisation);
}

Temperature Surround::beyond(Place place, const Embedding& embedding) const {
  switch (place) {
    case Place::outdoors: return outdoor;
    case Place::attic: return attic;
    case Place::ground: return embedding.under_open_sky ? outdoor : room;
    case Place::room:
    case Place::mass:
    case Place::jacket: break;
  }
  return room;
}

Pressure Surround::gauge_at(const BranchEnd& end) const {
  return end.kind == EndKind::room_air ? room_gauge(end.height) : Pressure{};
}

Surround surround_of(const Design& design) {
  const Site& site = design.site;
  const Room& room = design.room;
  Surround s;
  s.absolute = pressure_at_altitude(site.altitude);
  s.outdoor = site.outdoor_temperature;
  s.room = room.temperature;
  s.attic = midway(room.temperature, site.outdoor_temperature);
  s.ground = site.ground_temperature;
  s.outdoor_air = moist_air_density(s.outdoor, s.absolute, site.outdoor_humidity);
  s.room_air = moist_air_density(s.room, s.absolute, room.humidity);
  s.outdoor_water = water_mole_fraction(s.outdoor, s.absolute, site.outdoor_humidity);
  s.room_water = water_mole_fraction(s.room, s.absolute, room.humidity);
  s.neutral_plane = room.neutral_plane;
  s.depressurisation = room.extra_depressurisation;
  if (room.exhaust_flow > VolumeFlow{}) {
    s.depressurisation += exhaust_depressurisation(room.exhaust_flow, room.house_volume, room.air_changes_at_50_pascal);
  }
  s.cap_gauge = wind_pressure(site.wind_coefficient, site.wind_speed, s.outdoor_air);
  s.wind = site.wind_speed;
  return s;
}

bool opens_to_room(const Stretch& stretch) {
  switch (stretch.place) {
    case Place::outdoors:
    case Place::attic: return false;
    case Place::ground: return !stretch.embedding.under_open_sky;
    case Place::room:
    case Place::mass:
    case Place::jacket: break;
  }
  return true;
}

}  // namespace fluewright
