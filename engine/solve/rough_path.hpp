// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/sliced_path.hpp"

namespace fluewright {

/// A branch cut coarsely, for finding where a balance lies before it is worked out on the fine path. Stretches that go on
/// alike (section, wall, surroundings, slope) are one: a run of many short pieces costs no more than one long pipe. Their
/// fittings' losses are met at the joined stretch's end.
class RoughPath {
 public:
  RoughPath(const Branch& branch, Length longest_slice);
  RoughPath(const RoughPath&) = delete;  // the path points at the branch
  RoughPath& operator=(const RoughPath&) = delete;
  ~RoughPath() = default;

  [[nodiscard]] const SlicedPath& path() const { return path_; }

 private:
  Branch branch_;
  SlicedPath path_;
};

}  // namespace fluewright
