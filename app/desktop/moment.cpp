// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/moment.hpp"

#include <algorithm>
#include <utility>

namespace fluewright {

Moment::Moment(std::shared_ptr<const BurnRecord> burn, Time at) : burn_{std::move(burn)}, at_{at} {
  const auto [row, part] = burn_->row_at(at);
  const std::size_t next = std::min(row + 1, burn_->rows.size() - 1);
  row_ = &burn_->rows[row];
  next_ = &burn_->rows[next];
  part_ = part;
}

Temperature Moment::of_slice(std::vector<Temperature> BurnRow::* what, std::size_t index) const {
  const std::vector<Temperature>& from = row_->*what;
  const std::vector<Temperature>& to = next_->*what;
  if (index >= from.size()) return {};
  return index < to.size() ? between(from[index], to[index]) : from[index];
}

Velocity Moment::speed(std::size_t slice) const {
  if (slice >= row_->speeds.size()) return {};
  return slice < next_->speeds.size() ? between(row_->speeds[slice], next_->speeds[slice]) : row_->speeds[slice];
}

MassFlow Moment::smoke() const {
  const Time step = next_->at - row_->at;
  if (!(step > Time{})) return {};
  return (next_->smoke - row_->smoke) / step;
}

}  // namespace fluewright
