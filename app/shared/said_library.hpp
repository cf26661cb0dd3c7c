// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/design.hpp"
#include "engine/library/library.hpp"

#include <functional>
#include <string>
#include <vector>

namespace fluewright {

/// Hands over every text of the library that people read: names, labels, help, sources. Ids and keys are none.
void visit_texts(Library& library, const std::function<void(std::string&)>& visit);
/// The same of a design: title, scene, notes and what its pieces are called.
void visit_texts(Design& design, const std::function<void(std::string&)>& visit);

/// The library with those texts in the language in force.
[[nodiscard]] Library said_library(Library library);

/// Every English text that stands in data or in the engine's codes rather than in this program's words: the library's,
/// the demos' titles and scenes, the engine's names. Each once, sorted: what a translation has to hold besides.
[[nodiscard]] std::vector<std::string> texts_of_data();

}  // namespace fluewright
