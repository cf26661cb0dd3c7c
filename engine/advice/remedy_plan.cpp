// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/inlet_share.hpp"
#include "engine/advice/practice.hpp"
#include "engine/advice/remedy.hpp"
#include "engine/advice/reshaping.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace fluewright {

namespace {

using advice::Parts;

/// The share of the bench left where its length is not what keeps it from drawing but the wet walls at its end might be.
constexpr double drier_share = 0.75;
/// Heights that come as one, two or four half-metre lengths.
constexpr std::array added_heights{0.5 * metre, 1.0 * metre, 2.0 * metre};
/// Bores that pipe comes in.
constexpr std::array usual_bores{100.0 * millimetre, 125.0 * millimetre, 150.0 * millimetre, 175.0 * millimetre,
                                 200.0 * millimetre, 225.0 * millimetre, 250.0 * millimetre};
constexpr std::size_t bores_tried = 2;
constexpr double smaller_share = 0.8;
constexpr double larger_share = 1.25;
/// Wood is offered where it is drier by this.
constexpr double drier_by = 0.015;
constexpr std::size_t woods_tried = 2;
/// Shares are cut to a hundredth, burn rates to a twentieth of a kilogram an hour, benches to a grid step.
constexpr double share_step = 0.01;
constexpr double burn_step = 0.05;
constexpr double bench_step = 0.025;

double rounded(double value, double step) { return std::round(value / step) * step; }

class Plan {
 public:
  Plan(const Design& design, const Library& library, const Assessment& a)
      : design_{design}, library_{library}, a_{a}, parts_{advice::parts_of(design, library, a.path)} {}

  std::vector<Remedy> singles() {
    // What is quick to try comes first, so that there is something to see.
    plan_stack();
    plan_fire();
    plan_inlet();
    plan_flue();
    plan_bench();
    return std::move(singles_);
  }

 private:
  void add(ChangeKind kind, PieceId piece, FieldValue amount, std::string text = {}) {
    singles_.push_back({{Change{kind, std::move(piece), std::move(amount), std::move(text)}}});
  }

  void plan_bench() {
    const double now = in(advice::bench_length(design_, library_, parts_), metre);
    if (now > 0.0 && a_.worst_margin < marginal_below) {
      add(ChangeKind::shorten_bench, {}, Length{});
    } else if (now > 0.0 && a_.condensation && a_.condensation->starts_at) {
      add(ChangeKind::shorten_bench, {}, Length(rounded(drier_share * now, bench_step) * metre));
    }
    if (now > 0.0 && a_.path.network.is_series()) add(ChangeKind::bypass, {}, Length{});
    // The bend that costs most is the one to leave out.
    std::vector<std::pair<double, std::size_t>> bends;
    for (const std::size_t bend : parts_.level_bends) {
      double loss = 0.0;
      for (const SliceState& row : a_.profile) {
        if (row.piece == bend) loss += in(row.loss, pascal);
      }
      bends.emplace_back(loss, bend);
    }
    std::stable_sort(bends.begin(), bends.end(), [](const auto& x, const auto& y) { return x.first > y.first; });
    for (const auto& [loss, bend] : bends) {
      const auto without = advice::without_bend(design_, library_, a_.path, bend);
      if (!without || !advice::can_be_built(design_, *without, library_)) continue;
      add(ChangeKind::fewer_bends, design_.pieces[bend].id, Count{static_cast<int>(parts_.level_bends.size()) - 1});
      break;
    }
  }

  void plan_flue() {
    const auto now = advice::flue_bore(design_, library_, parts_);
    if (!now) return;
    std::size_t tried = 0;
    for (const Length& bore : usual_bores) {
      if (tried == bores_tried || bore <= *now + 5.0 * millimetre) continue;
      add(ChangeKind::wider_flue, {}, bore);
      ++tried;
    }
  }

  void plan_stack() {
    const Length height = advice::stack_height(design_, library_, parts_);
    if (height > Length{}) {
      for (const Length& more : added_heights) add(ChangeKind::taller_stack, {}, Length(height + more));
    }
    bool outside = false;
    bool inside = false;
    for (const std::size_t piece : parts_.stack) {
      if (!is_bare(piece)) continue;
      (is_inside(piece) ? inside : outside) = true;
    }
    if (outside) add(ChangeKind::insulate_stack, {}, std::string{}, "outside");
    if (inside) add(ChangeKind::insulate_stack, {}, std::string{}, "all");
    const bool climbs_outdoors = std::any_of(parts_.upright_runs.begin(), parts_.upright_runs.end(),
                                             [this](std::size_t piece) { return place_of(piece) == "outdoors"; });
    if (climbs_outdoors) add(ChangeKind::stack_indoors, {}, std::string{});
    if (!parts_.upright_runs.empty() && a_.standing_draft < practice().marginal.value) {
      add(ChangeKind::priming_tee, design_.pieces[parts_.upright_runs.front()].id, Length{});
    }
  }

  void plan_fire() {
    std::vector<const MoistureState*> drier;
    for (const MoistureState& state : library_.moisture_states) {
      if (state.usual < design_.fire.moisture - drier_by) drier.push_back(&state);
    }
    std::sort(drier.begin(), drier.end(), [](const auto* x, const auto* y) { return x->usual > y->usual; });
    for (std::size_t i = 0; i < std::min(woods_tried, drier.size()); ++i) {
      add(ChangeKind::drier_wood, {}, drier[i]->usual, drier[i]->name);
    }
    const double rate = in(design_.fire.burn_rate, kilogram_per_hour);
    add(ChangeKind::smaller_fire, {}, MassFlow(rounded(smaller_share * rate, burn_step) * kilogram_per_hour));
    add(ChangeKind::larger_fire, {}, MassFlow(rounded(larger_share * rate, burn_step) * kilogram_per_hour));
  }

  void plan_inlet() {
    if (const auto share = wanted_inlet_share(design_, library_, a_)) {
      const PieceId& piece = design_.pieces[share->piece].id;
      const double wanted = rounded(share->wanted, share_step);
      if (wanted < share->now - share_step) add(ChangeKind::choke_inlet, piece, Ratio(wanted));
      if (wanted > share->now + share_step) add(ChangeKind::open_inlet, piece, Ratio(wanted));
    }
    for (const Passage& passage : a_.path.passages) {
      const PieceType* type = library_.piece_type(design_.pieces[passage.piece].type);
      if (type == nullptr || type->field("air_from") == nullptr) continue;
      const PieceView view(design_, library_, design_.pieces[passage.piece], *type);
      if (view.choice("air_from") == "room") add(ChangeKind::outside_air, view.piece().id, std::string{});
    }
  }

  /// Without insulation in its wall.
  bool is_bare(std::size_t piece) const {
    const PieceType& type = *library_.piece_type(design_.pieces[piece].type);
    if (type.field("wall") == nullptr || type.field("bore") == nullptr) return false;
    const Wall* wall = PieceView(design_, library_, design_.pieces[piece], type).wall("wall");
    return wall != nullptr && wall->layers.size() <= 1;
  }
  std::string place_of(std::size_t piece) const {
    const PieceType& type = *library_.piece_type(design_.pieces[piece].type);
    if (type.field("place") == nullptr) return "room";
    return PieceView(design_, library_, design_.pieces[piece], type).choice("place");
  }
  bool is_inside(std::size_t piece) const { return place_of(piece) == "room"; }

  const Design& design_;
  const Library& library_;
  const Assessment& a_;
  Parts parts_;
  std::vector<Remedy> singles_;
};

/// Two changes of one thing undo one another.
bool same_thing(const Change& a, const Change& b) {
  const auto subject = [](ChangeKind kind) {
    switch (kind) {
      case ChangeKind::larger_fire: return ChangeKind::smaller_fire;
      case ChangeKind::open_inlet: return ChangeKind::choke_inlet;
      default: return kind;
    }
  };
  return subject(a.kind) == subject(b.kind);
}

}  // namespace

std::vector<Remedy> single_remedies(const Design& design, const Library& library, const Assessment& assessment) {
  if (!assessment.verdict) return {};
  return Plan(design, library, assessment).singles();
}

std::vector<Remedy> paired_remedies(const std::vector<Remedy>& singles) {
  std::vector<Remedy> pairs;
  for (std::size_t i = 0; i < singles.size(); ++i) {
    for (std::size_t k = i + 1; k < singles.size(); ++k) {
      const Change& a = singles[i].changes.front();
      const Change& b = singles[k].changes.front();
      if (same_thing(a, b)) continue;
      // What changes the shape goes before what is built onto it.
      pairs.push_back(a.kind < b.kind ? Remedy{{a, b}} : Remedy{{b, a}});
    }
  }
  return pairs;
}

}  // namespace fluewright
