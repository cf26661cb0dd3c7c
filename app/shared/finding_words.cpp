// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/words.hpp"

#include <fmt/format.h>

namespace fluewright {

namespace {

/// A finding's arguments, ready to be put into a sentence.
class Arguments {
 public:
  Arguments(const Finding& finding, const Design& design, const Library& library, UnitSystem units)
      : finding_{finding}, units_{units} {
    if (!finding.piece.empty()) {
      piece_ = piece_name(design, library, std::string_view(finding.piece));
      if (design.piece(finding.text) != nullptr) other_ = piece_name(design, library, std::string_view(finding.text));
      const Piece* piece = design.piece(finding.piece);
      const PieceType* type = piece != nullptr ? library.piece_type(piece->type) : nullptr;
      if (type != nullptr) spec_ = type->field(finding.field);
    } else {
      spec_ = library.condition(finding.field);
      of_own_fan_ = finding.field == "fans";
      if (spec_ == nullptr && !finding.text.empty()) {
        spec_ = library.fan_field(finding.field);
        of_own_fan_ = of_own_fan_ || spec_ != nullptr;
      }
    }
  }

  [[nodiscard]] const std::string& piece() const { return piece_; }
  /// Where the text names a second piece.
  [[nodiscard]] const std::string& other() const { return other_; }
  [[nodiscard]] std::string label() const { return spec_ != nullptr ? spec_->label : finding_.field; }
  /// "Bench pipe 2, Bore", "Moisture" or, of the design's own build-ups and fans, "Wall “own”", "Fan “own”, Head".
  [[nodiscard]] std::string subject() const {
    if (of_own_fan_) {
      return spec_ != nullptr ? fmt::format("Fan “{}”, {}", finding_.text, label()) : fmt::format("Fan “{}”", finding_.text);
    }
    if (of_own_wall()) return fmt::format("Wall “{}”{}", own_wall(), layer());
    return piece_.empty() ? label() : piece_ + ", " + label();
  }
  [[nodiscard]] std::string value() const { return text(finding_.value); }
  [[nodiscard]] std::string value(Meaning meaning) const {
    const auto* length = std::get_if<Length>(&finding_.value);
    return length != nullptr ? show(*length, units_, meaning).text() : value();
  }

  [[nodiscard]] std::string lowest() const { return finding_.lowest ? text(*finding_.lowest) : std::string{}; }
  [[nodiscard]] std::string highest() const { return finding_.highest ? text(*finding_.highest) : std::string{}; }

  /// "from 50 mm to 500 mm", "at least 150 mm".
  [[nodiscard]] std::string range() const {
    if (finding_.lowest && finding_.highest) {
      return fmt::format("from {} to {}", text(*finding_.lowest), text(*finding_.highest));
    }
    if (finding_.lowest) return fmt::format("at least {}", text(*finding_.lowest));
    if (finding_.highest) return fmt::format("at most {}", text(*finding_.highest));
    if (spec_ == nullptr || spec_->choices.empty()) return "something else";
    std::string words;
    for (const std::string& choice : spec_->choices) words += (words.empty() ? "one of " : ", ") + choice;
    return words;
  }

 private:
  [[nodiscard]] bool of_own_wall() const { return piece_.empty() && finding_.field.starts_with("walls"); }
  /// ", layer 2" for "walls.2".
  [[nodiscard]] std::string layer() const {
    const auto dot = finding_.field.find('.');
    return dot == std::string::npos ? std::string{} : ", layer " + finding_.field.substr(dot + 1);
  }
  /// Which of the design's own walls: the argument, unless that is the material it lacks.
  [[nodiscard]] std::string own_wall() const {
    const auto* id = std::get_if<std::string>(&finding_.value);
    return id != nullptr ? *id : finding_.text;
  }
  [[nodiscard]] std::string text(const FieldValue& value) const {
    constexpr FieldKind kind_of_alternative[] = {FieldKind::length,    FieldKind::angle,    FieldKind::ratio,
                                                 FieldKind::count,     FieldKind::pressure, FieldKind::temperature,
                                                 FieldKind::mass_flow, FieldKind::velocity, FieldKind::volume_flow,
                                                 FieldKind::volume,    FieldKind::density,  FieldKind::power,
                                                 FieldKind::choice};
    const FieldKind kind = spec_ != nullptr ? spec_->kind : kind_of_alternative[value.index()];
    return show(value, units_, kind, finding_.field).text();
  }

  const Finding& finding_;
  UnitSystem units_;
  std::string piece_;
  bool of_own_fan_ = false;
  std::string other_;
  const FieldSpec* spec_ = nullptr;
};

std::string drawing_sentence(const Finding& f, const Arguments& a) {
  switch (f.code) {
    case FindingCode::no_pieces:
      return "Nothing is drawn yet: begin with what lets the air in, a feed or a door.";
    case FindingCode::no_inlet:
      return "Nothing lets air in: the path needs a feed, a door or an outside-air duct.";
    case FindingCode::no_outlet:
      return "The path does not reach the open air: it needs a cap or an open stack head.";
    case FindingCode::several_inlets:
      return fmt::format("{}: this is a second way in for air, and the path has one already.", a.piece());
    case FindingCode::several_outlets:
      return fmt::format("{}: this is a second way out, and the path has one already.", a.piece());
    case FindingCode::no_fire:
      return "Nothing burns: the path needs a burn tunnel or a batch box.";
    case FindingCode::several_fires:
      return fmt::format("{}: this is a second fire, and the path has one already.", a.piece());
    case FindingCode::open_end:
      return fmt::format("{}: its end “{}” is open; join a piece to it.", a.piece(), f.field);
    case FindingCode::gap:
      return fmt::format("{}: its end “{}” and the piece it is joined to do not meet; they are {} apart.", a.piece(),
                         f.field, a.value(Meaning::small_length));
    case FindingCode::loop:
      return fmt::format("{}: the path comes back to it; it has to lead on to the open air.", a.piece());
    case FindingCode::unreached:
      return fmt::format("{}: it is not on the path from the inlet to the open air.", a.piece());
    case FindingCode::unknown_port:
      return fmt::format("{}: it has no end “{}”.", a.piece(), f.field.empty() ? f.text : f.field);
    case FindingCode::port_taken:
      return fmt::format("{}: its end “{}” is in two joints; it can only be in one.", a.piece(), f.field);
    case FindingCode::joined_to_air:
      return fmt::format("{}: its end “{}” is open to the air, so nothing can be joined to it.", a.piece(), f.field);
    case FindingCode::clash:
      return fmt::format("{} and {} are in the same place: they would have to be {} apart.", a.piece(), a.other(), a.value(Meaning::small_length));
    case FindingCode::through_house:
      return fmt::format("{} goes through the {} of the house: put a {} there.", a.piece(), f.field,
                         f.field == "wall" ? "thimble" : "passage");
    case FindingCode::bore_mismatch:
      return fmt::format("{}: its end “{}” and the piece it is joined to differ in size; the step costs draft.",
                         a.piece(), f.field);
    default:
      return {};
  }
}

std::string value_sentence(const Finding& f, const Arguments& a) {
  switch (f.code) {
    case FindingCode::unknown_type:
      return fmt::format("{}: the type “{}” is not in the catalogue.", a.piece(), f.text);
    case FindingCode::unknown_material:
      return fmt::format("{}: there is no material “{}” in the library.", a.subject(), f.text);
    case FindingCode::unknown_wall:
      return fmt::format("{}: there is no wall “{}” in the library or in the design.", a.subject(), f.text);
    case FindingCode::unknown_wood:
      return fmt::format("{}: there is no wood “{}” in the library.", a.subject(), f.text);
    case FindingCode::unknown_fan:
      return fmt::format("{}: there is no fan “{}” in the library.", a.subject(), f.text);
    case FindingCode::wall_layers:
      return fmt::format("{}: still air can only lie between two layers that shut it in.", a.subject());
    case FindingCode::fan_curve:
      return fmt::format(
          "{}: its points make no curve; it needs two at least, flows that rise from 0 and a head above 0.", a.subject());
    case FindingCode::out_of_range:
      return fmt::format("{}: {} is not allowed; it must be {}.", a.subject(), a.value(), a.range());
    case FindingCode::wrong_kind:
      return fmt::format("{}: the value is of the wrong kind; it must be {}.", a.subject(), a.range());
    case FindingCode::duplicate_id:
      if (f.piece.empty()) {
        return fmt::format("{}: the id stands twice; every {} needs one of its own.", a.subject(),
                           f.field == "fans" ? "fan" : "wall");
      }
      return fmt::format("{}: the id “{}” stands twice; every piece needs one of its own.", a.piece(), f.piece);
    default:
      return {};
  }
}

std::string physics_sentence(const Finding& f, const Arguments& a) {
  switch (f.code) {
    case FindingCode::smoke_leak:
      return fmt::format("{}: the flue is up to {} above the room here, so a leaky joint lets smoke into the room.",
                         a.piece(), a.value());
    case FindingCode::wet_wall:
      return fmt::format("{}: its wall is below the dew point from {} in; water forms there and runs down.", a.piece(),
                         a.value(Meaning::run_length));
    case FindingCode::short_of_air:
      return fmt::format("The fire is starved: it settles at {} times the air it needs, and under 1.5 it smokes.",
                         a.value());
    case FindingCode::overdrawn:
      return fmt::format("The fire is being cooled: it settles at {} times the air it needs. Choke the inlet.",
                         a.value());
    case FindingCode::can_run_backwards:
      return fmt::format("On this day it can also run backwards, into the room; before anything burns the draft is {}.",
                         a.value());
    case FindingCode::never_draws_forward:
      return "On this day no flow from the inlet to the cap holds itself.";
    case FindingCode::beyond_validity:
      return fmt::format(
          "{}: {} stands at {}, outside the temperatures at which its conductivity is known ({}); the nearest known "
          "value is used.",
          a.piece(), f.text, a.value(), a.range());
    case FindingCode::relation_left:
      return fmt::format("{}: {} is used at {}; it is published {}.", a.piece(), f.text, a.value(), a.range());
    case FindingCode::left_out:
      return fmt::format(
          "{}: what it does to the draft when it acts, running or opening, is left out of this calculation.",
          a.piece());
    default:
      return {};
  }
}

std::string fan_sentence(const Finding& f, const Arguments& a) {
  switch (f.code) {
    case FindingCode::fan_dependent:
      return fmt::format(
          "The draft depends on a fan: with it off {} to spare at the least, with it on {}. When the power fails while "
          "wood burns, the fire starves and smoke may come into the room.",
          a.value(), f.highest ? a.highest() : "enough");
    case FindingCode::fan_gas_too_hot:
      return fmt::format("{}: the gas that passes it reaches {}; its fan is rated for {}.", a.piece(), a.value(),
                         a.highest());
    case FindingCode::fan_motor_too_hot:
      return fmt::format("{}: its motor reaches {}; it is rated for {}.", a.piece(), a.value(), a.highest());
    case FindingCode::fan_motor_wet:
      return fmt::format("{}: its motor stands in gas with a dew point of {} and only {} around it; water gets into it.",
                         a.piece(), a.value(), a.lowest());
    case FindingCode::fan_curve_rises:
      return fmt::format(
          "{}: the head of “{}” rises with the flow between {} and {}; there it is not steady, and the flow may jump or "
          "hunt. States found forward: {}.",
          a.piece(), f.text, a.lowest(), a.highest(), a.value());
    case FindingCode::fan_beyond_sheet:
      if (const auto* flow = std::get_if<VolumeFlow>(&f.value); flow != nullptr && *flow < VolumeFlow{}) {
        return fmt::format("{}: the gas runs backward through it; what “{}” does then is an estimate.", a.piece(), f.text);
      }
      return fmt::format("{}: {} pass it, more than the {} up to which the sheet of “{}” goes; beyond, it is an estimate.",
                         a.piece(), a.value(), a.highest(), f.text);
    case FindingCode::fan_against_flow:
      return fmt::format("{}: it is drawn the wrong way round and blows against the gas.", a.piece());
    default:
      return {};
  }
}

}  // namespace

std::string sentence(const Finding& finding, const Design& design, const Library& library, UnitSystem units) {
  const Arguments arguments(finding, design, library, units);
  std::string text = drawing_sentence(finding, arguments);
  if (text.empty()) text = value_sentence(finding, arguments);
  if (text.empty()) text = physics_sentence(finding, arguments);
  if (text.empty()) text = fan_sentence(finding, arguments);
  // "in w.c." brings a full stop along.
  if (text.ends_with("..")) text.pop_back();
  return text;
}

}  // namespace fluewright
