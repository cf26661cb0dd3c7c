// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/working/explain.hpp"
#include "engine/working/slice_case.hpp"

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
  if (c.mixed()) {
    add_mixture(sheet, c);
  } else {
    add_fire(sheet, run);
    if (c.burnt) add_flue_gas(sheet, run);
  }
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

void add_sums(Sheet& sheet, const Retrace& run, const std::vector<std::size_t>& rows) {
  Length length{};
  Pressure friction{};
  Pressure local{};
  Pressure acceleration{};
  Pressure buoyancy{};
  Pressure fan{};
  Power heat{};
  MassFlow water{};
  for (const std::size_t i : rows) {
    const SliceState& row = run.rows[i];
    length += row.length;
    friction += row.friction;
    local += row.local;
    acceleration += row.acceleration;
    buoyancy += row.buoyancy;
    fan += row.fan;
    heat += row.heat;
    water += row.condensing;
  }
  const std::string how = "added over its " + std::to_string(rows.size()) + " slices";
  const auto sum = [&](const char* symbol, const char* meaning, WorkingValue value) {
    sheet.given(symbol, meaning, value, from_the_walk()).remark(how);
  };
  sheet.part("The whole piece");
  sum("L_p", "length", length);
  sum("dpf_p", "loss: friction", friction);
  sum("dpl_p", run.network == nullptr || !run.joined.to.cap ? "loss: fittings, steps, entry and exit"
                                      : "loss: fittings, steps, entry and exit, and the junction before it",
      local);
  sum("dpa_p", "loss: acceleration", acceleration);
  sheet.step("dp_p", "losses together", "dpf_p + dpl_p + dpa_p", Pressure(friction + local + acceleration),
             by_definition(), Carries::sum);
  sum("dpb_p", "buoyancy", buoyancy);
  const bool fans = fan != Pressure{};
  if (fans) sum("dpfan_p", "raised by its fan", fan);
  sheet.step("gain_p", "what the piece adds to the gauge and velocity head", fans ? "dpb_p + dpfan_p - dp_p" : "dpb_p - dp_p",
             Pressure(buoyancy + fan - friction - local - acceleration), by_definition(), Carries::sum);
  sum("q_p", "heat through its walls", heat);
  sum("m_p", "water that condenses in it", water);
  sheet.given("T_p", "gas that leaves it", run.rows[rows.back()].gas, from_the_walk());
}

}  // namespace

std::vector<std::size_t> rows_of_piece(const Retrace& run, std::size_t piece) {
  std::vector<std::size_t> rows;
  for (std::size_t i = 0; i < run.rows.size(); ++i) {
    if (run.rows[i].piece == piece) rows.push_back(i);
  }
  return rows;
}

Working explain_slice(const Retrace& run, std::size_t row) {
  Sheet sheet{"slice " + std::to_string(row + 1) + " of " + std::to_string(run.rows.size())};
  add_slice_parts(sheet, run, row);
  Working working = sheet.take();
  working.piece = run.rows[row].piece;
  return working;
}

/// The slice that shows most of a piece: where its fan stands, else the one in its middle.
std::size_t telling_row(const Retrace& run, const std::vector<std::size_t>& rows) {
  for (const std::size_t row : rows) {
    const Slice& slice = run.path.slices[run.visits[row].slice];
    const Stretch& stretch = run.path.stretch_of(slice);
    if (stretch.fan && (stretch.fan->at_end ? slice.closes_stretch : slice.opens_stretch)) return row;
  }
  return rows[rows.size() / 2];
}

std::optional<Working> explain_piece(const Retrace& run, std::size_t piece) {
  const std::vector<std::size_t> rows = rows_of_piece(run, piece);
  if (rows.empty()) return std::nullopt;
  const std::size_t middle = telling_row(run, rows);
  const bool in_the_middle = middle == rows[rows.size() / 2];
  Sheet sheet{"the piece, and slice " + std::to_string(middle + 1) + " of " + std::to_string(run.rows.size()) +
              (in_the_middle ? " in its middle" : " with its fan")};
  add_sums(sheet, run, rows);
  add_slice_parts(sheet, run, middle);
  Working working = sheet.take();
  working.piece = piece;
  return working;
}

}  // namespace fluewright
