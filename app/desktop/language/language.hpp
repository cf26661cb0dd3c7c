// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/library/library.hpp"

#include <QString>

#include <array>
#include <memory>

class QApplication;

namespace fluewright {

/// A language the program speaks.
struct Language {
  const char* code;  ///< as in ISO 639-1
  const char* name;  ///< in itself
};
inline constexpr std::array languages{Language{"en", "English"}, Language{"de", "Deutsch"}, Language{"es", "Español"}};

/// The one asked for if there is such a one, else the system's, else English.
[[nodiscard]] QString language_code(const QString& wanted);

/// Puts a language into force: words, Qt's own words, the decimal mark. Before any widget is made; a later call takes
/// its place for what is made after it.
void speak(QApplication& application, const QString& code);
/// Its code.
[[nodiscard]] QString spoken_language();

/// The shipped library with names, summaries and help in the language in force.
[[nodiscard]] std::shared_ptr<const Library> spoken_library();

/// A label inside a sentence: small at its beginning, unless the language writes it large for good.
[[nodiscard]] QString inside_sentence(const QString& label);

}  // namespace fluewright
