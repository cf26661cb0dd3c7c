// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/clearance.hpp"
#include "engine/advice/finding_case.hpp"
#include "engine/advice/practice.hpp"

#include <algorithm>

namespace fluewright::advice {

namespace {

/// The system's own section: that of the riser behind the fire, else of the fire itself; nothing without a fire.
std::optional<Area> system_area(const FindingCase& of) {
  const auto& stretches = of.stretches();
  const auto fire = std::find_if(stretches.begin(), stretches.end(), [](const Stretch& s) { return s.fire; });
  if (fire == stretches.end()) return std::nullopt;
  for (auto s = fire; s != stretches.end(); ++s) {
    if (s->piece != fire->piece && of.family(s->piece) == "fire") return s->section.area();
  }
  return fire->section.area();
}

/// A place where a narrow section is meant to be: ports of a firebox, a riser's throw inside a drum.
bool may_be_narrow(const FindingCase& of, const Stretch& stretch) {
  const std::string& family = of.family(stretch.piece);
  return family == "fire" || family == "inlet" || stretch.place == Place::jacket;
}

void find_narrowing(FindingCase& of) {
  const auto area = system_area(of);
  if (!area) return;
  const auto& stretches = of.stretches();
  const auto fire = std::find_if(stretches.begin(), stretches.end(), [](const Stretch& s) { return s.fire; });
  std::optional<std::size_t> said;
  bool narrow_before = false;
  for (auto s = fire; s != stretches.end(); ++s) {
    const bool narrow = !may_be_narrow(of, *s) && s->section.area() < practice().area_share.value * *area;
    if (narrow && !narrow_before && said != s->piece) {
      said = s->piece;
      Finding& f = of.add(FindingCode::narrowing, Severity::caution, s->piece, s->section.equal_area_diameter());
      f.lowest = FieldValue(Length(2.0 * bu::sqrt(*area / 3.14159265358979323846)));
    }
    narrow_before = narrow;
  }
}

void find_low_outlet(FindingCase& of) {
  const auto& stretches = of.stretches();
  if (stretches.empty() || !of.assessment.path.complete) return;
  const Stretch& top = stretches.back();
  const Length outlet = top.start_height + top.rise;
  // Where the chimney comes into the open: through a roof if it stands there, else through a wall.
  auto open = stretches.end();
  while (open != stretches.begin() && std::prev(open)->place == Place::outdoors) --open;
  const bool through_roof = open != stretches.end() && open != stretches.begin() && open->stands_upright &&
                            std::prev(open)->rise > 0.5 * std::prev(open)->length;
  if (through_roof && outlet - open->start_height < practice().over_the_roof.value) {
    Finding& f = of.add(FindingCode::low_outlet, Severity::caution, top.piece, Length(outlet - open->start_height));
    f.lowest = FieldValue(practice().over_the_roof.value);
  }
  const Length near = of.design.house.highest_near;
  if (near > Length{} && outlet - near < practice().over_the_near.value) {
    Finding& f = of.add(FindingCode::low_outlet, Severity::caution, top.piece, Length(outlet - near));
    f.field = "house.highest_near";
    f.lowest = FieldValue(practice().over_the_near.value);
  }
}

/// A wall of nothing but one thin sheet.
bool is_thin_sheet(const PieceView& view) {
  const Wall* wall = view.has("wall") ? view.wall("wall") : nullptr;
  return wall != nullptr && wall->layers.size() == 1 && wall->layers.front().thickness <= practice().thin_wall.value;
}

bool lies_in(const PieceView& view, std::string_view place) { return view.has("place") && view.choice("place") == place; }

void find_clearances(FindingCase& of) {
  for (const Passage& passage : of.assessment.path.passages) {
    if (!of.sound(passage.piece)) continue;
    const PieceView view = of.view(passage.piece);
    if (of.family(passage.piece) == "stack" && lies_in(view, "attic") && is_thin_sheet(view)) {
      of.add(FindingCode::hidden_single_wall, Severity::fault, passage.piece, std::string("attic")).field = "place";
    }
    const auto clearance = clearance_of(view);
    if (!clearance || !view.has("to_combustibles")) continue;
    // Around masonry and layered pipe the builder's and the maker's word decides.
    if (clearance->kind != ClearanceKind::drum && clearance->kind != ClearanceKind::single_wall) continue;
    const Length clear = view.length("to_combustibles");
    if (clear >= clearance->least.value) continue;
    Finding& f = of.add(FindingCode::near_combustibles, Severity::fault, passage.piece, clear);
    f.field = "to_combustibles";
    f.lowest = FieldValue(clearance->least.value);
  }
}

}  // namespace

void find_on_drawing(FindingCase& of) {
  find_narrowing(of);
  find_low_outlet(of);
  find_clearances(of);
}

}  // namespace fluewright::advice
