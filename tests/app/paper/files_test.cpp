// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Files as other programs read them.
#include "app/shared/bulk_units.hpp"
#include "app/shared/report.hpp"
#include "app/shared/words.hpp"
#include "tests/app/paper/paper_support.hpp"

#include <QDir>
#include <QFile>
#include <QImage>
#include <QRegularExpression>

#include <nlohmann/json.hpp>

#include <filesystem>

#include <unistd.h>

namespace fluewright::paper {
namespace {

class PaperFiles : public testing::Test {
 protected:
  [[nodiscard]] QString path(const char* name) const { return folder_.filePath(QString::fromUtf8(name)); }
  [[nodiscard]] std::filesystem::path fs(const char* name) const { return path(name).toStdU16String(); }
  /// The document as text.
  [[nodiscard]] QString printed(const Design& design, const PaperOptions& options) const {
    EXPECT_EQ(write_paper(design, library(), options, fs("paper.pdf")), PaperFault{});
    return pdf_text(path("paper.pdf"));
  }
  QTemporaryDir folder_;
};

/// Numbers of a text line, in order.
QStringList numbers_in(const QString& line) {
  static const QRegularExpression number(QStringLiteral("[−-]?\\d+(\\.\\d+)?"));
  QStringList found;
  for (auto it = number.globalMatch(line); it.hasNext();) found << it.next().captured();
  return found;
}

QString line_with(const QString& text, const QString& start) {
  for (const QString& line : text.split(QLatin1Char('\n'))) {
    if (line.trimmed().startsWith(start)) return line;
  }
  ADD_FAILURE() << "no line starts with " << start.toStdString();
  return {};
}

TEST_F(PaperFiles, PrintTheEnginesNumbersToTheDigit) {
  for (const Demo& d : shipped_demos()) {
    const Design design = demo(d.id);
    const Assessment answer = assess(design, library());
    const QString text = printed(design, wanting(PaperPage::build));
    for (const DesignFlow& flow : answer.design_flow) {
      QStringList wanted;
      std::vector<Pressure> pressures{flow.margin, flow.buoyancy, flow.resistance, flow.room_gauge};
      if (flow.margin_with_fans) pressures.insert(pressures.begin() + 1, *flow.margin_with_fans);
      for (const Pressure& p : pressures) {
        wanted << QString::fromStdString(show(p, UnitSystem::metric).number);
      }
      wanted << QString::fromStdString(show(flow.exit_temperature, UnitSystem::metric).number);
      EXPECT_EQ(numbers_in(line_with(text, QString::fromUtf8(word(flow.age).data()))), wanted) << d.id;
    }
    const MassBill bill = mass_bill(design, library());
    EXPECT_EQ(numbers_in(line_with(text, QStringLiteral("All "))).back(),
              QString::fromStdString(show_weight(bill.total(), UnitSystem::metric).number));
  }
}

TEST_F(PaperFiles, ListTheCutsThatCoverTheParts) {
  const Design design = demo("bench_small_150");
  const QString text = printed(design, wanting(PaperPage::build));
  const auto list = cut_list(design, library());
  ASSERT_TRUE(list.has_value());
  ASSERT_FALSE(list->groups.empty());
  const Dossier dossier(design, library(), UnitSystem::metric);
  for (const CutGroup& group : list->groups) {
    for (const StockLength& length : group.lengths) {
      for (const Cut& cut : length.cuts) {
        const QString number = QString::number(dossier.number(cut.piece));
        const QString name =
            cut.parts > 1 ? QStringLiteral("%1 part %2 of %3").arg(number).arg(cut.part).arg(cut.parts) : number;
        const QString wanted = QStringLiteral("%1: %2").arg(
            name, QString::fromStdString(show(cut.sawn, UnitSystem::metric, Meaning::drawn_length).number));
        EXPECT_TRUE(text.contains(wanted)) << wanted.toStdString();
      }
    }
  }
}

TEST_F(PaperFiles, EmbedTheirFontsAndKeepTextAsText) {
  (void)printed(demo("bench_spring_200"), wanting(PaperPage::build));
  const Ran fonts = run(QStringLiteral("pdffonts"), {path("paper.pdf")});
  const QStringList lines = fonts.out.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
  ASSERT_GT(lines.size(), 2);
  for (qsizetype i = 2; i < lines.size(); ++i) {
    const QStringList cells = lines[i].simplified().split(QLatin1Char(' '));
    // name, type (may be two or three words), encoding, emb, sub, uni, object, generation
    EXPECT_EQ(cells[cells.size() - 5], QStringLiteral("yes")) << lines[i].toStdString();
  }
}

TEST_F(PaperFiles, AreAsLargeAsThePaper) {
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter}) {
    (void)printed(demo("bench_small_150"), wanting(PaperPage::card, size));
    const Ran info = run(QStringLiteral("pdfinfo"), {path("paper.pdf")});
    const QStringList numbers = numbers_in(line_with(info.out, QStringLiteral("Page size:")));
    EXPECT_NEAR(numbers[0].toDouble() / 72.0 * 25.4, size == PaperSize::a4 ? 210.0 : 215.9, 0.3);
    EXPECT_NEAR(numbers[1].toDouble() / 72.0 * 25.4, size == PaperSize::a4 ? 297.0 : 279.4, 0.3);
  }
}

TEST_F(PaperFiles, HaveAScaleBarThatMeasuresTrue) {
  const Design design = demo("bench_small_150");
  const Dossier dossier(design, library(), UnitSystem::metric);
  const DrawnView drawn = draw_view(dossier, ViewKind::plan, {20.0, QStringLiteral("1:20")});
  Sheet sheet{210.0, 297.0, {}};
  const QPointF shift = QPointF(30.0, 40.0) - drawn.scale_bar.topLeft();
  for (const Mark& mark : drawn.figure.marks) {
    // The bar alone, where it stands.
    const auto* stroked = std::get_if<Stroked>(&mark);
    if (stroked == nullptr || !drawn.scale_bar.adjusted(-0.1, -0.1, 0.1, 0.1).contains(stroked->points.boundingRect()))
      continue;
    Figure one;
    one.marks.push_back(mark);
    sheet.content.put(one, shift);
  }
  const QByteArray pdf = to_pdf({sheet}, {});
  QFile file(path("bar.pdf"));
  ASSERT_TRUE(file.open(QIODevice::WriteOnly) && file.write(pdf) == pdf.size());
  file.close();
  // 10 dots a millimetre, by another program.
  ASSERT_EQ(run(QStringLiteral("pdftoppm"),
                {QStringLiteral("-r"), QStringLiteral("254"), QStringLiteral("-png"), path("bar.pdf"), path("bar")})
                .exit,
            0);
  const QImage image(path("bar-1.png"));
  ASSERT_FALSE(image.isNull());
  int left = image.width();
  int right = 0;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) {
      if (qGray(image.pixel(x, y)) > 128) continue;
      left = std::min(left, x);
      right = std::max(right, x);
    }
  }
  const double measured = (right - left + 1) / 10.0 - 0.18;                              // the stroke's own width
  EXPECT_NEAR(measured * 20.0, in(drawn.scale_bar_stands_for, millimetre), 0.2 * 20.0);  // two tenths of a millimetre
}

TEST_F(PaperFiles, LeaveTheOldFileWhereTheNewCannotBeWritten) {
  const Design design = demo("bench_small_150");
  const PaperFault full = write_paper(design, library(), wanting(PaperPage::card), "/dev/full");
  ASSERT_TRUE(full.has_value());
  EXPECT_NE(full->find("/dev/full"), std::string::npos);
  const PaperFault nowhere = write_paper(design, library(), wanting(PaperPage::card), fs("no such folder/paper.pdf"));
  ASSERT_TRUE(nowhere.has_value());
  EXPECT_NE(nowhere->find("no such folder"), std::string::npos);
}

TEST_F(PaperFiles, OfTheProgramNeedNoDisplayAndKeepTheOldFileOnAFullDisk) {
  const QString cli = QStringLiteral(FLUEWRIGHT_CLI);
  QProcess process;
  QProcessEnvironment bare = QProcessEnvironment::systemEnvironment();
  for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}) bare.remove(QString::fromUtf8(name));
  process.setProcessEnvironment(bare);
  const auto sheet = [&](const QString& shell) {
    process.start(QStringLiteral("bash"), {QStringLiteral("-c"), shell});
    process.waitForFinished(60000);
    return process.exitCode();
  };
  const QString out = path("card.pdf");
  const QString command = QStringLiteral("'%1' sheet demo:bench_small_150 --page card --out '%2'").arg(cli, out);
  ASSERT_EQ(sheet(command), 0) << process.readAllStandardError().toStdString();
  EXPECT_TRUE(pdf_text(out).contains(QStringLiteral("Lighting: Small bench, 150 mm")));
  const auto bytes = [&] {
    QFile file(out);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
  };
  const QByteArray before = bytes();
  // No file may grow past a kilobyte: as if the disk were full.
  EXPECT_EQ(sheet(QStringLiteral("trap '' XFSZ; ulimit -f 1; ") + command), 2);
  EXPECT_TRUE(QString::fromUtf8(process.readAllStandardError()).contains(QStringLiteral("could not be written")));
  EXPECT_EQ(bytes(), before);
  EXPECT_EQ(sheet(QStringLiteral("'%1' sheet demo:nothing --out '%2'").arg(cli, out)), 2);
  EXPECT_EQ(sheet(QStringLiteral("'%1' sheet demo:bench_small_150 --page none --out '%2'").arg(cli, out)), 2);
  EXPECT_EQ(bytes(), before);
}

TEST_F(PaperFiles, SayThatAFolderMayNotBeWrittenToAndLeaveWhatLiesInIt) {
  const QString shut = folder_.filePath(QStringLiteral("shut"));
  ASSERT_TRUE(QDir().mkdir(shut));
  QFile old(shut + QStringLiteral("/card.pdf"));
  ASSERT_TRUE(old.open(QIODevice::WriteOnly) && old.write("old") == 3);
  old.close();
  ASSERT_TRUE(QFile::setPermissions(shut, QFile::ReadOwner | QFile::ExeOwner));
  // The superuser may write anywhere: without that right it is as everybody.
  const QString as_everybody =
      ::geteuid() == 0 ? QStringLiteral("setpriv --bounding-set=-dac_override,-dac_read_search ") : QString();
  for (const char* wish : {"sheet demo:bench_small_150 --page card", "export demo:bench_small_150"}) {
    const Ran ran = run(QStringLiteral("bash"),
                        {QStringLiteral("-c"), as_everybody + QStringLiteral("'%1' %2 --out '%3'")
                                                                  .arg(QStringLiteral(FLUEWRIGHT_CLI), QString::fromUtf8(wish),
                                                                       shut + QStringLiteral("/card.pdf"))});
    EXPECT_EQ(ran.exit, 2) << wish;
    EXPECT_TRUE(ran.err.contains(QStringLiteral("card.pdf” could not be opened for writing: "))) << ran.err.toStdString();
  }
  ASSERT_TRUE(QFile::setPermissions(shut, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner));
  EXPECT_EQ(QDir(shut).entryList(QDir::Files | QDir::Hidden), QStringList{QStringLiteral("card.pdf")});
  ASSERT_TRUE(old.open(QIODevice::ReadOnly));
  EXPECT_EQ(old.readAll(), "old");
}

TEST_F(PaperFiles, PrintTheTableOfStartsAsTheEngineComputesIt) {
  // By the program, against the same table computed here.
  const Ran ran = run(QStringLiteral(FLUEWRIGHT_CLI), {QStringLiteral("sheet"), QStringLiteral("demo:greenhouse_floor"),
                                                       QStringLiteral("--page"), QStringLiteral("card"),
                                                       QStringLiteral("--out"), path("card.pdf")});
  ASSERT_EQ(ran.exit, 0) << ran.err.toStdString();
  const QString text = pdf_text(path("card.pdf"));
  const auto job = CardTableJob::begin(demo("greenhouse_floor"), shipped_library(), card_days(UnitSystem::metric));
  job->wait();
  const CardTable table = job->table().value();
  for (std::size_t o = 0; o < table.outdoor.size(); ++o) {
    QStringList row{QString::fromStdString(show(table.outdoor[o], UnitSystem::metric).number)};
    for (const CardCell& cell : table.rows[o]) {
      switch (cell.step) {
        case CardStep::light: row << QStringLiteral("light"); break;
        case CardStep::kindle_at_the_foot: row << QStringLiteral("kindle at the foot"); break;
        case CardStep::prime:
          row << QStringLiteral("prime with %1 g, %2 min").arg(in(cell.priming, gram)).arg(in(cell.lasts, minute));
          break;
        case CardStep::fan: row << QStringLiteral("fan, %1 min").arg(in(cell.lasts, minute)); break;
        case CardStep::wait: row << QStringLiteral("wait"); break;
      }
    }
    EXPECT_TRUE(text.simplified().contains(row.join(QLatin1Char(' ')))) << row.join(QLatin1Char(' ')).toStdString();
  }
}

TEST_F(PaperFiles, OfResultsHoldTheEnginesNumbers) {
  const Ran ran = run(QStringLiteral(FLUEWRIGHT_CLI), {QStringLiteral("export"), QStringLiteral("demo:bench_small_150"),
                                                       QStringLiteral("--out"), path("results.json")});
  ASSERT_EQ(ran.exit, 0) << ran.err.toStdString();
  QFile file(path("results.json"));
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  const auto json = nlohmann::json::parse(file.readAll().toStdString());
  const Design design = demo("bench_small_150");
  EXPECT_EQ(json, nlohmann::json(assessment_json(design, library(), assess(design, library()))));
}

TEST_F(PaperFiles, DrawViewsAsPicturesAndVectors) {
  const Design design = demo("bench_small_150");
  ViewOptions options;
  for (const char* name : {"view.svg", "view.png", "view.pdf"}) {
    ASSERT_EQ(write_view(design, library(), options, fs(name)), PaperFault{}) << name;
  }
  const QImage png(path("view.png"));
  const QImage svg(path("view.svg"));  // through Qt's reader of SVG
  const Ran read = run(QStringLiteral("/usr/bin/python3"),
                       {QStringLiteral("-c"),
                        QStringLiteral("import sys,xml.etree.ElementTree as t\n"
                                       "r=t.parse(sys.argv[1]).getroot()\n"
                                       "n='{http://www.w3.org/2000/svg}'\n"
                                       "print(r.tag==n+'svg',r.get('width'),len(r.findall('.//'+n+'text')))"),
                        path("view.svg")});
  const QStringList said = read.out.simplified().split(QLatin1Char(' '));
  ASSERT_EQ(said.size(), 3) << read.err.toStdString();
  EXPECT_EQ(said[0], QStringLiteral("True"));
  EXPECT_TRUE(said[1] == QStringLiteral("210mm") || said[1] == QStringLiteral("297mm")) << said[1].toStdString();
  EXPECT_GT(said[2].toInt(), 10);  // words stay words
  EXPECT_GT(png.width(), 2000);
  EXPECT_GT(svg.width(), 100);
  EXPECT_TRUE(pdf_text(path("view.pdf")).contains(QStringLiteral("Isometric")));
  EXPECT_TRUE(write_view(design, library(), options, fs("view.dxf")).has_value());
  EXPECT_TRUE(write_view(design, library(), options, fs("view.bmp")).has_value());
}

TEST_F(PaperFiles, DrawDxfThatAnIndependentReaderUnderstands) {
  const Design design = demo("bench_small_150");
  ViewOptions options;
  options.view = PaperView::plan;
  ASSERT_EQ(write_view(design, library(), options, fs("plan.dxf")), PaperFault{});
  const Ran read = run(QStringLiteral("/usr/bin/python3"), {QStringLiteral(FLUEWRIGHT_READ_DXF), path("plan.dxf")});
  ASSERT_EQ(read.exit, 0) << read.err.toStdString();
  const auto json = nlohmann::json::parse(read.out.toStdString());
  EXPECT_EQ(json.at("version"), "AC1009");
  EXPECT_EQ(json.at("errors"), 0);
  EXPECT_GT(json.at("layers").at("FLUE").get<int>(), 10);
  EXPECT_GT(json.at("layers").at("DIMENSIONS").get<int>(), 5);
  // The bench at full size: from the far end's outside at 3335 + 225 mm back to where the pipe enters at 885 + 300 mm,
  // the tee's part of it further west.
  EXPECT_NEAR(json.at("mass").at(2).get<double>(), 3560.0, 0.6);
  EXPECT_NEAR(json.at("mass").at(1).get<double>(), -225.0, 0.6);
  EXPECT_NEAR(json.at("mass").at(3).get<double>(), 525.0, 0.6);
}

TEST_F(PaperFiles, ListPartsForASpreadsheet) {
  Design design = demo("bench_small_150");
  design.pieces[5].label = "with, comma and \"quotes\"";
  const std::string csv = parts_csv(design, library());
  QFile file(path("parts.csv"));
  ASSERT_TRUE(file.open(QIODevice::WriteOnly) && file.write(csv.data(), static_cast<qint64>(csv.size())) > 0);
  file.close();
  const Ran read =
      run(QStringLiteral("/usr/bin/python3"),
          {QStringLiteral("-c"),
           QStringLiteral("import csv,sys,json;print(json.dumps(list(csv.DictReader(open(sys.argv[1],newline='')))))"),
           path("parts.csv")});
  ASSERT_EQ(read.exit, 0) << read.err.toStdString();
  const auto rows = nlohmann::json::parse(read.out.toStdString());
  std::size_t quantity = 0;
  bool quoted = false;
  for (const auto& row : rows) {
    quantity += static_cast<std::size_t>(std::stoi(row.at("quantity").get<std::string>()));
    quoted = quoted || row.at("labels").get<std::string>().find("with, comma and \"quotes\"") != std::string::npos;
  }
  EXPECT_EQ(quantity, design.pieces.size());
  EXPECT_TRUE(quoted);
}

}  // namespace
}  // namespace fluewright::paper
