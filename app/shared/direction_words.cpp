// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/direction_words.hpp"

#include "app/shared/file_units.hpp"

#include <cmath>
#include <string>

namespace fluewright {

namespace {

using nlohmann::ordered_json;

template <class Value>
struct Named {
  Value value;
  std::string_view word;
};

constexpr Named<Turn> turns[] = {{Turn::left, "left"}, {Turn::right, "right"}, {Turn::up, "up"}, {Turn::down, "down"}};
constexpr Named<Standing> standings[] = {{Standing::published, "published"},
                                         {Standing::from_memory, "from_memory"},
                                         {Standing::common_practice, "common_practice"},
                                         {Standing::chosen, "chosen"}};
constexpr Named<Angle> azimuths[] = {{heading_east.azimuth, "east"},
                                     {heading_north.azimuth, "north"},
                                     {heading_west.azimuth, "west"},
                                     {heading_south.azimuth, "south"}};

template <class Value, std::size_t N>
std::string_view word_of(const Named<Value> (&names)[N], Value value) {
  for (const auto& name : names) {
    if (name.value == value) return name.word;
  }
  return names[0].word;
}

template <class Value, std::size_t N>
std::optional<Value> value_of(const Named<Value> (&names)[N], std::string_view word) {
  for (const auto& name : names) {
    if (name.word == word) return name.value;
  }
  return std::nullopt;
}

/// Two angles that only rounding tells apart.
bool same(Angle a, Angle b) {
  constexpr double rounding = 1e-9;
  return std::abs(std::remainder(in(a - b, radian), in(360.0 * degree, radian))) < rounding;
}

std::optional<std::string_view> azimuth_word(Angle azimuth) {
  for (const auto& name : azimuths) {
    if (same(name.value, azimuth)) return name.word;
  }
  return std::nullopt;
}

double enter_degrees(double number) { return (number * degree).value(); }

ordered_json in_degrees(Angle angle) { return shortest_number(in(angle, degree), angle.value(), enter_degrees); }

}  // namespace

std::string_view file_word(Turn turn) { return word_of(turns, turn); }
std::optional<Turn> turn_of(std::string_view word) { return value_of(turns, word); }
std::string_view file_word(Standing standing) { return word_of(standings, standing); }
std::optional<Standing> standing_of(std::string_view word) { return value_of(standings, word); }

void put_heading(ordered_json& piece, const Heading& heading) {
  const bool up = same(heading.elevation, 90.0 * degree);
  const bool down = same(heading.elevation, -90.0 * degree);
  const auto azimuth = azimuth_word(heading.azimuth);
  if (up || down) {
    piece["heading"] = up ? "up" : "down";
    if (azimuth) {
      piece["facing"] = *azimuth;
    } else {
      piece["facing_deg"] = in_degrees(heading.azimuth);
    }
  } else if (azimuth && same(heading.elevation, {})) {
    piece["heading"] = *azimuth;
  } else {
    piece["heading"] = {{"azimuth_deg", in_degrees(heading.azimuth)}, {"elevation_deg", in_degrees(heading.elevation)}};
  }
}

Heading heading_in(const ordered_json& piece) {
  const ordered_json& written = piece.at("heading");
  if (written.is_object()) {
    return {written.at("azimuth_deg").get<double>() * degree, written.at("elevation_deg").get<double>() * degree};
  }
  const auto word = written.get<std::string>();
  if (word != "up" && word != "down") return {*value_of(azimuths, word), {}};
  Angle facing{};
  if (piece.contains("facing")) facing = *value_of(azimuths, piece["facing"].get<std::string>());
  if (piece.contains("facing_deg")) facing = piece["facing_deg"].get<double>() * degree;
  return word == "up" ? heading_up(facing) : heading_down(facing);
}

}  // namespace fluewright
