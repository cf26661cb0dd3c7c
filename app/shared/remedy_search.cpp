// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/remedy_search.hpp"

#include "app/shared/in_parallel.hpp"

#include <algorithm>
#include <mutex>

namespace fluewright {

namespace {

using Tried = std::vector<std::optional<TriedRemedy>>;

class Search {
 public:
  explicit Search(const RemedySearch& asked) : asked_{asked} {}

  RemedyList run() {
    const Assessment now = assess(asked_.design, asked_.library);
    list_.before = standing_of(asked_.design, asked_.library, now, asked_.prices);
    if (!list_.before) return std::move(list_);
    const std::vector<Remedy> planned = single_remedies(asked_.design, asked_.library, now);
    list_.state.of = planned.size();
    const Tried singles = try_all(planned, [](std::size_t, const TriedRemedy&) { return true; });
    if (asked_.pairs) try_pairs(planned, singles);
    std::stable_sort(list_.remedies.begin(), list_.remedies.end(), ranks_before);
    return std::move(list_);
  }

 private:
  template <class Worth>
  Tried try_all(const std::vector<Remedy>& remedies, const Worth& worth) {
    Tried tried(remedies.size());
    in_parallel(remedies.size(), asked_.stop, [&](std::size_t i) {
      tried[i] = try_remedy(asked_.design, asked_.library, *list_.before, remedies[i], asked_.prices);
      const std::lock_guard one_at_a_time(mutex_);
      ++list_.state.tried;
      if (tried[i] && brings_something(*tried[i], *list_.before) && worth(i, *tried[i])) {
        list_.remedies.push_back(*tried[i]);
        if (asked_.found) asked_.found(*tried[i]);
      }
      if (asked_.moved_on) asked_.moved_on(list_.state);
    });
    return tried;
  }

  /// Pairs of what can be built, with open amounts still open: what one change is to be depends on the other.
  void try_pairs(const std::vector<Remedy>& planned, const Tried& singles) {
    std::vector<Remedy> built;
    for (std::size_t i = 0; i < planned.size(); ++i) {
      if (singles[i]) built.push_back(planned[i]);
    }
    const std::vector<Remedy> pairs = paired_remedies(built);
    list_.state.of += pairs.size();
    const auto alone = [&](const Change& change) -> const TriedRemedy& {
      const auto at = std::find(planned.begin(), planned.end(), Remedy{{change}});
      return *singles[static_cast<std::size_t>(at - planned.begin())];
    };
    (void)try_all(pairs, [&](std::size_t i, const TriedRemedy& pair) {
      return std::all_of(pairs[i].changes.begin(), pairs[i].changes.end(),
                         [&](const Change& change) { return does_more(pair, alone(change)); });
    });
  }

  const RemedySearch& asked_;
  RemedyList list_;
  std::mutex mutex_;
};

}  // namespace

RemedyList search_remedies(const RemedySearch& search) { return Search(search).run(); }

}  // namespace fluewright
