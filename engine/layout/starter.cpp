// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/starter.hpp"

#include "engine/layout/edit_run.hpp"
#include "engine/layout/edit_support.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace fluewright {

namespace {

/// Builds on one open end; the first refusal stands and everything after it is passed over.
class Building {
 public:
  explicit Building(const Library& library) : library_{&library} {}

  void begin(const std::string& type, const GridPoint& at, const Heading& heading) {
    take(place_piece({}, *library_, type, at, heading));
  }
  void put(const std::string& type, Turn turn = Turn::left) {
    if (good()) take(attach_piece(*result_.design, *library_, end_, type, turn));
  }
  /// Of the piece put last.
  void set(std::string_view key, const FieldValue& value) {
    if (!good()) return;
    const PieceType* type = library_->piece_type(result_.design->piece(last_)->type);
    if (type == nullptr || type->field(key) == nullptr) return;
    take(set_field(*result_.design, *library_, last_, key, value));
  }
  void draw(const Heading& heading, Length length, const std::string& run, const std::string& bend) {
    if (good()) take(grow(*result_.design, *library_, end_, heading, length, run, bend));
  }
  void wind(const Serpentine& serpentine, const std::string& run, const std::string& bend) {
    if (good()) take(grow_serpentine(*result_.design, *library_, end_, serpentine, run, bend));
  }
  void go_on_from(PortRef end) { end_ = std::move(end); }
  [[nodiscard]] const PieceId& last() const { return last_; }

  [[nodiscard]] bool good() const { return result_.design.has_value(); }
  [[nodiscard]] Design& design() { return *result_.design; }
  [[nodiscard]] Port end() const {
    for (OpenEnd& open : free_ports(*result_.design, *library_)) {
      if (open.ref == end_) return std::move(open.port);
    }
    return {};
  }
  [[nodiscard]] EditResult finish() && { return std::move(result_); }

 private:
  void take(EditResult&& result) {
    result_ = std::move(result);
    if (!good()) return;
    last_ = result_.touched;
    const Piece& piece = *result_.design->piece(last_);
    const auto geometry = edit::geometry_of(*result_.design, *library_, piece);
    // The end that the gas leaves by, which of a plain piece is the last.
    for (const Port& port : geometry->ports) {
      const PortRef ref{last_, port.name};
      if (port.kind == PortKind::joint && &port != &geometry->ports.front() && !result_.design->joined_to(ref)) {
        end_ = ref;
        break;
      }
    }
  }

  const Library* library_;
  EditResult result_{std::nullopt, Refusal::unknown_type, {}};
  PieceId last_;
  PortRef end_;
};

bool in_range(const StarterAnswers& answers) {
  const auto within = [](Length value, Length low, Length high) { return value >= low && value <= high; };
  return within(answers.bore, 99.9 * millimetre, 250.1 * millimetre) && within(answers.bench, 1.0 * metre, 15.0 * metre) &&
         within(answers.top, 3.5 * metre, 12.0 * metre);
}

Length rounded(Length length, Length step) { return std::round(static_cast<double>(length / step)) * step; }

constexpr Length tidy_step = 5.0 * millimetre;

void build_fire(Building& building, const StarterAnswers& answers, const StarterTypes& types) {
  const Length bore = answers.bore;
  // A square duct with the riser's area.
  const Length side = rounded(std::sqrt(std::numbers::pi / 4.0) * bore, 1.0 * millimetre);
  const Length riser = std::max(900.0 * millimetre, rounded(6.5 * bore, 50.0 * millimetre));
  const Length foot = 150.0 * millimetre;
  building.begin(types.feed, grid_point_near({0.0 * metre, 0.0 * metre, foot + rounded(2.0 * bore, tidy_step)}), heading_down());
  building.set("width", side);
  building.set("height", side);
  building.set("length", rounded(2.0 * bore, tidy_step));
  building.put(types.tunnel, Turn::up);
  building.set("length", rounded(4.0 * bore, tidy_step));
  building.put(types.riser);
  building.set("bore", bore);
  building.set("length", riser);
  building.put(types.barrel, Turn::down);
  const Length gap = rounded(0.33 * bore, tidy_step);
  building.set("gap", gap);
  building.set("riser_outer", bore + 100.0 * millimetre);
  building.set("height", riser + gap);
  building.set("out_bore", bore);
  building.set("out_height", rounded(0.65 * bore, tidy_step));
  building.put(types.manifold);
  building.set("length", rounded(2.0 * bore, tidy_step));
  building.set("out_bore", bore);
  building.set("width", std::max(250.0 * millimetre, rounded(1.5 * bore, tidy_step)));
  building.set("height", std::max(250.0 * millimetre, rounded(1.5 * bore, tidy_step)));
}

void build_bench(Building& building, const StarterAnswers& answers, const StarterTypes& types) {
  Serpentine winding;
  // Two bores and a hand between the axes: the bends meet and there is mass between the passes.
  winding.spacing = rounded(2.0 * answers.bore + 100.0 * millimetre, tidy_step);
  switch (answers.shape) {
    case BenchShape::straight: winding.passes = 1; break;
    case BenchShape::l_shape: winding.passes = 1; break;
    case BenchShape::u_shape: winding.passes = 2; break;
    case BenchShape::serpentine: winding.passes = 3; break;
  }
  const double share = answers.shape == BenchShape::l_shape ? 0.5 : 1.0 / winding.passes;
  winding.length = rounded(share * answers.bench, 25.0 * millimetre);
  building.wind(winding, types.run, types.bend);
  if (answers.shape == BenchShape::l_shape) {
    building.draw(heading_north, winding.length + answers.bore, types.run, types.bend);
  }
}

void rise_to(Building& building, const std::string& type, Length height) {
  if (!building.good()) return;
  const Length from = building.end().at.z;
  if (height - from < 50.0 * millimetre) return;
  building.put(type);
  building.set("length", height - from);
}

void build_stack(Building& building, const StarterAnswers& answers, const StarterTypes& types) {
  const bool outside = answers.stack == StackPlace::outside;
  if (outside) {
    // A bench that comes back to the fire leaves the room sideways.
    if (answers.shape == BenchShape::u_shape) building.draw(heading_north, 600.0 * millimetre + answers.bore, types.run, types.bend);
    building.put(types.thimble);
    building.set("length", 350.0 * millimetre);
  }
  building.put(types.tee, Turn::up);
  building.set("branch_bore", answers.bore);
  if (outside) building.set("place", std::string{"outdoors"});
  const PieceId tee = building.last();
  building.go_on_from({tee, "out"});
  building.put(types.tee_cap);
  building.go_on_from({tee, "branch"});
  const Length above_roof = 1.0 * metre;
  const Length through_roof = 600.0 * millimetre;
  const Length roof = answers.top - above_roof - through_roof;
  if (outside) {
    rise_to(building, types.stack, answers.top);
    building.set("place", std::string{"outdoors"});
  } else {
    // Bare pipe gives the room its heat as far as one can reach; insulated from there on.
    rise_to(building, types.pipe, std::min(1.8 * metre, roof));
    rise_to(building, types.stack, roof);
    rise_to(building, types.roof, roof + through_roof);
    rise_to(building, types.stack, answers.top);
    building.set("place", std::string{"outdoors"});
  }
  building.put(types.cap);
  if (!building.good()) return;
  Room& room = building.design().room;
  room.house_height = outside ? std::min(room.house_height, answers.top) : roof + 0.5 * through_roof;
  room.neutral_plane = 0.5 * room.house_height;
}

MassFlow usual_burn_rate(const Library& library, Length bore, MassFlow otherwise) {
  const auto nearest = std::min_element(
      library.burn_rates.begin(), library.burn_rates.end(),
      [bore](const UsualBurnRate& a, const UsualBurnRate& b) { return bu::abs(a.bore - bore) < bu::abs(b.bore - bore); });
  return nearest == library.burn_rates.end() ? otherwise : nearest->usual;
}

}  // namespace

EditResult starter_path(const Library& library, const StarterAnswers& answers, const StarterTypes& types) {
  if (!in_range(answers)) return edit::refused(Refusal::out_of_range);
  Building building{library};
  build_fire(building, answers, types);
  build_bench(building, answers, types);
  build_stack(building, answers, types);
  if (building.good()) {
    Fire& fire = building.design().fire;
    fire.burn_rate = usual_burn_rate(library, answers.bore, fire.burn_rate);
  }
  return std::move(building).finish();
}

}  // namespace fluewright
