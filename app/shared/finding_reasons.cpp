// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/words.hpp"
#include "engine/advice/practice.hpp"

#include <fmt/format.h>

namespace fluewright {

namespace {

std::string_view why_of_physics(FindingCode code) {
  switch (code) {
    case FindingCode::smoke_leak:
      return "Smoke carries carbon monoxide, and joints open as they age.";
    case FindingCode::wet_wall:
      return "Water on the wall eats steel and masonry and carries soot into the joints.";
    case FindingCode::short_of_air:
      return "A starved fire smokes, soots the flue and makes carbon monoxide.";
    case FindingCode::overdrawn:
      return "Air that is not burnt carries the heat out and cools the fire under what it needs to burn clean.";
    case FindingCode::can_run_backwards:
      return "A fire lit then sends its smoke into the room and keeps itself going that way.";
    case FindingCode::never_draws_forward:
      return "Whatever is lit smokes into the room.";
    case FindingCode::beyond_validity:
    case FindingCode::relation_left:
      return "A number worked outside the range of its relation is less sure than the others.";
    case FindingCode::left_out:
      return "The draft is other than shown while it acts.";
    default:
      return {};
  }
}

std::string_view why_of_fans(FindingCode code) {
  switch (code) {
    case FindingCode::fan_dependent:
      return "When the power fails the fire goes on burning, and its smoke comes into the room.";
    case FindingCode::fan_gas_too_hot:
    case FindingCode::fan_motor_too_hot:
      return "A motor over its rating lasts days instead of years, and stops when the fire is hottest.";
    case FindingCode::fan_motor_wet:
      return "Acid water gets into bearings and windings.";
    case FindingCode::fan_curve_rises:
      return "Where head rises with flow the flow hunts to and fro or jumps.";
    case FindingCode::fan_beyond_sheet:
      return "What a fan does beyond its sheet nobody has measured.";
    case FindingCode::fan_against_flow:
      return "It pushes the smoke back into the room.";
    default:
      return {};
  }
}

std::string_view why_of_branches(FindingCode code) {
  switch (code) {
    case FindingCode::clash:
      return "Two things cannot stand in one place; drawn so, the lengths are wrong.";
    case FindingCode::through_house:
      return "A hot pipe through wood without its passage is how houses burn.";
    case FindingCode::branch_smokes:
      return "Smoke carries carbon monoxide, wherever it comes out.";
    case FindingCode::branch_blows_out:
      return "A way in that runs backwards sends air, and with the next gust smoke, where it is not meant to go.";
    case FindingCode::branch_draws_air:
      return "Air that comes in behind the fire cools the stack and takes draft from the feed.";
    case FindingCode::flap_opens:
      return "While the flap stands open the stack draws room air instead of the fire's gas.";
    default:
      return {};
  }
}

std::string_view why_of_draft(FindingCode code) {
  switch (code) {
    case FindingCode::will_not_draw:
      return "The fire starves or smokes into the room at the worst moment, when it has just been lit or the bench is cold.";
    case FindingCode::marginal:
      return "A gust, a warm day or a little soot takes what is left.";
    case FindingCode::choke_inlet:
      return "Air over what the fire wants only cools it and goes up the chimney warm.";
    case FindingCode::exit_too_hot:
      return "Heat that leaves by the chimney has been paid for and warms nobody.";
    case FindingCode::house_suction:
      return "A house under suction pulls smoke in through the feed as soon as the chimney cools.";
    default:
      return {};
  }
}

std::string_view why_of_practice(FindingCode code) {
  switch (code) {
    case FindingCode::water_pools:
      return "Standing water rots the bottom of the flue and, with soot, closes it.";
    case FindingCode::wrong_fall:
      return "Water and ash gather at the low end, where nothing lets them out.";
    case FindingCode::narrowing:
      return "The narrowest place decides what the whole path can carry, and ash settles before it.";
    case FindingCode::low_outlet:
      return "Wind over a roof presses down on a low outlet, and sparks land near it.";
    case FindingCode::near_combustibles:
      return "Wood that is kept hot for years catches fire far below its usual temperature.";
    case FindingCode::hidden_single_wall:
      return "A pipe that glows or leaks in a closed space is found when the house burns.";
    case FindingCode::missing_cleanout:
      return "Ash settles in bends; one that cannot be brushed closes a little more every winter.";
    case FindingCode::gas_too_fast:
      return "Fast gas loses draft with the square of its speed and carries ash up the stack.";
    case FindingCode::gas_too_slow:
      return "Slow gas drops its ash, and at the cap every gust pushes it back.";
    case FindingCode::seat_too_hot:
      return "Skin burns slowly on what does not feel hot at first.";
    case FindingCode::floor_overloaded:
      return "A house floor is built for furniture, and a bench is a wall lying down: a qualified person has to look at it.";
    case FindingCode::no_alarm_note:
      return "Nobody smells carbon monoxide; the alarm is the one thing that notices a draft that has failed.";
    default:
      return {};
  }
}

}  // namespace

std::string_view why_it_matters(FindingCode code) {
  std::string_view why = why_of_physics(code);
  if (why.empty()) why = why_of_fans(code);
  if (why.empty()) why = why_of_branches(code);
  if (why.empty()) why = why_of_draft(code);
  if (why.empty()) why = why_of_practice(code);
  return why.empty() ? "Until it is mended there is no answer, or not the one that was meant." : why;
}

std::string finding_source_words(const Finding& finding) {
  const Citation& citation = finding_source(finding.code);
  if (citation.standing == Standing::published || citation.standing == Standing::chosen) return citation.source;
  return citation.source.find("common practice") != std::string::npos
             ? citation.source
             : fmt::format("{} ({})", citation.source, word(citation.standing));
}

}  // namespace fluewright
