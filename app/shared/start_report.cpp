// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/start_report.hpp"

#include "app/shared/said.hpp"
#include "app/shared/start_words.hpp"
#include "app/shared/text_table.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace fluewright {
namespace {

using nlohmann::ordered_json;

constexpr std::size_t text_width = 96;

double kept(double value, double unit = 1e-3) { return std::round(value / unit) * unit; }

/// A character a cell: capital where it was computed, small where its neighbours say so.
char mark_of(const StartCell& cell) {
  if (cell.state == CellState::unknown) return '.';
  const char mark = letter(cell.start);
  return cell.state == CellState::computed ? mark : static_cast<char>(mark - 'A' + 'a');
}

std::string_view state_id(CellState state) {
  switch (state) {
    case CellState::unknown: return "unknown";
    case CellState::between: return "between";
    case CellState::computed: break;
  }
  return "computed";
}

std::string_view class_id(StartClass start) {
  switch (start) {
    case StartClass::by_itself: return "by_itself";
    case StartClass::with_kindling: return "with_kindling";
    case StartClass::with_priming: return "with_priming";
    case StartClass::with_fan: return "with_fan";
    case StartClass::only_with_fan: break;
  }
  return "only_with_fan";
}

std::string map_grid(const StartMap& map, const Design& design, UnitSystem units) {
  const StartMapGrid& grid = map.grid();
  std::string text = "  room\n";
  const bool day_on_it = grid.room.holds(design.room.temperature) && grid.outdoors.holds(design.site.outdoor_temperature);
  const std::size_t day_room = grid.room.nearest(design.room.temperature);
  const std::size_t day_out = grid.outdoors.nearest(design.site.outdoor_temperature);
  for (std::size_t row = grid.room.count; row-- > 0;) {
    const std::string level = show(grid.room.at(row), units).text();
    text += std::string(9 - std::min<std::size_t>(9, characters(level)), ' ') + level + "  ";
    for (std::size_t o = 0; o < grid.outdoors.count; ++o) {
      text += mark_of(map.cell(map.index(o, row)));
      text += day_on_it && row == day_room && o == day_out ? '<' : ' ';
    }
    text += '\n';
  }
  const std::string first = show(grid.outdoors.first, units).text();
  const std::string last = show(grid.outdoors.at(grid.outdoors.count - 1), units).text();
  const std::size_t across = 2 * grid.outdoors.count;
  const std::size_t taken = characters(first) + characters(last);
  text += "           " + first + std::string(across > taken ? across - taken : 1, ' ') + last + "  outdoors\n";
  return text;
}

std::string legend(const StartMap& map) {
  std::string text;
  for (const StartClass start : start_classes) {
    std::size_t count = 0;
    for (std::size_t i = 0; i < map.size(); ++i) {
      if (map.cell(i).state != CellState::unknown && map.cell(i).start == start) ++count;
    }
    text += fmt::format("  {}  {} ({} cells)\n", letter(start), word(start), count);
  }
  return text;
}

ordered_json trial_json(const StartTrial& trial) {
  ordered_json json;
  json["holds"] = trial.holds;
  json["outcome"] = word(trial.fault);
  json["minutes"] = kept(in(trial.aid.lasts, minute));
  json["starter_g"] = kept(in(trial.aid.starter, gram));
  json["speed_share"] = kept(trial.aid.speed.value());
  json["decided_at_min"] = kept(in(trial.decided_at, minute));
  json["smoke_kg"] = kept(in(trial.smoke, kilogram), 1e-6);
  json["burnt_kg"] = kept(in(trial.burnt, kilogram), 1e-6);
  json["starving_kg"] = kept(in(trial.starving, kilogram), 1e-6);
  json["wanted_kg"] = kept(in(trial.wanted, kilogram), 1e-6);
  return json;
}

ordered_json cut_run_json(const PowerCutRun& run) {
  const auto minutes = [](const std::optional<Time>& t) { return t ? ordered_json(kept(in(*t, minute))) : ordered_json(nullptr); };
  ordered_json json;
  json["suction_Pa"] = in(run.suction, pascal);
  json["drew_before"] = run.drew_before;
  json["holds"] = run.holds;
  json["starves_after_min"] = minutes(run.starves);
  json["reverses_after_min"] = minutes(run.reverses);
  json["smoke_kg"] = kept(in(run.smoke, kilogram), 1e-6);
  return json;
}

std::string money(Ratio value) { return fmt::format("{:.0f}", value.value()); }

ordered_json aid_json(const AidRow& row) {
  ordered_json json;
  json["aid"] = aid_name(row.task);
  json["in_the_design"] = row.own;
  json["starts"] = row.state == AidState::computed ? ordered_json(row.starts) : ordered_json(nullptr);
  json["reason"] = reason_sentence(row, UnitSystem::metric);
  if (row.state != AidState::computed) return json;
  json["trial"] = trial_json(row.trial);
  json["self_sustaining_min"] = row.self_sustaining ? ordered_json(kept(in(*row.self_sustaining, minute))) : ordered_json(nullptr);
  if (row.left_on) {
    json["hottest_gas_C"] = kept(in_celsius(row.left_on->hottest_gas), 0.01);
    json["rated_gas_C"] = kept(in_celsius(row.left_on->rated_gas), 0.01);
    json["hottest_motor_C"] = kept(in_celsius(row.left_on->hottest_motor), 0.01);
    json["rated_motor_C"] = kept(in_celsius(row.left_on->rated_motor), 0.01);
    json["motor_wet_min"] = kept(in(row.left_on->wet, minute));
  }
  json["fire_lost_K"] = row.fire_lost ? ordered_json(kept(in(*row.fire_lost, kelvin), 0.01)) : ordered_json(nullptr);
  json["power_cut"] = row.power_cut ? power_cut_json(*row.power_cut) : ordered_json(nullptr);
  json["price"] = row.price.value();
  json["ten_years"] = kept(row.ten_years.value(), 0.01);
  return json;
}

}  // namespace

std::string start_map_text(const StartMap& map, const StartQuestion& question, UnitSystem units) {
  std::string text = "Will it start?\n\n";
  text += wrapped(limit_sentence(map.limit(question.design.room.temperature), units), text_width, 2) + '\n';
  text += map_grid(map, question.design, units) + '\n' + legend(map);
  if (!map.complete()) text += "  Small letters are not computed: the cells around them agree. A point is not known.\n";
  text += "  < today\n\n";
  return text + wrapped(map_assumptions(question, units), text_width, 2);
}

ordered_json start_map_json(const StartMap& map, const StartQuestion& question) {
  const StartMapGrid& grid = map.grid();
  const auto levels = [](const TemperatureRow& row) {
    ordered_json list = ordered_json::array();
    for (std::size_t i = 0; i < row.count; ++i) list.push_back(kept(in_celsius(row.at(i))));
    return list;
  };
  ordered_json json;
  json["outdoors_C"] = levels(grid.outdoors);
  json["room_C"] = levels(grid.room);
  ordered_json rows = ordered_json::array();
  for (std::size_t r = 0; r < grid.room.count; ++r) {
    ordered_json row = ordered_json::array();
    for (std::size_t o = 0; o < grid.outdoors.count; ++o) {
      const StartCell& cell = map.cell(map.index(o, r));
      if (cell.state == CellState::unknown) {
        row.push_back(nullptr);
      } else if (cell.state == CellState::computed && cell.certain) {
        row.push_back(class_id(cell.start));
      } else {
        row.push_back({{"class", class_id(cell.start)}, {"state", state_id(cell.state)}, {"certain", cell.certain}});
      }
    }
    rows.push_back(std::move(row));
  }
  json["classes_by_room_then_outdoors"] = std::move(rows);
  const StartLimit limit = map.limit(question.design.room.temperature);
  const auto step = [](const std::optional<TemperatureDifference>& d) { return d ? ordered_json(kept(in(*d, kelvin))) : ordered_json(nullptr); };
  json["today"] = {{"outdoors_C", kept(in_celsius(question.design.site.outdoor_temperature))},
                   {"room_C", kept(in_celsius(question.design.room.temperature))}};
  json["kindling"] = {{"room_C", kept(in_celsius(limit.room))},
                      {"enough_from_room_over_outdoors_K", step(limit.enough)},
                      {"not_enough_from_room_over_outdoors_K", step(limit.not_enough)},
                      {"then", limit.then_needs ? ordered_json(class_id(*limit.then_needs)) : ordered_json(nullptr)}};
  json["rules"] = {{"kindling_kg_h", kept(in(question.rules.kindling_share * question.design.fire.burn_rate, kilogram_per_hour))},
                   {"kindling_min", in(question.rules.kindling_lasts, minute)},
                   {"holds_for_min", in(question.rules.holds_for, minute)},
                   {"least_burnt_share", question.rules.least_burnt.value()},
                   {"starved_under_excess_air", question.rules.starved_under.value()},
                   {"fan_min", in(question.allowance.fan_lasts, minute)},
                   {"priming_computed", question.can_prime},
                   {"extra_depressurisation_Pa", in(question.design.room.extra_depressurisation, pascal)},
                   {"neutral_plane_mm", in(question.design.room.neutral_plane, millimetre)}};
  return json;
}

const std::vector<AidColumn>& aid_columns() {
  static const auto computed = [](const AidRow& row) { return row.state == AidState::computed; };
  static const std::vector<AidColumn> columns{
      {to_say("starts"), [](const AidRow& row, UnitSystem) -> std::string { return !computed(row) ? "–" : said(row.starts ? to_say("yes") : to_say("no")); }},
      {to_say("amount"), [](const AidRow& row, UnitSystem) { return row.starts ? amount_text(row) : std::string{}; }},
      {to_say("draws alone from"), [](const AidRow& row, UnitSystem) { return row.self_sustaining ? minutes_text(*row.self_sustaining) + " min" : std::string{}; }},
      {to_say("smoke"), [](const AidRow& row, UnitSystem) { return computed(row) ? grams_text(row.trial.smoke) : std::string{}; }},
      {to_say("motor / rated"),
       [](const AidRow& row, UnitSystem units) {
         if (!row.left_on) return std::string{};
         return fmt::format("{} / {}", show(row.left_on->hottest_motor, units).text(), show(row.left_on->rated_motor, units).text());
       }},
      {to_say("dew at motor"),
       [](const AidRow& row, UnitSystem) -> std::string {
         if (!row.left_on) return {};
         if (!row.left_on->motor_in_stream) return said("outside");
         return row.left_on->wet > Time{} ? minutes_text(row.left_on->wet) + " min" : said("dry");
       }},
      {to_say("fire colder by"),
       [](const AidRow& row, UnitSystem units) {
         if (!row.fire_lost) return std::string{};
         return *row.fire_lost > TemperatureDifference{} ? show(*row.fire_lost, units).text() : said("not colder");
       }},
      {to_say("power cut, left on"),
       [](const AidRow& row, UnitSystem) { return row.power_cut ? power_cut_words(row.power_cut->neutral) : std::string{}; }},
      {to_say("price"), [](const AidRow& row, UnitSystem) { return computed(row) ? money(row.price) : std::string{}; }},
      {to_say("ten years"), [](const AidRow& row, UnitSystem) { return computed(row) ? money(row.ten_years) : std::string{}; }}};
  return columns;
}

std::string aids_text(const std::vector<AidRow>& rows, const AidsQuestion& question, UnitSystem units) {
  std::string text = fmt::format("Starting aids, outdoors {}, room {}\n\n", show(question.design.site.outdoor_temperature, units).text(),
                                 show(question.design.room.temperature, units).text());
  TextTable table;
  std::vector<std::string> head{""};
  for (const AidColumn& column : aid_columns()) head.emplace_back(said(column.heading));
  table.row(std::move(head));
  std::size_t rank = 0;
  for (const AidRow& row : rows) {
    std::vector<std::string> cells{fmt::format("{} {}", ++rank, aid_name(row.task))};
    for (const AidColumn& column : aid_columns()) cells.push_back(column.cell(row, units));
    table.row(std::move(cells));
  }
  text += table.text() + '\n';
  rank = 0;
  for (const AidRow& row : rows) text += wrapped(fmt::format("{} {}: {}", ++rank, aid_name(row.task), reason_sentence(row, units)), text_width, 2, 2);
  text += '\n' + wrapped(aids_assumptions(question.figures), text_width, 2);
  return text;
}

ordered_json aids_json(const std::vector<AidRow>& rows, const AidsQuestion& question) {
  ordered_json json;
  json["outdoors_C"] = kept(in_celsius(question.design.site.outdoor_temperature));
  json["room_C"] = kept(in_celsius(question.design.room.temperature));
  ordered_json list = ordered_json::array();
  for (const AidRow& row : rows) list.push_back(aid_json(row));
  json["aids_ranked"] = std::move(list);
  return json;
}

std::string power_cut_text(const PowerCutAnswer& cut) {
  const std::string_view headline = power_cut_headline(cut);
  if (headline.empty()) return wrapped(power_cut_sentence(cut), text_width, 0);
  return std::string{headline} + '\n' + wrapped(power_cut_sentence(cut), text_width, 2);
}

ordered_json power_cut_json(const PowerCutAnswer& cut) {
  ordered_json json;
  json["depends_on_fan"] = cut.depends_on_fan();
  json["neutral_house"] = cut_run_json(cut.neutral);
  json["depressurised_house"] = cut_run_json(cut.depressurised);
  return json;
}

}  // namespace fluewright
