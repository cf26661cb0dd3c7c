// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Prints the texts that stand in data as a source that lupdate reads. Part of update_translations.

#include "app/shared/said_library.hpp"

#include <fmt/format.h>

#include <iostream>

int main() {
  for (const std::string& text : fluewright::texts_of_data()) {
    std::string literal;
    for (const char c : text) {
      if (c == '\n') {
        literal += "\\n";
      } else {
        if (c == '"' || c == '\\') literal += '\\';
        literal += c;
      }
    }
    std::cout << fmt::format("QT_TRANSLATE_NOOP(\"Words\", \"{}\");\n", literal);
  }
}
