// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/finding_arguments.hpp"

namespace fluewright {

/// What practice says of a design, as a sentence; empty for a finding of another sort.
[[nodiscard]] std::string practice_sentence(const Finding& finding, const FindingArguments& arguments);

}  // namespace fluewright
