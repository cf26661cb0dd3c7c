// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// How one side of a joint takes up a step: straight runs on it stretch or shrink, what lies between the joint and
// those runs moves along, what lies beyond them stays.

#include "engine/layout/edit_support.hpp"

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

namespace fluewright::edit {

/// Where a side begins: the piece at the joint and its port there. The side is what hangs on it but for that joint.
struct SideStart {
  std::size_t piece = 0;
  std::string_view port;
  std::optional<std::size_t> joint;
};

/// A direction in which a side can yield: that of a straight run.
struct Yielding {
  Direction axis;  ///< the run's heading
  Direction way;   ///< step of its end per length: the axis, and the rise of a sloping pipe
};

/// A part of a step that runs along one axis take up.
struct Component {
  Yielding run;
  Length by{};  ///< along the run

  [[nodiscard]] Position step() const { return stepped(run.way, by); }
};

/// How a side takes up a step: by components, each by the nearest run along it, and by moving as a whole.
struct Uptake {
  std::vector<Component> components;
  Position carried;

  [[nodiscard]] Position total() const;
};

/// The straight runs of a side, looked for outwards from the joint and only as far as needed.
class SideRuns {
 public:
  SideRuns(const Design& design, const Library& library, const JointIndex& index, const SideStart& start);

  /// The step by as near and as few runs as will do; nothing if their axes do not span it. Runs that slope overshoot
  /// it by their rise.
  [[nodiscard]] std::optional<Uptake> along_axes(const Position& step);
  /// The same, the rise of sloping runs made good by other runs or else carried.
  [[nodiscard]] std::optional<Uptake> exactly(const Position& step);
  /// Of another side's components those that this side has a run for; what is left of the step is carried.
  [[nodiscard]] Uptake share(const std::vector<Component>& components, const Position& step);
  /// All directions in which the side can yield, the nearest first.
  [[nodiscard]] const std::vector<Yielding>& all();

 private:
  bool find_next();

  const Design* design_;
  const Library* library_;
  const JointIndex* index_;
  std::optional<std::size_t> without_;
  std::vector<std::size_t> queue_;
  std::vector<char> seen_;
  std::size_t next_ = 0;
  std::vector<Yielding> found_;
};

/// The step as a sum of runs along some of the axes, the first that will do; nothing if they do not span it.
[[nodiscard]] std::optional<Uptake> span_step(const std::vector<Yielding>& runs, const Position& step, bool slopes_count);

/// Which pieces move and which runs yield.
class Displacement {
 public:
  Displacement(const Design& design, const Library& library, const JointIndex& index);

  /// Let the side take up the joint's step. False where a piece would have to be in two places: then the side hangs
  /// together with what must stay.
  [[nodiscard]] bool spread(const SideStart& start, const Uptake& uptake, const GridPoint& step);
  /// Move the pieces and stretch the runs; a reason if one cannot yield so much.
  [[nodiscard]] std::optional<Refusal> apply(Design& design) const;
  /// The runs that yield.
  [[nodiscard]] std::vector<std::size_t> yielding() const;

 private:
  struct Move {
    bool known = false;
    bool yields = false;
    bool entered_by_first = false;  ///< a yielding run: its first port is the near one
    GridPoint step;                 ///< of the piece, or of a yielding run's near end
    GridPoint far_step;             ///< of a yielding run's far end
    std::string near_port;
    Length by{};                    ///< growth of a yielding run
  };
  struct Arrival {
    std::size_t piece = 0;
    std::string_view port;
    unsigned open = 0;  ///< bit k: component k not taken up yet
    GridPoint step;
  };

  [[nodiscard]] bool arrive(const Arrival& arrival, const Uptake& uptake, std::optional<std::size_t> without,
                            std::vector<Arrival>& queue);

  const Design* design_;
  const Library* library_;
  const JointIndex* index_;
  std::vector<Move> moves_;
  std::vector<std::size_t> touched_;
};

}  // namespace fluewright::edit
