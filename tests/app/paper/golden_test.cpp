// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Pages against pictures of them. What is compared is where ink lies: blocks of 4 mm, so that another digit in a number
// passes and a part that moved, went missing or got dark does not. FLUEWRIGHT_UPDATE_GOLDEN=1 makes the pictures anew.
#include "tests/app/paper/paper_support.hpp"

#include <QImage>

#include <cmath>

namespace fluewright::paper {
namespace {

constexpr double dots_per_mm = 2.0;
constexpr int block = 8;              // dots
constexpr double dark_step = 26.0;    // of 255: a block differs
constexpr double most_blocks = 0.02;  // share of a page's blocks that may

double darkness(const QImage& image, int left, int top) {
  double sum = 0.0;
  int count = 0;
  for (int y = top; y < std::min(top + block, image.height()); ++y) {
    for (int x = left; x < std::min(left + block, image.width()); ++x, ++count) sum += 255 - qGray(image.pixel(x, y));
  }
  return sum / count;
}

double differing_share(const QImage& a, const QImage& b) {
  if (a.size() != b.size()) return 1.0;
  int differ = 0;
  int all = 0;
  for (int y = 0; y < a.height(); y += block) {
    for (int x = 0; x < a.width(); x += block, ++all) {
      if (std::abs(darkness(a, x, y) - darkness(b, x, y)) > dark_step) ++differ;
    }
  }
  return static_cast<double>(differ) / all;
}

struct Golden {
  const char* name;
  PaperPage page;
  std::size_t first;  ///< sheets of the document that are held
  std::size_t last;
};

class Goldens : public testing::TestWithParam<std::string> {};

TEST_P(Goldens, LookAsTheyLooked) {
  // Of the build sheet the drawings: its tables' words belong to others and move.
  for (const Golden& golden : {Golden{"build", PaperPage::build, 0, 2}, Golden{"client", PaperPage::client, 0, 0},
                               Golden{"card", PaperPage::card, 0, 0}}) {
    const auto sheets = pages(demo(GetParam()), library(), wanting(golden.page));
    for (std::size_t i = golden.first; i <= golden.last && i < sheets.size(); ++i) {
      const QString path = QStringLiteral(FLUEWRIGHT_GOLDEN_PAGES "/%1-%2-%3.png")
                               .arg(QString::fromStdString(GetParam()), QString::fromUtf8(golden.name))
                               .arg(i + 1);
      const QImage now = to_image(sheets[i], dots_per_mm).convertToFormat(QImage::Format_Grayscale8);
      if (qEnvironmentVariableIsSet("FLUEWRIGHT_UPDATE_GOLDEN")) {
        ASSERT_TRUE(now.save(path)) << path.toStdString();
        continue;
      }
      const QImage then(path);
      ASSERT_FALSE(then.isNull()) << path.toStdString();
      EXPECT_LE(differing_share(now, then), most_blocks) << path.toStdString();
    }
  }
}

INSTANTIATE_TEST_SUITE_P(OfDemos, Goldens,
                         testing::Values("bench_small_150", "bench_spring_200", "chimney_outside", "greenhouse_floor",
                                         "run_too_long"),
                         [](const auto& instance) { return instance.param; });

TEST(GoldenMeasure, SeesAPartThatMoved) {
  auto sheets = pages(demo("bench_small_150"), library(), wanting(PaperPage::client));
  const QImage then = to_image(sheets[0], dots_per_mm).convertToFormat(QImage::Format_Grayscale8);
  Sheet moved{sheets[0].width, sheets[0].height, {}};
  moved.content.put(sheets[0].content, {0.0, 6.0});
  EXPECT_GT(differing_share(then, to_image(moved, dots_per_mm).convertToFormat(QImage::Format_Grayscale8)),
            most_blocks);
}

}  // namespace
}  // namespace fluewright::paper
