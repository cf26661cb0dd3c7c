// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/flow/stretch.hpp"
#include "engine/quantities/quantities.hpp"

#include <cstddef>
#include <vector>

namespace fluewright {

/// A short piece of a stretch over which the gas is taken as one state at each end. Written in the branch's direction.
struct Slice {
  std::size_t stretch = 0;
  Length length{};
  Length rise{};
  Length end_height{};  ///< above the floor
  Length end_s{};       ///< from the branch's start, along the gas
  Area surface{};       ///< inner surface that gives heat away
  bool opens_stretch = false;
  bool closes_stretch = false;
  bool lid = false;     ///< the stretch's lid: no length, no rise, heat only
};

/// The loss where two stretches of different area meet, on the velocity head of the narrower one.
/// Wider: Borda-Carnot (1 - A1/A2)^2. Narrower: (1 - A2/A1)/2.
struct AreaStep {
  Ratio forward = 0.0;
  Ratio backward = 0.0;
  Area narrow{};
};

/// A stretch's wall reduced to what does not depend on temperature.
struct WallGeometry {
  struct Layer {
    const Material* material = nullptr;
    Length thickness{};
    Length spread{};  ///< D ln(d_out/d_in)/2: divided by k it is the layer's resistance on the inner surface
  };
  std::vector<Layer> layers;
  Length bore{};              ///< heated perimeter / pi: the diameter that all resistances refer to
  Length outside_diameter{};
  Ratio outer_share = 1.0;    ///< outer over inner surface
  Length embedding_spread{};  ///< mass or ground: perimeter / shape factor; divided by k it is a resistance
  Ratio seat_share = 1.0;     ///< surface that gives heat to the room over inner surface (mass)
  Length seat_size{};         ///< area over perimeter of the seat, for its free convection
  Length upright_height{};    ///< for the film of an upright wall
  Ratio outer_emissivity = 0.9;
  bool mass_too_narrow = false;  ///< the mass is no wider than its pipe: the resistance of a bare skin stands in
};

/// A riser inside a barrel or bell and the chamber around it: slices [first, last), the riser's before `chamber`.
struct JacketGroup {
  std::size_t first = 0;
  std::size_t chamber = 0;
  std::size_t last = 0;
};

/// A branch cut up for the march.
struct SlicedPath {
  const Branch* branch = nullptr;
  std::vector<Slice> slices;
  std::vector<WallGeometry> walls;        ///< one a stretch
  std::vector<AreaStep> steps;            ///< steps[i] lies between stretch i-1 and i; steps[0] is none
  std::vector<Ratio> diameter_over_run;   ///< D_h over the unbroken length of that section, for the entry factor
  std::vector<JacketGroup> jackets;
  Length length{};

  [[nodiscard]] const Stretch& stretch_of(const Slice& s) const { return branch->stretches[s.stretch]; }
};

/// Cut so that no slice is longer than `longest`. The branch must outlive the result.
[[nodiscard]] SlicedPath slice_branch(const Branch& branch, Length longest);

}  // namespace fluewright
