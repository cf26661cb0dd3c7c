// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace fluewright {

/// The words of a person's language for an English text of this room; the text itself until a language is set. A
/// pattern keeps its "{}", in their order.
[[nodiscard]] std::string said(const char* english);

/// How the whole program speaks: set once, before anything is said. Null: English. The command line always speaks English.
using Translation = std::string (*)(const char* english);
void speak_by(Translation translation);

/// What stands between whole and fraction of a number that is shown: '.' until set. What is typed may have either.
void set_decimal_mark(char mark);
[[nodiscard]] char decimal_mark();

}  // namespace fluewright
