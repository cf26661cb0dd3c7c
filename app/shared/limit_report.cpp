// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/limit_report.hpp"

#include "app/shared/said.hpp"
#include "app/shared/text_table.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace fluewright {

namespace {

using nlohmann::ordered_json;


struct LimitWords {
  LimitKind kind;
  std::string_view name;
  std::string_view title;
  std::string_view axis;
  std::string_view missing;  ///< what the design lacks
};
constexpr LimitWords all_words[] = {
    {LimitKind::longest_bench, "longest_bench", to_say("Longest bench"), to_say("Length of the bench"), to_say("no straight run in a bench or under the floor")},
    {LimitKind::shortest_stack, "shortest_stack", to_say("Shortest stack"), to_say("Upright length of the chimney"), to_say("no upright run in its chimney")},
    {LimitKind::smallest_bore, "smallest_bore", to_say("Smallest bore"), to_say("Bore of the flue"), to_say("no round flue behind a drum or bell")},
    {LimitKind::most_bends, "most_bends", to_say("Most bends"), to_say("Level bends on the path"), to_say("no bench to put bends into")},
    {LimitKind::coldest_bench, "coldest_bench", to_say("Coldest bench"), to_say("Room and bench before lighting"), ""},
    {LimitKind::weakest_difference, "weakest_difference", to_say("Weakest temperature difference"), to_say("Outdoors"), ""}};

const LimitWords& words_of(LimitKind kind) {
  return *std::find_if(std::begin(all_words), std::end(all_words), [kind](const LimitWords& w) { return w.kind == kind; });
}

std::string found_sentence(const LimitAnswer& a, const Design& design, UnitSystem units) {
  const std::string at = limit_value_text(a.kind, *a.found, units);
  const std::string today = limit_value_text(a.kind, a.scale.today, units);
  const std::string spare = show(a.wanted, units).text();
  switch (a.kind) {
    case LimitKind::longest_bench:
      return said("The bench may be {} long at most to keep {} to spare; drawn are {}.", at, spare, today);
    case LimitKind::shortest_stack:
      return said("The chimney's upright runs need {} at least to keep {} to spare; drawn are {}.", at, spare, today);
    case LimitKind::smallest_bore:
      return said("The flue needs a bore of {} at least to keep {} to spare; drawn are {}.", at, spare, today);
    case LimitKind::most_bends:
      return said("{} at most keep {} to spare; drawn are {}.", at, spare, today);
    case LimitKind::coldest_bench:
      return said("Down to {} in room and bench it keeps {} to spare; set are {}.", at, spare, today);
    case LimitKind::weakest_difference: {
      const TemperatureDifference left = design.room.temperature - std::get<Temperature>(*a.found);
      return said("Up to {} outdoors, {} under the room, it keeps {} to spare; set are {}.", at,
                         show(left, units).text(), spare, today);
    }
  }
  return {};
}

/// The end of the scale towards which the margin was followed.
std::string always_sentence(const LimitAnswer& a, UnitSystem units) {
  const std::string low = limit_value_text(a.kind, a.scale.lowest, units);
  const std::string high = limit_value_text(a.kind, a.scale.highest, units);
  const std::string spare = show(a.wanted, units).text();
  switch (a.kind) {
    case LimitKind::longest_bench: return said("No limit up to {} of bench: {} stay to spare.", high, spare);
    case LimitKind::shortest_stack: return said("No limit down to {} of chimney: {} stay to spare.", low, spare);
    case LimitKind::smallest_bore: return said("No limit down to a bore of {}: {} stay to spare.", low, spare);
    case LimitKind::most_bends: return said("No limit up to {}: {} stay to spare.", high, spare);
    case LimitKind::coldest_bench: return said("No limit down to {} in room and bench: {} stay to spare.", low, spare);
    case LimitKind::weakest_difference: return said("No limit up to {} outdoors: {} stay to spare.", high, spare);
  }
  return {};
}

std::string never_sentence(const LimitAnswer& a, UnitSystem units) {
  const std::string low = limit_value_text(a.kind, a.scale.lowest, units);
  const std::string high = limit_value_text(a.kind, a.scale.highest, units);
  const std::string spare = show(a.wanted, units).text();
  switch (a.kind) {
    case LimitKind::longest_bench: return said("No bench is short enough to keep {} to spare, down to {}.", spare, low);
    case LimitKind::shortest_stack: return said("No chimney up to {} keeps {} to spare.", high, spare);
    case LimitKind::smallest_bore: return said("No bore up to {} keeps {} to spare.", high, spare);
    case LimitKind::most_bends: return said("Even with the fewest bends that can be built it does not keep {} to spare.", spare);
    case LimitKind::coldest_bench: return said("No room up to {} keeps {} to spare.", high, spare);
    case LimitKind::weakest_difference: return said("No frost down to {} keeps {} to spare.", low, spare);
  }
  return {};
}

std::string x_key(const FieldValue& x, const char* stem) {
  const bool length = std::holds_alternative<Length>(x);
  return fmt::format("{}{}", stem, length ? "_m" : std::holds_alternative<Temperature>(x) ? "_C" : "_count");
}

double x_number(const FieldValue& x) {
  if (const auto* temperature = std::get_if<Temperature>(&x)) return in_celsius(*temperature);
  return limit_number(x);
}

}  // namespace

std::string_view limit_name(LimitKind kind) { return words_of(kind).name; }
std::string limit_title(LimitKind kind) { return said(words_of(kind).title); }
std::string limit_axis(LimitKind kind) { return said(words_of(kind).axis); }

std::string_view margin_by_words(MarginBy by) {
  return by == MarginBy::estimate ? "quick estimate" : "worked out in time";
}

std::optional<LimitKind> limit_called(std::string_view name) {
  for (const LimitWords& words : all_words) {
    if (words.name == name) return words.kind;
  }
  return std::nullopt;
}

std::string limit_value_text(LimitKind kind, const FieldValue& x, UnitSystem units) {
  if (const auto* length = std::get_if<Length>(&x)) {
    return show(*length, units, kind == LimitKind::smallest_bore ? Meaning::small_length : Meaning::run_length).text();
  }
  if (const auto* temperature = std::get_if<Temperature>(&x)) return show(*temperature, units).text();
  const int count = std::get<Count>(x).value;
  return fmt::format("{} {}", count, count == 1 ? "bend" : "bends");
}

std::string limit_sentence(const LimitAnswer& answer, const Design& design, UnitSystem units) {
  switch (answer.state) {
    case LimitState::found: return found_sentence(answer, design, units);
    case LimitState::always: return always_sentence(answer, units);
    case LimitState::never: break;
  }
  return never_sentence(answer, units);
}

std::string no_limit_sentence(LimitKind kind, bool has_answer) {
  if (!has_answer) return said("The drawing has no answer yet; its faults come first.");
  return said("The design has {}.", said(words_of(kind).missing));
}

ordered_json limit_json(const LimitAnswer& answer, const Design& design) {
  ordered_json json;
  json["limit"] = limit_name(answer.kind);
  json["wanted_margin_Pa"] = in(answer.wanted, pascal);
  json["state"] = answer.state == LimitState::found ? "found" : answer.state == LimitState::always ? "always" : "never";
  json["by"] = margin_by_words(answer.by);
  json["sentence"] = limit_sentence(answer, design, UnitSystem::metric);
  const std::string found = x_key(answer.scale.today, "found");
  json[found] = answer.found ? ordered_json(x_number(*answer.found)) : ordered_json();
  json["margin_Pa"] = answer.found ? ordered_json(in(answer.margin, pascal)) : ordered_json();
  json[x_key(answer.scale.today, "today")] = x_number(answer.scale.today);
  json["curve"] = ordered_json::array();
  for (const LimitPoint& point : answer.curve) {
    ordered_json entry = {{x_key(point.x, "x"), x_number(point.x)}, {"margin_Pa", nullptr}};
    if (point.margin) entry["margin_Pa"] = in(*point.margin, pascal);
    json["curve"].push_back(std::move(entry));
  }
  return json;
}

std::string limit_text(const LimitAnswer& answer, const Design& design, UnitSystem units) {
  std::string text = limit_title(answer.kind) + "\n" + wrapped(limit_sentence(answer, design, units), report_width, 2, 2);
  TextTable table;
  table.row({limit_axis(answer.kind), "margin", std::string(margin_by_words(answer.by))});
  const char* const none = answer.by == MarginBy::estimate ? "cannot be built" : "not found";
  for (const LimitPoint& point : answer.curve) {
    table.row({limit_value_text(answer.kind, point.x, units), point.margin ? show(*point.margin, units).text() : none,
               point.x == answer.scale.today ? "drawn" : ""});
  }
  return text + table.text(4);
}

}  // namespace fluewright
