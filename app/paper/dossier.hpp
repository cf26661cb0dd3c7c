// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/paper.hpp"
#include "engine/bill/prism.hpp"
#include "engine/bill/upkeep.hpp"
#include "engine/solve/assessment.hpp"

#include <QString>

namespace fluewright::paper {

/// A corner of the path's axis, where two straight lines of it would meet; its ends too.
struct Corner {
  std::size_t piece = 0;
  Position at;
};

/// A design with all that is known of it: made once, read by every page.
class Dossier {
 public:
  /// Design and library must outlive it.
  Dossier(const Design& design, const Library& library, UnitSystem units);
  Dossier(Design&& design, const Library& library, UnitSystem units) = delete;

  [[nodiscard]] const Design& design() const { return design_; }
  [[nodiscard]] const Library& library() const { return library_; }
  [[nodiscard]] UnitSystem units() const { return units_; }
  [[nodiscard]] const Assessment& answer() const { return answer_; }
  /// All of them, those of practice too, most serious first.
  [[nodiscard]] const std::vector<Finding>& findings() const { return findings_; }
  [[nodiscard]] bool complete() const { return answer_.verdict.has_value(); }

  [[nodiscard]] const PieceGeometry& geometry(std::size_t piece) const { return drawn_[piece].geometry; }
  [[nodiscard]] bool can_be_drawn(std::size_t piece) const { return drawn_[piece].known.type != nullptr; }
  [[nodiscard]] bool sound(std::size_t piece) const { return drawn_[piece].sound; }
  /// Only of a piece that can be drawn.
  [[nodiscard]] PieceView view(std::size_t piece) const;
  [[nodiscard]] Place place(std::size_t piece) const;
  [[nodiscard]] QString name(std::size_t piece) const;
  /// Pieces in building order and the number a piece has in it, from 1.
  [[nodiscard]] const std::vector<std::size_t>& order() const { return order_; }
  [[nodiscard]] std::size_t number(std::size_t piece) const { return number_[piece]; }
  /// The mass around a piece; none for most.
  [[nodiscard]] const std::vector<Prism>& mass(std::size_t piece) const { return masses_[piece]; }
  [[nodiscard]] const Upkeep& upkeep() const { return upkeep_; }
  [[nodiscard]] const std::vector<Corner>& corners() const { return corners_; }
  /// The row of the profile in the middle of a piece, nullptr where gas does not pass it.
  [[nodiscard]] const SliceState* middle_row(std::size_t piece) const;

 private:
  void find_corners();

  const Design& design_;
  const Library& library_;
  UnitSystem units_;
  Assessment answer_;
  std::vector<Finding> findings_;
  std::vector<DrawnPiece> drawn_;
  std::vector<std::size_t> order_;
  std::vector<std::size_t> number_;
  std::vector<std::vector<Prism>> masses_;
  Upkeep upkeep_;
  std::vector<Corner> corners_;
};

[[nodiscard]] QString text(std::string_view utf8);

}  // namespace fluewright::paper
