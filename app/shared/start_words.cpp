// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/start_words.hpp"

#include "app/shared/said.hpp"

#include <fmt/format.h>

#include <cmath>

namespace fluewright {

std::string_view word(StartClass start, bool draws_with_fan) {
  switch (start) {
    case StartClass::by_itself: return to_say("draws by itself");
    case StartClass::with_kindling: return to_say("lights with kindling");
    case StartClass::with_priming: return to_say("needs the stack primed");
    case StartClass::with_fan: return to_say("needs a fan");
    case StartClass::only_with_fan: break;
  }
  return draws_with_fan ? to_say("will not hold without the fan") : to_say("will not hold, with the fan neither");
}

char letter(StartClass start) {
  switch (start) {
    case StartClass::by_itself: return 'D';
    case StartClass::with_kindling: return 'K';
    case StartClass::with_priming: return 'P';
    case StartClass::with_fan: return 'F';
    case StartClass::only_with_fan: break;
  }
  return 'X';
}

std::string_view word(StartFault fault) {
  switch (fault) {
    case StartFault::none: return "holds";
    case StartFault::ran_backward: return to_say("runs backward");
    case StartFault::smoke: return to_say("smokes into the room");
    case StartFault::starved: return to_say("starves for air");
    case StartFault::not_computed: break;
  }
  return to_say("could not be computed");
}

std::string minutes_text(Time time) {
  const auto seconds = static_cast<long>(std::lround(in(time, second)));
  return fmt::format("{}:{:02}", seconds / 60, seconds % 60);
}

std::string grams_text(Mass mass) {
  return mass < 1.0 * kilogram ? fmt::format("{:.0f} g", in(mass, gram)) : decimal_text(in(mass, kilogram), 2) + " kg";
}

namespace {

/// "5 °C warmer", "3 °C colder" than outdoors.
std::string apart(TemperatureDifference room_over_outdoors, UnitSystem units) {
  const bool warmer = room_over_outdoors >= TemperatureDifference{};
  const TemperatureDifference size = warmer ? room_over_outdoors : TemperatureDifference(-room_over_outdoors);
  return show(size, units).text() + (warmer ? " warmer" : " colder");
}

}  // namespace

std::string limit_sentence(const StartLimit& limit, UnitSystem units) {
  const std::string room = show(limit.room, units).text();
  const std::string so_far = limit.known ? "" : said(" So far; not every cell of that row is computed.");
  const auto outdoors = [&](TemperatureDifference over) { return show(limit.room - over, units).text(); };
  if (!limit.not_enough) {
    return limit.enough ? said("In a room at {} kindling is enough on every day of the map.{}", room, so_far)
                        : said("Nothing is computed yet for a room at {}.", room);
  }
  const std::string needs = said(word(limit.then_needs.value_or(StartClass::only_with_fan)));
  if (!limit.enough) {
    return said("In a room at {} kindling is enough on no day of the map: it {}.{}", room, needs, so_far);
  }
  return said("In a room at {} kindling is enough up to {} outdoors, the room {}; from {} outdoors, the room {}, it {}.{}",
                     room, outdoors(*limit.enough), apart(*limit.enough, units), outdoors(*limit.not_enough),
                     apart(*limit.not_enough, units), needs, so_far);
}

std::string map_assumptions(const StartQuestion& q, UnitSystem units) {
  const StartRules& rules = q.rules;
  std::string text = said(
      "Walls soaked at their surroundings. By itself: it stands open {} before the whole fire is lit. Kindling: it stands shut "
      "until the match, so the air in it is still; {} for {}, then {}. It holds when for {} after the last aid the gas "
      "runs forward, no more than {} of smoke comes into the room and {} of the wood burns with at least {:g} times the air it needs.",
      minutes_text(rules.open_before_match), show(rules.kindling_share * q.design.fire.burn_rate, units).text(), minutes_text(rules.kindling_lasts),
      show(q.design.fire.burn_rate, units).text(), minutes_text(rules.holds_for), grams_text(rules.puff),
      show(rules.least_burnt, units, Meaning::share).text(), rules.starved_under.value());
  text += said(" House: suction {} on top of its own stack effect, exhaust {}, neutral plane {}.",
                      show(q.design.room.extra_depressurisation, units).text(), show(q.design.room.exhaust_flow, units).text(),
                      show(q.design.room.neutral_plane, units, Meaning::height).text());
  if (q.can_prime) {
    text += said(" Priming: {} over {}.", grams_text(q.allowance.priming_starter), minutes_text(q.allowance.priming_lasts));
  } else {
    text += said(" Priming is left out: there is no tee with a shut port on the way up the stack.");
  }
  if (!q.fan) {
    text += said(" A fan is left out: no run of the stack has room for one.");
  } else {
    text += said(" Fan: {}, {} from the match's minute on.",
                        q.fan->own ? said("the design's own") : said("a generic inducer beside the stack's foot"),
                        minutes_text(q.allowance.fan_lasts));
  }
  return text;
}

std::string aid_name(const AidTask& task) {
  switch (task.kind) {
    case AidKind::none: return said("None: the whole fire at once");
    case AidKind::kindling: return said("Kindling");
    case AidKind::priming: return said("Priming fire in the stack's foot");
    case AidKind::bypass: return said("Bypass");
    case AidKind::duct_fan_at_foot: return said("Duct fan in the stream, stack's foot");
    case AidKind::duct_fan_under_cap: return said("Duct fan in the stream, under the cap");
    case AidKind::fan_on_top: return said("Fan on top");
    case AidKind::side_inducer: break;
  }
  return said("Side inducer at {:.0f} %", 100.0 * task.speed.value());
}

std::string amount_text(const AidRow& row) {
  if (row.state != AidState::computed) return "";
  switch (row.trial.aid.kind) {
    case StartAidKind::none:
    case StartAidKind::kindling: return "";
    case StartAidKind::priming:
      return said("{} over {} min", grams_text(row.trial.aid.starter), minutes_text(row.trial.aid.lasts));
    case StartAidKind::bypass:
    case StartAidKind::fan: break;
  }
  return minutes_text(row.trial.aid.lasts) + " min";
}

namespace {

std::string cannot_be_tried(const AidRow& row) {
  switch (row.state) {
    case AidState::no_place:
      return row.task.kind == AidKind::priming ? said("There is no tee with a shut port on the way up the stack.")
                                               : said("No run of the stack has room for it.");
    case AidState::not_drawn: return said("No bypass is drawn: draw one to try it.");
    case AidState::computed: break;
  }
  return said("The runs did not come to an end.");
}

std::string motor_words(const FanLeftOn& fan, UnitSystem units) {
  if (fan.hottest_gas > fan.rated_gas) {
    return said("the gas at the fan gets to {}; its limit is {}", show(fan.hottest_gas, units).text(),
                       show(fan.rated_gas, units).text());
  }
  return said("the motor gets to {}; its limit is {}", show(fan.hottest_motor, units).text(),
                     show(fan.rated_motor, units).text());
}

}  // namespace

std::string reason_sentence(const AidRow& row, UnitSystem units) {
  const std::string amount = amount_text(row);
  switch (row.reason) {
    case AidReason::no_help_needed: return said("It draws before anything is lit and takes the whole fire at once.");
    case AidReason::small_fire_is_enough: return said("A small fire in a heater shut until the match is enough; it costs nothing and nothing can break.");
    case AidReason::holds_after:
      return row.trial.aid.kind == StartAidKind::bypass ? said("After {} it holds by itself.", amount)
                                                        : said("After {} it holds by itself; practice allows 5 to 10 min.", amount);
    case AidReason::motor_too_hot:
      return said("It holds after {}, but left on {}.", amount, motor_words(*row.left_on, units));
    case AidReason::motor_wet:
      return said("It holds after {}, but left on, water condenses at the motor for {} min.", amount,
                         minutes_text(row.left_on->wet));
    case AidReason::only_while_it_runs:
      return said("Unsafe: in the house as it is it draws enough only while the fan runs. {}",
                         row.power_cut ? power_cut_sentence(*row.power_cut) : "");
    case AidReason::runs_backward:
      return said("It runs backward {} min after the beginning.", minutes_text(row.trial.decided_at));
    case AidReason::smokes: return said("Smoke comes into the room {} min after the beginning.", minutes_text(row.trial.decided_at));
    case AidReason::starves: return said("It starves: too much of the wood burns with too little air.");
    case AidReason::cannot_be_tried: break;
  }
  return cannot_be_tried(row);
}

std::string power_cut_words(const PowerCutRun& run) {
  if (!run.drew_before) return said("does not draw even with the fan on");
  if (run.holds) return said("goes on drawing");
  std::string words;
  const auto add = [&](const std::string& more) { words += (words.empty() ? "" : ", ") + more; };
  if (run.starves) add(said("starves after {} min", minutes_text(*run.starves)));
  if (run.reverses) add(said("turns after {} min", minutes_text(*run.reverses)));
  add(said("{} of smoke into the room", grams_text(run.smoke)));
  return words;
}

std::string aids_assumptions(const AidFigures& f) {
  return said("Ten years: {:.0f} starts a year, a fan that may not be switched off runs {} h each; prices are common practice "
                     "or your own figures.",
                     f.starts_per_year.value(), in(f.burns_per_start, hour));
}

std::string_view power_cut_headline(const PowerCutAnswer& cut) {
  if (!cut.neutral.holds) {
    return cut.neutral.drew_before ? to_say("UNSAFE: the draft holds only while the fan runs.") : to_say("UNSAFE: it does not draw, even with the fan on.");
  }
  if (!cut.depressurised.holds) {
    return cut.depressurised.drew_before ? to_say("UNSAFE in a house under suction: there the draft holds only while the fan runs.")
                                         : to_say("UNSAFE in a house under suction: there it does not draw, even with the fan on.");
  }
  return "";
}

std::string power_cut_sentence(const PowerCutAnswer& cut) {
  return said("Power cut with a loaded feed: in a neutral house it {}; with {:.0f} Pa of suction in the house it {}.",
                     power_cut_words(cut.neutral), in(cut.depressurised.suction, pascal), power_cut_words(cut.depressurised));
}

}  // namespace fluewright
