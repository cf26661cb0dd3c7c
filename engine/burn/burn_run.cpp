// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/burn_run.hpp"

#include "engine/burn/burn_recorder.hpp"
#include "engine/burn/burning_flue.hpp"
#include "engine/burn/timeline.hpp"

#include <algorithm>
#include <memory>

namespace fluewright {
namespace {

using kernel::BurningFlue;

bool burns(const FlueNetwork& network) {
  return std::any_of(network.branches.begin(), network.branches.end(), [](const Branch& branch) {
    return std::any_of(branch.stretches.begin(), branch.stretches.end(), [](const Stretch& s) { return s.fire; });
  });
}

/// Where the fire's air comes in from the room: what the sticks leave open of the mouth, and the mouth's height.
struct Mouth {
  Area open{};
  Length height{};
};
Mouth mouth_of(const Design& design, const Library& library, const FlueNetwork& network) {
  const Branch& first = network.branches[network.main_path.front()];
  if (first.from.kind != EndKind::room_air || first.stretches.empty()) return {};
  const Stretch& inlet = first.stretches.front();
  const Piece& piece = design.pieces[inlet.piece];
  const PieceView view{design, library, piece, *library.piece_type(piece.type)};
  const Ratio share = view.has("free_share") ? view.ratio("free_share") : Ratio(1.0);
  return {share * inlet.section.area(), inlet.section.hydraulic_diameter()};
}

/// The run's flue as its dampers stand, made anew whenever one is moved.
class FlueMaker {
 public:
  FlueMaker(const Design& design, const Library& library, const BurnPlan& plan, const kernel::Timeline& timeline,
            const WoodFuel& fuel, const BurnOptions& options, const FlueNetwork& network)
      : design_{&design}, library_{&library}, plan_{&plan}, grid_{options.grid}, surround_{surround_of(design)} {
    const BranchEnd& inlet = network.branches[network.main_path.front()].from;
    gas_ = std::make_unique<kernel::GasPair>(
        fuel, inlet.kind == EndKind::outdoor_air ? surround_.outdoor_water : surround_.room_water);
    const auto [coldest, warmest] = timeline.outdoor_range();
    air_ = {coldest, warmest, in_kelvin(surround_.room), in(surround_.absolute, pascal), in(surround_.wind, metre_per_second)};
  }

  /// Nothing where a priming fire finds no tee.
  [[nodiscard]] std::unique_ptr<BurningFlue> make(const kernel::Interval& interval) const {
    Design as_it_stands = *design_;
    for (const auto& [piece, open] : interval.openings) {
      as_it_stands.pieces[piece].fields["blade_angle"] = (1.0 - open) * 90.0 * degree;
    }
    TracedPath traced = trace_path(as_it_stands, *library_);
    std::optional<std::size_t> hole;
    if (!plan_->priming.empty()) {
      const auto tee = kernel::priming_tee(as_it_stands, *library_, traced, plan_->priming.front().tee);
      if (tee) hole = kernel::open_tee(traced.network, *tee);
      if (!hole) return nullptr;
    }
    return std::make_unique<BurningFlue>(std::move(traced.network), hole, *gas_, air_, grid_, surround_,
                                         design_->site.outdoor_humidity);
  }

 private:
  const Design* design_;
  const Library* library_;
  const BurnPlan* plan_;
  BurnGrid grid_;
  Surround surround_;
  std::unique_ptr<kernel::GasPair> gas_;
  kernel::AirRange air_;
};

}  // namespace

BurnRecord run_burn(const Design& design, const Library& library, const BurnPlan& plan, const BurnOptions& options) {
  BurnRecord record;
  const TracedPath traced = trace_path(design, library);
  const WoodSpecies* wood = library.wood(design.fire.wood);
  if (!traced.complete || wood == nullptr || !burns(traced.network)) return record;
  if (!check_plan(plan, design, library).empty()) {
    record.end = BurnEnd::faulty_plan;
    return record;
  }
  const kernel::Timeline timeline{plan, design};
  const WoodFuel fuel{wood->analysis, design.fire.moisture, design.fire.unburned_share};
  const FlueMaker maker{design, library, plan, timeline, fuel, options, traced.network};
  std::unique_ptr<BurningFlue> flue = maker.make(timeline.intervals().front());
  if (flue == nullptr) {
    record.end = BurnEnd::no_open_tee;
    return record;
  }
  kernel::BurnStepper stepper{*flue->equations, options.accuracy};
  kernel::BurnRecorder recorder{record, *flue, design, options, timeline};
  const Mouth mouth = mouth_of(design, library, traced.network);
  recorder.set_mouth(mouth.open, mouth.height);
  stepper.start(flue->equations->at_rest(timeline.intervals().front()), 0.0);
  const double length = in(plan.length, second);
  const double longest = in(options.longest_step, second);
  record.end = BurnEnd::done;
  const kernel::Interval* before = &timeline.intervals().front();
  for (const kernel::Interval& interval : timeline.intervals()) {
    if (interval.openings != before->openings) {
      std::unique_ptr<BurningFlue> moved = maker.make(interval);
      stepper.use(*moved->equations);
      recorder.use(*moved->equations);
      flue = std::move(moved);
    }
    before = &interval;
    stepper.enter(interval);
    stepper.refresh();
    recorder.enter(interval, stepper);
    while (record.end == BurnEnd::done && stepper.moment() < interval.end) {
      if (!stepper.step(interval.end, longest)) {
        record.end = BurnEnd::diverged;
      } else {
        recorder.add(stepper);
        const bool called_off = options.go_on && !options.go_on(stepper.moment() / length);
        if (called_off || recorder.seen_enough()) record.end = BurnEnd::cancelled;
      }
    }
    if (record.end != BurnEnd::done) break;
  }
  recorder.finish(stepper);
  return record;
}

std::pair<std::size_t, Ratio> BurnRecord::row_at(Time at) const {
  if (rows.empty()) return {0, 0.0};
  const auto after = std::upper_bound(rows.begin(), rows.end(), at, [](Time t, const BurnRow& row) { return t < row.at; });
  if (after == rows.begin()) return {0, 0.0};
  if (after == rows.end()) return {rows.size() - 1, 0.0};
  const auto before = after - 1;
  return {static_cast<std::size_t>(before - rows.begin()), (at - before->at) / (after->at - before->at)};
}

}  // namespace fluewright
