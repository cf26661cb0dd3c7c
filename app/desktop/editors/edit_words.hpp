// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/edit.hpp"

#include <QString>

namespace fluewright {

/// Why an edit was refused, as a sentence.
[[nodiscard]] QString refusal_sentence(Refusal refusal);
/// A heading in words: "up", "to the north", "to the north-east, rising".
[[nodiscard]] QString heading_words(const Heading& heading);
[[nodiscard]] QString turn_word(Turn turn);

}  // namespace fluewright
