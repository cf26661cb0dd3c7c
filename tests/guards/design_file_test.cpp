// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The design that the documentation shows is a real one: it reads, draws a whole path, and is written as it stands.

#include "app/shared/design_file.hpp"
#include "app/shared/library_reader.hpp"
#include "engine/solve/assessment.hpp"
#include "tests/guards/tree.hpp"

#include <gtest/gtest.h>

namespace fluewright::guards {
namespace {

std::string json_block_of(const std::string& document) {
  for (const auto& file : project_files("resources/documentation", {document})) {
    std::string block;
    bool inside = false;
    for (const std::string& line : file.lines) {
      if (line.starts_with("```")) {
        inside = line == "```json";
      } else if (inside) {
        block += line + "\n";
      }
    }
    return block;
  }
  return {};
}

TEST(TheDocumentedDesign, ReadsDrawsAWholePathAndIsWrittenAsItStands) {
  const std::string text = json_block_of("design-file.md");
  const auto library = shipped_library();
  const ReadResult result = read_design_text(text, *library);
  if (const auto* fault = std::get_if<FileFault>(&result)) FAIL() << fault->text();
  const auto& document = std::get<DesignDocument>(result);
  EXPECT_TRUE(document.remarks.empty());
  EXPECT_EQ(write_design_text(document, *library), text);
  EXPECT_TRUE(assess(document.design, *library).path.complete);
}

}  // namespace
}  // namespace fluewright::guards
