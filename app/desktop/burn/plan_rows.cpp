// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/plan_rows.hpp"

#include "app/shared/said.hpp"
#include "app/shared/words.hpp"

#include <fmt/format.h>

#include <cctype>

namespace fluewright {

namespace {

/// A row bound to one value of one entry: `where` finds the value in whichever plan it is handed.
template <class Quantity, class Where>
NumberRow row(const BurnPlan& plan, std::string key, std::string label, std::string help, PlanMeaning meaning, Where where) {
  BurnPlan copy = plan;
  const Quantity now = where(copy);
  return {std::move(key), std::move(label), std::move(help), meaning, PlanNumber{now},
          [where](BurnPlan& changed, const PlanNumber& number) { where(changed) = std::get<Quantity>(number); }};
}

using Options = std::vector<std::pair<std::string, std::string>>;

Options piece_options(PlanList list, const Design& design, const Library& library) {
  Options options;
  for (const PieceId& id : pieces_for(list, design, library)) options.emplace_back(id, piece_name(design, library, id));
  return options;
}

std::string capital(std::string_view words) {
  std::string text{words};
  if (!text.empty()) text[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(text[0])));
  return text;
}

std::string begins_help() { return said("Since the run began: hours and minutes."); }

void load_rows(PlanSheet& sheet, const BurnPlan& plan, std::size_t i) {
  sheet.heading = said("Load {}", i + 1);
  sheet.numbers.push_back(row<Time>(plan, "at", said("Begins"), begins_help(), PlanMeaning::moment, [i](BurnPlan& p) -> Time& { return p.loads[i].at; }));
  sheet.numbers.push_back(row<Mass>(plan, "wood", said("Wood"), said("As fired, with its moisture."), PlanMeaning::wood, [i](BurnPlan& p) -> Mass& { return p.loads[i].wood; }));
  sheet.numbers.push_back(row<Time>(plan, "lasts", said("Burns for"), said("It burns down evenly."), PlanMeaning::duration, [i](BurnPlan& p) -> Time& { return p.loads[i].lasts; }));
}

void feed_rows(PlanSheet& sheet, const BurnPlan& plan, std::size_t i) {
  sheet.heading = said("Feed {}", i + 1);
  sheet.numbers.push_back(row<Time>(plan, "from", said("Begins"), begins_help(), PlanMeaning::moment, [i](BurnPlan& p) -> Time& { return p.feeds[i].from; }));
  sheet.numbers.push_back(row<Time>(plan, "until", said("Until"), begins_help(), PlanMeaning::moment, [i](BurnPlan& p) -> Time& { return p.feeds[i].until; }));
  sheet.numbers.push_back(row<MassFlow>(plan, "rate", said("Burn rate"), said("Wood as fired."), PlanMeaning::rate, [i](BurnPlan& p) -> MassFlow& { return p.feeds[i].rate; }));
}

void priming_rows(PlanSheet& sheet, const BurnPlan& plan, std::size_t i, const Design& design, const Library& library) {
  sheet.heading = said("Priming fire {}", i + 1);
  Options kinds;
  for (const Starter& s : starters) kinds.emplace_back(s.id, capital(said(s.name)));
  const PrimingFire& fire = plan.priming[i];
  if (starter(fire.kind) == nullptr) kinds.emplace_back(fire.kind, fire.kind);
  sheet.picks.push_back({"kind", said("Starter"), said("What burns at the stack's foot. The cap is off meanwhile and goes back on at the end."),
                         std::move(kinds), fire.kind, [i](BurnPlan& p, const std::string& id) {
                           p.priming[i].kind = id;
                           if (const Starter* s = starter(id)) p.priming[i].heating_value = s->heating_value;
                         }});
  Options tees{{"", said("The lowest tee of the stack")}};
  for (auto& tee : piece_options(PlanList::priming, design, library)) tees.push_back(std::move(tee));
  sheet.picks.push_back({"tee", said("In"), said("The tee whose cap comes off."), std::move(tees), fire.tee,
                         [i](BurnPlan& p, const std::string& id) { p.priming[i].tee = id; }});
  sheet.numbers.push_back(row<Time>(plan, "at", said("Begins"), begins_help(), PlanMeaning::moment, [i](BurnPlan& p) -> Time& { return p.priming[i].at; }));
  sheet.numbers.push_back(row<Time>(plan, "lasts", said("Burns for"), said("Then the cap goes back on."), PlanMeaning::duration, [i](BurnPlan& p) -> Time& { return p.priming[i].lasts; }));
  sheet.numbers.push_back(row<Mass>(plan, "starter", said("Amount"), said("Of the starter, dry."), PlanMeaning::starter, [i](BurnPlan& p) -> Mass& { return p.priming[i].starter; }));
  sheet.numbers.push_back(row<SpecificEnergy>(plan, "heating_value", said("Heating value"), said("Net, as bought and dry; from memory."), PlanMeaning::heating_value,
                                              [i](BurnPlan& p) -> SpecificEnergy& { return p.priming[i].heating_value; }));
}

void move_rows(PlanSheet& sheet, const BurnPlan& plan, std::size_t i, const Design& design, const Library& library) {
  sheet.heading = said("Move {}", i + 1);
  sheet.picks.push_back({"piece", said("Piece"), said("Which damper or bypass is moved."), piece_options(PlanList::moves, design, library),
                         plan.moves[i].piece, [i](BurnPlan& p, const std::string& id) { p.moves[i].piece = id; }});
  sheet.numbers.push_back(row<Time>(plan, "at", said("When"), begins_help(), PlanMeaning::moment, [i](BurnPlan& p) -> Time& { return p.moves[i].at; }));
  sheet.numbers.push_back(row<Ratio>(plan, "open", said("Open"), said("0 % shut, 100 % wide open."), PlanMeaning::share, [i](BurnPlan& p) -> Ratio& { return p.moves[i].open; }));
}

void fan_rows(PlanSheet& sheet, const BurnPlan& plan, std::size_t i, const Design& design, const Library& library) {
  sheet.heading = said("Fan switch {}", i + 1);
  const FanSwitch& fan = plan.fans[i];
  sheet.picks.push_back({"fan", said("Fan"), said("Which fan is switched."), piece_options(PlanList::fans, design, library), fan.fan,
                         [i](BurnPlan& p, const std::string& id) { p.fans[i].fan = id; }});
  sheet.picks.push_back({"timer", said("Stops"), said("A run-down timer switches it off by itself."),
                         {{"timer", said("By a run-down timer")}, {"hand", said("When it is switched off")}},
                         fan.runs_for ? "timer" : "hand", [i](BurnPlan& p, const std::string& id) {
                           p.fans[i].runs_for = id == "timer" ? std::optional<Time>(8.0 * minute) : std::nullopt;
                         }});
  sheet.numbers.push_back(row<Time>(plan, "at", said("When"), begins_help(), PlanMeaning::moment, [i](BurnPlan& p) -> Time& { return p.fans[i].at; }));
  sheet.numbers.push_back(row<Ratio>(plan, "speed", said("Speed"), said("0 % is off, 100 % the speed of its curve."), PlanMeaning::share, [i](BurnPlan& p) -> Ratio& { return p.fans[i].speed; }));
  if (fan.runs_for) {
    sheet.numbers.push_back(row<Time>(plan, "runs_for", said("Runs for"), said("Then the timer stops it."), PlanMeaning::duration, [i](BurnPlan& p) -> Time& { return *p.fans[i].runs_for; }));
  }
}

void hood_rows(PlanSheet& sheet, const BurnPlan& plan, std::size_t i) {
  sheet.heading = said("Range hood {}", i + 1);
  sheet.numbers.push_back(row<Time>(plan, "at", said("When"), begins_help(), PlanMeaning::moment, [i](BurnPlan& p) -> Time& { return p.hoods[i].at; }));
  sheet.numbers.push_back(row<VolumeFlow>(plan, "exhaust", said("Draws"), said("All exhausts of the house together, from now on. 0 is off."), PlanMeaning::exhaust,
                                          [i](BurnPlan& p) -> VolumeFlow& { return p.hoods[i].exhaust; }));
}

void cut_rows(PlanSheet& sheet, const BurnPlan& plan, std::size_t i) {
  sheet.heading = said("Power cut {}", i + 1);
  sheet.numbers.push_back(row<Time>(plan, "at", said("Begins"), begins_help(), PlanMeaning::moment, [i](BurnPlan& p) -> Time& { return p.cuts[i].at; }));
  sheet.numbers.push_back(row<Time>(plan, "lasts", said("Lasts"), said("Fans and hoods stand still and come back by themselves."), PlanMeaning::duration, [i](BurnPlan& p) -> Time& { return p.cuts[i].lasts; }));
}

void point_rows(PlanSheet& sheet, const BurnPlan& plan, std::size_t i) {
  sheet.heading = said("Outdoor temperature, point {}", i + 1);
  const auto point = [i](BurnPlan& p) -> OutdoorPoint& { return std::get<std::vector<OutdoorPoint>>(p.outdoors)[i]; };
  sheet.numbers.push_back(row<Time>(plan, "at", said("When"), begins_help(), PlanMeaning::moment, [point](BurnPlan& p) -> Time& { return point(p).at; }));
  sheet.numbers.push_back(row<Temperature>(plan, "temperature", said("Outdoors"), said("Straight from point to point."), PlanMeaning::temperature, [point](BurnPlan& p) -> Temperature& { return point(p).temperature; }));
}

std::string course_id(const OutdoorCourse& course) {
  static constexpr const char* ids[] = {"design", "constant", "day", "points"};
  return ids[course.index()];
}

void set_course(BurnPlan& plan, const std::string& id, Temperature level) {
  if (id == "design") plan.outdoors = std::monostate{};
  if (id == "constant") plan.outdoors = level;
  if (id == "day") plan.outdoors = OutdoorDay{level, 4.0 * kelvin, 15.0 * hour};
  if (id == "points") plan.outdoors = std::vector<OutdoorPoint>{{Time{}, level}, {plan.length, level}};
}

void run_rows(PlanSheet& sheet, const BurnPlan& plan, const Design& design) {
  sheet.heading = said("The run");
  const Temperature level = design.site.outdoor_temperature;
  sheet.picks.push_back({"outdoors", said("Outdoors"), said("The temperature outdoors over the run."),
                         {{"design", said("As in the design")}, {"constant", said("One temperature")}, {"day", said("A day's curve")}, {"points", said("Points, or a weather file")}},
                         course_id(plan.outdoors), [level](BurnPlan& p, const std::string& id) {
                           if (id != course_id(p.outdoors)) set_course(p, id, level);
                         }});
  sheet.numbers.push_back(row<Time>(plan, "length", said("Length"), said("How long the run is."), PlanMeaning::duration, [](BurnPlan& p) -> Time& { return p.length; }));
  sheet.numbers.push_back(row<Time>(plan, "begins_at", said("Begins at"), said("By the clock."), PlanMeaning::clock, [](BurnPlan& p) -> Time& { return p.begins_at; }));
  if (std::holds_alternative<Temperature>(plan.outdoors)) {
    sheet.numbers.push_back(row<Temperature>(plan, "constant", said("Outdoors"), said("All the time."), PlanMeaning::temperature, [](BurnPlan& p) -> Temperature& { return std::get<Temperature>(p.outdoors); }));
  }
  if (std::holds_alternative<OutdoorDay>(plan.outdoors)) {
    const auto day = [](BurnPlan& p) -> OutdoorDay& { return std::get<OutdoorDay>(p.outdoors); };
    sheet.numbers.push_back(row<Temperature>(plan, "mean", said("Mean"), said("Over the day."), PlanMeaning::temperature, [day](BurnPlan& p) -> Temperature& { return day(p).mean; }));
    sheet.numbers.push_back(row<TemperatureDifference>(plan, "swing", said("Swing"), said("From the mean to either end."), PlanMeaning::step, [day](BurnPlan& p) -> TemperatureDifference& { return day(p).swing; }));
    sheet.numbers.push_back(row<Time>(plan, "warmest_at", said("Warmest at"), said("By the clock."), PlanMeaning::clock, [day](BurnPlan& p) -> Time& { return day(p).warmest_at; }));
  }
}

}  // namespace

PlanSheet sheet_of(const BurnPlan& plan, const std::optional<PlanRef>& ref, const Design& design, const Library& library) {
  PlanSheet sheet;
  if (!ref || !event_of(plan, *ref)) {
    run_rows(sheet, plan, design);
    return sheet;
  }
  switch (ref->list) {
    case PlanList::plan: break;
    case PlanList::loads: load_rows(sheet, plan, ref->index); break;
    case PlanList::feeds: feed_rows(sheet, plan, ref->index); break;
    case PlanList::priming: priming_rows(sheet, plan, ref->index, design, library); break;
    case PlanList::moves: move_rows(sheet, plan, ref->index, design, library); break;
    case PlanList::fans: fan_rows(sheet, plan, ref->index, design, library); break;
    case PlanList::hoods: hood_rows(sheet, plan, ref->index); break;
    case PlanList::cuts: cut_rows(sheet, plan, ref->index); break;
    case PlanList::outdoors: point_rows(sheet, plan, ref->index); break;
  }
  return sheet;
}

std::string event_words(const BurnPlan& plan, const PlanRef& ref, const Design& design, const Library& library, UnitSystem units) {
  const auto text = [units](const PlanNumber& number, PlanMeaning meaning) { return show(number, meaning, units).text(); };
  const std::size_t i = ref.index;
  switch (ref.list) {
    case PlanList::plan: return {};
    case PlanList::loads: return said("{} in {}", wood_text(plan.loads[i].wood, units), duration_text(plan.loads[i].lasts));
    case PlanList::feeds: return text(plan.feeds[i].rate, PlanMeaning::rate);
    case PlanList::priming: {
      const Starter* known = starter(plan.priming[i].kind);
      return fmt::format("{} {}", grams_text(plan.priming[i].starter, units), known != nullptr ? said(known->name) : plan.priming[i].kind);
    }
    case PlanList::moves: {
      const PieceMove& move = plan.moves[i];
      const std::string open = !(move.open > Ratio(0.0)) ? said("shut") : move.open < Ratio(1.0) ? said("{} open", text(move.open, PlanMeaning::share)) : said("open");
      return fmt::format("{} {}", piece_name(design, library, move.piece), open);
    }
    case PlanList::fans:
      return plan.fans[i].speed > Ratio(0.0) ? text(plan.fans[i].speed, PlanMeaning::share) : said("off");
    case PlanList::hoods:
      return plan.hoods[i].exhaust > VolumeFlow{} ? text(plan.hoods[i].exhaust, PlanMeaning::exhaust) : said("off");
    case PlanList::cuts: return duration_text(plan.cuts[i].lasts);
    case PlanList::outdoors: return text(std::get<std::vector<OutdoorPoint>>(plan.outdoors)[i].temperature, PlanMeaning::temperature);
  }
  return {};
}

}  // namespace fluewright
