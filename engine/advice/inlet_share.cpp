// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/inlet_share.hpp"

#include "engine/layout/piece_check.hpp"

#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace fluewright {

namespace {

constexpr std::string_view share_key = "free_share";

/// Loss coefficient at the mouth with that share open, going in.
Ratio mouth_loss(const Design& design, const Library& library, const KnownPiece& known, const Passage& passage, Ratio share) {
  Piece trial = design.pieces[passage.piece];
  trial.fields.insert_or_assign(std::string(share_key), share);
  const PieceView view(design, library, trial, *known.type);
  const std::vector<Stretch> stretches = known.shape->passage(view, passage.piece, passage.entry, passage.exit);
  Ratio sum = 0.0;
  for (const LocalLoss& loss : stretches.front().at_start) sum += loss.forward;
  return sum;
}

/// The last piece before the fire that has a free share: a feed rather than the duct before it.
std::optional<Passage> mouth_of(const Design& design, const Library& library, const Assessment& a) {
  std::optional<Passage> found;
  for (const Passage& passage : a.path.passages) {
    const PieceType* type = library.piece_type(design.pieces[passage.piece].type);
    if (type == nullptr || type->family != "inlet") break;
    if (type->field(share_key) != nullptr) found = passage;
  }
  return found;
}

}  // namespace

std::optional<InletShare> wanted_inlet_share(const Design& design, const Library& library, const Assessment& a) {
  const OperatingPoint* running = a.running_point();
  const auto mouth = mouth_of(design, library, a);
  if (running == nullptr || !mouth || !a.profile_is_operating || a.design_flow.empty()) return std::nullopt;
  if (a.fans_off) return std::nullopt;  // the design flow knows the draft with the fans standing still only
  const Piece& piece = design.pieces[mouth->piece];
  const PieceType& type = *library.piece_type(piece.type);
  const KnownPiece known{&type, find_shape(type.shape)};
  const FieldSpec& spec = *type.field(share_key);
  const Ratio now = PieceView(design, library, piece, type).ratio(share_key);

  const DesignFlow& wanted = a.design_flow.back();
  const Pressure left_over = wanted.room_gauge + wanted.buoyancy - wanted.resistance - wanted.cap_gauge;
  const auto row = std::find_if(a.profile.begin(), a.profile.end(),
                                [&](const SliceState& s) { return s.piece == mouth->piece; });
  if (row == a.profile.end()) return std::nullopt;
  // The air through the mouth goes with the burn rate and the excess air.
  const Ratio flow = (design.fire.burn_rate / running->burn_rate) *
                     (design.fire.wanted_excess_air / running->excess_air_ratio);
  const Pressure head = 0.5 * row->density * row->velocity * row->velocity * flow * flow;
  const Ratio zeta = mouth_loss(design, library, known, *mouth, now) + left_over / head;

  const Ratio lowest = std::get<Ratio>(*spec.lowest);
  const Ratio highest = std::get<Ratio>(*spec.highest);
  const auto surplus = [&](double share) {
    return (mouth_loss(design, library, known, *mouth, share) - zeta).value();
  };
  InletShare answer{mouth->piece, now, now, true};
  const double at_lowest = surplus(lowest);
  const double at_highest = surplus(highest);
  if (!(at_lowest > 0.0) || !(at_highest < 0.0)) {
    answer.wanted = at_lowest > 0.0 ? highest : lowest;
    answer.reaches = false;
    return answer;
  }
  std::uintmax_t evaluations = 100;
  const boost::math::tools::eps_tolerance<double> close_enough(40);
  const auto found =
      boost::math::tools::toms748_solve(surplus, double(lowest), double(highest), at_lowest, at_highest, close_enough, evaluations);
  answer.wanted = 0.5 * (found.first + found.second);
  return answer;
}

}  // namespace fluewright
