// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/burn/burn_record.hpp"

#include <cstddef>
#include <memory>
#include <vector>

namespace fluewright {

/// A moment of a kept burn: what is played over the drawing. Reading it costs no engine work; between two kept rows
/// values run straight from one to the next.
class Moment {
 public:
  /// The burn has at least one row.
  Moment(std::shared_ptr<const BurnRecord> burn, Time at);

  [[nodiscard]] const BurnRecord& burn() const { return *burn_; }
  [[nodiscard]] Time at() const { return at_; }
  /// The kept row at or before it.
  [[nodiscard]] const BurnRow& row() const { return *row_; }

  template <class Quantity>
  [[nodiscard]] Quantity value(Quantity BurnRow::* what) const {
    return between(row_->*what, next_->*what);
  }
  /// By slice.
  [[nodiscard]] Temperature gas(std::size_t slice) const { return of_slice(&BurnRow::gas, slice); }
  [[nodiscard]] Temperature wall(std::size_t slice) const { return of_slice(&BurnRow::wall, slice); }
  [[nodiscard]] Temperature surface(std::size_t slice) const { return of_slice(&BurnRow::surface, slice); }
  /// Of the gas, along the path; below zero it runs backwards.
  [[nodiscard]] Velocity speed(std::size_t slice) const;
  /// Of a node of the wall, counted as BurnSlice::first_node counts.
  [[nodiscard]] Temperature node(std::size_t node) const { return of_slice(&BurnRow::nodes, node); }
  /// Burnt gas that runs into the room now.
  [[nodiscard]] MassFlow smoke() const;

  friend bool operator==(const Moment& a, const Moment& b) {
    return a.burn_ == b.burn_ && a.at_ == b.at_;
  }

 private:
  template <class Quantity>
  [[nodiscard]] Quantity between(const Quantity& from, const Quantity& to) const {
    return from + part_ * (to - from);
  }
  [[nodiscard]] Temperature of_slice(std::vector<Temperature> BurnRow::* what, std::size_t index) const;

  std::shared_ptr<const BurnRecord> burn_;
  Time at_{};
  const BurnRow* row_ = nullptr;
  const BurnRow* next_ = nullptr;
  double part_ = 0.0;
};

}  // namespace fluewright
