// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The engine's inner loop, compiled twice from the same sources: with units and in bare doubles.

namespace slice_kernel {

/// What one march adds up to, in plain SI, to see that both versions compute the same.
struct Result {
  double buoyancy = 0.0;
  double loss = 0.0;
  double exit = 0.0;
  int slices = 0;
};

/// Marches flue gas through a heater of riser, barrel, bench and stack, so many times.
Result with_units(int repeats);
Result in_bare_doubles(int repeats);

}  // namespace slice_kernel
