// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/library_reader.hpp"
#include "tests/app/cli/run_program.hpp"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cmath>

namespace fluewright {
namespace {

using nlohmann::json;

const std::filesystem::path designs = std::filesystem::path(FLUEWRIGHT_CLI_TESTS) / "designs";

json checked(const std::string& design, int status = 0) {
  const ProgramRun run = run_cli({"check", design, "--json"}, designs);
  EXPECT_EQ(run.status, status) << run.errors;
  return json::parse(run.output);
}

std::vector<std::string> demo_names() {
  std::vector<std::string> names;
  for (const Demo& demo : shipped_demos()) names.push_back(demo.id);
  return names;
}

class CheckedDemo : public testing::TestWithParam<std::string> {
 protected:
  const json answer_ = checked("demo:" + GetParam());
};

TEST_P(CheckedDemo, HasEveryPromisedKey) {
  for (const char* key : {"title", "verdict", "draft_margin_Pa", "buoyancy_Pa", "resistance_Pa", "room_gauge_Pa",
                          "operating_point", "condensation", "profile"}) {
    EXPECT_TRUE(answer_.contains(key)) << key;
  }
  for (const char* key : {"cold_bench", "one_hour", "charged"})
    EXPECT_TRUE(answer_["draft_margin_Pa"][key].is_number()) << key;
  for (const char* key : {"starts_at_m", "piece", "dew_point_C", "rate_g_h"}) {
    EXPECT_TRUE(answer_["condensation"].contains(key)) << key;
  }
  if (answer_["operating_point"].is_object()) {
    for (const char* key : {"excess_air_ratio", "flue_gas_kg_s", "exit_temperature_C", "heat_released_W",
                            "heat_to_room_W", "heat_into_mass_W", "stack_loss_W", "unburned_W", "closure_relative"}) {
      EXPECT_TRUE(answer_["operating_point"][key].is_number()) << key;
    }
  }
  ASSERT_FALSE(answer_["profile"].empty());
  for (const char* key :
       {"s_m", "z_m", "gauge_Pa", "room_gauge_Pa", "gas_C", "wall_C", "surface_C", "velocity_m_s", "density_kg_m3",
        "reynolds", "friction_factor", "nusselt", "film_W_m2K", "u_W_m2K", "loss_Pa", "buoyancy_Pa"}) {
    EXPECT_TRUE(answer_["profile"][0][key].is_number()) << key;
  }
  EXPECT_TRUE(answer_["profile"][0]["piece"].is_string());
}

// A lid is a slice without length. Entry, exit and acceleration are in the losses: from the room to the cap the
// pressures add up to 1e-6 Pa.
TEST_P(CheckedDemo, AddsUpAlongTheProfile) {
  ASSERT_TRUE(answer_["profile_is_operating"].get<bool>()) << "every demo settles somewhere, if starved";
  double gauge = answer_["room_gauge_Pa"];
  double before = 0.0;
  for (const json& slice : answer_["profile"]) {
    gauge += slice["buoyancy_Pa"].get<double>() - slice["loss_Pa"].get<double>();
    EXPECT_GE(slice["s_m"].get<double>(), before);
    before = slice["s_m"];
  }
  EXPECT_NEAR(gauge, answer_["design_flow"][0]["cap_gauge_Pa"].get<double>(), 1e-6);
}

TEST_P(CheckedDemo, HasAMarginThatFollowsFromItsParts) {
  for (const json& flow : answer_["design_flow"]) {
    const double safety = flow["flow_safety"];
    const double margin = flow["buoyancy_Pa"].get<double>() + flow["room_gauge_Pa"].get<double>() -
                          safety * flow["resistance_Pa"].get<double>() - flow["wind_allowance_Pa"].get<double>() -
                          flow["cap_gauge_Pa"].get<double>();
    EXPECT_NEAR(flow["margin_Pa"].get<double>(), margin, 1e-9);
    EXPECT_EQ(flow["margin_Pa"], answer_["draft_margin_Pa"][flow["bench_age"].get<std::string>()]);
  }
}

TEST_P(CheckedDemo, ClosesItsHeatBalance) {
  ASSERT_FALSE(answer_["operating_point"].is_null()) << "every demo settles somewhere, if starved";
  const json& point = answer_["operating_point"];
  const double gone = point["heat_to_room_W"].get<double>() + point["heat_into_mass_W"].get<double>() +
                      point["heat_to_outdoors_W"].get<double>() + point["stack_loss_W"].get<double>() +
                      point["unburned_W"].get<double>();
  const double released = point["heat_released_W"];
  EXPECT_NEAR(gone / released, 1.0, 1e-9);
  EXPECT_LE(std::abs(point["closure_relative"].get<double>()), 1e-9);
}

INSTANTIATE_TEST_SUITE_P(Shipped, CheckedDemo, testing::ValuesIn(demo_names()),
                         [](const testing::TestParamInfo<std::string>& named) { return named.param; });

TEST(CheckedIncomplete, StillSaysWhatIsKnown) {
  const json answer = checked("open_end.fluepath", 2);
  EXPECT_TRUE(answer["verdict"].is_null());
  EXPECT_TRUE(answer["draft_margin_Pa"]["charged"].is_null());
  EXPECT_TRUE(answer["operating_point"].is_null());
  EXPECT_FALSE(answer["path_complete"].get<bool>());
  EXPECT_FALSE(answer["findings"].empty());
}

TEST(Pieces, ListsTheWholeCatalogueWithSources) {
  const ProgramRun run = run_cli({"pieces", "--json"}, designs);
  EXPECT_EQ(run.status, 0);
  const json catalogue = json::parse(run.output);
  ASSERT_EQ(catalogue["pieces"].size(), shipped_library()->piece_types.size());
  for (const json& piece : catalogue["pieces"]) {
    EXPECT_FALSE(piece["sources"].empty()) << piece["id"];
    for (const json& field : piece["fields"]) EXPECT_FALSE(field["source"]["source"].get<std::string>().empty());
  }
}

TEST(Pieces, ReadsInBothUnits) {
  const ProgramRun metric = run_cli({"pieces"}, designs);
  const ProgramRun imperial = run_cli({"pieces", "--unit", "imperial"}, designs);
  EXPECT_NE(metric.output.find("Bore: 150\u00A0mm"), std::string::npos);
  EXPECT_NE(imperial.output.find("Bore: 5.9\u00A0in"), std::string::npos);
  EXPECT_NE(metric.output.find("published"), std::string::npos);
}

TEST(AResultThatCannotBeWritten, IsNoSuccess) {
  // /dev/full takes the place of a full disk.
  const std::string command = std::string("cd ") + designs.string() + " && XDG_STATE_HOME=/nonexistent " +
                              FLUEWRIGHT_CLI + " demos >/dev/full 2>/dev/null";
  const int state = std::system(command.c_str());
  EXPECT_EQ(WEXITSTATUS(state), 2);
}

TEST(CheckedBranches, SayWhereTheyLeadAndWhatTheyCarry) {
  const json answer = checked("demo:bench_bypass_150");
  const json& branches = answer["branches"];
  ASSERT_EQ(branches.size(), 4u);
  double past_the_bench = 0.0;
  double whole = 0.0;
  for (const json& branch : branches) {
    const double flow = branch["flow_kg_s"];
    if (branch["name"] == "Bypass") {
      EXPECT_FALSE(branch["main_path"]);
      EXPECT_EQ(branch["from"]["piece"], "p17");
      EXPECT_EQ(branch["to"]["piece"], "p18");
      EXPECT_EQ(branch["pieces"], json({"p17", "p19", "p18"}));
      EXPECT_FALSE(branch["profile"].empty());
      past_the_bench += flow;
    } else if (branch["from"]["piece"] == "p17") {
      past_the_bench += flow;
    } else if (branch["to"]["opens_to"] == "outdoors") {
      whole = flow;
      EXPECT_NEAR(branch["share_of_cap_flow"].get<double>(), 1.0, 1e-9);
    }
  }
  EXPECT_NEAR(past_the_bench, whole, 1e-10 * whole);
  EXPECT_EQ(answer["operating_point"]["branch_flows_kg_s"].size(), 4u);
  EXPECT_EQ(answer["design_flow"][0]["branch_flows_kg_s"].size(), 4u);
  EXPECT_EQ(checked("demo:bench_small_150")["branches"].size(), 0u);
}

}  // namespace
}  // namespace fluewright
