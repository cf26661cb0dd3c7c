// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/bill/parts_list.hpp"

#include "engine/layout/piece_check.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

/// Walls of these hold no pipe: what counts is whether a saw goes through.
constexpr Conductivity metal_conducts = 5.0 * watt_per_metre_kelvin;

const Wall* wall_of(const PieceView& piece) { return piece.has("wall") ? piece.wall("wall") : nullptr; }

PartLine line_of(const PieceView& view, const PieceGeometry& geometry) {
  PartLine line;
  line.type = view.type().id;
  if (!geometry.ports.empty()) line.section = geometry.ports.front().section;
  if (geometry.ports.size() > 1 && !(geometry.ports[1].section == line.section)) {
    line.far_section = geometry.ports[1].section;
  }
  if (view.has("length")) line.length = view.length("length");
  for (const CentreLine& axis : geometry.lines) {
    if (!axis.upright_body || axis.points.size() < 2) continue;
    line.body_width = axis.width;
    line.body_height = distance(axis.points.front(), axis.points.back());
  }
  if (const Wall* wall = wall_of(view)) line.wall = wall->id;
  return line;
}

bool near(const std::optional<Length>& a, const std::optional<Length>& b) {
  if (!a || !b) return a.has_value() == b.has_value();
  return bu::abs(*a - *b) < 0.5 * grid_count;
}

bool alike(const PartLine& a, const PartLine& b) {
  return a.type == b.type && a.section == b.section && a.far_section == b.far_section && near(a.length, b.length) &&
         near(a.body_width, b.body_width) && near(a.body_height, b.body_height) && a.wall == b.wall;
}

bool is_round_run(const DrawnPiece& piece, const PieceView& view) {
  return piece.known.shape->id() == "run" && view.has("bore") && !piece.geometry.ports.empty();
}

/// Metal on the gas's side.
bool is_metal_pipe(const Wall& wall, const Library& library) {
  const Material* material = library.material(wall.layers.front().material);
  return material != nullptr && material->conductivity(celsius(20.0)) > metal_conducts;
}

bool is_single_skin(const Wall& wall) {
  return wall.layers.size() == 1 && wall.layers.front().thickness <= thickest_sawn_skin;
}

/// The pipes a run is made of.
std::vector<Cut> cuts_of(std::size_t piece, Length drawn, const StockPipe& stock) {
  const Length most = stock.length - stock.overlap;  // what one stock length covers
  const auto whole = static_cast<std::size_t>(std::floor(in(drawn, most) + 1e-9));
  std::vector<Length> covers(whole, most);
  const Length rest = drawn - static_cast<double>(whole) * most;
  if (rest > 0.5 * grid_count) covers.push_back(rest);
  if (covers.size() > 1 && covers.back() < shortest_rest) {
    const Length shared = 0.5 * (covers[covers.size() - 2] + covers.back());
    covers[covers.size() - 2] = covers.back() = shared;
  }
  std::vector<Cut> cuts;
  for (std::size_t i = 0; i < covers.size(); ++i) {
    cuts.push_back({piece, i + 1, covers.size(), covers[i], covers[i] + stock.overlap});
  }
  return cuts;
}

struct Wanted {
  Length bore{};
  std::string wall;
  std::vector<Cut> cuts;
};

CutGroup sawn(const Wanted& wanted, const StockPipe& stock) {
  std::vector<Length> lengths;
  for (const Cut& cut : wanted.cuts) lengths.push_back(cut.sawn);
  const std::optional<BarPacking> packing = pack_bars(lengths, stock.length, stock.kerf);
  CutGroup group{wanted.bore, wanted.wall, {}, 0, false, {}, {}};
  if (!packing) return group;
  group.at_least = packing->at_least;
  group.proven = packing->proven;
  for (const auto& bar : packing->bars) {
    StockLength length;
    Length used{};
    for (const std::size_t i : bar) {
      length.cuts.push_back(wanted.cuts[i]);
      used += wanted.cuts[i].sawn;
    }
    // The last pipe is sawn off too, unless it ends where the stock does.
    const Length uncut = std::max(Length{}, stock.length - used);
    const Length dust = std::min(uncut, static_cast<double>(bar.size()) * stock.kerf);
    length.left = uncut - dust;
    group.offcuts += length.left;
    group.dust += dust;
    group.lengths.push_back(std::move(length));
  }
  return group;
}

}  // namespace

std::vector<std::size_t> building_order(const Design& design, const TracedPath& path) {
  std::vector<std::size_t> order;
  std::vector<bool> taken(design.pieces.size(), false);
  const auto take = [&](std::size_t piece) {
    if (piece >= taken.size() || taken[piece]) return;
    taken[piece] = true;
    order.push_back(piece);
  };
  for (const Passage& passage : path.passages) take(passage.piece);
  for (std::size_t i = 0; i < design.pieces.size(); ++i) take(i);
  return order;
}

std::vector<PartLine> parts_list(const Design& design, const Library& library) {
  const std::vector<DrawnPiece> drawn = drawn_pieces(design, library);
  std::vector<PartLine> lines;
  for (const std::size_t i : building_order(design, trace_path(design, library))) {
    if (drawn[i].known.type == nullptr || !drawn[i].sound) continue;
    PartLine line = line_of({design, library, design.pieces[i], *drawn[i].known.type}, drawn[i].geometry);
    const auto same =
        std::find_if(lines.begin(), lines.end(), [&](const PartLine& known) { return alike(known, line); });
    (same != lines.end() ? *same : lines.emplace_back(std::move(line))).pieces.push_back(i);
  }
  return lines;
}

std::optional<CutList> cut_list(const Design& design, const Library& library, const StockPipe& stock) {
  const bool sound =
      stock.overlap >= Length{} && stock.kerf >= Length{} && stock.length > stock.overlap + shortest_rest;
  if (!sound) return std::nullopt;
  const std::vector<DrawnPiece> drawn = drawn_pieces(design, library);
  std::vector<Wanted> wanted;
  CutList list;
  for (const std::size_t i : building_order(design, trace_path(design, library))) {
    if (!drawn[i].sound) continue;
    const PieceView view{design, library, design.pieces[i], *drawn[i].known.type};
    const Wall* wall = wall_of(view);
    if (!is_round_run(drawn[i], view) || wall == nullptr || wall->layers.empty()) continue;
    if (!is_metal_pipe(*wall, library)) continue;
    if (!is_single_skin(*wall)) {
      list.whole.push_back(i);
      continue;
    }
    const Length bore = view.length("bore");
    const auto same = std::find_if(wanted.begin(), wanted.end(), [&](const Wanted& w) {
      return w.wall == wall->id && bu::abs(w.bore - bore) < 0.5 * grid_count;
    });
    Wanted& group = same != wanted.end() ? *same : wanted.emplace_back(Wanted{bore, wall->id, {}});
    const PieceGeometry& g = drawn[i].geometry;
    for (Cut& cut : cuts_of(i, distance(g.ports[0].at, g.ports[1].at), stock)) group.cuts.push_back(cut);
  }
  for (const Wanted& group : wanted) list.groups.push_back(sawn(group, stock));
  return list;
}

}  // namespace fluewright
