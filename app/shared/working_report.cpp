// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/working_report.hpp"

#include "app/shared/said.hpp"
#include "app/shared/text_table.hpp"
#include "app/shared/words.hpp"
#include "app/shared/working_words.hpp"

#include <fmt/format.h>

namespace fluewright {

namespace {

using nlohmann::ordered_json;

constexpr std::size_t step_in = 2;
constexpr std::size_t note_in = 8;

void add_sentence(std::string& text, std::string sentence) {
  if (sentence.empty()) return;
  text += (text.empty() ? "" : "; ") + std::move(sentence);
}

}  // namespace

std::string_view word(HeadlineNumber number) {
  switch (number) {
    case HeadlineNumber::draft_margin_cold_bench:
      return to_say("draft to spare, cold bench");
    case HeadlineNumber::draft_margin_one_hour:
      return to_say("draft to spare, one hour");
    case HeadlineNumber::draft_margin_charged:
      return to_say("draft to spare, charged");
    case HeadlineNumber::standing_draft:
      return to_say("draft before anything burns");
    case HeadlineNumber::excess_air:
      return to_say("excess air where it settles");
    case HeadlineNumber::fire_temperature:
      return to_say("temperature behind the fire");
    case HeadlineNumber::exit_temperature:
      return to_say("exit temperature");
    case HeadlineNumber::condensation:
      return to_say("where walls get wet");
    case HeadlineNumber::heat_to_room:
      return to_say("heat to the room");
    case HeadlineNumber::heat_into_mass:
      return to_say("heat into the mass");
    case HeadlineNumber::stack_loss:
      break;
  }
  return to_say("heat that leaves with the gas");
}

std::string working_source(const WorkingStep& step) {
  if (step.citation.source.empty()) return {};
  if (step.citation.standing == Standing::published || step.citation.source == "the drawing" ||
      step.citation.source == "the walk along the path") {
    return said(step.citation.source);
  }
  return fmt::format("{} ({})", said(step.citation.source), said(word(step.citation.standing)));
}

std::string working_notes(const WorkingStep& step, const Design& design, const Library& library) {
  std::string text = said_step(step.remark);
  if (step.piece) add_sentence(text, piece_name(design, library, *step.piece));
  if (step.range && step.range->left) {
    add_sentence(text, said("outside the range of its source, {}", step.range->text));
  } else if (step.range) {
    add_sentence(text, said("range {}", step.range->text));
  }
  return text;
}

std::string working_title(const Working& working, const Design& design, const Library& library) {
  return working.piece ? fmt::format("{}: {}", piece_name(design, library, *working.piece), said_step(working.subject)) : said_step(working.subject);
}

std::string working_text(const Working& working, const Design& design, const Library& library, UnitSystem units) {
  std::string text = working_title(working, design, library) + "\n";
  text += wrapped(
      said("SI base units; a temperature in a relation is in kelvin. Values stand to more digits than they mean, so that whoever "
      "works with them gets six back."),
      report_width, step_in);
  std::string part;
  for (const WorkingStep& step : working.steps) {
    if (step.part != part) {
      part = step.part;
      text += fmt::format("\n{}\n", said_step(part));
    }
    const std::string relation = step.relation.empty() ? "" : fmt::format(" = {}", step.relation);
    text += wrapped(fmt::format("{}{} = {}", step.symbol, relation, working_cell(step, units)), report_width, step_in);
    std::string notes = said_step(step.meaning);
    add_sentence(notes, working_notes(step, design, library));
    if (!working_source(step).empty()) notes += fmt::format(" [{}]", working_source(step));
    text += wrapped(notes, report_width, note_in);
  }
  return text;
}

ordered_json working_json(const Working& working, const Design& design, const Library& library) {
  ordered_json json;
  json["subject"] = working_title(working, design, library);
  json["piece"] = working.piece ? ordered_json(design.pieces[*working.piece].id) : ordered_json();
  json["steps"] = ordered_json::array();
  for (const WorkingStep& step : working.steps) {
    ordered_json entry = {{"part", step.part},
                          {"symbol", step.symbol},
                          {"meaning", step.meaning},
                          {"relation", step.relation.empty() ? ordered_json() : ordered_json(step.relation)},
                          {"uses", step.uses},
                          {"value", working_number(step)},
                          {"unit", working_value(step).unit},
                          {"printed", working_value(step).number},
                          {"digits", step.digits},
                          {"source", step.citation.source},
                          {"standing", word(step.citation.standing)},
                          {"remark", step.remark},
                          {"range", nullptr},
                          {"range_left", step.range && step.range->left},
                          {"piece", nullptr}};
    if (step.range) entry["range"] = step.range->text;
    if (step.piece) entry["piece"] = design.pieces[*step.piece].id;
    json["steps"].push_back(std::move(entry));
  }
  return json;
}

}  // namespace fluewright
