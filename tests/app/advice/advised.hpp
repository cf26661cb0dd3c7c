// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Demo designs and what is to be said of them.

#include "app/shared/design_file.hpp"
#include "app/shared/library_reader.hpp"
#include "engine/advice/findings.hpp"
#include "engine/layout/edit.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <string_view>

namespace fluewright::test {

inline const Library& library() { return *shipped_library(); }

inline Design demo(std::string_view id) {
  for (const Demo& demo : shipped_demos()) {
    if (demo.id == id) return std::get<DesignDocument>(read_design_text(demo.text, library())).design;
  }
  ADD_FAILURE() << "no demo " << id;
  return {};
}

inline std::vector<Finding> findings_of(const Design& design) {
  return all_findings(design, library(), assess(design, library()));
}

inline const Finding* find(const std::vector<Finding>& findings, FindingCode code) {
  const auto found = std::find_if(findings.begin(), findings.end(), [code](const Finding& f) { return f.code == code; });
  return found == findings.end() ? nullptr : &*found;
}

inline bool has(const Design& design, FindingCode code) { return find(findings_of(design), code) != nullptr; }

/// The design with one field set, or a test failure.
inline Design with_field(const Design& design, const PieceId& piece, std::string_view key, FieldValue value) {
  const EditResult result = set_field(design, library(), piece, key, std::move(value));
  if (!result.design) {
    ADD_FAILURE() << piece << ' ' << key << " was refused";
    return design;
  }
  return *result.design;
}

/// The design with its feed joined to nothing.
inline Design with_gap(Design design) {
  design.joints.erase(design.joints.begin());
  return design;
}

/// The first piece of a type.
inline PieceId first(const Design& design, std::string_view type) {
  for (const Piece& piece : design.pieces) {
    if (piece.type == type) return piece.id;
  }
  ADD_FAILURE() << "no " << type;
  return {};
}

}  // namespace fluewright::test
