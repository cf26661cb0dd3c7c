// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// All remedies of a design, tried one after another on all processors.

#include "engine/advice/remedy.hpp"

#include <functional>
#include <stop_token>

namespace fluewright {

/// How far the search is and what it has found so far.
struct SearchState {
  std::size_t tried = 0;
  std::size_t of = 0;
};

struct RemedySearch {
  const Design& design;
  const Library& library;
  const PriceList& prices;
  bool pairs = true;
  std::stop_token stop;
  /// Called from any of the threads, one call at a time: a remedy that can be built and brings something.
  std::function<void(const TriedRemedy&)> found;
  /// The same, after every one tried.
  std::function<void(const SearchState&)> moved_on;
};

/// What came of it, best first. `before` is missing where the design has no answer yet: then nothing is tried.
struct RemedyList {
  std::optional<Outcome> before;
  std::vector<TriedRemedy> remedies;
  SearchState state;
};

/// Singles first, then the pairs of those that can be built. A pair stands on the list only if it does more than either of
/// its two alone.
[[nodiscard]] RemedyList search_remedies(const RemedySearch& search);

}  // namespace fluewright
