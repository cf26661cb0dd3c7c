// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/remedy_search.hpp"

#include "app/shared/in_parallel.hpp"

#include <algorithm>
#include <mutex>

namespace fluewright {

namespace {

using Tried = std::vector<std::optional<TriedRemedy>>;

std::ptrdiff_t balance(const TriedRemedy& tried) {
  return static_cast<std::ptrdiff_t>(tried.mended.size()) - static_cast<std::ptrdiff_t>(tried.raised.size());
}

bool does_more(const TriedRemedy& pair, const TriedRemedy& single) {
  return pair.after.verdict < single.after.verdict ||
         (pair.after.verdict == single.after.verdict && balance(pair) > balance(single));
}

class Search {
 public:
  explicit Search(const RemedySearch& asked) : asked_{asked} {}

  RemedyList run() {
    const Assessment now = assess(asked_.design, asked_.library);
    list_.before = standing_of(asked_.design, asked_.library, now, asked_.prices);
    if (!list_.before) return std::move(list_);
    const std::vector<Remedy> planned = single_remedies(asked_.design, asked_.library, now);
    list_.state.of = planned.size();
    const Tried singles = try_all(planned, [](const TriedRemedy&) { return true; });
    if (asked_.pairs) try_pairs(singles);
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
      if (tried[i] && brings_something(*tried[i], *list_.before) && worth(*tried[i])) {
        list_.remedies.push_back(*tried[i]);
        if (asked_.found) asked_.found(*tried[i]);
      }
      if (asked_.moved_on) asked_.moved_on(list_.state);
    });
    return tried;
  }

  void try_pairs(const Tried& singles) {
    std::vector<Remedy> built;
    for (const auto& single : singles) {
      if (single) built.push_back(single->remedy);
    }
    const std::vector<Remedy> pairs = paired_remedies(built);
    list_.state.of += pairs.size();
    const auto alone = [&singles](const Change& change) -> const TriedRemedy& {
      return **std::find_if(singles.begin(), singles.end(),
                            [&](const auto& s) { return s && s->remedy.changes.front() == change; });
    };
    (void)try_all(pairs, [&](const TriedRemedy& pair) {
      return std::all_of(pair.remedy.changes.begin(), pair.remedy.changes.end(),
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
