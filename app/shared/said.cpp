// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/said.hpp"

namespace fluewright {

namespace {

Translation& translation_in_force() {
  static Translation now = nullptr;
  return now;
}

char& mark_in_force() {
  static char now = '.';
  return now;
}

}  // namespace

std::string said(const char* english) {
  const Translation translation = translation_in_force();
  return translation == nullptr ? std::string(english) : translation(english);
}

void speak_by(Translation translation) { translation_in_force() = translation; }

void set_decimal_mark(char mark) { mark_in_force() = mark; }

char decimal_mark() { return mark_in_force(); }

}  // namespace fluewright
