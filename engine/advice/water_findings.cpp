// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/finding_case.hpp"
#include "engine/advice/practice.hpp"

#include <algorithm>
#include <utility>
#include <vector>

namespace fluewright::advice {

namespace {

/// Heights that differ by less hold the same water.
constexpr Length level_within = 1.0 * millimetre;

/// The path as heights between which water runs: node 0 is the inlet, node i the end of slice i - 1.
class Slopes {
 public:
  explicit Slopes(const FindingCase& of) : of_{of} {
    const auto& rows = of.assessment.profile;
    heights_.reserve(rows.size() + 1);
    heights_.push_back(of.assessment.path.network.branches.front().from.height);
    for (const SliceState& row : rows) heights_.push_back(row.z);
    levels_.reserve(heights_.size());
    for (std::size_t node = 0; node < heights_.size(); ++node) {
      // Along a level run every node hangs together with the same ones.
      const bool as_before = node > 0 && heights_[node] == heights_[node - 1];
      levels_.push_back(as_before ? levels_.back() : level_found(node));
    }
  }

  /// Water on a slice stands in the end at which the walk downhill stops.
  [[nodiscard]] std::size_t lowest_from(std::size_t slice) const {
    std::size_t node = heights_[slice] < heights_[slice + 1] ? slice : slice + 1;
    for (;;) {
      const auto [first, last] = level_around(node);
      if (first > 0 && heights_[first - 1] < heights_[node]) {
        node = first - 1;
      } else if (last + 1 < heights_.size() && heights_[last + 1] < heights_[node]) {
        node = last + 1;
      } else {
        // What is level within a millimetre still has a lowest node: it stands for the whole.
        const auto begin = heights_.begin();
        return static_cast<std::size_t>(std::min_element(begin + static_cast<std::ptrdiff_t>(first),
                                                         begin + static_cast<std::ptrdiff_t>(last) + 1) - begin);
      }
    }
  }

  /// The nodes as high as this one that hang together with it.
  [[nodiscard]] std::pair<std::size_t, std::size_t> level_around(std::size_t node) const { return levels_[node]; }

  /// Pieces with a slice that touches the level part around the node.
  [[nodiscard]] std::vector<std::size_t> pieces_at(std::size_t node) const {
    const auto [first, last] = level_around(node);
    const auto& rows = of_.assessment.profile;
    std::vector<std::size_t> pieces;
    const std::size_t from = first == 0 ? 0 : first - 1;
    for (std::size_t i = from; i < std::min(last + 1, rows.size()); ++i) {
      if (pieces.empty() || pieces.back() != rows[i].piece) pieces.push_back(rows[i].piece);
    }
    return pieces;
  }

 private:
  [[nodiscard]] std::pair<std::size_t, std::size_t> level_found(std::size_t node) const {
    std::size_t first = node;
    std::size_t last = node;
    while (first > 0 && bu::abs(heights_[first - 1] - heights_[node]) < level_within) --first;
    while (last + 1 < heights_.size() && bu::abs(heights_[last + 1] - heights_[node]) < level_within) ++last;
    return {first, last};
  }

  const FindingCase& of_;
  std::vector<Length> heights_;
  std::vector<std::pair<std::size_t, std::size_t>> levels_;
};

bool is_drained(const FindingCase& of, const std::vector<std::size_t>& pieces) {
  return std::any_of(pieces.begin(), pieces.end(), [&of](std::size_t piece) { return has_lid(of, piece); });
}

void find_pools(FindingCase& of, const Slopes& slopes) {
  const auto& rows = of.assessment.profile;
  struct Pool {
    std::size_t node = 0;
    MassFlow water{};
    std::size_t wettest = 0;   ///< piece
    MassFlow most{};
  };
  std::vector<Pool> pools;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (!(rows[i].condensing > MassFlow{})) continue;
    const std::size_t node = slopes.lowest_from(i);
    auto pool = std::find_if(pools.begin(), pools.end(), [node](const Pool& p) { return p.node == node; });
    if (pool == pools.end()) pool = pools.insert(pools.end(), Pool{node, {}, 0, {}});
    pool->water += rows[i].condensing;
  }
  for (const Pool& pool : pools) {
    const auto pieces = slopes.pieces_at(pool.node);
    if (is_drained(of, pieces)) continue;
    // The water comes down at the end nearest to the cap.
    of.add(FindingCode::water_pools, Severity::caution, pieces.back(), pool.water);
  }
}

void find_wrong_falls(FindingCase& of, const Slopes& slopes) {
  const auto& rows = of.assessment.profile;
  std::vector<std::size_t> first_row(of.design.pieces.size(), rows.size());
  for (std::size_t i = rows.size(); i-- > 0;) first_row[rows[i].piece] = i;
  for (const Passage& passage : of.assessment.path.passages) {
    if (!of.sound(passage.piece)) continue;
    const PieceView view = of.view(passage.piece);
    if (!view.has("slope") || of.family(passage.piece) == "inlet") continue;
    const auto first = rows.begin() + static_cast<std::ptrdiff_t>(first_row[passage.piece]);
    if (first == rows.end()) continue;
    auto last = first;
    while (std::next(last) != rows.end() && std::next(last)->piece == passage.piece) ++last;
    const auto index = static_cast<std::size_t>(last - rows.begin());
    const Length length = last->s - first->s + first->length;
    const Length fall = (first == rows.begin() ? of.assessment.path.network.branches.front().from.height
                                               : std::prev(first)->z) - last->z;
    if (fall < level_within || fall > practice().level_slope.value * length) continue;
    if (is_drained(of, slopes.pieces_at(slopes.lowest_from(index)))) continue;
    of.add(FindingCode::wrong_fall, Severity::caution, passage.piece, Ratio(-fall / length)).field = "slope";
  }
}

}  // namespace

void find_water(FindingCase& of) {
  if (of.assessment.profile.empty() || !of.assessment.path.complete) return;
  const Slopes slopes(of);
  find_pools(of, slopes);
  find_wrong_falls(of, slopes);
}

}  // namespace fluewright::advice
