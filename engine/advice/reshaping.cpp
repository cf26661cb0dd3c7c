// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/reshaping.hpp"

#include "engine/layout/edit.hpp"
#include "engine/layout/value_range.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace fluewright::advice {

namespace {

constexpr Angle steep = 80.0 * degree;
constexpr Angle level = 10.0 * degree;
/// Bores that differ by less are one.
constexpr Length same_bore = 0.5 * millimetre;

const PieceType* type_of(const Design& design, const Library& library, std::size_t piece) {
  return library.piece_type(design.pieces[piece].type);
}

bool is_run(const PieceType& type) { return type.shape == "run"; }

/// Headings with which the gas goes into and out of a piece.
struct Ways {
  Heading in;
  Heading out;
};
Ways ways_of(const PieceGeometry& geometry, const Passage& passage) {
  const Port* in = geometry.port(passage.entry);
  const Port* out = geometry.port(passage.exit);
  if (in == nullptr || out == nullptr) return {};
  return {opposite(in->outward), out->outward};
}

bool goes_up(const Ways& ways) { return ways.in.elevation > steep && ways.out.elevation > steep; }
bool goes_level(const Ways& ways) { return bu::abs(ways.in.elevation) < level && bu::abs(ways.out.elevation) < level; }

std::optional<std::size_t> index_of(const Design& design, const PieceId& id) {
  for (std::size_t i = 0; i < design.pieces.size(); ++i) {
    if (design.pieces[i].id == id) return i;
  }
  return std::nullopt;
}

/// The pieces on the path behind the last exchanger, and what hangs on them to the side.
std::vector<std::size_t> flue_pieces(const Design& design, const Library& library, const TracedPath& path, std::size_t after) {
  std::set<std::size_t> on_path;
  for (const Passage& p : path.passages) on_path.insert(p.piece);
  std::vector<std::size_t> flue;
  for (std::size_t i = after; i < path.passages.size(); ++i) flue.push_back(path.passages[i].piece);
  for (std::size_t next = 0; next < flue.size(); ++next) {
    const PieceId id = design.pieces[flue[next]].id;
    for (const Joint& joint : design.joints) {
      const PieceId* other = joint.a.piece == id ? &joint.b.piece : joint.b.piece == id ? &joint.a.piece : nullptr;
      const auto piece = other != nullptr ? index_of(design, *other) : std::nullopt;
      if (!piece || on_path.count(*piece) != 0 || std::find(flue.begin(), flue.end(), *piece) != flue.end()) continue;
      flue.push_back(*piece);
    }
  }
  flue.erase(std::remove_if(flue.begin(), flue.end(), [&](std::size_t i) { return type_of(design, library, i) == nullptr; }),
             flue.end());
  return flue;
}

void settle_from_inlet(Design& design, const Library& library, const PieceId& inlet) { settle(design, library, inlet); }

}  // namespace

Parts parts_of(const Design& design, const Library& library, const TracedPath& path) {
  Parts parts;
  const std::vector<PieceGeometry> geometry = geometries(design, library);
  std::size_t flue_from = 0;
  for (std::size_t i = 0; i < path.passages.size(); ++i) {
    const Passage& passage = path.passages[i];
    const PieceType* type = type_of(design, library, passage.piece);
    if (type == nullptr) continue;
    const Ways ways = ways_of(geometry[passage.piece], passage);
    if (type->family == "exchange") {
      parts.chamber = passage.piece;
      flue_from = i + 1;
    }
    if (type->family == "bench" && is_run(*type)) parts.bench_runs.push_back(passage.piece);
    if (type->shape == "bend" && goes_level(ways)) parts.level_bends.push_back(passage.piece);
    if (type->family == "stack") parts.stack.push_back(passage.piece);
    if (type->family == "stack" && is_run(*type) && goes_up(ways)) parts.upright_runs.push_back(passage.piece);
  }
  if (flue_from > 0) parts.flue = flue_pieces(design, library, path, flue_from);
  return parts;
}

Length length_of(const Design& design, const Library& library, std::size_t piece, std::string_view key) {
  return PieceView(design, library, design.pieces[piece], *type_of(design, library, piece)).length(key);
}

bool put_field(Design& design, const Library& library, std::size_t piece, std::string_view key, FieldValue value) {
  const PieceType* type = type_of(design, library, piece);
  const FieldSpec* spec = type != nullptr ? type->field(key) : nullptr;
  if (spec == nullptr || check_range(*spec, value)) return false;
  design.pieces[piece].fields.insert_or_assign(std::string(key), std::move(value));
  return true;
}

Length bench_length(const Design& design, const Library& library, const Parts& parts) {
  Length total{};
  for (const std::size_t run : parts.bench_runs) total += length_of(design, library, run, "length");
  return total;
}

std::optional<Design> with_bench_length(const Design& design, const Library& library, const Parts& parts, Length total) {
  const Length now = bench_length(design, library, parts);
  if (!(now > Length{})) return std::nullopt;
  Design changed = design;
  for (const std::size_t run : parts.bench_runs) {
    const Length length = length_of(design, library, run, "length") * (total / now);
    if (!put_field(changed, library, run, "length", length)) return std::nullopt;
  }
  settle_from_inlet(changed, library, design.pieces.front().id);
  return changed;
}

Length stack_height(const Design& design, const Library& library, const Parts& parts) {
  Length total{};
  for (const std::size_t run : parts.upright_runs) total += length_of(design, library, run, "length");
  return total;
}

std::optional<Design> with_stack_height(const Design& design, const Library& library, const Parts& parts, Length total) {
  if (parts.upright_runs.empty()) return std::nullopt;
  Design changed = design;
  Length more = total - stack_height(design, library, parts);
  for (auto run = parts.upright_runs.rbegin(); run != parts.upright_runs.rend(); ++run) {
    const Length now = length_of(design, library, *run, "length");
    const FieldSpec& spec = *type_of(design, library, *run)->field("length");
    const Length least = std::get<Length>(*spec.lowest);
    const Length length = std::max(Length(now + more), least);
    if (!put_field(changed, library, *run, "length", length)) return std::nullopt;
    more -= length - now;
    if (!(more < Length{})) break;
  }
  if (bu::abs(more) > 0.001 * millimetre) return std::nullopt;
  settle_from_inlet(changed, library, design.pieces.front().id);
  return changed;
}

std::optional<Length> flue_bore(const Design& design, const Library& library, const Parts& parts) {
  std::vector<Length> bores;
  for (const std::size_t piece : parts.flue) {
    if (type_of(design, library, piece)->field("bore") != nullptr) bores.push_back(length_of(design, library, piece, "bore"));
  }
  std::optional<Length> most;
  std::ptrdiff_t often = 0;
  for (const Length& bore : bores) {
    const auto count = std::count_if(bores.begin(), bores.end(), [bore](Length b) { return bu::abs(b - bore) < same_bore; });
    if (count > often) {
      often = count;
      most = bore;
    }
  }
  return most;
}

std::optional<Design> with_flue_bore(const Design& design, const Library& library, const Parts& parts, Length bore) {
  const auto now = flue_bore(design, library, parts);
  if (!now || !parts.chamber) return std::nullopt;
  Design changed = design;
  const auto widen = [&](std::size_t piece, std::string_view key) {
    if (type_of(design, library, piece)->field(key) == nullptr) return true;
    if (bu::abs(length_of(design, library, piece, key) - *now) > same_bore) return true;
    return put_field(changed, library, piece, key, bore);
  };
  for (const std::size_t piece : parts.flue) {
    for (const std::string_view key : {"bore", "branch_bore", "out_bore"}) {
      if (!widen(piece, key)) return std::nullopt;
    }
  }
  if (!widen(*parts.chamber, "out_bore")) return std::nullopt;
  settle_from_inlet(changed, library, design.pieces.front().id);
  return changed;
}

bool can_be_built(const Design& before, const Design& after, const Library& library) {
  const TracedPath path = trace_path(after, library);
  if (!path.complete) return false;
  const auto wrong = [&library](const Design& design, const TracedPath& traced) {
    auto found = check_values(design, library);
    found.insert(found.end(), traced.findings.begin(), traced.findings.end());
    found.erase(std::remove_if(found.begin(), found.end(), [](const Finding& f) { return f.severity == Severity::note; }),
                found.end());
    return found;
  };
  const auto now = wrong(after, path);
  if (now.empty()) return true;
  const auto then = wrong(before, trace_path(before, library));
  return std::all_of(now.begin(), now.end(), [&then](const Finding& f) {
    return std::any_of(then.begin(), then.end(), [&f](const Finding& known) {
      return f.code == known.code && f.piece == known.piece && f.field == known.field && f.text == known.text;
    });
  });
}

}  // namespace fluewright::advice
