// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

#include "engine/quantities/quantities.hpp"
#include "tests/guards/mistakes/twin.hpp"

using namespace fluewright;

Conductivity brick([[maybe_unused]] Conductivity k, [[maybe_unused]] FilmCoefficient h) { return TWIN(k, h); }
