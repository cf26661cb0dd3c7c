// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/burn_report.hpp"

#include "app/shared/said.hpp"
#include "app/shared/text_table.hpp"

#include <fmt/format.h>

#include <cmath>

namespace fluewright {
namespace {

using nlohmann::ordered_json;

std::string clock(Time t) {
  const auto seconds = static_cast<long>(in(t, second) + 0.5);
  return fmt::format("{}:{:02}:{:02}", seconds / 3600, seconds / 60 % 60, seconds % 60);
}

std::string grams(Mass m) { return fmt::format("{:.0f} g", in(m, gram)); }
std::string kilograms(Mass m) { return fmt::format("{:.2f} kg", in(m, kilogram)); }

double rounded(double value, double unit) { return std::round(value / unit) * unit; }

struct Column {
  std::string_view key;
  double (*value)(const BurnRow&);
};

constexpr Column columns[] = {
    {"at_min", [](const BurnRow& r) { return in(r.at, minute); }},
    {"outdoors_C", [](const BurnRow& r) { return in_celsius(r.outdoors); }},
    {"wanted_kg_h", [](const BurnRow& r) { return in(r.wanted, kilogram_per_hour); }},
    {"burning_kg_h", [](const BurnRow& r) { return in(r.burning, kilogram_per_hour); }},
    {"excess_air_ratio", [](const BurnRow& r) { return r.excess_air_ratio.value(); }},
    {"forward", [](const BurnRow& r) { return r.forward ? 1.0 : 0.0; }},
    {"flue_gas_g_s", [](const BurnRow& r) { return 1e3 * in(r.flue_gas, kilogram_per_second); }},
    {"margin_Pa", [](const BurnRow& r) { return in(r.margin, pascal); }},
    {"foot_draft_Pa", [](const BurnRow& r) { return in(r.foot_draft, pascal); }},
    {"feed_draft_Pa", [](const BurnRow& r) { return in(r.feed_draft, pascal); }},
    {"mouth_froude", [](const BurnRow& r) { return r.mouth_froude.value(); }},
    {"fire_C", [](const BurnRow& r) { return in_celsius(r.fire); }},
    {"exit_C", [](const BurnRow& r) { return in_celsius(r.exit); }},
    {"stored_MJ", [](const BurnRow& r) { return 1e-6 * in(r.stored, joule); }},
    {"burnt_kg", [](const BurnRow& r) { return in(r.burnt, kilogram); }},
    {"smoke_g", [](const BurnRow& r) { return in(r.smoke, gram); }},
    {"condensate_g", [](const BurnRow& r) { return in(r.condensate, gram); }}};

/// A tenth of the last digit that means anything.
double kept(double value) { return std::isfinite(value) ? rounded(value, 1e-4) : 0.0; }

/// Before anything burns the fire has no temperature.
bool says_nothing(const BurnRow& row, std::string_view key) {
  return !(row.burning > MassFlow{}) && (key == "fire_C" || key == "excess_air_ratio" || key == "mouth_froude");
}

ordered_json summary_json(const BurnSummary& s) {
  const auto megajoules = [](Energy e) { return rounded(1e-6 * in(e, joule), 1e-4); };
  ordered_json json;
  json["ran_min"] = in(s.ran, minute);
  json["holds_from_min"] = s.holds_from ? ordered_json(kept(in(*s.holds_from, minute))) : ordered_json(nullptr);
  json["least_margin_Pa"] = kept(in(s.least_margin, pascal));
  json["least_margin_at_min"] = kept(in(s.least_margin_at, minute));
  json["reversed_min"] = kept(in(s.reversed, minute));
  json["starved_min"] = kept(in(s.starved, minute));
  json["smoke_min"] = kept(in(s.smoke_time, minute));
  json["smoke_g"] = kept(in(s.smoke, gram));
  json["counterflow_min"] = kept(in(s.counterflow, minute));
  json["wanted_kg"] = kept(in(s.wanted, kilogram));
  json["burnt_kg"] = kept(in(s.burnt, kilogram));
  json["condensate_g"] = kept(in(s.condensate, gram));
  const BurnHeat& h = s.heat;
  json["heat"] = {{"released_MJ", megajoules(h.released)},       {"unburned_MJ", megajoules(h.unburned)},
                  {"to_room_MJ", megajoules(h.to_room)},         {"to_outdoors_MJ", megajoules(h.to_outdoors)},
                  {"out_of_cap_MJ", megajoules(h.out_of_cap)},   {"out_of_mouth_MJ", megajoules(h.out_of_mouth)},
                  {"stored_MJ", megajoules(h.stored)},           {"in_gas_MJ", megajoules(h.in_gas)},
                  {"latent_MJ", megajoules(h.latent)},           {"closure", h.closure.value()}};
  return json;
}

void summary_lines(std::string& text, const BurnSummary& s, UnitSystem units) {
  TextTable table;
  const auto line = [&](std::string what, std::string value) { table.row({std::move(what), std::move(value)}); };
  line("Holds by itself from", s.holds_from ? clock(*s.holds_from) : "never");
  line("Least draft to spare", fmt::format("{} at {}", show(s.least_margin, units).text(), clock(s.least_margin_at)));
  line("Burnt of what was put in", fmt::format("{} of {}", kilograms(s.burnt), kilograms(s.wanted)));
  line("Short of air for", clock(s.starved));
  line("Backwards for", clock(s.reversed));
  line("Smoke into the room", fmt::format("{} in {}", grams(s.smoke), clock(s.smoke_time)));
  if (s.counterflow > Time{}) line("Smoke can pass the slow mouth for", clock(s.counterflow));
  line("Water on the walls", grams(s.condensate));
  const BurnHeat& h = s.heat;
  line("Heat of the wood", show(h.released, units).text());
  line("  to the room", show(h.to_room, units).text());
  line("  kept in the walls", show(h.stored, units).text());
  line("  through outdoor walls", show(h.to_outdoors, units).text());
  line("  up the stack", show(h.out_of_cap, units).text());
  line("  with smoke into the room", show(h.out_of_mouth, units).text());
  line("  unburned", show(h.unburned, units).text());
  if (h.latent > Energy{}) line("  given back by water on the walls", show(h.latent, units).text());
  line("Balance closes to", fmt::format("{:.3f} %", 100.0 * h.closure.value()));
  text += table.text();
}

}  // namespace

std::string_view sentence(BurnEnd end) {
  switch (end) {
    case BurnEnd::done: return "";
    case BurnEnd::cancelled: return to_say("The run was called off.");
    case BurnEnd::faulty_plan: return to_say("The time line has faults.");
    case BurnEnd::no_path: return to_say("The drawing has no complete path with a fire on it yet: nothing can burn.");
    case BurnEnd::no_open_tee: return to_say("A priming fire wants a tee with a shut port on the way up the stack; there is none.");
    case BurnEnd::diverged: return to_say("The steps would not converge; the run ends there.");
  }
  return "";
}

std::string burn_text(const BurnPlan& plan, const BurnRecord& record, UnitSystem units) {
  std::string text = fmt::format("{}, {} long\n\n", plan.name.empty() ? "Burn" : plan.name, clock(plan.length));
  summary_lines(text, record.summary, units);
  text += '\n';
  TextTable table;
  table.row({"time", "burning", "excess air", "flue gas", "to spare", "foot draft", "fire", "exit", "stored", "smoke"});
  const Time every = plan.length / 40.0;
  Time next{};
  for (const BurnRow& row : record.rows) {
    if (row.at < next && &row != &record.rows.back()) continue;
    next = row.at + every;
    const bool burning = row.burning > MassFlow{};
    table.row({clock(row.at), show(row.burning, units).text(),
               burning ? show(row.excess_air_ratio, units).text() : "–", show(row.flue_gas, units, Meaning::mass_flow_gas).text(),
               show(row.margin, units).text(), show(row.foot_draft, units).text(),
               burning ? show(row.fire, units).text() : "–", show(row.exit, units).text(), show(row.stored, units).text(),
               grams(row.smoke)});
  }
  return text + table.text();
}

ordered_json burn_json(const Design& design, const BurnPlan& plan, const BurnRecord& record) {
  ordered_json json;
  json["plan"] = plan.name;
  json["summary"] = summary_json(record.summary);
  ordered_json slices = ordered_json::array();
  for (const BurnSlice& s : record.slices) {
    slices.push_back({{"piece", design.pieces[s.piece].id}, {"branch", s.branch}, {"to_s_m", kept(in(s.to_s, metre))},
                      {"height_m", kept(in(s.height, metre))}});
  }
  json["slices"] = std::move(slices);
  ordered_json rows = ordered_json::array();
  const auto temperatures = [](const std::vector<Temperature>& all) {
    ordered_json list = ordered_json::array();
    for (const Temperature& t : all) list.push_back(rounded(in_celsius(t), 0.01));
    return list;
  };
  for (const BurnRow& row : record.rows) {
    ordered_json r;
    for (const Column& c : columns) {
      r[std::string{c.key}] = says_nothing(row, c.key) ? ordered_json(nullptr) : ordered_json(kept(c.value(row)));
    }
    r["forward"] = row.forward;
    r["gas_C"] = temperatures(row.gas);
    r["wall_C"] = temperatures(row.wall);
    r["surface_C"] = temperatures(row.surface);
    rows.push_back(std::move(r));
  }
  json["rows"] = std::move(rows);
  return json;
}

std::string burn_csv(const BurnRecord& record) {
  std::string text;
  for (const Column& c : columns) text += fmt::format("{}{}", &c == columns ? "" : ",", c.key);
  text += '\n';
  for (const BurnRow& row : record.rows) {
    for (const Column& c : columns) {
      if (&c != columns) text += ',';
      if (!says_nothing(row, c.key)) text += fmt::format("{:.6g}", c.value(row));
    }
    text += '\n';
  }
  return text;
}

}  // namespace fluewright
