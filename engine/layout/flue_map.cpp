// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/flue_map.hpp"

#include <algorithm>
#include <numeric>
#include <tuple>
#include <utility>

namespace fluewright {

namespace {

/// Ways tried at most in looking for the longest. A drawing with a dozen loops in a row has a few thousand.
constexpr int most_tries = 20000;

/// Two ways of lengths this near count as equally long; the first in the order of ports is then the main one.
constexpr Length as_long = 1.0 * millimetre;

std::size_t root_of(std::vector<std::size_t>& parent, std::size_t i) {
  while (parent[i] != i) i = parent[i] = parent[parent[i]];
  return i;
}

}  // namespace

Way turned_round(Way way) {
  std::reverse(way.steps.begin(), way.steps.end());
  for (WayStep& step : way.steps) std::swap(step.entry, step.exit);
  return way;
}

FlueMap::FlueMap(const PortGraph& graph, const Reach& reach)
    : graph_{&graph}, reach_{&reach}, alive_(reach.steps.size()), meeting_(reach.steps.size()) {
  for (const std::size_t piece : reach.order) alive_[piece] = true;
  drop_dead_ends();
  for (const std::size_t piece : reach.order) {
    const Shape* shape = graph.piece(piece).known.shape;
    meeting_[piece] = alive_[piece] && (shape->has_side_opening() || ends_that_lead_on(piece) > 2);
  }
}

bool FlueMap::leads_on(PortAt port) const {
  if (graph_->port(port).kind != PortKind::joint) return true;
  const PortAt there = graph_->joined(port);
  return there.piece != no_piece && alive_[there.piece];
}

std::size_t FlueMap::ends_that_lead_on(std::size_t piece) const {
  std::size_t count = graph_->piece(piece).known.shape->has_side_opening() ? 1U : 0U;
  for (std::size_t p = 0; p < graph_->ports(piece).size(); ++p) count += leads_on({piece, p}) ? 1U : 0U;
  return count;
}

/// What has one end only leads nowhere; without it its neighbour may lead nowhere too.
void FlueMap::drop_dead_ends() {
  std::vector<std::size_t> doubtful = reach_->order;
  while (!doubtful.empty()) {
    const std::size_t piece = doubtful.back();
    doubtful.pop_back();
    if (!alive_[piece] || ends_that_lead_on(piece) > 1) continue;
    alive_[piece] = false;
    for (std::size_t p = 0; p < graph_->ports(piece).size(); ++p) {
      const PortAt there = graph_->joined({piece, p});
      if (there.piece != no_piece && alive_[there.piece]) doubtful.push_back(there.piece);
    }
  }
}

std::size_t FlueMap::other_end(std::size_t piece, std::size_t entry) const {
  if (meeting_[piece]) return the_meeting;
  std::size_t exit = 0;
  while (exit == entry || !leads_on({piece, exit})) ++exit;
  return exit;
}

Way FlueMap::follow(std::size_t piece, std::size_t entry, std::size_t exit) const {
  Way way;
  while (true) {
    way.steps.push_back({piece, entry, exit});
    const std::vector<Port>& ports = graph_->ports(piece);
    const bool leg = entry == the_meeting || exit == the_meeting;
    way.length += leg ? Length(0.5 * distance(ports[0].at, ports[1].at)) : distance(ports[entry].at, ports[exit].at);
    way.holds_fire = way.holds_fire || graph_->piece(piece).known.shape->holds_fire();
    if (exit == the_meeting || ports[exit].kind != PortKind::joint) return way;
    const PortAt next = graph_->joined({piece, exit});
    piece = next.piece;
    entry = next.port;
    exit = other_end(piece, entry);
  }
}

std::vector<Way> FlueMap::main_path() const {
  std::vector<PortAt> inlets;
  for (const PortAt& inlet : graph_->inlets()) {
    if (alive_[inlet.piece]) inlets.push_back(inlet);
  }
  // An order that does not hang on the order of the file.
  const auto place = [this](const PortAt& at) {
    const Port& port = graph_->port(at);
    return std::tuple{port.kind, port.at.z, port.at.x, port.at.y};
  };
  std::sort(inlets.begin(), inlets.end(), [&](const PortAt& a, const PortAt& b) { return place(a) < place(b); });

  struct Search {
    const FlueMap* map;
    std::vector<Way> here;
    std::vector<Way> best;
    Length best_length{};
    int tries = 0;

    void try_way(Way way) {
      if (++tries > most_tries) return;
      const WayStep last = way.steps.back();
      const bool on = way.ends_at_meeting();
      const bool passed = std::any_of(here.begin(), here.end(), [&](const Way& w) {
        return w.ends_at_meeting() && w.steps.back().piece == last.piece;
      });
      if (on && passed) return;
      here.push_back(std::move(way));
      if (on) {
        for (std::size_t p = 0; p < map->graph_->ports(last.piece).size(); ++p) {
          if (p != last.entry && map->leads_on({last.piece, p})) try_way(map->follow(last.piece, the_meeting, p));
        }
      } else {
        keep_if_best(last);
      }
      here.pop_back();
    }
    void keep_if_best(const WayStep& last) {
      const auto& outlets = map->graph_->outlets();
      const bool out = std::any_of(outlets.begin(), outlets.end(), [&](const PortAt& o) {
        return o.piece == last.piece && o.port == last.exit;
      });
      const bool burns = std::any_of(here.begin(), here.end(), [](const Way& w) { return w.holds_fire; });
      Length length{};
      for (const Way& w : here) length += w.length;
      if (!out || !burns || (!best.empty() && length < best_length + as_long)) return;
      best = here;
      best_length = length;
    }
  };

  for (const PortKind kind : {PortKind::room_air, PortKind::outdoor_air}) {
    Search search{this, {}, {}, {}, 0};
    for (const PortAt& inlet : inlets) {
      if (graph_->port(inlet).kind == kind) search.try_way(from_air(inlet));
    }
    if (!search.best.empty()) return search.best;
  }
  return {};
}

Way FlueMap::from_air(PortAt port) const { return follow(port.piece, port.port, other_end(port.piece, port.port)); }

std::vector<Way> FlueMap::side_ways(const std::vector<Way>& main_path) const {
  std::vector<std::size_t> meetings;
  std::vector<PortAt> used;
  const auto note = [&](const Way& way) {
    const WayStep& first = way.steps.front();
    const WayStep& last = way.steps.back();
    if (way.starts_at_meeting()) used.push_back({first.piece, first.exit});
    if (!way.ends_at_meeting()) return;
    used.push_back({last.piece, last.entry});
    if (std::find(meetings.begin(), meetings.end(), last.piece) == meetings.end()) meetings.push_back(last.piece);
  };
  for (const Way& way : main_path) note(way);
  const auto is_used = [&](PortAt at) {
    return std::any_of(used.begin(), used.end(), [&](const PortAt& u) { return u.piece == at.piece && u.port == at.port; });
  };
  std::vector<Way> found;
  for (std::size_t next = 0; next < meetings.size(); ++next) {
    const std::size_t piece = meetings[next];
    for (std::size_t p = 0; p < graph_->ports(piece).size(); ++p) {
      if (is_used({piece, p}) || !leads_on({piece, p})) continue;
      Way way = follow(piece, the_meeting, p);
      note(way);
      found.push_back(way.ends_at_meeting() ? std::move(way) : turned_round(std::move(way)));
    }
  }
  return found;
}

std::vector<std::size_t> FlueMap::rings_that_lead_nowhere(const std::vector<Way>& all) const {
  // The free air is one place, number alive_.size(); every meeting is one.
  struct Line {
    std::size_t a;
    std::size_t b;
  };
  const std::size_t air = alive_.size();
  std::vector<Line> lines;
  for (const Way& way : all) {
    lines.push_back({way.starts_at_meeting() ? way.steps.front().piece : air,
                     way.ends_at_meeting() ? way.steps.back().piece : air});
  }
  const std::size_t ways = lines.size();
  for (const std::size_t piece : reach_->order) {
    if (meeting_[piece] && graph_->piece(piece).known.shape->has_side_opening()) lines.push_back({piece, air});
  }
  std::vector<std::size_t> found;
  std::vector<std::size_t> parent(alive_.size() + 1);
  for (std::size_t without = 0; without < ways; ++without) {
    std::iota(parent.begin(), parent.end(), std::size_t{0});
    for (std::size_t i = 0; i < lines.size(); ++i) {
      if (i != without) parent[root_of(parent, lines[i].a)] = root_of(parent, lines[i].b);
    }
    if (root_of(parent, lines[without].a) == root_of(parent, lines[without].b)) continue;
    found.push_back(root_of(parent, lines[without].a) == root_of(parent, air) ? lines[without].b : lines[without].a);
  }
  return found;
}

}  // namespace fluewright
