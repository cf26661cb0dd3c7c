// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/bends.hpp"

#include <array>
#include <cmath>
#include <cstddef>

namespace fluewright {

namespace loss {

namespace {

constexpr std::string_view of_bend = "of the bend";
constexpr std::string_view smacna_a = "SMACNA HVAC Systems Duct Design, 4th ed., Table A-7A";
constexpr std::string_view smacna_b = "SMACNA HVAC Systems Duct Design, 4th ed., Table A-7B";
constexpr std::string_view smacna_c = "SMACNA HVAC Systems Duct Design, 4th ed., Table A-7C";
constexpr std::string_view smacna_d = "SMACNA HVAC Systems Duct Design, 4th ed., Table A-7D";

constexpr std::array<LossRow, 7> mitre_rows{
    {{0.0, 0.0}, {20.0, 0.08}, {30.0, 0.16}, {45.0, 0.34}, {60.0, 0.55}, {75.0, 0.81}, {90.0, 1.2}}};
constexpr std::array<LossRow, 8> reynolds_rows{
    {{1e4, 1.40}, {2e4, 1.26}, {3e4, 1.19}, {4e4, 1.14}, {6e4, 1.09}, {8e4, 1.06}, {1e5, 1.04}, {1.4e5, 1.0}}};
constexpr std::array<LossRow, 6> smooth_rows{
    {{0.5, 0.71}, {0.75, 0.33}, {1.0, 0.22}, {1.5, 0.15}, {2.0, 0.13}, {2.5, 0.12}}};
constexpr std::array<LossRow, 11> angle_rows{{{0.0, 0.0},
                                              {20.0, 0.31},
                                              {30.0, 0.45},
                                              {45.0, 0.60},
                                              {60.0, 0.78},
                                              {75.0, 0.90},
                                              {90.0, 1.00},
                                              {110.0, 1.13},
                                              {130.0, 1.20},
                                              {150.0, 1.28},
                                              {180.0, 1.40}}};
constexpr std::array<LossRow, 4> five_piece_rows{{{0.75, 0.46}, {1.0, 0.33}, {1.5, 0.24}, {2.0, 0.19}}};
constexpr std::array<LossRow, 4> four_piece_rows{{{0.75, 0.50}, {1.0, 0.37}, {1.5, 0.27}, {2.0, 0.24}}};
constexpr std::array<LossRow, 5> three_piece_rows{{{0.5, 0.98}, {0.75, 0.54}, {1.0, 0.42}, {1.5, 0.34}, {2.0, 0.33}}};
constexpr std::array<LossRow, 8> stamped_90_rows{{{75.0, 0.30},
                                                  {100.0, 0.21},
                                                  {125.0, 0.16},
                                                  {150.0, 0.14},
                                                  {180.0, 0.12},
                                                  {200.0, 0.11},
                                                  {230.0, 0.11},
                                                  {250.0, 0.11}}};
constexpr std::array<LossRow, 8> stamped_45_rows{{{75.0, 0.18},
                                                  {100.0, 0.13},
                                                  {125.0, 0.10},
                                                  {150.0, 0.08},
                                                  {180.0, 0.07},
                                                  {200.0, 0.07},
                                                  {230.0, 0.07},
                                                  {250.0, 0.07}}};
constexpr std::array<LossRow, 7> pleated_90_rows{
    {{100.0, 0.57}, {150.0, 0.43}, {200.0, 0.34}, {250.0, 0.28}, {300.0, 0.26}, {350.0, 0.25}, {400.0, 0.25}}};
constexpr std::array<LossRow, 7> pleated_45_rows{
    {{100.0, 0.34}, {150.0, 0.26}, {200.0, 0.21}, {250.0, 0.17}, {300.0, 0.16}, {350.0, 0.15}, {400.0, 0.15}}};
constexpr std::array<LossRow, 5> five_gore_90_rows{
    {{75.0, 0.51}, {150.0, 0.28}, {230.0, 0.21}, {300.0, 0.18}, {380.0, 0.16}}};
constexpr std::array<LossRow, 5> three_gore_45_rows{
    {{75.0, 0.31}, {150.0, 0.17}, {230.0, 0.13}, {300.0, 0.11}, {380.0, 0.11}}};

using AspectRows = std::array<LossRow, 9>;
constexpr AspectRows aspect(const std::array<double, 9>& c) {
  constexpr std::array<double, 9> at{0.25, 0.5, 0.75, 1.0, 1.5, 2.0, 4.0, 6.0, 8.0};
  AspectRows rows{};
  for (std::size_t i = 0; i < rows.size(); ++i) {
    rows[i] = {at[i], c[i]};
  }
  return rows;
}
constexpr AspectRows mitre_90_rows = aspect({1.3, 1.3, 1.2, 1.2, 1.1, 1.1, 0.92, 0.85, 0.83});
constexpr AspectRows mitre_75_rows = aspect({0.89, 0.87, 0.84, 0.81, 0.77, 0.73, 0.63, 0.58, 0.57});
constexpr AspectRows mitre_60_rows = aspect({0.60, 0.59, 0.57, 0.55, 0.52, 0.49, 0.43, 0.39, 0.38});
constexpr AspectRows mitre_45_rows = aspect({0.38, 0.37, 0.36, 0.34, 0.33, 0.31, 0.27, 0.25, 0.24});
constexpr AspectRows mitre_30_rows = aspect({0.18, 0.17, 0.17, 0.16, 0.15, 0.15, 0.13, 0.12, 0.11});
constexpr AspectRows mitre_20_rows = aspect({0.08, 0.08, 0.08, 0.07, 0.07, 0.07, 0.06, 0.05, 0.05});

}  // namespace

const LossTable mitre{"sharp turn of a round flue", "degrees", of_bend, smacna_c, Standing::published, mitre_rows};
const LossTable mitre_reynolds{
    "factor on sharp turns at low flow", "Reynolds number", of_bend, smacna_c, Standing::published, reynolds_rows};
const LossTable smooth{"smooth round bend, 90 degrees", "R/D", of_bend, smacna_a, Standing::published, smooth_rows};
const LossTable bend_angle{
    "factor for bends of other angles", "degrees", of_bend, smacna_a, Standing::published, angle_rows};
const LossTable five_piece{
    "round bend of 5 pieces, 90 degrees", "R/D", of_bend, smacna_b, Standing::published, five_piece_rows};
const LossTable four_piece{
    "round bend of 4 pieces, 90 degrees", "R/D", of_bend, smacna_b, Standing::published, four_piece_rows};
const LossTable three_piece{
    "round bend of 3 pieces, 90 degrees", "R/D", of_bend, smacna_b, Standing::published, three_piece_rows};
const LossTable stamped_90{"die-stamped elbow, 90 degrees, r/D 1.5",  "bore [mm]",         of_bend,
                           "ASHRAE Fundamentals 2009, ch. 21, CD3-1", Standing::published, stamped_90_rows};
const LossTable stamped_45{"die-stamped elbow, 45 degrees, r/D 1.5",  "bore [mm]",         of_bend,
                           "ASHRAE Fundamentals 2009, ch. 21, CD3-3", Standing::published, stamped_45_rows};
const LossTable pleated_90{"pleated elbow, 90 degrees, r/D 1.5",      "bore [mm]",         of_bend,
                           "ASHRAE Fundamentals 2009, ch. 21, CD3-5", Standing::published, pleated_90_rows};
const LossTable pleated_45{"pleated elbow, 45 degrees, r/D 1.5",      "bore [mm]",         of_bend,
                           "ASHRAE Fundamentals 2009, ch. 21, CD3-7", Standing::published, pleated_45_rows};
const LossTable five_gore_90{"5-gore elbow, 90 degrees, r/D 1.5",       "bore [mm]",         of_bend,
                             "ASHRAE Fundamentals 2009, ch. 21, CD3-9", Standing::published, five_gore_90_rows};
const LossTable three_gore_45{"3-gore elbow, 45 degrees, r/D 1.5",        "bore [mm]",         of_bend,
                              "ASHRAE Fundamentals 2009, ch. 21, CD3-14", Standing::published, three_gore_45_rows};
const LossTable rectangular_mitre_90{
    "sharp turn of a channel, 90 degrees", "H/W", of_bend, smacna_d, Standing::published, mitre_90_rows};
const LossTable rectangular_mitre_75{
    "sharp turn of a channel, 75 degrees", "H/W", of_bend, smacna_d, Standing::published, mitre_75_rows};
const LossTable rectangular_mitre_60{
    "sharp turn of a channel, 60 degrees", "H/W", of_bend, smacna_d, Standing::published, mitre_60_rows};
const LossTable rectangular_mitre_45{
    "sharp turn of a channel, 45 degrees", "H/W", of_bend, smacna_d, Standing::published, mitre_45_rows};
const LossTable rectangular_mitre_30{
    "sharp turn of a channel, 30 degrees", "H/W", of_bend, smacna_d, Standing::published, mitre_30_rows};
const LossTable rectangular_mitre_20{
    "sharp turn of a channel, 20 degrees", "H/W", of_bend, smacna_d, Standing::published, mitre_20_rows};

}  // namespace loss

namespace {

Ratio degrees(Angle turn) { return in(turn, degree); }
Ratio millimetres(Length bore) { return in(bore, millimetre); }

}  // namespace

Ratio mitre_bend(Angle turn) { return loss::mitre.at(degrees(turn)); }

Ratio mitre_reynolds_factor(Ratio reynolds) { return loss::mitre_reynolds.at(reynolds); }

Ratio bend_angle_factor(Angle turn) { return loss::bend_angle.at(degrees(turn)); }

Ratio smooth_bend(Ratio radius_over_diameter, Angle turn) {
  return loss::smooth.at(radius_over_diameter) * bend_angle_factor(turn);
}

Ratio gored_bend(int pieces, Ratio radius_over_diameter, Angle turn) {
  if (pieces < 3) {
    return mitre_bend(turn);
  }
  const LossTable& table = pieces == 3 ? loss::three_piece : (pieces == 4 ? loss::four_piece : loss::five_piece);
  return table.at(radius_over_diameter) * bend_angle_factor(turn);
}

Ratio stamped_elbow_90(Length bore) { return loss::stamped_90.at(millimetres(bore)); }
Ratio stamped_elbow_45(Length bore) { return loss::stamped_45.at(millimetres(bore)); }
Ratio pleated_elbow_90(Length bore) { return loss::pleated_90.at(millimetres(bore)); }
Ratio pleated_elbow_45(Length bore) { return loss::pleated_45.at(millimetres(bore)); }

Ratio rectangular_mitre_bend(Ratio height_over_width, Angle turn) {
  struct At {
    double degrees;
    const LossTable* table;
  };
  static constexpr std::array<At, 6> rows{{{20.0, &loss::rectangular_mitre_20},
                                           {30.0, &loss::rectangular_mitre_30},
                                           {45.0, &loss::rectangular_mitre_45},
                                           {60.0, &loss::rectangular_mitre_60},
                                           {75.0, &loss::rectangular_mitre_75},
                                           {90.0, &loss::rectangular_mitre_90}}};
  const double angle = degrees(turn);
  double below_angle = 0.0;
  double below = 0.0;
  for (const At& row : rows) {
    const double here = row.table->at(height_over_width);
    if (angle < row.degrees) {
      return below + (here - below) * (angle - below_angle) / (row.degrees - below_angle);
    }
    below_angle = row.degrees;
    below = here;
  }
  return below;
}

}  // namespace fluewright
