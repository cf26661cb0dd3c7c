// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/finding_arguments.hpp"
#include "app/shared/practice_words.hpp"
#include "app/shared/said.hpp"
#include "app/shared/words.hpp"

#include <fmt/format.h>

namespace fluewright {

namespace {

std::string drawing_sentence(const Finding& f, const FindingArguments& a) {
  switch (f.code) {
    case FindingCode::no_pieces:
      return said("Nothing is drawn yet: begin with what lets the air in, a feed or a door.");
    case FindingCode::no_inlet:
      return said("Nothing lets air in: the path needs a feed, a door or an outside-air duct.");
    case FindingCode::no_outlet:
      return said("The path does not reach the open air: it needs a cap or an open stack head.");
    case FindingCode::several_inlets:
      return said("{}: this is a second way in for air that nothing joins to the path; join it at a tee, or take it away.", a.piece());
    case FindingCode::several_outlets:
      return said("{}: this is a second way out, and the path has one already.", a.piece());
    case FindingCode::no_fire:
      return said("Nothing burns: the path needs a burn tunnel or a batch box.");
    case FindingCode::several_fires:
      return said("{}: this is a second fire, and the path has one already.", a.piece());
    case FindingCode::open_end:
      return said("{}: its end “{}” is open; join a piece to it.", a.piece(), said(f.field));
    case FindingCode::gap:
      return said("{}: its end “{}” and the piece it is joined to do not meet; they are {} apart.", a.piece(),
                         f.field, a.apart());
    case FindingCode::loop:
      return said("{}: behind it gas could only go round in a ring; it has to lead on to the open air or back to the path.", a.piece());
    case FindingCode::unreached:
      return said("{}: it is not on the path from the inlet to the open air.", a.piece());
    case FindingCode::unknown_port:
      return said("{}: it has no end “{}”.", a.piece(), said(f.field.empty() ? f.text : f.field));
    case FindingCode::port_taken:
      return said("{}: its end “{}” is in two joints; it can only be in one.", a.piece(), said(f.field));
    case FindingCode::joined_to_air:
      return said("{}: its end “{}” is open to the air, so nothing can be joined to it.", a.piece(), said(f.field));
    case FindingCode::clash:
      return said("{} and {} are in the same place: they would have to be {} apart.", a.piece(), a.other(), a.apart());
    case FindingCode::through_house:
      if (f.field == "wall") return said("{} goes through the wall of the house: put a thimble there.", a.piece());
      return f.field == "roof" ? said("{} goes through the roof of the house: put a passage there.", a.piece())
                               : said("{} goes through the ceiling of the house: put a passage there.", a.piece());
    case FindingCode::bore_mismatch:
      return said("{}: its end “{}” and the piece it is joined to differ in size; the step costs draft.",
                  a.piece(), said(f.field));
    default:
      return {};
  }
}

std::string value_sentence(const Finding& f, const FindingArguments& a) {
  switch (f.code) {
    case FindingCode::unknown_type:
      return said("{}: the type “{}” is not in the catalogue.", a.piece(), f.text);
    case FindingCode::unknown_material:
      return said("{}: there is no material “{}” in the library.", a.subject(), f.text);
    case FindingCode::unknown_wall:
      return said("{}: there is no wall “{}” in the library or in the design.", a.subject(), f.text);
    case FindingCode::unknown_wood:
      return said("{}: there is no wood “{}” in the library.", a.subject(), f.text);
    case FindingCode::unknown_fan:
      return said("{}: there is no fan “{}” in the library.", a.subject(), f.text);
    case FindingCode::wall_layers:
      return said("{}: still air can only lie between two layers that shut it in.", a.subject());
    case FindingCode::fan_curve:
      return said(
          "{}: its points make no curve; it needs two at least, flows that rise from 0 and a head above 0.", a.subject());
    case FindingCode::out_of_range:
      return said("{}: {} is not allowed; it must be {}.", a.subject(), a.value(), a.range());
    case FindingCode::wrong_kind:
      return said("{}: the value is of the wrong kind; it must be {}.", a.subject(), a.range());
    case FindingCode::duplicate_id:
      if (f.piece.empty()) {
        return f.field == "fans" ? said("{}: the id stands twice; every fan needs one of its own.", a.subject())
                                 : said("{}: the id stands twice; every wall needs one of its own.", a.subject());
      }
      return said("{}: the id “{}” stands twice; every piece needs one of its own.", a.piece(), f.piece);
    default:
      return {};
  }
}

std::string physics_sentence(const Finding& f, const FindingArguments& a) {
  switch (f.code) {
    case FindingCode::smoke_leak:
      if (a.other().empty()) {
        return said("{}: the flue is up to {} above the room here, so a leaky joint lets smoke into the room.",
                           a.piece(), a.value());
      }
      return said(
          "From {} to {} the flue is up to {} above the room, so a leaky joint lets smoke into the room.", a.piece(),
          a.other(), a.value());
    case FindingCode::wet_wall:
      return said("{}: from {} into it the wall is below the dew point; water forms there and runs down.", a.piece(),
                         a.value(Meaning::run_length));
    case FindingCode::short_of_air:
      return said("The fire is starved: it settles at {} times the air it needs, and under 1.5 it smokes.",
                         a.value());
    case FindingCode::overdrawn:
      return said("The fire is being cooled: it settles at {} times the air it needs. Choke the inlet.",
                         a.value());
    case FindingCode::can_run_backwards:
      return said("On this day it can also run backwards, into the room; before anything burns the draft is {}.",
                         a.value());
    case FindingCode::never_draws_forward:
      return said("On this day no flow from the inlet to the cap holds itself.");
    case FindingCode::beyond_validity:
      return said(
          "{}: {} stands at {}, outside the temperatures at which its conductivity is known ({}); the nearest known "
          "value is used.",
          a.piece(), f.text, a.value(), a.range());
    case FindingCode::relation_left:
      return said("{}: {} is used at {}; it is published {}.", a.piece(), said(f.text), a.value(), a.range());
    case FindingCode::branch_smokes:
      return said("{}: it lets smoke into the room, {} of gas that has been through the fire and air with it.",
                         a.piece(), a.value());
    case FindingCode::branch_blows_out:
      return said("{}: air blows out of it, {}; it is a way in that runs backwards.", a.piece(), a.value());
    case FindingCode::branch_draws_air:
      return said("{}: {} of what leaves the cap comes in here behind the fire and cools the stack.", a.piece(),
                         a.share());
    case FindingCode::flap_opens:
      return said("{}: the draft is above its set draft; its flap stands {} open.", a.piece(), a.share());
    case FindingCode::unsolved:
      return said("The flows in the branches could not be found, so there is no number rather than a wrong one.");
    case FindingCode::left_out:
      return said(
          "{}: what it does to the draft when it acts, running or opening, is left out of this calculation.",
          a.piece());
    default:
      return {};
  }
}

std::string fan_sentence(const Finding& f, const FindingArguments& a) {
  switch (f.code) {
    case FindingCode::fan_dependent:
      return said(
          "The draft depends on a fan: with it off {} to spare at the least, with it on {}. When the power fails while "
          "wood burns, the fire starves and smoke may come into the room.",
          a.value(), f.highest ? a.highest() : said("enough"));
    case FindingCode::fan_gas_too_hot:
      return said("{}: the gas that passes it reaches {}; its fan is rated for {}.", a.piece(), a.value(),
                         a.highest());
    case FindingCode::fan_motor_too_hot:
      return said("{}: its motor reaches {}; it is rated for {}.", a.piece(), a.value(), a.highest());
    case FindingCode::fan_motor_wet:
      return said("{}: its motor stands in gas with a dew point of {} and only {} around it; water gets into it.",
                         a.piece(), a.value(), a.lowest());
    case FindingCode::fan_curve_rises:
      return said(
          "{}: the head of “{}” rises with the flow between {} and {}; there it is not steady, and the flow may jump or "
          "hunt. States found forward: {}.",
          a.piece(), f.text, a.lowest(), a.highest(), a.value());
    case FindingCode::fan_beyond_sheet:
      if (const auto* flow = std::get_if<VolumeFlow>(&f.value); flow != nullptr && *flow < VolumeFlow{}) {
        return said("{}: the gas runs backward through it; what “{}” does then is an estimate.", a.piece(), f.text);
      }
      return said("{}: {} pass it, more than the {} up to which the sheet of “{}” goes; beyond, it is an estimate.",
                         a.piece(), a.value(), a.highest(), f.text);
    case FindingCode::fan_against_flow:
      return said("{}: it is drawn the wrong way round and blows against the gas.", a.piece());
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
