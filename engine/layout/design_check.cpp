// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/conditions.hpp"
#include "engine/layout/path.hpp"
#include "engine/layout/piece_check.hpp"
#include "engine/layout/value_range.hpp"

#include <iterator>
#include <string>
#include <unordered_set>

namespace fluewright {

namespace {

/// Name of the user's own walls in a finding that belongs to no piece.
constexpr std::string_view walls_field = "walls";
/// And of the user's own fans.
constexpr std::string_view fans_field = "fans";

void check_ids(const Design& design, std::vector<Finding>& findings) {
  std::unordered_set<std::string_view> seen;
  for (const Piece& piece : design.pieces) {
    if (seen.insert(piece.id).second) continue;
    Finding finding;
    finding.code = FindingCode::duplicate_id;
    finding.piece = piece.id;
    finding.text = piece.id;
    findings.push_back(std::move(finding));
  }
}

/// "walls.2": the second layer, counted from the gas.
std::string layer_field(std::size_t index) { return std::string(walls_field) + "." + std::to_string(index + 1); }

bool is_gap(const Library& library, const Wall& wall, std::size_t index) {
  const Material* material = library.material(wall.layers[index].material);
  return material != nullptr && material->is_gap();
}

/// Still air needs something solid on either side to shut it in.
void check_gaps(const Library& library, const Wall& wall, std::vector<Finding>& findings) {
  for (std::size_t i = 0; i < wall.layers.size(); ++i) {
    if (!is_gap(library, wall, i)) continue;
    const bool shut_in = i > 0 && i + 1 < wall.layers.size() && !is_gap(library, wall, i - 1);
    if (shut_in) continue;
    Finding finding;
    finding.code = FindingCode::wall_layers;
    finding.field = layer_field(i);
    finding.text = wall.id;
    findings.push_back(std::move(finding));
  }
}

void check_layer(const Library& library, const Wall& wall, std::size_t index, std::vector<Finding>& findings) {
  const WallLayer& layer = wall.layers[index];
  Finding finding;
  finding.field = layer_field(index);
  if (!library.material(layer.material)) {
    finding.code = FindingCode::unknown_material;
    finding.text = layer.material;
    finding.value = wall.id;
    findings.push_back(std::move(finding));
  }
  constexpr Length thinnest = 0.01 * millimetre;
  constexpr Length thickest = 2.0 * metre;
  if (layer.thickness >= thinnest && layer.thickness <= thickest) return;
  Finding range;
  range.code = FindingCode::out_of_range;
  range.field = layer_field(index);
  range.text = wall.id;
  range.value = layer.thickness;
  range.lowest = thinnest;
  range.highest = thickest;
  findings.push_back(std::move(range));
}

void check_walls(const Design& design, const Library& library, std::vector<Finding>& findings) {
  std::unordered_set<std::string_view> seen;
  for (const Wall& wall : design.walls) {
    if (!seen.insert(wall.id).second) {
      Finding finding;
      finding.code = FindingCode::duplicate_id;
      finding.field = std::string(walls_field);
      finding.text = wall.id;
      findings.push_back(std::move(finding));
    }
    for (std::size_t i = 0; i < wall.layers.size(); ++i) check_layer(library, wall, i, findings);
    check_gaps(library, wall, findings);
  }
}

void check_sheet_value(const Library& library, const FanSheet& sheet, std::string_view key, const FieldValue& value,
                       std::vector<Finding>& findings) {
  const FieldSpec* spec = library.fan_field(key);
  if (spec == nullptr) return;
  std::optional<Finding> finding = check_range(*spec, value);
  if (!finding) return;
  finding->text = sheet.id;
  findings.push_back(std::move(*finding));
}

void check_sheet(const Library& library, const FanSheet& sheet, std::vector<Finding>& findings) {
  for (const FanField& field : fan_fields()) check_sheet_value(library, sheet, field.key, field.get(sheet), findings);
  for (const FanPoint& point : sheet.points) {
    check_sheet_value(library, sheet, "flow", point.flow, findings);
    check_sheet_value(library, sheet, "head", point.head, findings);
  }
  if (makes_a_curve(sheet.points)) return;
  Finding finding;
  finding.code = FindingCode::fan_curve;
  finding.field = std::string(fans_field);
  finding.text = sheet.id;
  findings.push_back(std::move(finding));
}

void check_fans(const Design& design, const Library& library, std::vector<Finding>& findings) {
  std::unordered_set<std::string_view> seen;
  for (const FanSheet& sheet : design.fans) {
    if (!seen.insert(sheet.id).second) {
      Finding finding;
      finding.code = FindingCode::duplicate_id;
      finding.field = std::string(fans_field);
      finding.text = sheet.id;
      findings.push_back(std::move(finding));
    }
    check_sheet(library, sheet, findings);
  }
}

void check_conditions(const Design& design, const Library& library, std::vector<Finding>& findings) {
  for (const Condition& condition : conditions()) {
    const FieldSpec* spec = library.condition(condition.key);
    if (!spec) continue;
    if (std::optional<Finding> finding = check_range(*spec, condition.get(design)))
      findings.push_back(std::move(*finding));
  }
  if (library.wood(design.fire.wood)) return;
  Finding finding;
  finding.code = FindingCode::unknown_wood;
  finding.field = "fire.wood";
  finding.value = design.fire.wood;
  finding.text = design.fire.wood;
  findings.push_back(std::move(finding));
}

}  // namespace

std::vector<Finding> check_values(const Design& design, const Library& library) {
  std::vector<Finding> findings;
  check_ids(design, findings);
  const std::vector<KnownPiece> known = known_pieces(design, library);
  for (std::size_t i = 0; i < design.pieces.size(); ++i) {
    std::vector<Finding> of_piece = check_piece(design, library, design.pieces[i], known[i]);
    findings.insert(findings.end(), std::make_move_iterator(of_piece.begin()), std::make_move_iterator(of_piece.end()));
  }
  check_walls(design, library, findings);
  check_fans(design, library, findings);
  check_conditions(design, library, findings);
  return findings;
}

std::vector<PieceGeometry> geometries(const Design& design, const Library& library) {
  std::vector<PieceGeometry> all;
  all.reserve(design.pieces.size());
  for (DrawnPiece& piece : drawn_pieces(design, library)) all.push_back(std::move(piece.geometry));
  return all;
}

}  // namespace fluewright
