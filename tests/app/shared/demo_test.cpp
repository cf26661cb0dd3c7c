// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/design_file.hpp"
#include "app/shared/library_reader.hpp"
#include "engine/layout/edit.hpp"
#include "engine/solve/assessment.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace fluewright {
namespace {

std::vector<std::string> demo_ids() {
  std::vector<std::string> ids;
  for (const Demo& demo : shipped_demos()) ids.push_back(demo.id);
  return ids;
}

const Demo& demo_of(const std::string& id) {
  const auto& demos = shipped_demos();
  return *std::find_if(demos.begin(), demos.end(), [&](const Demo& demo) { return demo.id == id; });
}

DesignDocument opened(const std::string& id) {
  ReadResult result = read_design_text(demo_of(id).text, *shipped_library());
  if (const auto* fault = std::get_if<FileFault>(&result)) {
    ADD_FAILURE() << fault->text();
    return {};
  }
  return std::get<DesignDocument>(std::move(result));
}

Assessment answer(const std::string& id) { return assess(opened(id).design, *shipped_library()); }

/// A ball of air or brick that lies wholly inside a piece.
struct Ball {
  Position centre;
  Length radius{};
};

/// Balls along a piece's lines, none beyond the flat ends.
std::vector<Ball> balls_in(const PieceGeometry& geometry) {
  constexpr int steps = 40;
  std::vector<Ball> balls;
  for (const CentreLine& line : geometry.lines) {
    for (std::size_t i = 1; i < line.points.size(); ++i) {
      const Position from = line.points[i - 1];
      const Position way = line.points[i] - from;
      const Length length = distance(from, line.points[i]);
      const Length radius = std::min(Length(0.5 * line.width), Length(0.5 * length));
      const double inset = radius / length;
      for (int k = 0; k <= steps; ++k) {
        const double share = inset + (1.0 - 2.0 * inset) * k / steps;
        balls.push_back({{from.x + share * way.x, from.y + share * way.y, from.z + share * way.z}, radius});
      }
    }
  }
  return balls;
}

/// How far two pieces reach into one another; not above zero if they do not.
Length overlap(const std::vector<Ball>& a, const std::vector<Ball>& b) {
  Length most = -1000.0 * metre;
  for (const Ball& p : a) {
    for (const Ball& q : b) most = std::max(most, Length(p.radius + q.radius - distance(p.centre, q.centre)));
  }
  return most;
}

class ShippedDemo : public testing::TestWithParam<std::string> {};

TEST_P(ShippedDemo, ReadsAndWritesBackToTheSameBytes) {
  const DesignDocument document = opened(GetParam());
  EXPECT_TRUE(document.remarks.empty());
  EXPECT_EQ(write_design_text(document, *shipped_library()), demo_of(GetParam()).text);
}

TEST_P(ShippedDemo, SaysThatItIsInvented) { EXPECT_EQ(demo_of(GetParam()).scene.rfind("Invented", 0), 0u); }

TEST_P(ShippedDemo, IsACompletePathWithoutAFault) {
  const Assessment assessment = answer(GetParam());
  EXPECT_TRUE(assessment.path.complete);
  for (const Finding& finding : assessment.findings) EXPECT_NE(finding.severity, Severity::fault) << finding.piece;
  for (const Finding& finding : assessment.path.findings)
    ADD_FAILURE() << "a finding of the drawing at " << finding.piece;
}

// Pieces that are not joined keep out of one another's way. What stands in the drum (riser, tunnel's end) is meant to.
TEST_P(ShippedDemo, FitsIntoSpace) {
  const Design design = opened(GetParam()).design;
  const auto shapes = geometries(design, *shipped_library());
  const auto fire_or_drum = [&](std::size_t i) {
    const std::string& family = shipped_library()->piece_type(design.pieces[i].type)->family;
    return family == "fire" || design.pieces[i].type == "barrel";
  };
  const auto joined = [&](std::size_t i, std::size_t k) {
    return std::any_of(design.joints.begin(), design.joints.end(), [&](const Joint& joint) {
      const std::string& a = design.pieces[i].id;
      const std::string& b = design.pieces[k].id;
      return (joint.a.piece == a && joint.b.piece == b) || (joint.a.piece == b && joint.b.piece == a);
    });
  };
  for (std::size_t i = 0; i < shapes.size(); ++i) {
    for (std::size_t k = i + 1; k < shapes.size(); ++k) {
      if (joined(i, k) || (fire_or_drum(i) && fire_or_drum(k))) continue;
      EXPECT_LE(in(overlap(balls_in(shapes[i]), balls_in(shapes[k])), millimetre), 0.0)
          << design.pieces[i].label << " and " << design.pieces[k].label;
    }
  }
}

TEST_P(ShippedDemo, BurnsWhatItsBoreUsuallyBurns) {
  const Design design = opened(GetParam()).design;
  const auto riser =
      std::find_if(design.pieces.begin(), design.pieces.end(), [](const Piece& p) { return p.type == "heat_riser"; });
  ASSERT_NE(riser, design.pieces.end());
  const Length bore = std::get<Length>(riser->fields.at("bore"));
  for (const UsualBurnRate& usual : shipped_library()->burn_rates) {
    if (usual.bore != bore) continue;
    EXPECT_GE(design.fire.burn_rate, usual.low);
    EXPECT_LE(design.fire.burn_rate, usual.high);
  }
}

INSTANTIATE_TEST_SUITE_P(All, ShippedDemo, testing::ValuesIn(demo_ids()),
                         [](const testing::TestParamInfo<std::string>& named) { return named.param; });

TEST(TheScene, OfTheSmallBenchIsTrueItDrawsAtEveryAge) {
  const Assessment assessment = answer("bench_small_150");
  EXPECT_EQ(assessment.verdict, Verdict::draws);
  ASSERT_EQ(assessment.design_flow.size(), 3u);
  for (const DesignFlow& flow : assessment.design_flow) EXPECT_GT(flow.margin, marginal_below);
  EXPECT_FALSE(assessment.condensation->starts_at.has_value());
}

TEST(TheScene, OfTheLongBenchInSpringIsTrueItIsOnTheEdgeUntilTheBenchHasWarmed) {
  const Assessment assessment = answer("bench_spring_200");
  EXPECT_EQ(assessment.verdict, Verdict::marginal);
  EXPECT_EQ(assessment.worst_age, BenchAge::cold_bench);
  EXPECT_GT(assessment.design_flow[2].margin, marginal_below);
  EXPECT_LT(assessment.standing_draft, Pressure{});  // colder inside than out: left alone it starts backwards
  DesignDocument winter = opened("bench_spring_200");
  winter.design.site.outdoor_temperature = celsius(-5.0);
  EXPECT_EQ(assess(winter.design, *shipped_library()).verdict, Verdict::draws);
}

TEST(TheScene, OfTheGreenhouseIsTrueTheGroundTakesMoreThanTheStackGets) {
  const Assessment assessment = answer("greenhouse_floor");
  EXPECT_EQ(assessment.verdict, Verdict::marginal);
  ASSERT_NE(assessment.running_point(), nullptr);
  EXPECT_GT(assessment.running_point()->heat.into_mass, assessment.running_point()->heat.stack_loss);
}

TEST(TheScene, OfTheOutsideChimneyIsTrueItDrawsAndIsWetFromItsFoot) {
  const DesignDocument document = opened("chimney_outside");
  const Assessment assessment = assess(document.design, *shipped_library());
  EXPECT_EQ(assessment.verdict, Verdict::draws);
  ASSERT_TRUE(assessment.condensation->piece.has_value());
  EXPECT_EQ(document.design.pieces[*assessment.condensation->piece].label, "Foot of the chimney");
}

TEST(TheScene, OfTheOutsideChimneyIsTrueInsulatedItWouldBeDry) {
  DesignDocument document = opened("chimney_outside");
  for (Piece& piece : document.design.pieces) {
    const auto place = piece.fields.find("place");
    const bool outdoors = place != piece.fields.end() && place->second == FieldValue{std::string("outdoors")};
    if (outdoors || piece.type == "cap_rain") piece.fields["wall"] = std::string("pipe_insulated_50");
  }
  EXPECT_FALSE(assess(document.design, *shipped_library()).condensation->starts_at.has_value());
}

TEST(TheScene, OfTheRunThatIsTooLongIsTrueNoAgeSavesIt) {
  const Assessment assessment = answer("run_too_long");
  EXPECT_EQ(assessment.verdict, Verdict::will_not_draw);
  for (const DesignFlow& flow : assessment.design_flow) EXPECT_LT(flow.margin, Pressure{});
}

TEST(TheScene, OfTheRunThatIsTooLongIsTrueAShorterRunAndATallerChimneyMendIt) {
  Design design = opened("run_too_long").design;
  const Assessment before = assess(design, *shipped_library());
  for (const Piece& piece : opened("run_too_long").design.pieces) {
    Length length{};
    if (piece.type == "bench_pipe") length = 1500.0 * millimetre;
    if (piece.label == "Chimney over the roof") length = 2500.0 * millimetre;
    if (length == Length{}) continue;
    EditResult edit = set_field(design, *shipped_library(), piece.id, "length", length);
    ASSERT_TRUE(edit.design.has_value()) << piece.label;
    design = *edit.design;
  }
  const Assessment after = assess(design, *shipped_library());
  EXPECT_EQ(after.verdict, Verdict::draws);
  EXPECT_GT(after.worst_margin, before.worst_margin);
}

TEST(TheScene, OfTheFanIsTrueItBurnsWellWhileItTurnsAndStarvesWhenThePowerFails) {
  const Assessment assessment = answer("kept_by_a_fan");
  EXPECT_EQ(assessment.verdict, Verdict::unsafe);
  ASSERT_TRUE(assessment.worst_margin_with_fans.has_value());
  EXPECT_GT(*assessment.worst_margin_with_fans, marginal_below);
  ASSERT_NE(assessment.running_point(), nullptr);
  EXPECT_GT(assessment.running_point()->excess_air_ratio, 2.0);
  ASSERT_EQ(assessment.fans.size(), 1u);
  for (const Finding& finding : assessment.findings) {
    EXPECT_NE(finding.code, FindingCode::fan_gas_too_hot);
    EXPECT_NE(finding.code, FindingCode::fan_motor_too_hot);
  }
  ASSERT_NE(assessment.fans_off->running_point(), nullptr);
  EXPECT_LT(assessment.fans_off->running_point()->excess_air_ratio, 1.5);
}

}  // namespace
}  // namespace fluewright
