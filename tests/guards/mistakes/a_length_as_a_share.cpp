// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

#include "engine/quantities/quantities.hpp"
#include "tests/guards/mistakes/twin.hpp"

using namespace fluewright;

Ratio share(Length part, [[maybe_unused]] Length whole) { return TWIN(part / whole, part); }
