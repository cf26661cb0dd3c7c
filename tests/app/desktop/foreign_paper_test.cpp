// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Pages printed from a desktop that speaks another language: its words are longer, and have to find room all the same.

#include "speaks.hpp"
#include "tests/app/paper/paper_support.hpp"

namespace fluewright::paper {
namespace {

class ForeignPaper : public testing::TestWithParam<const char*> {};

TEST_P(ForeignPaper, HasRoomForEveryWord) {
  const test::Speaks speaks{QLatin1String(GetParam())};
  const std::shared_ptr<const Library> spoken = spoken_library();
  for (const Demo& d : shipped_demos()) {
    for (const PaperPage page : {PaperPage::build, PaperPage::client, PaperPage::card}) {
      const std::vector<Sheet> sheets = pages(demo(d.id), *spoken, wanting(page));
      if (page != PaperPage::build) EXPECT_EQ(sheets.size(), 1U) << d.id;
      for (const Sheet& sheet : sheets) {
        expect_all_on_paper(sheet, d.id);
        expect_none_over_another(sheet, d.id);
      }
    }
  }
}

TEST_P(ForeignPaper, IsNotEnglish) {
  const PaperOptions options = wanting(PaperPage::card);
  const QStringList english = words_on(pages(demo("bench_small_150"), library(), options));
  const test::Speaks speaks{QLatin1String(GetParam())};
  const QStringList foreign = words_on(pages(demo("bench_small_150"), *spoken_library(), options));
  ASSERT_GT(foreign.size(), 20);
  int same = 0;
  for (const QString& text : foreign) {
    // Titles and numbers may be alike, sentences not.
    if (text.count(QLatin1Char(' ')) > 3 && english.contains(text)) ++same;
  }
  EXPECT_EQ(same, 0);
}

INSTANTIATE_TEST_SUITE_P(OfLanguages, ForeignPaper, testing::Values("de", "es"),
                         [](const auto& chosen) { return std::string(chosen.param); });

}  // namespace
}  // namespace fluewright::paper
