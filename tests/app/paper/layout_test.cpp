// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Pages as they are laid out: nothing off the paper, nothing over anything else, numbers that add up.
#include "app/shared/words.hpp"
#include "engine/advice/findings.hpp"
#include "tests/app/paper/paper_support.hpp"

#include <QImage>
#include <QRegularExpression>

#include <cstdlib>

namespace fluewright::paper {
namespace {

TEST(Pages, KeepEveryWordOnThePaper) {
  for (const Demo& d : shipped_demos()) {
    const Design design = demo(d.id);
    for (const PaperPage page : all_pages) {
      for (const PaperSize size : {PaperSize::a4, PaperSize::letter}) {
        const UnitSystem units = size == PaperSize::a4 ? UnitSystem::metric : UnitSystem::imperial;
        if (page == PaperPage::working && d.id != "bench_small_150") continue;  // many pages of one kind
        for (const Sheet& sheet : pages(design, library(), wanting(page, size, units))) expect_all_on_paper(sheet, d.id);
      }
    }
  }
}

TEST(Pages, SetNoWordOverAnother) {
  for (const Demo& d : shipped_demos()) {
    for (const PaperPage page : {PaperPage::build, PaperPage::client, PaperPage::card}) {
      for (const Sheet& sheet : pages(demo(d.id), library(), wanting(page))) expect_none_over_another(sheet, d.id);
    }
  }
}

TEST(Pages, AreNumberedAndStamped) {
  const auto sheets = pages(demo("bench_small_150"), library(), wanting(PaperPage::build));
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    const QStringList words = words_on(sheets[i]);
    EXPECT_TRUE(words.contains(QStringLiteral("page %1 of %2").arg(i + 1).arg(sheets.size())));
    EXPECT_TRUE(words.contains(QStringLiteral("a file.fluepath")));
    EXPECT_TRUE(words.contains(QStringLiteral("2001-02-03")));
    EXPECT_TRUE(words.contains(QStringLiteral("version 9.9.9")));
    EXPECT_FALSE(words.filter(QStringLiteral("Local code and permit come first")).isEmpty());
  }
}

TEST(Pages, AreTheSameForTheSameInput) {
  const auto once = pages(demo("greenhouse_floor"), library(), wanting(PaperPage::build));
  const auto again = pages(demo("greenhouse_floor"), library(), wanting(PaperPage::build));
  ASSERT_EQ(once.size(), again.size());
  for (std::size_t i = 0; i < once.size(); ++i) EXPECT_EQ(to_image(once[i], 2.0), to_image(again[i], 2.0));
}

TEST(ClientPageAndCard, AreOnePageEach) {
  for (const Demo& d : shipped_demos()) {
    for (const PaperSize size : {PaperSize::a4, PaperSize::letter}) {
      EXPECT_EQ(pages(demo(d.id), library(), wanting(PaperPage::client, size)).size(), 1u) << d.id;
      EXPECT_EQ(pages(demo(d.id), library(), wanting(PaperPage::card, size)).size(), 1u) << d.id;
    }
  }
}

TEST(ClientPage, SetsTheDesignBeforeBesideTheOneNow) {
  PaperOptions options = wanting(PaperPage::client);
  options.before = PaperVariant{demo("run_too_long"), "As it stands"};
  options.variant_name = "Shorter";
  const auto sheets = pages(demo("bench_small_150"), library(), options);
  EXPECT_EQ(sheets.size(), 1u);
  const QStringList words = words_on(sheets);
  EXPECT_TRUE(words.contains(QStringLiteral("will not draw")));
  EXPECT_TRUE(words.contains(QStringLiteral("draws")));
  EXPECT_TRUE(words.contains(QStringLiteral("Before: As it stands")));
  EXPECT_TRUE(words.contains(QStringLiteral("Now: Shorter")));
}

TEST(LightingCard, SpeaksOfThisDesignsPieces) {
  const QString words =
      words_on(pages(demo("bench_small_150"), library(), wanting(PaperPage::card))).join(QLatin1Char(' '));
  EXPECT_TRUE(words.contains(QStringLiteral("“Feed”")));
  EXPECT_TRUE(words.contains(QStringLiteral("“Foot of the chimney”")));
  EXPECT_TRUE(words.contains(QStringLiteral("is not computed for this design")));
}

TEST(LightingCard, PrintsAStartTableAsItIsGiven) {
  PaperOptions options = wanting(PaperPage::card);
  CardTable starts;
  starts.outdoor = {celsius(-10.0), celsius(15.0)};
  starts.room = {celsius(10.0), celsius(20.0)};
  starts.rows = {{{CardStep::light, {}, {}}, {CardStep::kindle_at_the_foot, {}, {}}},
                 {{CardStep::wait, {}, {}}, {CardStep::prime, 120.0 * gram, 6.0 * minute}}};
  starts.kindling = 1.5 * kilogram_per_hour;
  starts.kindling_lasts = 10.0 * minute;
  starts.primed_at = "p10";
  options.starts = starts;
  const QStringList words = words_on(pages(demo("bench_small_150"), library(), options));
  EXPECT_TRUE(words.contains(QStringLiteral("prime with 120 g, 6 min")));
  EXPECT_TRUE(words.contains(QStringLiteral("wait")));
  EXPECT_TRUE(words.filter(QStringLiteral("not computed")).isEmpty());
  // What the words ask for names the tee that is primed and the small fire's size.
  const QString all = words.join(QLatin1Char(' '));
  EXPECT_TRUE(all.contains(QStringLiteral("behind the open cap of “Foot of the chimney”")));
  EXPECT_TRUE(all.contains(QStringLiteral("1.5\u00A0kg/h of thin kindling for 10 min")));
  options.units = UnitSystem::imperial;
  EXPECT_TRUE(words_on(pages(demo("bench_small_150"), library(), options)).contains(QStringLiteral("prime with 4.2 oz, 6 min")));
}

TEST(LightingCard, InvitesNobodyToLightWhatDoesNotDraw) {
  PaperOptions options = wanting(PaperPage::card);
  options.starts = CardTable{{celsius(0.0)}, {celsius(20.0)}, {{{CardStep::light, {}, {}}}}, {}, {}, {}};
  const QStringList words = words_on(pages(demo("run_too_long"), library(), options));
  EXPECT_FALSE(words.contains(QStringLiteral("light")));
  EXPECT_TRUE(words.contains(QStringLiteral("No. Do not light it until that is changed.")));
  const QStringList fan = words_on(pages(demo("kept_by_a_fan"), library(), options));
  EXPECT_TRUE(fan.join(QLatin1Char(' ')).contains(QStringLiteral("Unsafe: it draws only while the fan runs")));
}

TEST(Dimensions, AddUpToTheirTotal) {
  for (const Demo& d : shipped_demos()) {
    const Design design = demo(d.id);
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
      const Dossier dossier(design, library(), units);
      for (const ViewKind view : {ViewKind::plan, ViewKind::front, ViewKind::side}) {
        const DrawnView drawn = draw_view(dossier, view, {20.0, QStringLiteral("1:20")});
        EXPECT_FALSE(drawn.chains.empty()) << d.id;
        for (const DimensionChain& chain : drawn.chains) {
          // What is printed is the rounded part: sum what a reader would sum.
          Length sum{};
          for (const Length& part : chain.parts) {
            sum += on_the_tape(part, units);
            EXPECT_NEAR(in(on_the_tape(part, units) - part, millimetre), 0.0, 1e-6);
          }
          EXPECT_NEAR(in(sum, millimetre), in(chain.total, millimetre), 1e-6) << d.id;
        }
      }
    }
  }
}

TEST(Dimensions, AreThoseOfTheAxis) {
  const Design design = demo("bench_small_150");
  const Dossier dossier(design, library(), UnitSystem::metric);
  const DrawnView plan = draw_view(dossier, ViewKind::plan, {20.0, QStringLiteral("1:20")});
  // Feed at 0, riser at 600, chimney at 1060, far end of the bench at 3335 mm east.
  const auto& parts = plan.chains.front().parts;
  ASSERT_EQ(parts.size(), 3u);
  EXPECT_NEAR(in(parts[0], millimetre), 600.0, 1e-6);
  EXPECT_NEAR(in(parts[1], millimetre), 460.0, 1e-6);
  EXPECT_NEAR(in(parts[2], millimetre), 2275.0, 1e-6);
}

TEST(ScaleBar, IsAsLongAsItSays) {
  const Design design = demo("greenhouse_floor");
  for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
    const Dossier dossier(design, library(), units);
    const DrawnView drawn = fitted_view(dossier, ViewKind::plan, {180.0, 250.0});
    EXPECT_NEAR(drawn.scale_bar.width() * drawn.scale.denominator, in(drawn.scale_bar_stands_for, millimetre), 1e-6);
    EXPECT_GT(drawn.scale_bar.width(), 10.0);
  }
}

TEST(Tables, AlignNumbersByTheDecimal) {
  Table table;
  table.columns = {{QStringLiteral("Value"), QStringLiteral("Pa"), ColumnKind::number}};
  table.rows = {{QStringLiteral("12.5")}, {QStringLiteral("−0.75")}, {QStringLiteral("3")}};
  const LaidTable laid(table, 100.0);
  Figure figure;
  for (std::size_t i = 0; i < 3; ++i) laid.put_row(figure, {0.0, 10.0 * static_cast<double>(i)}, i);
  std::vector<double> points;
  for (const Mark& mark : figure.marks) {
    const auto* words = std::get_if<Words>(&mark);
    if (words == nullptr) continue;
    const qsizetype point = words->text.indexOf(QLatin1Char('.'));
    points.push_back(words->at.x() + width_of(point < 0 ? words->text : words->text.left(point), words->type));
  }
  ASSERT_EQ(points.size(), 3u);
  EXPECT_NEAR(points[0], points[1], 1e-6);
  EXPECT_NEAR(points[0], points[2], 1e-6);
}

TEST(Words, BreakWithinAWordWhereItIsTooWide) {
  const QString word(80, QLatin1Char('W'));
  const QStringList lines = wrapped(word, Type::body, 30.0);
  EXPECT_EQ(lines.join(QString()), word);
  for (const QString& line : lines) EXPECT_LE(width_of(line, Type::body), 30.0);
}

TEST(Drafts, SayAcrossThePageThatTheyAreAndWhatIsMissing) {
  Design design = demo("bench_small_150");
  design.joints.erase(design.joints.begin());
  for (const PaperPage page : all_pages) {
    const auto sheets = pages(design, library(), wanting(page));
    for (const Sheet& sheet : sheets) EXPECT_TRUE(words_on(sheet).contains(QStringLiteral("DRAFT")));
    EXPECT_TRUE(words_on(sheets).contains(QStringLiteral("Draft: what is missing")));
  }
  EXPECT_FALSE(
      words_on(pages(demo("bench_small_150"), library(), wanting(PaperPage::build))).contains(QStringLiteral("DRAFT")));
}

TEST(Drafts, OfNothingAtAllArePagesToo) {
  for (const PaperPage page : all_pages) EXPECT_GE(pages(Design{}, library(), wanting(page)).size(), 1u);
}

TEST(ManyPieces, FlowOntoFurtherPagesInOrder) {
  const Design design = long_way(200);
  ASSERT_NEAR(static_cast<double>(design.pieces.size()), 200.0, 2.0);
  ASSERT_TRUE(trace_path(design, library()).complete);
  const auto sheets = pages(design, library(), wanting(PaperPage::build));
  EXPECT_GT(sheets.size(), 8u);
  EXPECT_FALSE(words_on(sheets).contains(QStringLiteral("DRAFT")));
  for (const Sheet& sheet : sheets) expect_all_on_paper(sheet, "a long way");
  // The parts list names every number once, its lines in the order of their first numbers.
  const QStringList words = words_on(sheets);
  std::vector<int> named;
  int first_before = 0;
  const Dossier dossier(design, library(), UnitSystem::metric);
  qsizetype at = words.indexOf(QStringLiteral("Parts"));
  for (const PartLine& line : parts_list(design, library())) {
    const QString numbers = number_list(dossier, line.pieces);
    // A long list of numbers is broken over lines: its first line is looked for.
    at = words.indexOf(QRegularExpression(QStringLiteral("^%1(,.*)?$").arg(
                           QRegularExpression::escape(numbers.section(QLatin1Char(','), 0, 0)))),
                       at + 1);
    ASSERT_GE(at, 0) << numbers.toStdString();
    std::vector<std::size_t> of_line;
    for (const std::size_t piece : line.pieces) of_line.push_back(dossier.number(piece));
    const int first = static_cast<int>(*std::min_element(of_line.begin(), of_line.end()));
    EXPECT_GT(first, first_before);
    first_before = first;
    named.insert(named.end(), of_line.begin(), of_line.end());
  }
  std::sort(named.begin(), named.end());
  ASSERT_EQ(named.size(), design.pieces.size());
  for (std::size_t i = 0; i < named.size(); ++i) EXPECT_EQ(named[i], static_cast<int>(i) + 1);
}

TEST(Findings, OnTheBuildSheetAreThoseOfPracticeTooWithTheReasonsTheyStandFor) {
  Design design = demo("run_too_long");
  const auto all = all_findings(design, library(), assess(design, library()));
  const auto practice = std::find_if(all.begin(), all.end(), [](const Finding& f) {
    return f.code == FindingCode::no_alarm_note || f.code == FindingCode::missing_cleanout;
  });
  ASSERT_NE(practice, all.end());
  const auto said = [](const Design& d) {
    return words_on(pages(d, library(), wanting(PaperPage::build))).join(QLatin1Char(' '));
  };
  const QString open = said(design);
  EXPECT_FALSE(open.contains(QStringLiteral("Let stand because")));
  for (const Finding& finding : all) {
    const QString sentence_words = text(sentence(finding, design, library(), UnitSystem::metric));
    EXPECT_TRUE(open.contains(sentence_words.section(QLatin1Char(' '), 0, 2))) << sentence_words.toStdString();
  }
  design = acknowledged(design, *practice, "Agreedwiththesweep");
  const QString settled = said(design);
  EXPECT_TRUE(settled.contains(QStringLiteral("Agreedwiththesweep")));
  EXPECT_TRUE(settled.contains(QStringLiteral("Let stand because")));
}

TEST(Paper, IsBlackOnWhite) {
  for (const PaperPage page : {PaperPage::build, PaperPage::client, PaperPage::card}) {
    for (const Sheet& sheet : pages(demo("run_too_long"), library(), wanting(page))) {
      const QImage image = to_image(sheet, 8.0);
      int grey = 0;
      // Smoothing leaves grey beside black only: look for grey all around.
      for (int y = 1; y + 1 < image.height(); y += 3) {
        for (int x = 1; x + 1 < image.width(); x += 3) {
          const int here = qGray(image.pixel(x, y));
          if (here < 30 || here > 240) continue;
          bool edge = false;
          for (int dy = -1; dy <= 1 && !edge; ++dy) {
            for (int dx = -1; dx <= 1 && !edge; ++dx) edge = std::abs(qGray(image.pixel(x + dx, y + dy)) - here) > 4;
          }
          if (!edge) ++grey;
        }
      }
      EXPECT_LT(grey, 50);
    }
  }
}

TEST(Type, IsLargeEnoughForAFax) {
  // A fax scans 3.85 lines a millimetre (ITU-T T.4, standard resolution): a capital of 1.8 mm is seven of them.
  for (const Type type : {Type::title, Type::heading, Type::body, Type::strong, Type::table, Type::table_head, Type::note}) {
    EXPECT_GE(cap_height(type), 1.8);
  }
}

}  // namespace
}  // namespace fluewright::paper
