// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/edit_stretch.hpp"

#include <cmath>

namespace fluewright::edit {

namespace {

// A bench has two or three directions; a dozen is a drawing gone wild, and more would make the search slow.
constexpr std::size_t most_directions = 12;
// Runs closer to parallel than this do not make a usable pair: small steps would stretch them out of all proportion.
constexpr double least_independence = 0.1;
constexpr Length exact_within = 0.01 * millimetre;

bool same_line(const Direction& a, const Direction& b) {
  return std::abs(static_cast<double>(cosine_between(a, b))) > 1.0 - 1e-7;
}

bool is_zero(const Position& step) { return distance({}, step) < exact_within; }

Direction cross(const Direction& a, const Direction& b) {
  return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}

double size(const Direction& a) { return std::sqrt(static_cast<double>(cosine_between(a, a))); }

const Direction& direction(const Yielding& run, bool slopes_count) { return slopes_count ? run.way : run.axis; }

std::optional<Uptake> checked(std::vector<Component> components, const Position& step, bool slopes_count) {
  Position reached{};
  for (const Component& component : components) {
    reached = reached + stepped(direction(component.run, slopes_count), component.by);
  }
  if (!is_zero(step - reached)) {
    return std::nullopt;
  }
  return Uptake{std::move(components), {}};
}

std::optional<Uptake> by_one(const Yielding& a, const Position& step, bool slopes_count) {
  const Direction& u = direction(a, slopes_count);
  return checked({{a, along(step, u) / cosine_between(u, u)}}, step, slopes_count);
}

std::optional<Uptake> by_two(const Yielding& a, const Yielding& b, const Position& step, bool slopes_count) {
  const Direction& u = direction(a, slopes_count);
  const Direction& v = direction(b, slopes_count);
  const Direction normal = cross(u, v);
  if (size(normal) < least_independence) {
    return std::nullopt;
  }
  const Ratio square = cosine_between(normal, normal);
  return checked({{a, along(step, cross(v, normal)) / square}, {b, along(step, cross(normal, u)) / square}}, step,
                 slopes_count);
}

std::optional<Uptake> by_three(const Yielding& a, const Yielding& b, const Yielding& c, const Position& step,
                               bool slopes_count) {
  const Direction& u = direction(a, slopes_count);
  const Direction& v = direction(b, slopes_count);
  const Direction& w = direction(c, slopes_count);
  const Ratio volume = cosine_between(cross(u, v), w);
  if (std::abs(static_cast<double>(volume)) < least_independence) {
    return std::nullopt;
  }
  return checked({{a, along(step, cross(v, w)) / volume},
                  {b, along(step, cross(w, u)) / volume},
                  {c, along(step, cross(u, v)) / volume}},
                 step, slopes_count);
}

/// As span_step(), with the farthest of the runs among those used: the nearer ones alone were tried before.
std::optional<Uptake> span_with_last(const std::vector<Yielding>& runs, const Position& step, bool slopes_count) {
  const Yielding& last = runs.back();
  if (auto uptake = by_one(last, step, slopes_count)) {
    return uptake;
  }
  for (std::size_t i = 0; i + 1 < runs.size(); ++i) {
    if (auto uptake = by_two(runs[i], last, step, slopes_count)) {
      return uptake;
    }
  }
  for (std::size_t i = 0; i + 1 < runs.size(); ++i) {
    for (std::size_t j = i + 1; j + 1 < runs.size(); ++j) {
      if (auto uptake = by_three(runs[i], runs[j], last, step, slopes_count)) {
        return uptake;
      }
    }
  }
  return std::nullopt;
}

}  // namespace

Position Uptake::total() const {
  Position sum = carried;
  for (const Component& component : components) {
    sum = sum + component.step();
  }
  return sum;
}

std::optional<Uptake> span_step(const std::vector<Yielding>& runs, const Position& step, bool slopes_count) {
  std::vector<Yielding> nearest;
  for (const Yielding& run : runs) {
    nearest.push_back(run);
    if (auto uptake = span_with_last(nearest, step, slopes_count)) {
      return uptake;
    }
  }
  return std::nullopt;
}

SideRuns::SideRuns(const Design& design, const Library& library, const JointIndex& index, const SideStart& start)
    : design_{&design}, library_{&library}, index_{&index}, without_{start.joint}, queue_{start.piece},
      seen_(design.pieces.size(), 0) {
  seen_[start.piece] = 1;
}

bool SideRuns::find_next() {
  while (next_ < queue_.size() && found_.size() < most_directions) {
    const std::size_t piece = queue_[next_++];
    for (const Link& link : index_->links(piece)) {
      if (seen_[link.other] == 0 && link.joint != without_) {
        seen_[link.other] = 1;
        queue_.push_back(link.other);
      }
    }
    const std::optional<StraightRun> run = straight_run(*design_, *library_, design_->pieces[piece]);
    if (!run) {
      continue;
    }
    const Direction axis = direction_of(run->last.outward);
    bool is_new = true;
    for (const Yielding& known : found_) {
      is_new = is_new && !same_line(known.axis, axis);
    }
    if (is_new) {
      found_.push_back({axis, run->way});
      return true;
    }
  }
  return false;
}

const std::vector<Yielding>& SideRuns::all() {
  while (find_next()) {
  }
  return found_;
}

std::optional<Uptake> SideRuns::along_axes(const Position& step) {
  if (auto uptake = span_step(found_, step, false)) {
    return uptake;
  }
  while (find_next()) {
    if (auto uptake = span_with_last(found_, step, false)) {
      return uptake;
    }
  }
  return std::nullopt;
}

std::optional<Uptake> SideRuns::exactly(const Position& step) {
  if (auto uptake = span_step(found_, step, true)) {
    return uptake;
  }
  while (find_next()) {
    if (auto uptake = span_with_last(found_, step, true)) {
      return uptake;
    }
  }
  std::optional<Uptake> uptake = along_axes(step);
  if (uptake) {
    uptake->carried = step - uptake->total();
  }
  return uptake;
}

Uptake SideRuns::share(const std::vector<Component>& components, const Position& step) {
  Uptake uptake;
  for (const Component& component : components) {
    for (const Yielding& run : all()) {
      if (same_line(run.axis, component.run.axis)) {
        const bool same_sense = cosine_between(run.axis, component.run.axis) > 0.0;
        uptake.components.push_back({run, same_sense ? component.by : -component.by});
      }
    }
  }
  uptake.carried = step - uptake.total();
  return uptake;
}

Displacement::Displacement(const Design& design, const Library& library, const JointIndex& index)
    : design_{&design}, library_{&library}, index_{&index}, moves_(design.pieces.size()) {}

bool Displacement::spread(const SideStart& start, const Uptake& uptake, const GridPoint& step) {
  const unsigned all_open = (1u << uptake.components.size()) - 1u;
  std::vector<Arrival> queue{{start.piece, start.port, all_open, step}};
  for (std::size_t next = 0; next < queue.size(); ++next) {
    const Arrival arrival = queue[next];
    if (!arrive(arrival, uptake, start.joint, queue)) {
      return false;
    }
  }
  return true;
}

bool Displacement::arrive(const Arrival& arrival, const Uptake& uptake, std::optional<std::size_t> without,
                          std::vector<Arrival>& queue) {
  Move& move = moves_[arrival.piece];
  if (move.known) {
    return (move.yields && arrival.port != move.near_port ? move.far_step : move.step) == arrival.step;
  }
  move.known = true;
  move.step = arrival.step;
  move.near_port = arrival.port;
  touched_.push_back(arrival.piece);
  if (arrival.step == GridPoint{} && arrival.open == 0) {
    return true;  // beyond the runs that yield nothing moves
  }
  unsigned open_beyond = arrival.open;
  const std::optional<StraightRun> run = straight_run(*design_, *library_, design_->pieces[arrival.piece]);
  for (std::size_t k = 0; run && k < uptake.components.size(); ++k) {
    const Component& component = uptake.components[k];
    const Direction axis = direction_of(run->last.outward);
    if ((arrival.open & (1u << k)) == 0 || !same_line(axis, component.run.axis)) {
      continue;
    }
    open_beyond = arrival.open & ~(1u << k);
    const bool same_sense = cosine_between(axis, component.run.axis) > 0.0;
    move.yields = true;
    move.entered_by_first = arrival.port == run->first.name;
    // The near end moves by the component, the far end does not: pushed at its first port a run gets shorter.
    move.by = move.entered_by_first == same_sense ? -component.by : component.by;
  }
  Position beyond = uptake.carried;
  for (std::size_t k = 0; k < uptake.components.size(); ++k) {
    if ((open_beyond & (1u << k)) != 0) {
      beyond = beyond + uptake.components[k].step();
    }
  }
  const std::optional<GridPoint> far_step = grid_point_at(beyond);
  if (!far_step) {
    return false;
  }
  move.far_step = move.yields ? *far_step : move.step;
  for (const Link& link : index_->links(arrival.piece)) {
    if (link.joint == without) {
      continue;
    }
    const bool far = move.yields && link.port != arrival.port;
    queue.push_back({link.other, link.other_port, far ? open_beyond : arrival.open, far ? move.far_step : move.step});
  }
  return true;
}

std::optional<Refusal> Displacement::apply(Design& design) const {
  for (const std::size_t i : touched_) {
    const Move& move = moves_[i];
    Piece& piece = design.pieces[i];
    const std::optional<StraightRun> run =
        move.yields ? straight_run(*design_, *library_, piece) : std::optional<StraightRun>{};
    const bool first_is_far = move.yields && !move.entered_by_first;
    const std::optional<GridPoint> at = sum(piece.at, first_is_far ? move.far_step : move.step);
    if (!at) {
      return Refusal::out_of_range;
    }
    piece.at = *at;
    if (run) {
      const Length length = tidy(run->length + move.by);
      if (const std::optional<Refusal> why = check_run_length(*run->type, length)) {
        return why;
      }
      piece.fields.insert_or_assign("length", length);
    }
  }
  return std::nullopt;
}

std::vector<std::size_t> Displacement::yielding() const {
  std::vector<std::size_t> runs;
  for (const std::size_t piece : touched_) {
    if (moves_[piece].yields) {
      runs.push_back(piece);
    }
  }
  return runs;
}

}  // namespace fluewright::edit
