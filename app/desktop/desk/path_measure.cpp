// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/path_measure.hpp"

#include <algorithm>

namespace fluewright {

namespace {

/// Drawn ends and ports meet within a grid count.
bool meet(const Position& a, const Position& b) { return distance(a, b) <= 2.0 * grid_count; }

PathMeasure::LineShares shares_of(const CentreLine& line, const PieceGeometry& geometry, const Passage& passage) {
  const Port* entry = geometry.port(passage.entry);
  const Port* exit = geometry.port(passage.exit);
  const auto share = [&](const Position& end) -> std::optional<Ratio> {
    if (entry != nullptr && meet(end, entry->at)) return 0.0;
    if (exit != nullptr && meet(end, exit->at)) return 1.0;
    return std::nullopt;
  };
  const auto first = share(line.points.front());
  const auto last = share(line.points.back());
  const bool has_body = std::any_of(geometry.lines.begin(), geometry.lines.end(), [](const CentreLine& l) { return l.upright_body; });
  if (has_body && !first && !last) {
    // In a barrel or bell the gas gathers under the lid and sinks.
    const bool drawn_upwards = line.points.back().z > line.points.front().z;
    return drawn_upwards ? PathMeasure::LineShares{1.0, 0.0} : PathMeasure::LineShares{0.0, 1.0};
  }
  // The closed end of a body is as warm as its mouth; the middle of a tee is half way.
  const Ratio unmet = has_body && !line.upright_body ? first.value_or(last.value_or(0.5)) : Ratio{0.5};
  return {first.value_or(unmet), last.value_or(unmet)};
}

}  // namespace

Length length_of(const CentreLine& line) {
  Length sum{};
  for (std::size_t i = 1; i < line.points.size(); ++i) sum += distance(line.points[i - 1], line.points[i]);
  return sum;
}

Position point_at(const CentreLine& line, Ratio part) {
  Length left = std::clamp<double>(part, 0.0, 1.0) * length_of(line);
  for (std::size_t i = 1; i < line.points.size(); ++i) {
    const Position& a = line.points[i - 1];
    const Position step = line.points[i] - a;
    const Length length = distance(a, line.points[i]);
    if (left <= length && length > 0.0 * metre) {
      const double share = left / length;
      return {a.x + share * step.x, a.y + share * step.y, a.z + share * step.z};
    }
    left -= length;
  }
  return line.points.empty() ? Position{} : line.points.back();
}

PathMeasure::PathMeasure(const Assessment& assessment, const std::vector<PieceGeometry>& geometries)
    : pieces_(geometries.size()), geometries_{geometries} {
  Length s{};
  for (const Stretch* stretch : assessment.path.network.main_stretches()) {
    const Length from = s;
    s += stretch->length;
    if (stretch->piece >= pieces_.size()) continue;
    std::optional<Span>& span = pieces_[stretch->piece].span;
    if (!span) span = Span{from, s};
    span->to = s;
  }
  for (const Passage& passage : assessment.path.passages) take_lines(passage);
  // Pieces beside the main path have colours but no place along it.
  for (const std::vector<Passage>& way : assessment.path.ways) {
    for (const Passage& passage : way) {
      const bool whole = !passage.entry.empty() && !passage.exit.empty();
      if (whole && passage.piece < pieces_.size() && pieces_[passage.piece].lines.empty()) take_lines(passage);
    }
  }
}

void PathMeasure::take_lines(const Passage& passage) {
  if (passage.piece >= pieces_.size()) return;
  const PieceGeometry& geometry = geometries_[passage.piece];
  auto& lines = pieces_[passage.piece].lines;
  lines.clear();
  for (const CentreLine& line : geometry.lines) {
    lines.push_back(line.points.empty() ? LineShares{} : shares_of(line, geometry, passage));
  }
}

std::optional<PathMeasure::Span> PathMeasure::span(std::size_t piece) const {
  return piece < pieces_.size() ? pieces_[piece].span : std::nullopt;
}

PathMeasure::LineShares PathMeasure::shares(std::size_t piece, std::size_t line) const {
  if (piece >= pieces_.size() || line >= pieces_[piece].lines.size()) return {};
  return pieces_[piece].lines[line];
}

std::optional<Length> PathMeasure::s_at(std::size_t piece, std::size_t line, Ratio part) const {
  const auto found = span(piece);
  if (!found) return std::nullopt;
  const LineShares ends = shares(piece, line);
  return found->from + (ends.first + part * (ends.last - ends.first)) * (found->to - found->from);
}

std::optional<PathMeasure::Place> PathMeasure::place_at(Length s) const {
  for (std::size_t piece = 0; piece < pieces_.size(); ++piece) {
    const auto& [span, lines] = pieces_[piece];
    if (!span || s < span->from || s > span->to) continue;
    const Length whole = span->to - span->from;
    const Ratio share = whole > 0.0 * metre ? Ratio{(s - span->from) / whole} : Ratio{0.0};
    for (std::size_t line = 0; line < lines.size(); ++line) {
      const auto [first, last] = lines[line];
      if (first == last || share < std::min(first, last) || share > std::max(first, last)) continue;
      return Place{piece, point_at(geometries_[piece].lines[line], (share - first) / (last - first))};
    }
  }
  return std::nullopt;
}

}  // namespace fluewright
