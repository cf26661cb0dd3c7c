// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/finding_arguments.hpp"
#include "app/shared/practice_words.hpp"
#include "app/shared/words.hpp"

#include <fmt/format.h>

namespace fluewright {

namespace {

std::string drawing_sentence(const Finding& f, const FindingArguments& a) {
  switch (f.code) {
    case FindingCode::no_pieces:
      return "Nothing is drawn yet: begin with what lets the air in, a feed or a door.";
    case FindingCode::no_inlet:
      return "Nothing lets air in: the path needs a feed, a door or an outside-air duct.";
    case FindingCode::no_outlet:
      return "The path does not reach the open air: it needs a cap or an open stack head.";
    case FindingCode::several_inlets:
      return fmt::format("{}: this is a second way in for air that nothing joins to the path; join it at a tee, or take it away.", a.piece());
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
                         f.field, a.apart());
    case FindingCode::loop:
      return fmt::format("{}: behind it gas could only go round in a ring; it has to lead on to the open air or back to the path.", a.piece());
    case FindingCode::unreached:
      return fmt::format("{}: it is not on the path from the inlet to the open air.", a.piece());
    case FindingCode::unknown_port:
      return fmt::format("{}: it has no end “{}”.", a.piece(), f.field.empty() ? f.text : f.field);
    case FindingCode::port_taken:
      return fmt::format("{}: its end “{}” is in two joints; it can only be in one.", a.piece(), f.field);
    case FindingCode::joined_to_air:
      return fmt::format("{}: its end “{}” is open to the air, so nothing can be joined to it.", a.piece(), f.field);
    case FindingCode::clash:
      return fmt::format("{} and {} are in the same place: they would have to be {} apart.", a.piece(), a.other(), a.apart());
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

std::string value_sentence(const Finding& f, const FindingArguments& a) {
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

std::string physics_sentence(const Finding& f, const FindingArguments& a) {
  switch (f.code) {
    case FindingCode::smoke_leak:
      if (a.other().empty()) {
        return fmt::format("{}: the flue is up to {} above the room here, so a leaky joint lets smoke into the room.",
                           a.piece(), a.value());
      }
      return fmt::format(
          "From {} to {} the flue is up to {} above the room, so a leaky joint lets smoke into the room.", a.piece(),
          a.other(), a.value());
    case FindingCode::wet_wall:
      return fmt::format("{}: from {} into it the wall is below the dew point; water forms there and runs down.", a.piece(),
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
    case FindingCode::branch_smokes:
      return fmt::format("{}: it lets smoke into the room, {} of gas that has been through the fire and air with it.",
                         a.piece(), a.value());
    case FindingCode::branch_blows_out:
      return fmt::format("{}: air blows out of it, {}; it is a way in that runs backwards.", a.piece(), a.value());
    case FindingCode::branch_draws_air:
      return fmt::format("{}: {} of what leaves the cap comes in here behind the fire and cools the stack.", a.piece(),
                         a.share());
    case FindingCode::flap_opens:
      return fmt::format("{}: the draft is above its set draft; its flap stands {} open.", a.piece(), a.share());
    case FindingCode::unsolved:
      return "The flows in the branches could not be found, so there is no number rather than a wrong one.";
    case FindingCode::left_out:
      return fmt::format(
          "{}: what it does to the draft when it acts, running or opening, is left out of this calculation.",
          a.piece());
    default:
      return {};
  }
}

std::string fan_sentence(const Finding& f, const FindingArguments& a) {
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
  const FindingArguments arguments(finding, design, library, units);
  std::string text = drawing_sentence(finding, arguments);
  if (text.empty()) text = value_sentence(finding, arguments);
  if (text.empty()) text = physics_sentence(finding, arguments);
  if (text.empty()) text = fan_sentence(finding, arguments);
  if (text.empty()) text = practice_sentence(finding, arguments);
  // "in w.c." brings a full stop along.
  for (auto twice = text.find(".. "); twice != std::string::npos; twice = text.find(".. ")) text.erase(twice, 1);
  if (text.ends_with("..")) text.pop_back();
  return text;
}

}  // namespace fluewright
