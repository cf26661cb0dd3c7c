// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/said.hpp"
#include "app/shared/design_file.hpp"
#include "app/shared/library_reader.hpp"
#include "app/shared/said_library.hpp"
#include "app/shared/units.hpp"
#include "app/shared/working_words.hpp"
#include "engine/solve/assessment.hpp"
#include "engine/working/explain.hpp"
#include "engine/working/retrace.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <thread>

namespace fluewright {
namespace {

/// A made-up language: a pattern with its values the other way round, one that asks for too much, and capitals.
std::string backwards(const char* english) {
  const std::string text = english;
  if (text == "{} of {}") return "{1} <- {0}";
  if (text == "{} to {}") return "{} {} {}";
  std::string large = text;
  std::transform(large.begin(), large.end(), large.begin(), [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
  return large;
}

class Said : public testing::Test {
 protected:
  void SetUp() override { speak_by(backwards, ','); }
  void TearDown() override { speak_by(nullptr, '.'); }
};

TEST_F(Said, IsEnglishUntilALanguageIsSet) {
  speak_by(nullptr, '.');
  EXPECT_EQ(said("wall"), "wall");
  EXPECT_EQ(said("{} of {}", 2, 3), "2 of 3");
  EXPECT_EQ(decimal_text(2.5, 1), "2.5");
}

TEST_F(Said, PutsValuesWhereTheLanguageWantsThem) {
  EXPECT_EQ(said("wall"), "WALL");
  EXPECT_EQ(said("{} of {}", 2, 3), "3 <- 2");
}

TEST_F(Said, ATranslationThatAsksForMoreThanThereIsGivesWayToEnglish) { EXPECT_EQ(said("{} to {}", 2, 3), "2 to 3"); }

TEST_F(Said, NumbersAreShownWithTheLanguagesMarkAndReadWithEither) {
  EXPECT_EQ(show(Pressure(2.5 * pascal), UnitSystem::metric).number, "2,5");
  EXPECT_EQ(show(Length(1.5 * metre), UnitSystem::metric, Meaning::run_length).number, "1,50");
  for (const char* typed : {"12,5", "12.5"}) {
    const auto read = parse_field(typed, UnitSystem::metric, FieldKind::pressure, "draft");
    ASSERT_TRUE(read.value) << typed;
    EXPECT_DOUBLE_EQ(in(std::get<Pressure>(*read.value), pascal), 12.5);
  }
  // Three digits: decimals behind the language's own mark, doubtful behind the other.
  EXPECT_DOUBLE_EQ(in(*parse_length("1,200 m", UnitSystem::metric).value, metre), 1.2);
  EXPECT_FALSE(parse_length("1.200 m", UnitSystem::metric).value);
  speak_by(nullptr, '.');
  EXPECT_FALSE(parse_length("1,200 m", UnitSystem::metric).value);
  EXPECT_DOUBLE_EQ(in(*parse_length("1.200 m", UnitSystem::metric).value, metre), 1.2);
}

TEST_F(Said, InEnglishHoldsForItsThreadAlone) {
  const InEnglish for_programs;
  EXPECT_EQ(said("wall"), "wall");
  EXPECT_EQ(decimal_text(2.5, 1), "2.5");
  std::string elsewhere;
  std::thread([&elsewhere] { elsewhere = said("wall"); }).join();
  EXPECT_EQ(elsewhere, "WALL");
}

TEST_F(Said, ALibraryChangesItsWordsAndNothingElse) {
  const Library& english = *shipped_library();
  const Library other = said_library(english);
  ASSERT_EQ(other.piece_types.size(), english.piece_types.size());
  for (std::size_t i = 0; i < english.piece_types.size(); ++i) {
    EXPECT_EQ(other.piece_types[i].id, english.piece_types[i].id);
    EXPECT_EQ(other.piece_types[i].name, backwards(english.piece_types[i].name.c_str()));
  }
  const auto texts = texts_of_data();
  EXPECT_TRUE(std::is_sorted(texts.begin(), texts.end()));
  for (const PieceType& type : english.piece_types) {
    EXPECT_TRUE(std::binary_search(texts.begin(), texts.end(), type.name)) << type.name;
  }
}

void expect_known(const Working& working) {
  EXPECT_TRUE(is_known_step(working.subject)) << working.subject;
  for (const WorkingStep& step : working.steps) {
    EXPECT_TRUE(step.part.empty() || is_known_step(step.part)) << step.part;
    EXPECT_TRUE(is_known_step(step.meaning)) << step.meaning;
    EXPECT_TRUE(step.remark.empty() || is_known_step(step.remark)) << step.remark;
  }
}

TEST(StepsOfAWorking, AllHaveWordsToTranslate) {
  const Library& library = *shipped_library();
  for (const Demo& demo : shipped_demos()) {
    ReadResult read = read_design_text(demo.text, library);
    const Design design = std::get<DesignDocument>(std::move(read)).design;
    const Assessment answer = assess(design, library);
    for (const NamedHeadline& headline : headlines()) {
      const auto working = explain_headline(design, library, answer, headline.headline);
      if (working) expect_known(*working);
    }
    for (std::size_t piece = 0; piece < design.pieces.size(); ++piece) {
      const auto run = retrace_piece(design, library, answer, piece);
      const auto working = run != nullptr ? explain_piece(*run, piece) : std::nullopt;
      if (working) expect_known(*working);
    }
  }
}

TEST(StepsOfAWorking, PutWhatStandsInThemIntoTheirWords) {
  speak_by([](const char* english) { return std::string(english) == "slice {} of {}" ? std::string("{1}: {0}") : std::string(english); }, ',');
  EXPECT_EQ(said_step("slice 3 of 40"), "40: 3");
  EXPECT_EQ(said_step("no such step"), "no such step");
  speak_by(nullptr, '.');
}

}  // namespace
}  // namespace fluewright
