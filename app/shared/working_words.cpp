// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/working_words.hpp"

#include "app/shared/said.hpp"

#include <fmt/args.h>

#include <algorithm>
#include <iterator>
#include <optional>
#include <vector>

namespace fluewright {

namespace {

/// As the engine writes them, sorted.
constexpr const char* steps[] = {
    to_say("Air"), to_say("Balance at that flow"), to_say("Beside the walk's own row"),
    to_say("Chilton & Colburn analogy"), to_say("Dalton's law"), to_say("Darcy friction factor"),
    to_say("Draft before anything burns"), to_say("Draft to spare"), to_say("EN 13384-1, external values"),
    to_say("Ends of the path"), to_say("Ends that are open to the air"), to_say("Exit"), to_say("Film inside"),
    to_say("Film outside"), to_say("Fire in the gas's way"), to_say("Flue gas"), to_say("Fourier's law"),
    to_say("From the fire to the cap"), to_say("Gas"), to_say("Graetz number"), to_say("Heat"),
    to_say("Lewis number"), to_say("Moisture"), to_say("Nusselt number across a cylinder"),
    to_say("Nusselt number of free convection on a level cylinder"),
    to_say("Nusselt number of free convection on a seat facing up"),
    to_say("Nusselt number of free convection on an upright wall"), to_say("Nusselt number, laminar"),
    to_say("Nusselt number, turbulent, far from the entry"), to_say("Piece by piece"), to_say("Prandtl number"),
    to_say("Prandtl number there"), to_say("Pressure"), to_say("Rayleigh number"), to_say("Reynolds number"),
    to_say("Reynolds number across the pipe"), to_say("S_E, it is a loss"), to_say("Section"),
    to_say("Side branches"), to_say("Stack"), to_say("Stefan flow, Incropera & DeWitt ch. 14"),
    to_say("Stefan-Boltzmann law"), to_say("Stretch by stretch"), to_say("The whole piece"), to_say("Wall"),
    to_say("What flows in this branch"), to_say("Wood and fire"), to_say("a film acts like k/h of cover"),
    to_say("absolute pressure"), to_say("acceleration in the piece"), to_say("added over its slices"),
    to_say("added over the branch's slices"), to_say("added over the piece's slices"), to_say("air does not radiate"),
    to_say("air that comes in"), to_say("air that reaches the fire"), to_say("all that lies behind the inner face"),
    to_say("allowance for wind"), to_say("altitude"), to_say("area over perimeter of the seat"),
    to_say("argon by volume"), to_say("as it has mixed where the branches meet, by the balance of each gas"),
    to_say("as the slice before leaves it"), to_say("as wanted"), to_say("ash, share of the dry wood"),
    to_say("behind the junction"), to_say("between laminar and turbulent"), to_say("blade"), to_say("bore"),
    to_say("bore that the resistances refer to"), to_say("both together"), to_say("buoyancy"),
    to_say("buoyancy in the piece"), to_say("buoyancy of the air that stands in it"), to_say("by polynomial"),
    to_say("by polynomial, from the enthalpies at both ends"), to_say("by polynomial, mixed by mole fraction"),
    to_say("by polynomial, of the gas the branch carries"),
    to_say("by polynomial: (h(T_in) - h(T_L)) / (T_in - T_L)"),
    to_say("by polynomial: (h(T_in) - h(T_out)) / (T_in - T_out)"),
    to_say("by polynomial: the temperature at which the gas holds that enthalpy"),
    to_say("by polynomial: the temperature at which the mixed gas holds that enthalpy"),
    to_say("by polynomial: weighted sum of grey gases"), to_say("by table"), to_say("by the published equation"),
    to_say("by the same polynomial at T_w"), to_say("carbon dioxide by volume"),
    to_say("carbon in a kilogram of wood, and the CO2 it makes"), to_say("carbon, share of the dry, ash-free wood"),
    to_say("centre line under the surface"), to_say("conduction shape factor, per metre of run"),
    to_say("conductivity"), to_say("conductivity there"), to_say("convective film"), to_say("definition"),
    to_say("density"), to_say("density of dry air there"), to_say("density of the outdoor air"),
    to_say("density of the room air"), to_say("density of vapour alone there"), to_say("density on entering"),
    to_say("density on leaving"), to_say("density there"), to_say("depth with the film turned into cover"),
    to_say("dew point"), to_say("diameter over that length"), to_say("diffusivity of vapour there"),
    to_say("draft before anything burns"), to_say("draft to spare"), to_say("draft to spare while the fans run"),
    to_say("dry air that just burns a kilogram of wood"), to_say("dry, ash-free share of the wood as fired"),
    to_say("emissivity of the gas"), to_say("emissivity of the outer face"), to_say("emissivity of the sooted wall"),
    to_say("enthalpy of the air that came in"), to_say("enthalpy of the flue gas"),
    to_say("enthalpy of the gas that leaves"), to_say("enthalpy of what has mixed"), to_say("equal area"),
    to_say("exact for one level and constant properties"), to_say("exact, as q"), to_say("excess air"),
    to_say("excess-air ratio"), to_say("fall of the gas's temperature"), to_say("fan laws, AMCA 210 and ISO 5801"),
    to_say("film inside"), to_say("film inside as a resistance"), to_say("film of its radiation"),
    to_say("film of the gas around the riser"), to_say("film of the gas's radiation"), to_say("film of the wind"),
    to_say("film on the ground"), to_say("film outside"), to_say("film outside, on the inner face"),
    to_say("first law"), to_say("flow of the exhaust fans"), to_say("flow through it reduced to full speed"),
    to_say("flow through the fan"), to_say("flue gas"), to_say("flue gas of a kilogram of wood"),
    to_say("flue gas that leaves it"), to_say("forced film"),
    to_say("found by repetition; it comes back at the end of the heat"), to_say("free area"),
    to_say("free area before the step"), to_say("free exit"), to_say("free film"),
    to_say("friction and fittings in the piece"), to_say("from gas to surroundings"),
    to_say("from the balance of flows and pressures"), to_say("gas above that level on entering"),
    to_say("gas above the wall's inner face"), to_say("gas at the cap"), to_say("gas behind the fire"),
    to_say("gas constant of that air"), to_say("gas constant of the gas"),
    to_say("gas density for which its sheet holds"), to_say("gas in the branch"),
    to_say("gas that comes in, as it has mixed"), to_say("gas that enters the slice"), to_say("gas that goes out"),
    to_say("gas that leaves it"), to_say("gas that leaves the branch"), to_say("gas that leaves the piece"),
    to_say("gas that leaves the slice"), to_say("gas that leaves the slice, as the walk has it"),
    to_say("gas that passes"), to_say("gas, mean over the slice"), to_say("gauge and velocity head on entering"),
    to_say("gauge of the room at that height"), to_say("gauge of the room at the inlet"),
    to_say("gauge of the wind at the cap"), to_say("gauge pressure on leaving"), to_say("geometry"),
    to_say("head of the sheet at that flow"), to_say("heat added to the gas"), to_say("heat capacity"),
    to_say("heat capacity there"), to_say("heat capacity, mean from T_L to T_in"),
    to_say("heat capacity, mean over the piece"), to_say("heat capacity, mean over the slice"),
    to_say("heat into the mass"), to_say("heat put in by the riser within"), to_say("heat released"),
    to_say("heat that leaves with the gas"), to_say("heat that leaves with the gas, above the air that came in"),
    to_say("heat the gas loses"), to_say("heat the gas loses in the branch"),
    to_say("heat the gas loses in the piece"), to_say("heat through its walls"),
    to_say("heat through the inner face"), to_say("heat through the wall"),
    to_say("heat through the wall, as the walk has it"), to_say("heat to the room"), to_say("height"),
    to_say("height of the chamber"), to_say("height of the inlet above the floor"), to_say("height of the mass"),
    to_say("height of the slice's end above the floor"), to_say("height of the wall"), to_say("how warm it is there"),
    to_say("hydraulic diameter"), to_say("hydrogen, likewise"), to_say("hydrostatics"), to_say("ideal gas"),
    to_say("inner face above the dew point: wet where this is not positive"), to_say("inner face of the wall"),
    to_say("inner face, as the walk has it"), to_say("inside diameter of the jacket"),
    to_say("invented, as if read off a label"), to_say("it is in the cover"), to_say("its gas there"),
    to_say("its partial pressure here"), to_say("its temperature"), to_say("layers of the wall"), to_say("length"),
    to_say("length of the slice"), to_say("level the gas tends to"), to_say("linear between the material's points"),
    to_say("linear blend between Re 2300 and 4000"), to_say("loss at the mouth: the jet's velocity head, not in dp"),
    to_say("loss by acceleration"), to_say("loss: acceleration"),
    to_say("loss: acceleration of the gas, negative where it cools"), to_say("loss: blade"),
    to_say("loss: fittings, steps, entry and exit"),
    to_say("loss: fittings, steps, entry and exit, and the junction before it"), to_say("loss: friction"),
    to_say("loss: rain cap"), to_say("loss: rim, when air comes down"), to_say("loss: step in area"),
    to_say("losses together"), to_say("mass flux"), to_say("mass transfer coefficient"), to_say("mean beam length"),
    to_say("mean of the slices around it, walked through until both agree"), to_say("measured suction of the house"),
    to_say("midway between gas and wall"), to_say("midway between its faces"),
    to_say("midway between outer face and surroundings"), to_say("moist air, with the vapour it brings"),
    to_say("moisture, share of the wood as fired"), to_say("molar mass of dry air"),
    to_say("molar mass of the flue gas"), to_say("molar mass of the gas"), to_say("molar mass of the moist air"),
    to_say("momentum at constant area"), to_say("net heating value as fired"),
    to_say("net heating value of the dry, ash-free wood"), to_say("neutral plane above the floor"),
    to_say("nitrogen by volume"), to_say("nitrogen in the wood"), to_say("nitrogen, likewise"), to_say("no source"),
    to_say("none of its own"), to_say("number of transfer units of the slice"), to_say("outer face"),
    to_say("outer face above T_b"), to_say("outer face above it"), to_say("outside diameter"),
    to_say("outside diameter of the core"), to_say("overall coefficient on the inner face"),
    to_say("overall coefficient, as the walk has it"), to_say("oxygen by volume"),
    to_say("oxygen in dry air by volume"), to_say("oxygen needed from the air"), to_say("oxygen, likewise"),
    to_say("partial pressure of the CO2 that the fire has put into it"), to_say("partial pressure of the vapour"),
    to_say("partial pressure of the vapour that the fire has put into it"),
    to_say("path above room: smoke leaks out where this is positive"), to_say("perimeter that gives heat away"),
    to_say("perimeter that gives heat away: the outer one"),
    to_say("power law of blower-door tests (ISO 9972), exponent customary"), to_say("rain cap"),
    to_say("raised by fans"), to_say("raised by its fan"), to_say("raised by the fan"),
    to_say("raised by the fan of the piece"), to_say("relative humidity of the outdoor air"),
    to_say("relative humidity of the room air"), to_say("relative roughness"),
    to_say("resistance of friction and fittings"), to_say("rim, when air comes down"), to_say("rise of the slice"),
    to_say("rise of the stretch"), to_say("rough and turbulent part"), to_say("roughness"),
    to_say("safety on the acceleration"), to_say("safety on the resistance"), to_say("saturation pressure at T_o"),
    to_say("saturation pressure at T_r"), to_say("saturation pressure at the wall"),
    to_say("share of the heat that leaves unburned"), to_say("share of the mass's outline that faces the room"),
    to_say("share of the vapour that has not condensed before"),
    to_say("share of the wall's radiation that the gas absorbs"), to_say("side of the square of equal area"),
    to_say("speed of the fan, of its full speed"), to_say("standing draft; negative: air comes down the stack"),
    to_say("step to a wider area, on the narrow head"), to_say("stoichiometry; IUPAC conventional atomic weights"),
    to_say("suction by the exhaust fans"), to_say("suction of the house"),
    to_say("surface of the seat over the inner face"), to_say("surface that gives heat away"),
    to_say("temperature behind the fire"), to_say("temperature of the gas that leaves"),
    to_say("temperature of the outdoor air"), to_say("temperature of the room air"), to_say("the T_m set out with"),
    to_say("the air around it"), to_say("the air mdot_a, before the fire"), to_say("the dT_s set out with"),
    to_say("the dT_w set out with"), to_say("the drawing"), to_say("the flue gas mdot_g"),
    to_say("the gas around the riser"), to_say("the same by mass, stoichiometric air"), to_say("the same on leaving"),
    to_say("the same walk with the fans at their speed"), to_say("the same with the entry"),
    to_say("the walk along the path"),
    to_say("the walk repeats a slice a fixed number of times, here it was repeated to rest"),
    to_say("the wall's own temperature"), to_say("through the walls of a side branch"),
    to_say("through the walls of the piece"), to_say("transitional part"), to_say("unbroken length of this section"),
    to_say("vapour in the air that feeds the fire, by volume"), to_say("vapour in the gas as it left the fire"),
    to_say("velocity"), to_say("velocity head on entering"), to_say("velocity head on leaving"), to_say("viscosity"),
    to_say("viscosity there"), to_say("volume of the house"), to_say("water in the wood"),
    to_say("water made by its hydrogen"), to_say("water that condenses in it"),
    to_say("water that condenses in the slice"), to_say("water that the wall takes per surface"),
    to_say("water vapour by volume"), to_say("wetted perimeter"), to_say("what drives the gas"),
    to_say("what flows in this branch"), to_say("what has mixed where the branches meet"),
    to_say("what holds it back; the same, so the flow stays"),
    to_say("what running fans add, and what they no longer stand in the way"), to_say("what stands around it"),
    to_say("what the last branch leaves"), to_say("what the last piece leaves"),
    to_say("what the piece adds to the gauge and velocity head"), to_say("what the slice's wall lets through"),
    to_say("what the wall loses heat to"), to_say("where drive and losses balance along the path"), to_say("width"),
    to_say("width of the mass"), to_say("wind"), to_say("wind pressure coefficient at the cap"),
    to_say("with cp by polynomial"), to_say("wood burnt"),
};

/// With a number or a name in them; the first that fits is taken.
constexpr const char* patterns[] = {
    to_say("no wall is wet; the one nearest to its dew point: slice {} of {}"),
    to_say("where walls begin to be wet: slice {} of {}"),
    to_say("curve that rises and falls only with its points: {}"),
    to_say("the piece, and slice {} of {} in its middle"), to_say("the piece, and slice {} of {} with its fan"),
    to_say("resistance of the {}, on the inner face"), to_say("its enthalpy, nought at {} degC"),
    to_say("conductivity of the {} at {} degC"), to_say("air changes an hour at {} Pa"),
    to_say("outside diameter of the {}"), to_say("added over its {} slices"), to_say("the {}'s own temperature"),
    to_say("conductivity of the {}"), to_say("what branch {} brings"), to_say("Where branch {} ends"),
    to_say("thickness of the {}"), to_say("slice {} of {}"), to_say("Branch {}"), to_say("loss: {}"),
};

/// What stands in the holes of a pattern; nothing if the text is not of it.
std::optional<std::vector<std::string>> values_of(std::string_view pattern, std::string_view text) {
  constexpr std::string_view hole = "{}";
  std::vector<std::string> values;
  std::size_t at = pattern.find(hole);
  if (text.substr(0, at) != pattern.substr(0, at)) return std::nullopt;
  text.remove_prefix(at);
  while (at != std::string_view::npos) {
    const std::size_t from = at + hole.size();
    at = pattern.find(hole, from);
    const std::string_view behind = pattern.substr(from, at == std::string_view::npos ? at : at - from);
    const bool last = at == std::string_view::npos;
    const std::size_t end = last ? (text.ends_with(behind) ? text.size() - behind.size() : std::string_view::npos) : text.find(behind);
    if (end == std::string_view::npos || end == 0) return std::nullopt;
    values.emplace_back(text.substr(0, end));
    text.remove_prefix(end + behind.size());
  }
  return values;
}

bool is_plain(std::string_view english) {
  return std::binary_search(std::begin(steps), std::end(steps), english,
                            [](std::string_view a, std::string_view b) { return a < b; });
}

}  // namespace

std::string said_step(std::string_view english) {
  if (is_plain(english)) return said(english);
  for (const char* pattern : patterns) {
    const auto values = values_of(pattern, english);
    if (!values) continue;
    fmt::dynamic_format_arg_store<fmt::format_context> store;
    for (const std::string& value : *values) store.push_back(value);
    return said_with(pattern, store);
  }
  return std::string(english);
}

bool is_known_step(std::string_view english) {
  return is_plain(english) ||
         std::any_of(std::begin(patterns), std::end(patterns), [&](const char* pattern) { return values_of(pattern, english).has_value(); });
}

}  // namespace fluewright
