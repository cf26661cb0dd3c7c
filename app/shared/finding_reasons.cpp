// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/said.hpp"
#include "app/shared/words.hpp"
#include "engine/advice/practice.hpp"

#include <fmt/format.h>

namespace fluewright {

namespace {

std::string_view why_of_physics(FindingCode code) {
  switch (code) {
    case FindingCode::smoke_leak:
      return to_say("Smoke carries carbon monoxide, and joints open as they age.");
    case FindingCode::wet_wall:
      return to_say("Water on the wall eats steel and masonry and carries soot into the joints.");
    case FindingCode::short_of_air:
      return to_say("A starved fire smokes, soots the flue and makes carbon monoxide.");
    case FindingCode::overdrawn:
      return to_say("Air that is not burnt carries the heat out and cools the fire under what it needs to burn clean.");
    case FindingCode::can_run_backwards:
      return to_say("A fire lit then sends its smoke into the room and keeps itself going that way.");
    case FindingCode::never_draws_forward:
      return to_say("Whatever is lit smokes into the room.");
    case FindingCode::beyond_validity:
    case FindingCode::relation_left:
      return to_say("A number worked outside the range of its relation is less sure than the others.");
    case FindingCode::left_out:
      return to_say("The draft is other than shown while it acts.");
    default:
      return {};
  }
}

std::string_view why_of_fans(FindingCode code) {
  switch (code) {
    case FindingCode::fan_dependent:
      return to_say("When the power fails the fire goes on burning, and its smoke comes into the room.");
    case FindingCode::fan_gas_too_hot:
    case FindingCode::fan_motor_too_hot:
      return to_say("A motor over its rating lasts days instead of years, and stops when the fire is hottest.");
    case FindingCode::fan_motor_wet:
      return to_say("Acid water gets into bearings and windings.");
    case FindingCode::fan_curve_rises:
      return to_say("Where head rises with flow the flow hunts to and fro or jumps.");
    case FindingCode::fan_beyond_sheet:
      return to_say("What a fan does beyond its sheet nobody has measured.");
    case FindingCode::fan_against_flow:
      return to_say("It pushes the smoke back into the room.");
    default:
      return {};
  }
}

std::string_view why_of_branches(FindingCode code) {
  switch (code) {
    case FindingCode::clash:
      return to_say("Two things cannot stand in one place; drawn so, the lengths are wrong.");
    case FindingCode::through_house:
      return to_say("A hot pipe through wood without its passage is how houses burn.");
    case FindingCode::branch_smokes:
      return to_say("Smoke carries carbon monoxide, wherever it comes out.");
    case FindingCode::branch_blows_out:
      return to_say("A way in that runs backwards sends air, and with the next gust smoke, where it is not meant to go.");
    case FindingCode::branch_draws_air:
      return to_say("Air that comes in behind the fire cools the stack and takes draft from the feed.");
    case FindingCode::flap_opens:
      return to_say("While the flap stands open the stack draws room air instead of the fire's gas.");
    default:
      return {};
  }
}

std::string_view why_of_draft(FindingCode code) {
  switch (code) {
    case FindingCode::will_not_draw:
      return to_say("The fire starves or smokes into the room at the worst moment, when it has just been lit or the bench is cold.");
    case FindingCode::marginal:
      return to_say("A gust, a warm day or a little soot takes what is left.");
    case FindingCode::choke_inlet:
      return to_say("Air over what the fire wants only cools it and goes up the chimney warm.");
    case FindingCode::exit_too_hot:
      return to_say("Heat that leaves by the chimney has been paid for and warms nobody.");
    case FindingCode::house_suction:
      return to_say("A house under suction pulls smoke in through the feed as soon as the chimney cools.");
    default:
      return {};
  }
}

std::string_view why_of_practice(FindingCode code) {
  switch (code) {
    case FindingCode::water_pools:
      return to_say("Standing water rots the bottom of the flue and, with soot, closes it.");
    case FindingCode::wrong_fall:
      return to_say("Water and ash gather at the low end, where nothing lets them out.");
    case FindingCode::narrowing:
      return to_say("The narrowest place decides what the whole path can carry, and ash settles before it.");
    case FindingCode::low_outlet:
      return to_say("Wind over a roof presses down on a low outlet, and sparks land near it.");
    case FindingCode::near_combustibles:
      return to_say("Wood that is kept hot for years catches fire far below its usual temperature.");
    case FindingCode::hidden_single_wall:
      return to_say("A pipe that glows or leaks in a closed space is found when the house burns.");
    case FindingCode::missing_cleanout:
      return to_say("Ash settles in bends; one that cannot be brushed closes a little more every winter.");
    case FindingCode::gas_too_fast:
      return to_say("Fast gas loses draft with the square of its speed and carries ash up the stack.");
    case FindingCode::gas_too_slow:
      return to_say("Slow gas drops its ash, and at the cap every gust pushes it back.");
    case FindingCode::seat_too_hot:
      return to_say("Skin burns slowly on what does not feel hot at first.");
    case FindingCode::floor_overloaded:
      return to_say("A house floor is built for furniture, and a bench is a wall lying down: a qualified person has to look at it.");
    case FindingCode::no_alarm_note:
      return to_say("Nobody smells carbon monoxide; the alarm is the one thing that notices a draft that has failed.");
    default:
      return {};
  }
}

}  // namespace

std::string why_it_matters(FindingCode code) {
  std::string_view why = why_of_physics(code);
  if (why.empty()) why = why_of_fans(code);
  if (why.empty()) why = why_of_branches(code);
  if (why.empty()) why = why_of_draft(code);
  if (why.empty()) why = why_of_practice(code);
  return said(why.empty() ? to_say("Until it is mended there is no answer, or not the one that was meant.") : why);
}

std::string finding_source_words(const Finding& finding) {
  const Citation& citation = finding_source(finding.code);
  if (citation.standing == Standing::published || citation.standing == Standing::chosen) return said(citation.source);
  return citation.source.find("common practice") != std::string::npos
             ? said(citation.source)
             : fmt::format("{} ({})", said(citation.source), said(word(citation.standing)));
}

}  // namespace fluewright
