// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/sliced_path.hpp"

#include <functional>

namespace fluewright {

/// Cut so that no slice of a stretch is longer than `longest` says for it. The branch must outlive the result.
[[nodiscard]] SlicedPath slice_stretches(const Branch& branch, const std::function<Length(const Stretch&)>& longest);

}  // namespace fluewright
