// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/library/field.hpp"

#include <QString>

namespace fluewright {

/// A length that a dialog asks for and no catalogue knows.
[[nodiscard]] inline FieldSpec length_spec(const char* key, const QString& label, Length value, Length low, Length high) {
  FieldSpec spec;
  spec.key = key;
  spec.label = label.toStdString();
  spec.kind = FieldKind::length;
  spec.fallback = value;
  spec.lowest = low;
  spec.highest = high;
  return spec;
}

}  // namespace fluewright
