// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/working/retrace.hpp"

namespace fluewright {

/// A retrace with all that stands before any march: design, surroundings, wood. Nothing if the answer has no profile.
[[nodiscard]] std::unique_ptr<Retrace> begun_retrace(const Design& design, const Library& library,
                                                     const Assessment& answer);

/// The main path of an answer that has branches, or with a piece the side branch that it is in. At the design flow of an
/// age, or in the profile's state. Nothing where gas runs backwards on it.
[[nodiscard]] std::unique_ptr<const Retrace> retrace_network(const Design& design, const Library& library,
                                                             const Assessment& answer, std::optional<BenchAge> age,
                                                             std::optional<std::size_t> piece, Length slice);

}  // namespace fluewright
