// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/bill/packing.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <numeric>

namespace fluewright {

namespace {

using Tenths = std::int64_t;  ///< tenths of a millimetre

constexpr Length tenth = 0.1 * millimetre;
constexpr double rounding = 1e-6;  ///< of a count: of the rounding of binary fractions, no length

/// Parts of one size.
struct Size {
  Tenths size = 0;
  std::size_t left = 0;
  std::vector<std::size_t> parts;
};

/// Martello & Toth's L2 over sizes from long to short: for every short size, what is too long to share a bar with it
/// takes a bar of its own, and what is left must fit beside the rest.
std::size_t lower_bound(const std::vector<Size>& sizes, Tenths bar) {
  std::size_t best = 0;
  std::vector<Tenths> trials{0};
  for (const Size& s : sizes) {
    if (2 * s.size <= bar) trials.push_back(s.size);
  }
  for (const Tenths trial : trials) {
    Tenths alone = 0;
    Tenths halves = 0;
    Tenths halves_length = 0;
    Tenths small_length = 0;
    for (const Size& s : sizes) {
      const auto number = static_cast<Tenths>(s.left);
      if (s.size > bar - trial) {
        alone += number;
      } else if (2 * s.size > bar) {
        halves += number;
        halves_length += number * s.size;
      } else if (s.size >= trial) {
        small_length += number * s.size;
      }
    }
    const Tenths beyond = std::max<Tenths>(0, small_length - (halves * bar - halves_length));
    best = std::max(best, static_cast<std::size_t>(alone + halves + (beyond + bar - 1) / bar));
  }
  return best;
}

/// A bar as it is filled: how many of each size.
using Filling = std::vector<std::size_t>;

class Search {
 public:
  Search(std::vector<Size> sizes, Tenths bar, std::size_t steps) : sizes_{std::move(sizes)}, bar_{bar}, steps_{steps} {}

  /// Fill at most `bars` bars, wasting no more than their length leaves over. Empty if there is none or it was given
  /// up.
  std::vector<Filling> fill(std::size_t bars) {
    Tenths total = 0;
    for (const Size& s : sizes_) total += s.size * static_cast<Tenths>(s.left);
    const Tenths waste = static_cast<Tenths>(bars) * bar_ - total;
    done_.clear();
    if (waste < 0) return {};
    // The fullest bar is mostly right: first with few detours from it, at last with any number.
    for (const std::size_t detours : {std::size_t{0}, std::size_t{1}, std::size_t{2}, std::size_t{3}, std::size_t{4},
                                      std::numeric_limits<std::size_t>::max()}) {
      if (complete_next(waste, detours)) return done_;
      if (gave_up_) break;
    }
    return {};
  }
  [[nodiscard]] bool gave_up() const { return gave_up_; }

 private:
  struct Completion {
    Filling filling;
    Tenths waste = 0;
  };

  bool spend() {
    if (steps_ == 0) gave_up_ = true;
    return steps_ != 0 && steps_-- != 0;
  }

  /// The longest part left opens a bar; every way of completing it is tried, the fullest first.
  bool complete_next(Tenths waste_left, std::size_t detours) {
    const auto longest = std::find_if(sizes_.begin(), sizes_.end(), [](const Size& s) { return s.left > 0; });
    if (longest == sizes_.end()) return true;
    const auto first = static_cast<std::size_t>(longest - sizes_.begin());
    Filling filling(sizes_.size(), 0);
    filling[first] = 1;
    --sizes_[first].left;
    std::vector<Completion> ways;
    gather(ways, filling, first, bar_ - sizes_[first].size, waste_left);
    std::stable_sort(ways.begin(), ways.end(), [](const auto& a, const auto& b) { return a.waste < b.waste; });
    bool found = false;
    std::vector<std::vector<Tenths>> tried;
    bool detour = false;
    for (const Completion& way : ways) {
      if (!spend()) break;
      std::vector<Tenths> parts = parts_beside(way.filling, first);
      if (is_pointless(parts, tried)) continue;
      if (detour && detours == 0) break;
      if (parts.size() <= most_compared) tried.push_back(std::move(parts));
      take(way.filling, first);
      done_.push_back(way.filling);
      found = complete_next(waste_left - way.waste, detours - (detour ? 1 : 0));
      detour = true;
      if (found) break;
      done_.pop_back();
      give_back(way.filling, first);
    }
    if (!found) ++sizes_[first].left;
    return found;
  }

  /// All fillings that leave no room for any part that is left, and waste no more than is allowed.
  void gather(std::vector<Completion>& ways, Filling& filling, std::size_t from, Tenths room, Tenths waste_left) {
    constexpr std::size_t most_ways = 4000;  // past it the search is not exhaustive, and says so
    if (ways.size() >= most_ways || !spend()) {
      gave_up_ = true;
      return;
    }
    bool full = true;
    const Tenths shortest = shortest_left();
    for (std::size_t i = from; i < sizes_.size(); ++i) {
      if (sizes_[i].left == 0 || sizes_[i].size > room) continue;
      full = false;
      // With it the bar is as good as full, but not full enough.
      const Tenths rest = room - sizes_[i].size;
      if (rest > waste_left && rest < shortest) continue;
      ++filling[i];
      --sizes_[i].left;
      gather(ways, filling, i, room - sizes_[i].size, waste_left);
      ++sizes_[i].left;
      --filling[i];
    }
    if (full && room <= waste_left && !longer_part_fits(from, room)) ways.push_back({filling, room});
  }

  /// Comparing fillings of many parts takes longer than it saves.
  static constexpr std::size_t most_compared = 4;

  static bool is_pointless(const std::vector<Tenths>& parts, const std::vector<std::vector<Tenths>>& tried) {
    return parts.size() <= most_compared && std::any_of(tried.begin(), tried.end(), [&parts](const auto& better) {
             std::vector<Tenths> rooms = better;
             return fit_into(parts, 0, rooms);
           });
  }

  /// The sizes that fill up the bar beside its opener, from long to short.
  [[nodiscard]] std::vector<Tenths> parts_beside(const Filling& filling, std::size_t opener) const {
    std::vector<Tenths> parts;
    for (std::size_t i = 0; i < filling.size(); ++i) {
      parts.insert(parts.end(), filling[i] - (i == opener ? 1 : 0), sizes_[i].size);
    }
    return parts;
  }

  /// Whether the parts from `next` on fit into the rooms. Where one filling's parts fit into another's, the other is
  /// never worse: what it leaves can take the places that it took (Martello & Toth 1990, dominance).
  static bool fit_into(const std::vector<Tenths>& parts, std::size_t next, std::vector<Tenths>& rooms) {
    if (next == parts.size()) return true;
    for (Tenths& room : rooms) {
      if (room < parts[next]) continue;
      room -= parts[next];
      const bool fits = fit_into(parts, next + 1, rooms);
      room += parts[next];
      if (fits) return true;
    }
    return false;
  }

  [[nodiscard]] Tenths shortest_left() const {
    const auto last = std::find_if(sizes_.rbegin(), sizes_.rend(), [](const Size& s) { return s.left > 0; });
    return last == sizes_.rend() ? 0 : last->size;
  }

  [[nodiscard]] bool longer_part_fits(std::size_t before, Tenths room) const {
    return std::any_of(sizes_.begin(), sizes_.begin() + static_cast<std::ptrdiff_t>(before),
                       [room](const Size& s) { return s.left > 0 && s.size <= room; });
  }

  void take(const Filling& filling, std::size_t opener) {
    for (std::size_t i = 0; i < filling.size(); ++i) sizes_[i].left -= filling[i] - (i == opener ? 1 : 0);
  }
  void give_back(const Filling& filling, std::size_t opener) {
    for (std::size_t i = 0; i < filling.size(); ++i) sizes_[i].left += filling[i] - (i == opener ? 1 : 0);
  }

  std::vector<Size> sizes_;
  Tenths bar_;
  std::size_t steps_;
  bool gave_up_ = false;
  std::vector<Filling> done_;
};

std::vector<Filling> first_fit_decreasing(const std::vector<Size>& sizes, Tenths bar) {
  std::vector<Filling> bars;
  std::vector<Tenths> room;
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    for (std::size_t n = 0; n < sizes[i].left; ++n) {
      const auto fits = std::find_if(room.begin(), room.end(), [&](Tenths r) { return r >= sizes[i].size; });
      const auto at = static_cast<std::size_t>(fits - room.begin());
      if (fits == room.end()) {
        bars.emplace_back(sizes.size(), 0);
        room.push_back(bar);
      }
      ++bars[at][i];
      room[at] -= sizes[i].size;
    }
  }
  return bars;
}

/// By size from long to short. Every part brings its saw cut along, and so does the bar's end: n parts of one bar take
/// n - 1 cuts at least.
std::vector<Size> by_size(std::span<const Length> parts, Tenths kerf) {
  std::vector<Size> sizes;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const Tenths size = static_cast<Tenths>(std::ceil(in(parts[i], tenth) - rounding)) + kerf;
    const auto same = std::find_if(sizes.begin(), sizes.end(), [size](const Size& s) { return s.size == size; });
    Size& group = same != sizes.end() ? *same : sizes.emplace_back(Size{size, 0, {}});
    ++group.left;
    group.parts.push_back(i);
  }
  std::stable_sort(sizes.begin(), sizes.end(), [](const Size& a, const Size& b) { return a.size > b.size; });
  return sizes;
}

std::vector<std::vector<std::size_t>> parts_in(const std::vector<Filling>& fillings, const std::vector<Size>& sizes) {
  std::vector<std::size_t> used(sizes.size(), 0);
  std::vector<std::vector<std::size_t>> bars;
  for (const Filling& filling : fillings) {
    auto& bar = bars.emplace_back();
    for (std::size_t i = 0; i < sizes.size(); ++i) {
      for (std::size_t n = 0; n < filling[i]; ++n) bar.push_back(sizes[i].parts[used[i]++]);
    }
  }
  return bars;
}

bool is_positive(Length length) { return std::isfinite(in(length, metre)) && length > Length{}; }

}  // namespace

std::optional<BarPacking> pack_bars(std::span<const Length> parts, Length bar, Length kerf,
                                    const PackingEffort& effort) {
  const bool sound = is_positive(bar) && std::isfinite(in(kerf, metre)) && kerf >= Length{} &&
                     std::all_of(parts.begin(), parts.end(), [&](Length p) { return is_positive(p); });
  if (!sound) return std::nullopt;
  const auto saw = static_cast<Tenths>(std::ceil(in(kerf, tenth) - rounding));
  const Tenths length = static_cast<Tenths>(std::floor(in(bar, tenth) + rounding)) + saw;
  const std::vector<Size> sizes = by_size(parts, saw);
  if (!sizes.empty() && sizes.front().size > length) return std::nullopt;

  std::vector<Filling> best = first_fit_decreasing(sizes, length);
  BarPacking packing;
  packing.at_least = lower_bound(sizes, length);
  bool exhausted = true;
  while (best.size() > packing.at_least) {
    Search search(sizes, length, effort.steps);
    std::vector<Filling> better = search.fill(best.size() - 1);
    if (better.empty()) {
      exhausted = !search.gave_up();
      break;
    }
    best = std::move(better);
  }
  packing.proven = best.size() == packing.at_least || exhausted;
  if (packing.proven) packing.at_least = best.size();
  packing.bars = parts_in(best, sizes);
  return packing;
}

}  // namespace fluewright
