// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

#include "engine/quantities/temperature.hpp"
#include "tests/guards/mistakes/twin.hpp"

using namespace fluewright;

Temperature room([[maybe_unused]] TemperatureDifference step) { return celsius(TWIN(20.0, step)); }
