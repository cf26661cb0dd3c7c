// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A working on paper: as text for people, as JSON for programs.

#include "app/shared/working_value.hpp"
#include "engine/layout/design.hpp"
#include "engine/working/explain.hpp"

#include <nlohmann/json.hpp>

#include <string>
#include <string_view>

namespace fluewright {

/// "draft to spare, cold bench", "excess air".
[[nodiscard]] std::string_view word(HeadlineNumber number);

/// Source and its standing, unless that is plain: "Churchill 1977", "Idelchik (from memory)".
[[nodiscard]] std::string working_source(const WorkingStep& step);
/// Remark, piece and a range that has been left, one sentence after the other; may be empty.
[[nodiscard]] std::string working_notes(const WorkingStep& step, const Design& design, const Library& library);
/// What the working is of: "Bench pipe 2: the piece, and slice 31 of 244 in its middle".
[[nodiscard]] std::string working_title(const Working& working, const Design& design, const Library& library);

/// The whole working for reading.
[[nodiscard]] std::string working_text(const Working& working, const Design& design, const Library& library,
                                       UnitSystem units);
/// The same for programs: subject, piece, and the steps in their order. Values are not rounded.
[[nodiscard]] nlohmann::ordered_json working_json(const Working& working, const Design& design, const Library& library);

}  // namespace fluewright
