// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/working/explain.hpp"
#include "engine/working/slice_case.hpp"

#include <algorithm>

namespace fluewright {

namespace {

void add_walk(Sheet& sheet, const SliceCase& c) {
  const SliceState& row = c.run->rows[c.row];
  const char* const why = "the walk repeats a slice a fixed number of times, here it was repeated to rest";
  sheet.part("Beside the walk's own row");
  sheet.given("walk_T_out", "gas that leaves the slice, as the walk has it", row.gas, from_the_walk()).remark(why);
  sheet.given("walk_T_w", "inner face, as the walk has it", row.wall, from_the_walk()).remark(why);
  sheet.given("walk_U", "overall coefficient, as the walk has it", row.overall, from_the_walk()).remark(why);
  sheet.given("walk_q_w", "heat through the wall, as the walk has it", row.heat, from_the_walk()).remark(why);
}

void add_slice_parts(Sheet& sheet, const Retrace& run, std::size_t row) {
  const SliceCase c = slice_case(run, row);
  add_air(sheet, run);
  add_fire(sheet, run);
  if (burns_here(c)) add_burning(sheet, run, before_fire(c));
  add_gas(sheet, c);
  add_inner_film(sheet, c);
  add_wall(sheet, c);
  add_outer_film(sheet, c);
  add_exchange(sheet, c);
  add_pressure(sheet, c);
  add_moisture(sheet, c);
  add_walk(sheet, c);
}

/// Rows [first, last) of a piece.
struct Rows {
  std::size_t first = 0;
  std::size_t last = 0;
};

Rows rows_of(const Retrace& run, std::size_t piece) {
  const auto mine = [piece](const SliceState& s) { return s.piece == piece; };
  const auto first = std::find_if(run.rows.begin(), run.rows.end(), mine);
  const auto last = std::find_if_not(first, run.rows.end(), mine);
  return {static_cast<std::size_t>(first - run.rows.begin()), static_cast<std::size_t>(last - run.rows.begin())};
}

void add_sums(Sheet& sheet, const Retrace& run, const Rows& rows) {
  Length length{};
  Pressure friction{};
  Pressure local{};
  Pressure acceleration{};
  Pressure buoyancy{};
  Power heat{};
  MassFlow water{};
  for (std::size_t i = rows.first; i < rows.last; ++i) {
    const SliceState& row = run.rows[i];
    length += row.length;
    friction += row.friction;
    local += row.local;
    acceleration += row.acceleration;
    buoyancy += row.buoyancy;
    heat += row.heat;
    water += row.condensing;
  }
  const std::string how = "added over its " + std::to_string(rows.last - rows.first) + " slices";
  const auto sum = [&](const char* symbol, const char* meaning, WorkingValue value) {
    sheet.given(symbol, meaning, value, from_the_walk()).remark(how);
  };
  sheet.part("The whole piece");
  sum("L_p", "length", length);
  sum("dpf_p", "loss: friction", friction);
  sum("dpl_p", "loss: fittings, steps, entry and exit", local);
  sum("dpa_p", "loss: acceleration", acceleration);
  sheet.step("dp_p", "losses together", "dpf_p + dpl_p + dpa_p", Pressure(friction + local + acceleration),
             by_definition(), Carries::sum);
  sum("dpb_p", "buoyancy", buoyancy);
  sheet.step("gain_p", "what the piece adds to the gauge and velocity head", "dpb_p - dp_p",
             Pressure(buoyancy - friction - local - acceleration), by_definition(), Carries::sum);
  sum("q_p", "heat through its walls", heat);
  sum("m_p", "water that condenses in it", water);
  sheet.given("T_p", "gas that leaves it", run.rows[rows.last - 1].gas, from_the_walk());
}

}  // namespace

std::optional<std::size_t> middle_row(const Retrace& run, std::size_t piece) {
  const Rows rows = rows_of(run, piece);
  if (rows.first == rows.last) return std::nullopt;
  return rows.first + (rows.last - rows.first) / 2;
}

Working explain_slice(const Retrace& run, std::size_t row) {
  Sheet sheet{"slice " + std::to_string(row + 1) + " of " + std::to_string(run.rows.size())};
  add_slice_parts(sheet, run, row);
  Working working = sheet.take();
  working.piece = run.rows[row].piece;
  return working;
}

std::optional<Working> explain_piece(const Retrace& run, std::size_t piece) {
  const auto middle = middle_row(run, piece);
  if (!middle) return std::nullopt;
  Sheet sheet{"the piece, and slice " + std::to_string(*middle + 1) + " of " + std::to_string(run.rows.size()) +
              " in its middle"};
  add_sums(sheet, run, rows_of(run, piece));
  add_slice_parts(sheet, run, *middle);
  Working working = sheet.take();
  working.piece = piece;
  return working;
}

}  // namespace fluewright
