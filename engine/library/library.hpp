// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The library: everything the engine takes from data rather than from code. It is read from resources/ by the
// application and handed to the engine as one immutable value; the engine never opens a file.

#include "engine/fuel/wood.hpp"
#include "engine/library/citation.hpp"
#include "engine/library/fan_sheet.hpp"
#include "engine/library/field.hpp"
#include "engine/quantities/quantities.hpp"
#include "engine/quantities/temperature.hpp"
#include "engine/quantities/valid_range.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace fluewright {

/// A conductivity measured at a temperature.
struct ConductivityPoint {
  Temperature at;
  Conductivity conductivity{};
};

/// A building material.
struct Material {
  std::string id;
  std::string name;
  Density density{};
  SpecificHeat specific_heat{};
  std::vector<ConductivityPoint> conductivity_points;  ///< at least one, rising in temperature
  Ratio emissivity = 0.9;    ///< long-wave, of its surface
  Length roughness{};        ///< as the inside of a flue; zero where it is never one
  Citation thermal_citation;    ///< density, specific heat, conductivity
  Citation roughness_citation;
  Citation emissivity_citation;

  /// Linear between the points; outside them the nearest point holds (and the caller can see it: see covers()).
  [[nodiscard]] Conductivity conductivity(Temperature t) const;
  /// Whether t lies within the measured points (always true for a single-point material below 200 degC).
  [[nodiscard]] bool covers(Temperature t) const;
  /// The temperatures of covers().
  [[nodiscard]] ValidRange<Temperature> covered() const;
  /// Still air shut in between two layers rather than something that stands by itself.
  [[nodiscard]] bool is_gap() const { return density < 10.0 * kilogram_per_cubic_metre; }
  /// Thermal diffusivity k/(rho c) at t [m2/s].
  [[nodiscard]] Diffusivity diffusivity(Temperature t) const;
};

/// One layer of a wall, from the gas outwards.
struct WallLayer {
  std::string material;
  Length thickness{};
  friend bool operator==(const WallLayer&, const WallLayer&) = default;
};

/// A wall build-up, from the gas outwards.
struct Wall {
  std::string id;
  std::string name;
  std::vector<WallLayer> layers;
  Citation citation;
  friend bool operator==(const Wall&, const Wall&) = default;
};

/// A wood and what it is made of.
struct WoodSpecies {
  std::string id;
  std::string name;
  WoodAnalysis analysis;
  Citation citation;
};

/// A moisture state in the trade's words ("two summers under cover") with its usual range, wet basis.
struct MoistureState {
  std::string id;
  std::string name;
  Ratio usual_low = 0.0;
  Ratio usual = 0.0;
  Ratio usual_high = 0.0;
  Citation citation;
};

/// The usual full burn rate of a bore.
struct UsualBurnRate {
  Length bore{};
  MassFlow low{};
  MassFlow usual{};
  MassFlow high{};
  Citation citation;
};

/// One kind of piece in the rack: a named set of fields over a shape that the engine knows how to compute.
struct PieceType {
  std::string id;       ///< "bench_pipe"
  std::string name;     ///< "Pipe in the bench"
  std::string family;   ///< "inlet" | "fire" | "exchange" | "bench" | "fitting" | "stack" | "helper"
  std::string shape;    ///< id of the shape in engine/pieces that computes it: "run", "bend", "tee", ...
  std::string summary;  ///< one sentence for the rack and for help
  bool passes_house = false;  ///< made to go through a wall, a ceiling or a roof
  std::vector<FieldSpec> fields;
  std::vector<Citation> citations;  ///< what its coefficients rest on, beyond the fields' own

  [[nodiscard]] const FieldSpec* field(std::string_view key) const;
};

/// Everything above, found by id. Order is the order of the data: the rack shows it so.
struct Library {
  std::vector<Material> materials;
  std::vector<Wall> walls;
  std::vector<WoodSpecies> woods;
  std::vector<MoistureState> moisture_states;
  std::vector<UsualBurnRate> burn_rates;
  std::vector<PieceType> piece_types;
  std::vector<FanSheet> fans;             ///< generic ones
  std::vector<FieldSpec> fan_fields;      ///< of a fan's data sheet; keys as in fan_fields(), then "flow" and "head" of a point
  std::vector<FieldSpec> conditions;  ///< of site, room and fire; keys as in engine/layout/conditions.hpp

  [[nodiscard]] const Material* material(std::string_view id) const;
  [[nodiscard]] const Wall* wall(std::string_view id) const;
  [[nodiscard]] const WoodSpecies* wood(std::string_view id) const;
  [[nodiscard]] const FanSheet* fan(std::string_view id) const;
  /// What the data says about an entry of a fan's data sheet ("rated_gas"), or of its points ("flow", "head").
  [[nodiscard]] const FieldSpec* fan_field(std::string_view key) const;
  [[nodiscard]] const PieceType* piece_type(std::string_view id) const;
  [[nodiscard]] const FieldSpec* condition(std::string_view key) const;
};

}  // namespace fluewright
