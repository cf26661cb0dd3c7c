// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/practice_words.hpp"

#include "app/shared/said.hpp"

#include <fmt/format.h>

namespace fluewright {

namespace {

/// The words for a bench age by its id.
std::string age_words(const std::string& id) {
  if (id == "cold_bench") return said("With a cold bench");
  if (id == "one_hour") return said("An hour after lighting");
  return said("With the bench charged");
}

std::string percent(const FieldValue& value, UnitSystem units) {
  return show(std::get<Ratio>(value), units, Meaning::share).text();
}

std::string length_text(const FieldValue& value, UnitSystem units, Meaning meaning) {
  return show(std::get<Length>(value), units, meaning).text();
}

std::string draft_sentence(const Finding& f, const FindingArguments& a) {
  switch (f.code) {
    case FindingCode::will_not_draw:
      return said("{} it will not draw at the wanted fire: {} of draft are missing.", age_words(f.text),
                         show(Pressure(-std::get<Pressure>(f.value)), a.units()).text());
    case FindingCode::marginal:
      return said("{} it draws with only {} to spare.", age_words(f.text), a.value());
    case FindingCode::choke_inlet:
      if (!f.text.empty()) {
        return said("{}: the fire gets more air than is wanted, and even shut down to {} the mouth lets too much in.",
                           a.piece(), percent(*f.highest, a.units()));
      }
      return said(
          "{}: once the heater is warm, choke the mouth from {} to {} of its section and the fire gets the wanted air; open it "
          "to light.",
          a.piece(), percent(f.value, a.units()), percent(*f.highest, a.units()));
    case FindingCode::exit_too_hot:
      return said("The gas leaves the cap at {}, over {}: a longer bench could keep that heat.", a.value(), a.highest());
    case FindingCode::house_suction:
      return said("Exhaust fans pull the house {} under outdoors; from {} on it is a caution.", a.value(), a.highest());
    default:
      return {};
  }
}

std::string shape_sentence(const Finding& f, const FindingArguments& a) {
  const UnitSystem units = a.units();
  switch (f.code) {
    case FindingCode::water_pools:
      return said("{}: {} of water run to this lowest place and find no drain.", a.piece(),
                         show(std::get<MassFlow>(f.value), units, Meaning::water_rate).text());
    case FindingCode::wrong_fall:
      return said("{}: it falls {} along the flow, to a place without a drain.", a.piece(),
                         show(Ratio(-std::get<Ratio>(f.value)), units, Meaning::share).text());
    case FindingCode::narrowing:
      return said("{}: the flue narrows to a bore of {}; the system behind the fire has {}.", a.piece(), a.value(),
                         a.lowest());
    case FindingCode::low_outlet:
      return said("{}: the outlet stands {} over {}; at least {} are usual.", a.piece(),
                         length_text(f.value, units, Meaning::run_length),
                         f.field.empty() ? said("the roof where the chimney comes through") : said("what is highest within 3 m (10 ft)"),
                         length_text(*f.lowest, units, Meaning::run_length));
    case FindingCode::near_combustibles:
      return said("{}: a single wall {} from what burns; it needs {}.", a.piece(), a.value(), a.lowest());
    case FindingCode::hidden_single_wall:
      return said("{}: a single wall goes through the attic, where nobody sees it.", a.piece());
    case FindingCode::missing_cleanout:
      return said("{}: no cleanout from which a brush of {} gets to it.", a.piece(),
                         length_text(f.value, units, Meaning::run_length));
    default:
      return {};
  }
}

std::string comfort_sentence(const Finding& f, const FindingArguments& a) {
  switch (f.code) {
    case FindingCode::gas_too_fast:
      return said("{}: the gas runs at {}, over {}.", a.piece(), a.value(), a.highest());
    case FindingCode::gas_too_slow:
      return said("{}: the gas creeps at {}, under {}.", a.piece(), a.value(), a.lowest());
    case FindingCode::seat_too_hot:
      return said("{}: fired without a break its surface comes to {}; over {} it is no seat.", a.piece(), a.value(),
                         a.highest());
    case FindingCode::floor_overloaded:
      return said("{}: the bench weighs {} on its floor, which is said to carry {}.", a.piece(), a.value(), a.highest());
    case FindingCode::no_alarm_note:
      return said("The design does not say that there is a carbon-monoxide alarm.");
    default:
      return {};
  }
}

}  // namespace

std::string practice_sentence(const Finding& finding, const FindingArguments& arguments) {
  std::string text = draft_sentence(finding, arguments);
  if (text.empty()) text = shape_sentence(finding, arguments);
  if (text.empty()) text = comfort_sentence(finding, arguments);
  return text;
}

}  // namespace fluewright
