// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/design_file.hpp"
#include "app/shared/library_reader.hpp"
#include "tests/app/shared/sample_design.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <filesystem>
#include <fstream>
#include <string>

namespace fluewright {
namespace {

/// What is said about a file that cannot be read; empty if it can.
std::string complaint(std::string_view text) {
  const ReadResult result = read_design_text(text, *shipped_library());
  const auto* fault = std::get_if<FileFault>(&result);
  return fault != nullptr ? fault->text() : std::string{};
}

/// A design of one piece with something put in.
std::string one_pipe(const std::string& fields, const std::string& more = {}) {
  return R"({"fluewright_design": 1, "pieces": [{"id": "p1", "type": "stovepipe", "at": {"x_mm": 0, "y_mm": 0, "z_mm": 0},
    "heading": "up", "fields": {)" +
         fields + "}}]" + more + "}";
}

TEST(BadValues, NamePieceFieldValueAndAllowedRange) {
  EXPECT_EQ(complaint(one_pipe(R"("bore_mm": 0)")),
            "Piece “p1”, bore_mm: 0 is not allowed; it must be a number from 50 to 500.");
  EXPECT_EQ(complaint(one_pipe(R"("bore_mm": "wide")")),
            "Piece “p1”, bore_mm: “wide” is not allowed; it must be a number from 50 to 500.");
  EXPECT_EQ(complaint(one_pipe(R"("place": "moon")")),
            "Piece “p1”, place: “moon” is not allowed; it must be one of room, attic, outdoors.");
  EXPECT_EQ(complaint(one_pipe(R"("wall": 3)")), "Piece “p1”, wall: 3 is not allowed; it must be the id of a wall.");
}

TEST(BadValues, OfSiteRoomAndFireNameTheirRange) {
  EXPECT_EQ(complaint(R"({"fluewright_design": 1, "fire": {"moisture_share": 0.7}})"),
            "fire, moisture_share: 0.7 is not allowed; it must be a number from 0 to 0.6.");
  EXPECT_EQ(complaint(R"({"fluewright_design": 1, "site": {"outdoor_temperature_C": "cold"}})"),
            "site, outdoor_temperature_C: “cold” is not allowed; it must be a number from -50 to 45.");
}

TEST(BadValues, AreAllToldAtOnce) {
  EXPECT_EQ(complaint(one_pipe(R"("bore_mm": 0, "length_mm": -5)", R"(, "fire": {"moisture_share": 0.3})")),
            "Piece “p1”, length_mm: -5 is not allowed; it must be a number from 20 to 20000.\n"
            "Piece “p1”, bore_mm: 0 is not allowed; it must be a number from 50 to 500.");
}

TEST(BadLayout, NamesWhatIsMissing) {
  EXPECT_EQ(complaint(R"({"fluewright_design": 1, "pieces": [{"id": "p7", "type": "stovepipe", "heading": "up"}]})"),
            "Piece “p7”: “at” is missing.");
  EXPECT_EQ(complaint(R"({"fluewright_design": 1, "pieces": [{}]})"),
            "Piece number 1: “id” is missing.\nPiece number 1: “type” is missing.\nPiece number 1: “at” is missing.\n"
            "Piece number 1: “heading” is missing.");
}

TEST(BadLayout, NamesTheWrongKind) {
  EXPECT_EQ(complaint(R"({"fluewright_design": 1, "pieces": 5})"), "pieces: 5 is not allowed; it must be a list [ ].");
  EXPECT_EQ(complaint(R"({"fluewright_design": 1, "title": []})"), "title: a list is not allowed; it must be a text.");
  EXPECT_EQ(
      complaint(
          R"({"fluewright_design": 1, "pieces": [{"id": "p1", "type": "x", "at": {"x_mm": "a", "y_mm": 0, "z_mm": 0},
                          "heading": "up"}]})"),
      "Piece “p1”, at.x_mm: “a” is not allowed; it must be a number from -10000000 to 10000000.");
  EXPECT_EQ(
      complaint(
          R"({"fluewright_design": 1, "pieces": [{"id": "p1", "type": "x", "at": {"x_mm": 0, "y_mm": 0, "z_mm": 0},
                          "heading": "sideways"}]})"),
      "Piece “p1”, heading: “sideways” is not allowed; it must be \"east\", \"north\", \"west\", \"south\", \"up\", "
      "\"down\", or an object with azimuth_deg and elevation_deg.");
  EXPECT_EQ(
      complaint(
          R"({"fluewright_design": 1, "walls": [{"id": "w", "layers": [{"material": "cob", "thickness_mm": 0}]}]})"),
      "Wall “w”, layers.0.thickness_mm: 0 is not allowed; it must be a number from 0.01 to 2000.");
}

TEST(BadLayout, OfJointsNamesTheJoint) {
  EXPECT_EQ(complaint(one_pipe("", R"(, "joints": [{"a": "p1.out", "b": "p2.in"}])")),
            "Joint number 1, b: “p2” is not allowed; it must be the id of a piece of this design.");
  EXPECT_EQ(complaint(one_pipe("", R"(, "joints": [{"a": "p1out", "b": "p1.in"}])")),
            "Joint number 1, a: “p1out” is not allowed; it must be a piece, a dot and a port, like “p1.out”.");
}

TEST(BadLayout, TwoPiecesOfOneIdAreNamed) {
  const std::string piece =
      R"({"id": "p1", "type": "stovepipe", "at": {"x_mm": 0, "y_mm": 0, "z_mm": 0}, "heading": "up"})";
  EXPECT_EQ(complaint(R"({"fluewright_design": 1, "pieces": [)" + piece + "," + piece + "]}"),
            "Piece “p1”, id: “p1” stands twice; every piece needs an id of its own.");
}

TEST(BadLayout, AKeyThatStandsTwiceIsNamed) {
  EXPECT_EQ(complaint(R"({"fluewright_design": 1, "title": "a", "title": "b"})"),
            "The key “title” stands twice in the same object: only one can be meant.");
}

TEST(BadPlaces, GoInSteps) {
  EXPECT_EQ(
      complaint(R"({"fluewright_design": 1, "pieces": [{"id": "p1", "type": "stovepipe", "at": {"x_mm": 0.05, "y_mm": 0,
                          "z_mm": 0}, "heading": "up"}]})"),
      "Piece “p1”, at.x_mm: 0.05 is not allowed; it must go in steps of 0.1 mm.");
}

TEST(NotJson, IsToldWithLineAndColumn) {
  EXPECT_EQ(complaint("{\n  \"fluewright_design\": 1,\n  oops\n}"),
            "This is not JSON: at line 3, column 3 something else was expected.");
  EXPECT_EQ(complaint(""), "This is not JSON: at line 1, column 1 something else was expected.");
  EXPECT_EQ(complaint(R"({"fluewright_design": 1, "site": {"altitude_m": 1e999}})"),
            "This is not JSON that can be read: a number in it is too large.");
  EXPECT_NE(complaint("\xff\xfe\x00\x01"), "");
}

TEST(NotADesign, IsToldApartFromNotJson) {
  EXPECT_EQ(complaint("[1, 2]"), "This is JSON, but not a design: its marker “fluewright_design” is missing.");
  EXPECT_EQ(complaint("{}"), "This is JSON, but not a design: its marker “fluewright_design” is missing.");
  for (const char* marker : {"0", "-1", "1.5", "\"1\"", "null", "18446744073709551615"}) {
    EXPECT_EQ(complaint("{\"fluewright_design\": " + std::string(marker) + "}").rfind("fluewright_design: ", 0), 0u)
        << marker;
  }
}

TEST(TooMuch, NestingIsRefused) {
  const std::string deep =
      R"({"fluewright_design": 1, "x": )" + std::string(100'000, '[') + std::string(100'000, ']') + "}";
  EXPECT_EQ(complaint(deep), "The file is nested more than 64 deep.");
}

TEST(TooMuch, TextIsRefusedBeforeItIsRead) {
  EXPECT_EQ(complaint(std::string(17u * 1024u * 1024u, ' ')), "The file is 17.0 MiB; a design may be at most 16 MiB.");
}

TEST(TooMuch, AFileIsRefusedBeforeItIsOpened) {
  const auto path = std::filesystem::temp_directory_path() / "fluewright-fifty.fluepath";
  std::ofstream(path).put('{');
  std::filesystem::resize_file(path, 50u * 1024u * 1024u);
  const ReadResult result = read_design_file(path, *shipped_library());
  std::filesystem::remove(path);
  const auto* fault = std::get_if<FileFault>(&result);
  ASSERT_NE(fault, nullptr);
  EXPECT_EQ(fault->text(),
            "“" + path.string() + "” could not be read: it is 50.0 MiB large; a design may be at most 16 MiB.");
}

TEST(TooMuch, FaultsAreCounted) {
  std::string pieces;
  for (int i = 0; i < 30; ++i) pieces += std::string(i == 0 ? "" : ",") + "3";
  const std::string text = complaint("{\"fluewright_design\": 1, \"pieces\": [" + pieces + "]}");
  EXPECT_NE(text.find("\n... and 10 more."), std::string::npos) << text;
}

TEST(MissingFiles, AreTold) {
  const auto told = [](const char* path) {
    const ReadResult result = read_design_file(path, *shipped_library());
    const auto* fault = std::get_if<FileFault>(&result);
    return fault != nullptr ? fault->text() : std::string{};
  };
  EXPECT_EQ(told("/nowhere/x.fluepath"), "“/nowhere/x.fluepath” could not be read: there is no such file.");
  EXPECT_EQ(told("/tmp"), "“/tmp” could not be read: it is a folder.");
  EXPECT_EQ(told("/dev/zero"), "“/dev/zero” could not be read: it is not an ordinary file.");
}

// Whatever happens to a file on its way, it is read, or refused with words.
RC_GTEST_PROP(DamagedFiles, AreReadOrRefusedWithWords, ()) {
  DesignDocument document;
  document.design = sample_design();
  std::string text = write_design_text(document, *shipped_library());
  const auto strokes = *rc::gen::inRange(1, 6);
  for (int i = 0; i < strokes; ++i) {
    const auto at = *rc::gen::inRange<std::size_t>(0, text.size());
    const auto kind = *rc::gen::inRange(0, 3);
    if (kind == 0) text[at] = *rc::gen::arbitrary<char>();
    if (kind == 1) text.erase(at, *rc::gen::inRange<std::size_t>(1, 40));
    if (kind == 2)
      text.insert(
          at, *rc::gen::elementOf(std::vector<std::string>{"null", "[]", "{}", "-1e308", "\"\"", "0", ",", "true"}));
    if (text.empty()) text = " ";
  }
  const ReadResult result = read_design_text(text, *shipped_library());
  if (const auto* fault = std::get_if<FileFault>(&result)) {
    RC_ASSERT(!fault->text().empty());
  } else {
    const std::string once = write_design_text(std::get<DesignDocument>(result), *shipped_library());
    RC_ASSERT(std::holds_alternative<DesignDocument>(read_design_text(once, *shipped_library())));
  }
}

}  // namespace
}  // namespace fluewright
