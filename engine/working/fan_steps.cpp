// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/working/fan_steps.hpp"

#include <cmath>

namespace fluewright {

namespace {

constexpr VolumeFlow hourly = cubic_metre / hour;

/// To the tenth, a whole number without it.
std::string tenths(double number) {
  const long count = std::lround(number * 10.0);
  const std::string whole = std::to_string(count / 10);
  return count % 10 == 0 ? whole : whole + "." + std::to_string(count % 10);
}

/// "0 m3/h 45 Pa, 60 m3/h 41 Pa".
std::string points_in_words(const FanSheet& sheet) {
  std::string words;
  for (const FanPoint& p : sheet.points) {
    words += (words.empty() ? "" : ", ") + tenths(in(p.flow, hourly)) + " m3/h " + tenths(in(p.head, pascal)) + " Pa";
  }
  return words;
}

Citation fan_laws() { return published("fan laws, AMCA 210 and ISO 5801"); }

/// The head of the sheet at the flow reduced to full speed, and what it gives today.
Pressure add_head(Sheet& sheet, const Fan& fan, const FanPlace& at, const FanEffect& effect, VolumeFlow along) {
  const FanSheet& data = fan.curve.sheet();
  const bool backward = effect.range == FanRange::backward;
  sheet.given("n_fan", "speed of the fan, of its full speed", fan.speed, as_drawn());
  sheet.given("rho_sheet", "gas density for which its sheet holds", data.reference_density, data.citation);
  const VolumeFlow at_full = backward ? VolumeFlow{} : VolumeFlow(along / fan.speed);
  if (!backward) sheet.step("Q_full", "flow through it reduced to full speed", "Q_fan / n_fan", at_full, fan_laws());
  const Pressure head = effect.range == FanRange::beyond ? fan.curve.head_beyond(at_full) : fan.curve.head(at_full);
  const std::string curve = "curve that rises and falls only with its points: " + points_in_words(data);
  sheet.read("p_sheet", backward ? "head of the sheet at no flow" : "head of the sheet at that flow",
             backward ? std::vector<std::string>{} : std::vector<std::string>{"Q_full"}, head, data.citation,
             effect.range == FanRange::beyond ? "straight on past the last of its points: " + points_in_words(data) : curve)
      .within("0 to " + tenths(in(fan.curve.last_flow(), hourly)) + " m3/h",
              effect.range == FanRange::within);
  const double blows = fan.blows_along ? 1.0 : -1.0;
  const Pressure raised = blows * effect.head;
  sheet.step("dp_fan", fan.blows_along ? "raised by the fan" : "raised by the fan, which blows against the gas",
             std::string{fan.blows_along ? "" : "-"} + "n_fan^2 * " + at.density + " / rho_sheet * p_sheet", raised, fan_laws());
  return raised;
}

}  // namespace

Pressure add_fan(Sheet& sheet, const Stretch& stretch, const FanPlace& at, std::vector<std::string>& losses) {
  const Fan& fan = *stretch.fan;
  const FanSheet& data = fan.curve.sheet();
  const VolumeFlow flow = at.flow / at.rho;
  const VolumeFlow along = fan.blows_along ? flow : VolumeFlow(-flow);
  const FanEffect effect = fan_effect(fan, along, at.rho, stretch.section.area());
  sheet.step("Q_fan", "flow through the fan", std::string{at.flow_symbol} + " / " + at.density, flow, by_definition());
  Pressure raised{};
  if (fan.speed > 0.0) raised = add_head(sheet, fan, at, effect, along);
  if (effect.loss == Pressure{}) return raised;
  const Citation ours = chosen("outside its points a fan also stands in the way");
  sheet.given("zeta_off", "loss of the fan standing still, velocity heads", data.off_loss, data.citation);
  if (effect.range == FanRange::beyond) {
    sheet.given("Q_last", "last flow of its sheet, at full speed", fan.curve.last_flow(), data.citation);
    sheet.step("dp_off", "loss: fan past its sheet", std::string{"zeta_off * 0.5 * "} + at.density + " * (Q_fan^2 - (n_fan * Q_last)^2) / A^2",
               effect.loss, ours);
  } else {
    sheet.step("dp_off", fan.speed > 0.0 ? "loss: fan that the gas passes backward" : "loss: fan standing still",
               std::string{"zeta_off * "} + at.head, effect.loss, fan.speed > 0.0 ? ours : by_definition());
  }
  losses.emplace_back("dp_off");
  return raised;
}

}  // namespace fluewright
