// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/burn_file.hpp"
#include "tests/app/burn/demo_burns.hpp"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validator.hpp>

#include <cmath>
#include <fstream>

namespace fluewright::test {
namespace {

TEST(BurnRun, every_demo_burns_its_evening_and_its_energy_closes) {
  for (const Demo& each : shipped_demos()) {
    const Design design = demo(each.id);
    const auto plan = preset_plan("typical_evening", design, *shipped_library());
    ASSERT_TRUE(plan);
    const BurnRecord record = burn(design, *plan);
    EXPECT_EQ(record.end, BurnEnd::done) << each.id;
    EXPECT_LT(record.summary.heat.closure, Ratio(1e-3)) << each.id;
    ASSERT_GT(record.rows.size(), 10u) << each.id;
    EXPECT_EQ(record.rows.front().at, Time{});
    EXPECT_NEAR(in(record.rows.back().at, minute), in(plan->length, minute), 1e-6);
    for (std::size_t i = 1; i < record.rows.size(); ++i) EXPECT_GE(record.rows[i].at, record.rows[i - 1].at);
    for (const BurnRow& row : record.rows) {
      ASSERT_EQ(row.gas.size(), record.slices.size());
      for (const Temperature& t : row.gas) EXPECT_TRUE(in_celsius(t) > -60.0 && in_celsius(t) < 2200.0);
      EXPECT_TRUE(std::isfinite(row.margin.value()));
    }
  }
}

TEST(BurnRun, ends_its_steps_exactly_where_something_is_switched) {
  const Design design = demo("bench_small_150");
  BurnPlan plan = fire_from(design, 3.0 * minute, 30.0 * minute);
  const BurnRecord record = burn(design, plan);
  ASSERT_EQ(record.end, BurnEnd::done);
  for (const double moment : {3.0, 13.0, 30.0}) {
    const auto at = [&](const BurnRow& row) { return std::abs(in(row.at, minute) - moment) < 1e-9; };
    EXPECT_TRUE(std::any_of(record.rows.begin(), record.rows.end(), at)) << moment << " min";
  }
  EXPECT_NEAR(in(record.summary.wanted, kilogram),
              in(design.fire.burn_rate, kilogram_per_hour) * (0.6 * 10.0 + 17.0) / 60.0, 1e-6);
}

TEST(BurnRun, can_be_called_off_and_keeps_what_it_has) {
  const Design design = demo("bench_small_150");
  BurnOptions options;
  int asked = 0;
  options.go_on = [&](Ratio) { return ++asked < 5; };
  const BurnRecord record = run_burn(design, *shipped_library(), fire_from(design, {}, 1.0 * hour), options);
  EXPECT_EQ(record.end, BurnEnd::cancelled);
  EXPECT_EQ(record.steps, 5u);
  EXPECT_FALSE(record.rows.empty());
}

TEST(BurnRun, follows_an_outdoor_course) {
  const Design design = demo("bench_small_150");
  BurnPlan plan = fire_from(design, {}, 2.0 * hour);
  plan.outdoors = std::vector<OutdoorPoint>{{{}, celsius(-2.0)}, {1.0 * hour, celsius(4.0)}, {2.0 * hour, celsius(0.0)}};
  const BurnRecord record = burn(design, plan);
  ASSERT_EQ(record.end, BurnEnd::done);
  const auto [row, part] = record.row_at(1.0 * hour);
  EXPECT_NEAR(in_celsius(record.rows[row].outdoors), 4.0, 0.2);
  EXPECT_NEAR(in_celsius(record.rows.back().outdoors), 0.0, 1e-9);
  BurnPlan steady = plan;
  steady.outdoors = celsius(-2.0);
  EXPECT_LT(record.rows.back().margin, burn(design, steady).rows.back().margin) << "milder outdoors, less draft";
}

/// A day on which the bypass demo is lit without trouble, and its bypass.
struct BypassDay {
  Design design = demo("bench_bypass_150");
  PieceId bypass;
  BypassDay() {
    for (const Piece& piece : design.pieces) {
      if (piece.type == "bypass_link") bypass = piece.id;
    }
  }
  [[nodiscard]] BurnRecord moved(Time at, Ratio open, Ratio before, Time length) const {
    BurnPlan plan = fire_from(design, {}, length);
    plan.moves = {{{}, bypass, before}, {at, bypass, open}};
    return burn(design, plan);
  }
};

TEST(BurnRun, a_bypass_opened_in_mid_burn_lets_the_gas_past_the_bench) {
  const BypassDay day;
  const Time at = 40.0 * minute;
  const BurnRecord opened = day.moved(at, 1.0, 0.0, 1.5 * hour);
  const BurnRecord shut = day.moved(at, 0.0, 0.0, 1.5 * hour);
  ASSERT_EQ(opened.end, BurnEnd::done);
  ASSERT_EQ(shut.end, BurnEnd::done);
  const auto [before, share] = opened.row_at(at - 1.0 * minute);
  EXPECT_NEAR(in(opened.rows[before].exit - shut.rows[shut.row_at(at - 1.0 * minute).first].exit, kelvin), 0.0, 0.5)
      << "the same until it is opened";
  EXPECT_GT(opened.rows.back().exit, shut.rows.back().exit + 15.0 * kelvin) << "hot gas reaches the stack";
  EXPECT_GT(opened.rows.back().margin, shut.rows.back().margin);
  EXPECT_LT(opened.rows.back().stored, shut.rows.back().stored) << "the bench gets less";
  EXPECT_LT(opened.summary.heat.closure, Ratio(1e-3)) << "energy closes over the move";
  EXPECT_LT(shut.summary.heat.closure, Ratio(1e-3));
}

TEST(BurnRun, nothing_piles_up_where_branches_meet) {
  // Mass at both tees: what leaves the fire goes through bench and bypass and meets again before the stack.
  const BypassDay day;
  const BurnRecord record = day.moved(20.0 * minute, 1.0, 0.3, 1.0 * hour);
  ASSERT_EQ(record.end, BurnEnd::done);
  ASSERT_GE(record.rows.back().flows.size(), 4u);
  for (const double moment : {10.0, 30.0, 60.0}) {
    const BurnRow& row = record.rows[record.row_at(moment * minute).first];
    // Two branches are in series with the whole; the two beside each other add up to what the stack has.
    std::vector<double> sizes;
    for (const MassFlow& f : row.flows) sizes.push_back(std::abs(in(f, kilogram_per_second)));
    const double whole = std::abs(in(row.flue_gas, kilogram_per_second));
    double beside = 0.0;
    std::size_t in_series = 0;
    for (const double f : sizes) (f > 0.9 * whole ? (void)++in_series : (void)(beside += f));
    EXPECT_GE(in_series, 1u);
    if (in_series + 2 == sizes.size()) {
      EXPECT_NEAR(beside / whole, 1.0, 0.01) << moment << " min";
    }
  }
}

TEST(BurnRun, a_fan_blows_as_it_is_switched) {
  // Off, a third, whole, off again: the air follows each time, and with the fan off it is what it is without one.
  const Design design = demo("kept_by_a_fan");
  PieceId fan;
  for (const Piece& piece : design.pieces) {
    if (piece.type == "fan_side") fan = piece.id;
  }
  BurnPlan plan = fire_from(design, {}, 80.0 * minute);
  plan.fans = {{{}, fan, 0.0, {}}, {20.0 * minute, fan, 1.0 / 3.0, {}}, {40.0 * minute, fan, 1.0, {}}, {60.0 * minute, fan, 0.0, {}}};
  const BurnRecord record = burn(design, plan);
  ASSERT_EQ(record.end, BurnEnd::done);
  const auto flow_at = [&](double moment) { return in(record.rows[record.row_at(moment * minute).first].flue_gas, kilogram_per_second); };
  EXPECT_GT(flow_at(39.0), flow_at(19.0) + 1e-3);
  EXPECT_GT(flow_at(59.0), 1.3 * flow_at(39.0));
  EXPECT_LT(flow_at(79.0), 0.5 * flow_at(59.0));
  BurnPlan as_drawn = fire_from(design, {}, 20.0 * minute);
  BurnPlan switched = as_drawn;
  switched.fans = {{{}, fan, 0.6, {}}};
  EXPECT_EQ(burn(design, as_drawn).rows.back().flue_gas, burn(design, switched).rows.back().flue_gas)
      << "until it is switched it runs as the design says, at 0.6 of its speed";
}

TEST(BurnRun, refuses_a_plan_with_faults_and_says_which) {
  const Design design = demo("bench_small_150");
  BurnPlan plan = fire_from(design, {}, 1.0 * hour);
  plan.loads.push_back({5.0 * minute, -1.0 * kilogram, 10.0 * minute});
  plan.cuts.push_back({50.0 * minute, 20.0 * minute});
  EXPECT_EQ(burn(design, plan).end, BurnEnd::faulty_plan);
  const auto faults = check_plan(plan, design, *shipped_library());
  ASSERT_EQ(faults.size(), 3u);
  EXPECT_EQ(faults[0].code, PlanFaultCode::negative);
  EXPECT_EQ(faults[0].list, PlanList::loads);
  EXPECT_EQ(faults[0].index, 1u);
  EXPECT_EQ(faults[1].code, PlanFaultCode::overlapping);
  EXPECT_EQ(faults[2].code, PlanFaultCode::beyond_the_run);
  EXPECT_EQ(faults[2].list, PlanList::cuts);
}

TEST(BurnRun, wants_a_tee_for_a_priming_fire) {
  Design design = demo("bench_small_150");
  BurnPlan plan = fire_from(design, 5.0 * minute, 1.0 * hour);
  PrimingFire priming;
  priming.lasts = 5.0 * minute;
  priming.starter = 100.0 * gram;
  priming.tee = "p1";
  plan.priming.push_back(priming);
  const auto faults = check_plan(plan, design, *shipped_library());
  ASSERT_EQ(faults.size(), 1u);
  EXPECT_EQ(faults[0].code, PlanFaultCode::wrong_piece);
}

/// By the shipped schema.
bool follows_schema(const nlohmann::json& file) {
  const nlohmann::json text = nlohmann::json::parse(std::ifstream(FLUEWRIGHT_BURN_SCHEMA));
  valijson::Schema schema;
  valijson::SchemaParser{}.populateSchema(valijson::adapters::NlohmannJsonAdapter(text), schema);
  valijson::Validator validator;
  return validator.validate(schema, valijson::adapters::NlohmannJsonAdapter(file), nullptr);
}

TEST(PlanFile, what_is_written_is_read_back_for_every_preset_and_follows_the_schema) {
  for (const PlanPreset& preset : plan_presets) {
    const Design design = spring_evening();
    const auto plan = preset_plan(preset.id, design, *shipped_library());
    if (!plan) continue;  // this design has no fan
    const PlanReadResult again = read_plan_text(write_plan_text(*plan));
    ASSERT_TRUE(std::holds_alternative<BurnPlan>(again)) << preset.id << ": " << std::get<FileFault>(again).text();
    const auto& read = std::get<BurnPlan>(again);
    EXPECT_EQ(write_plan_text(read), write_plan_text(*plan)) << preset.id;
    EXPECT_TRUE(check_plan(read, design, *shipped_library()).empty()) << preset.id;
    EXPECT_TRUE(follows_schema(nlohmann::json::parse(write_plan_text(*plan)))) << preset.id;
  }
}

TEST(PlanFile, schema_refuses_what_the_reader_refuses) {
  for (const char* text : {R"({"fluewright_burn": 1})", R"({"fluewright_burn": 1, "length_min": 10, "lods": []})",
                           R"({"fluewright_burn": 1, "length_min": 10, "outdoors": {}})",
                           R"({"fluewright_burn": 1, "length_min": 10, "loads": [{"at_min": 0}]})"}) {
    EXPECT_FALSE(follows_schema(nlohmann::json::parse(text))) << text;
    EXPECT_TRUE(std::holds_alternative<FileFault>(read_plan_text(text))) << text;
  }
}

TEST(PlanFile, names_what_it_does_not_understand) {
  const auto faults_of = [](std::string_view text) {
    const PlanReadResult result = read_plan_text(text);
    const auto* fault = std::get_if<FileFault>(&result);
    return fault == nullptr ? std::string{} : fault->text();
  };
  EXPECT_NE(faults_of("[").find("line"), std::string::npos);
  EXPECT_NE(faults_of(R"({"fluewright_burn": 1, "length_min": 10, "lods": []})").find("lods"), std::string::npos);
  EXPECT_NE(faults_of(R"({"fluewright_burn": 1})").find("length_min"), std::string::npos);
  EXPECT_NE(faults_of(R"({"fluewright_burn": 9, "length_min": 10})").find("newer"), std::string::npos);
  EXPECT_NE(faults_of(R"({"fluewright_burn": 1, "length_min": 10, "outdoors": {}})").find("outdoors"), std::string::npos);
}

TEST(WeatherFile, is_read_and_its_gaps_are_named_with_their_line) {
  const WeatherResult good = read_weather_text("time,temperature_C\n2024-04-06T17:00,9.5\n2024-04-06T18:00,8\n", "w.csv");
  ASSERT_TRUE(std::holds_alternative<std::vector<OutdoorPoint>>(good));
  EXPECT_NEAR(in(std::get<std::vector<OutdoorPoint>>(good)[1].at, hour), 1.0, 1e-12);
  const WeatherResult gap = read_weather_text(
      "time,temperature_C\n2024-04-06T17:00,9.5\n2024-04-06T18:00,8\n2024-04-06T20:00,8\n", "w.csv");
  ASSERT_TRUE(std::holds_alternative<FileFault>(gap));
  EXPECT_NE(std::get<FileFault>(gap).text().find("line 4"), std::string::npos);
}

}  // namespace
}  // namespace fluewright::test
