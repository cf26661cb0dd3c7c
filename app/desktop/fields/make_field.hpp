// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/fields/field.hpp"
#include "app/desktop/fields/quiet_combo.hpp"
#include "engine/layout/design.hpp"

namespace fluewright {

/// The field for a kind of value.
[[nodiscard]] Field* make_field(const FieldSpec& spec, QWidget* parent);
/// Offer what the library and the design's own build-ups hold; nothing happens for numbers.
void offer_options(Field& field, const Library& library, const Design& design);
/// A choice's word as people read it: "double_wall" is "Double wall".
[[nodiscard]] QString choice_words(const std::string& choice);

}  // namespace fluewright
