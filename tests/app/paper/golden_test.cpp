// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Every demo's pages against pictures of them, a picture a demo with its pages side by side, half a dot a millimetre.
// What is compared is where ink lies. A page of drawings is held in blocks of 4 mm: another digit passes, a part that
// moved, went missing or got dark does not. On a page with tables a word more moves every line under it, so blocks of
// 20 mm are held there. FLUEWRIGHT_UPDATE_GOLDEN=1 makes the pictures anew: look at them before committing.
#include "tests/app/paper/paper_support.hpp"

#include <QImage>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace fluewright::paper {
namespace {

constexpr double dots_per_mm = 2.0;  // as painted
constexpr int shrink = 4;            // stored: half a dot a millimetre
constexpr int gap = 2;               // between pages, stored dots

struct Measure {
  int block;           // stored dots
  double step;         // of 255: from there on a block differs
  double most_blocks;  // share of a page's blocks that may
};
constexpr Measure fine{2, 26.0, 0.02};
constexpr Measure coarse{10, 16.0, 0.05};

/// Of a picture with a byte a dot.
double darkness(const QImage& image, int left, int top, int block) {
  double sum = 0.0;
  int count = 0;
  for (int y = top; y < std::min(top + block, image.height()); ++y) {
    const uchar* line = image.constScanLine(y);
    for (int x = left; x < std::min(left + block, image.width()); ++x, ++count) sum += 255 - line[x];
  }
  return sum / count;
}

double differing_share(const QImage& a, const QImage& b, const Measure& measure) {
  if (a.size() != b.size()) return 1.0;
  int differ = 0;
  int all = 0;
  for (int y = 0; y < a.height(); y += measure.block) {
    for (int x = 0; x < a.width(); x += measure.block, ++all) {
      if (std::abs(darkness(a, x, y, measure.block) - darkness(b, x, y, measure.block)) > measure.step) ++differ;
    }
  }
  return static_cast<double>(differ) / all;
}

bool has_table(const Sheet& sheet) {
  return std::any_of(sheet.content.marks.begin(), sheet.content.marks.end(), [](const Mark& mark) {
    const auto* words = std::get_if<Words>(&mark);
    return words != nullptr && words->type == Type::table;
  });
}

/// Means of the painted dots: thin lines stay, as grey.
QImage small(const Sheet& sheet) {
  const QImage large = to_image(sheet, dots_per_mm).convertToFormat(QImage::Format_Grayscale8);
  QImage image(large.width() / shrink, large.height() / shrink, QImage::Format_Grayscale8);
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) {
      const int grey = 255 - static_cast<int>(std::lround(darkness(large, x * shrink, y * shrink, shrink)));
      // Sixteen greys: half the size on disk, and no less than an eye tells apart.
      image.scanLine(y)[x] = static_cast<uchar>(grey / 17 * 17);
    }
  }
  return image;
}

std::vector<Sheet> held_pages(const std::string& id) {
  const Design design = demo(id);
  std::vector<Sheet> all;
  for (const PaperPage page : {PaperPage::build, PaperPage::client, PaperPage::card, PaperPage::working}) {
    if (page == PaperPage::working && id != "bench_small_150") continue;  // hundreds of pages of one kind
    PaperOptions options = wanting(page);
    if (page == PaperPage::card) {
      const auto job = CardTableJob::begin(design, shipped_library(), card_days(UnitSystem::metric));
      job->wait();
      options.starts = job->table();
    }
    std::vector<Sheet> sheets = pages(design, library(), options);
    if (page == PaperPage::working) sheets.resize(1);  // the rest is one table after the other
    all.insert(all.end(), sheets.begin(), sheets.end());
  }
  return all;
}

QImage side_by_side(const std::vector<QImage>& images) {
  int width = -gap;
  int height = 0;
  for (const QImage& image : images) {
    width += image.width() + gap;
    height = std::max(height, image.height());
  }
  QImage all(width, height, QImage::Format_Grayscale8);
  all.fill(Qt::black);
  QPainter painter(&all);
  int x = 0;
  for (const QImage& image : images) {
    painter.drawImage(x, 0, image);
    x += image.width() + gap;
  }
  painter.end();
  return all;
}

std::vector<std::string> demo_ids() {
  std::vector<std::string> ids;
  for (const Demo& d : shipped_demos()) ids.push_back(d.id);
  return ids;
}

class Goldens : public testing::TestWithParam<std::string> {};

TEST_P(Goldens, LookAsTheyLooked) {
  const std::vector<Sheet> sheets = held_pages(GetParam());
  std::vector<QImage> images;
  for (const Sheet& sheet : sheets) images.push_back(small(sheet));
  const QImage now = side_by_side(images);
  const QString path = QStringLiteral(FLUEWRIGHT_GOLDEN_PAGES "/%1.png").arg(QString::fromStdString(GetParam()));
  if (qEnvironmentVariableIsSet("FLUEWRIGHT_UPDATE_GOLDEN")) {
    ASSERT_TRUE(now.save(path)) << path.toStdString();
    return;
  }
  const QImage then = QImage(path).convertToFormat(QImage::Format_Grayscale8);
  ASSERT_FALSE(then.isNull()) << path.toStdString();
  ASSERT_EQ(now.size(), then.size()) << "another number of pages than in " << path.toStdString();
  int x = 0;
  for (std::size_t i = 0; i < images.size(); ++i) {
    const Measure& measure = has_table(sheets[i]) ? coarse : fine;
    const QImage page = then.copy(x, 0, images[i].width(), images[i].height());
    EXPECT_LE(differing_share(images[i], page, measure), measure.most_blocks)
        << "page " << i + 1 << " of " << path.toStdString();
    x += images[i].width() + gap;
  }
}

INSTANTIATE_TEST_SUITE_P(OfDemos, Goldens, testing::ValuesIn(demo_ids()),
                         [](const auto& instance) { return instance.param; });

Sheet shifted(const Sheet& sheet, double by) {
  Sheet moved{sheet.width, sheet.height, {}};
  moved.content.put(sheet.content, {0.0, by});
  return moved;
}

TEST(GoldenMeasure, SeesDrawingsThatMovedByAFewMillimetres) {
  const auto sheets = pages(demo("bench_small_150"), library(), wanting(PaperPage::build));
  const auto plan = std::find_if(sheets.begin(), sheets.end(), [](const Sheet& s) { return !has_table(s); });
  ASSERT_NE(plan, sheets.end());
  EXPECT_GT(differing_share(small(*plan), small(shifted(*plan, 6.0)), fine), fine.most_blocks);
}

TEST(GoldenMeasure, SeesTablesThatAreGoneAndNotALineMore) {
  const auto sheets = pages(demo("bench_small_150"), library(), wanting(PaperPage::build));
  const auto tables = std::find_if(sheets.begin(), sheets.end(), [](const Sheet& s) { return has_table(s); });
  ASSERT_NE(tables, sheets.end());
  Sheet half{tables->width, tables->height, {}};
  const auto& marks = tables->content.marks;
  half.content.marks.assign(marks.begin(), marks.begin() + static_cast<std::ptrdiff_t>(marks.size() / 2));
  EXPECT_GT(differing_share(small(*tables), small(half), coarse), coarse.most_blocks);
  EXPECT_LE(differing_share(small(*tables), small(shifted(*tables, 4.0)), coarse), coarse.most_blocks);
}

}  // namespace
}  // namespace fluewright::paper
