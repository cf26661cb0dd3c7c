// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/library/library.hpp"

namespace fluewright {

/// Whether a library's entries go together: ids single, every name answered, every shape known with all its fields,
/// the conditions those of the engine. Throws std::runtime_error naming entry and field.
void check_library(const Library& library);

}  // namespace fluewright
