// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

#include "engine/quantities/quantities.hpp"
#include "tests/guards/mistakes/twin.hpp"

using namespace fluewright;

bool enough(Pressure draft, [[maybe_unused]] Pressure loss, [[maybe_unused]] Length height) {
  return draft > TWIN(loss, height);
}
