// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The program in another language: every text translated, numbers with the comma, no English left in the windows.

#include "app/desktop/language/language.hpp"
#include "app/paper/paper.hpp"
#include "app/shared/said.hpp"
#include "language_desk.hpp"

#include <QProcess>
#include <QXmlStreamReader>

#include <regex>
#include <set>

namespace fluewright {
namespace {

using test::ForeignDesk;
using test::Speaks;
using test::type_into;

/// A text of a .ts file and what became of it.
struct Entry {
  QString source;
  QString comment;
  QStringList translations;
  bool unfinished = false;
};

std::vector<Entry> entries(const QString& path) {
  QFile file(path);
  EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
  QXmlStreamReader xml(&file);
  std::vector<Entry> all;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) continue;
    if (xml.name() == QLatin1String("message")) all.emplace_back();
    if (xml.name() == QLatin1String("source")) all.back().source = xml.readElementText();
    if (xml.name() == QLatin1String("comment")) all.back().comment = xml.readElementText();
    if (xml.name() == QLatin1String("translation")) {
      all.back().unfinished = xml.attributes().hasAttribute(QLatin1String("type"));
      const QString text = xml.readElementText(QXmlStreamReader::IncludeChildElements).trimmed();
      all.back().translations << text;
    }
  }
  EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
  return all;
}

QStringList translation_files() {
  QStringList files;
  for (const Language& language : languages) {
    if (QLatin1String(language.code) != QLatin1String("en"))
      files << QStringLiteral(FLUEWRIGHT_LANGUAGE_FOLDER "/fluewright_%1.ts").arg(QLatin1String(language.code));
  }
  return files;
}

/// What stands for a value, each as often as it does: "%1", "%n", "{}", "{0}". A bare "{}" counts by its place.
std::multiset<std::string> holes(const QString& text) {
  static const std::regex hole("%[1-9n]|\\{[^}]*\\}");
  const std::string utf8 = text.toStdString();
  std::multiset<std::string> found;
  for (std::sregex_iterator at(utf8.begin(), utf8.end(), hole), end; at != end; ++at) {
    if (at->str().front() == '{' && at->str().find(' ') != std::string::npos) continue;  // an object as JSON writes it
    found.insert(at->str());
  }
  return found;
}

TEST(Translations, HoldEveryTextOfTheProgramAndNoOther) {
  QTemporaryDir folder;
  for (const QString& file : translation_files()) {
    const QString copy = folder.filePath(QFileInfo(file).fileName());
    ASSERT_TRUE(QFile::copy(file, copy));
    QProcess find;
    find.start(QStringLiteral(FLUEWRIGHT_CMAKE),
               {"-DLUPDATE=" FLUEWRIGHT_LUPDATE, "-DTOP=" FLUEWRIGHT_TOP, "-DTEXTS_OF_DATA=" FLUEWRIGHT_TEXTS_OF_DATA,
                "-DFOLDER=" + folder.filePath("texts"), "-DTRANSLATIONS=" + copy, "-P",
                FLUEWRIGHT_LANGUAGE_FOLDER "/find_texts.cmake"});
    ASSERT_TRUE(find.waitForFinished(60'000));
    ASSERT_EQ(find.exitCode(), 0) << find.readAllStandardError().toStdString();
    const auto now = entries(copy);
    EXPECT_GT(now.size(), 1500u);
    for (const Entry& entry : now) EXPECT_FALSE(entry.unfinished) << file.toStdString() << ": " << entry.source.toStdString();
    EXPECT_EQ(entries(file).size(), now.size()) << "run the target update_translations";
  }
}

TEST(Translations, KeepEveryValueOfTheirText) {
  for (const QString& file : translation_files()) {
    for (const Entry& entry : entries(file)) {
      for (const QString& translation : entry.translations) {
        EXPECT_FALSE(translation.isEmpty()) << entry.source.toStdString();
        if (entry.source.contains(QLatin1String("%n"))) continue;  // each of its forms is looked at by Qt's own check
        EXPECT_EQ(holes(translation), holes(entry.source)) << translation.toStdString();
      }
      // A key to press, where the text has one.
      const auto keys = [](const QString& text) { return QString(text).remove(QLatin1String("&&")).count(QLatin1Char('&')); };
      EXPECT_EQ(keys(entry.translations.value(0)), keys(entry.source)) << entry.translations.value(0).toStdString();
    }
  }
}

TEST(German, ANumberIsTypedAndShownWithAComma) {
  ForeignDesk desk("de");
  desk.open(desk.first_demo());
  desk.tab(EditorTabs::site);
  auto* wind = dynamic_cast<QuantityField*>(test::field_named(*desk.find<QWidget>("editors"), "site.wind_speed"));
  ASSERT_NE(wind, nullptr);
  type_into(*wind, "12,5");
  EXPECT_DOUBLE_EQ(in(desk.document.design().site.wind_speed, metre_per_second), 12.5);
  EXPECT_EQ(wind->text(), "12,5");
  type_into(*wind, "7.5");
  EXPECT_DOUBLE_EQ(in(desk.document.design().site.wind_speed, metre_per_second), 7.5);
  EXPECT_EQ(wind->text(), "7,5");
  // Three digits behind the language's own mark are decimals, behind the other they are doubtful.
  type_into(*wind, "2,125");
  EXPECT_DOUBLE_EQ(in(desk.document.design().site.wind_speed, metre_per_second), 2.125);
  type_into(*wind, "2.125", false);
  QTest::keyClick(wind->findChild<QLineEdit*>(), Qt::Key_Return);
  EXPECT_DOUBLE_EQ(in(desk.document.design().site.wind_speed, metre_per_second), 2.125);
}

TEST(German, TheAnswerHasCommas) {
  ForeignDesk desk("de");
  desk.open(desk.first_demo());
  EXPECT_TRUE(desk.margin().contains(QLatin1Char(','))) << desk.margin().toStdString();
  const QRegularExpression point(QStringLiteral("\\d\\.\\d"));
  const QRegularExpression comma(QStringLiteral("\\d,\\d"));
  int commas = 0;
  for (const auto* label : desk.find<QWidget>("answer")->findChildren<QLabel*>()) {
    EXPECT_FALSE(label->text().contains(point)) << label->text().toStdString();
    commas += label->text().contains(comma) ? 1 : 0;
  }
  EXPECT_GE(commas, 8);
}

TEST(German, FilesForProgramsStayAsTheyAre) {
  const Demo& demo = shipped_demos().front();
  const auto library = shipped_library();
  ReadResult read = read_design_text(demo.text, *library);
  const Design design = std::get<DesignDocument>(std::move(read)).design;
  const std::string english = parts_csv(design, *library);
  const Speaks german("de");
  EXPECT_NE(said("main path"), "main path");
  {
    const InEnglish for_programs;
    EXPECT_EQ(said("main path"), "main path");
    EXPECT_EQ(decimal_mark(), '.');
    EXPECT_EQ(parts_csv(design, *library), english);
  }
  EXPECT_EQ(write_design_text({.design = design}, *spoken_library()), write_design_text({.design = design}, *library));
}

TEST(Language, IsChosenInTheMenuAndRemembered) {
  ForeignDesk desk("en");
  auto* action = desk.find<QAction>("language:es");
  ASSERT_NE(action, nullptr);
  // By hand: View, then Language, then the entry.
  for (QObject* above = action->parent(); above != nullptr; above = above->parent()) {
    if (auto* menu = qobject_cast<QMenu*>(above)) emit menu->aboutToShow();
  }
  action->trigger();
  EXPECT_EQ(desk.memory.choice("language"), "es");
  EXPECT_EQ(language_code(desk.memory.choice("language")), "es");
  EXPECT_EQ(language_code("xx"), language_code({}));  // unknown: the system's
}

TEST(Language, TheSystemsIsTakenOnlyIfThereIsSuchAOne) {
  QLocale::setDefault(QLocale::c());
  const QString code = language_code({});
  EXPECT_TRUE(code == "en" || code == "de" || code == "es") << code.toStdString();
}

/// Words that are the same in both languages by a translator's hand; everything else that stays is English left over.
TEST(German, LeavesNoEnglishInTheWindows) {
  // Names, and sources that are quoted as they were printed.
  std::set<QString> same{"Fluewright", "English", "Deutsch", "Español"};
  for (const Entry& entry : entries(translation_files().front())) {
    if (entry.translations.value(0) == entry.source) same.insert(QString(entry.source).remove(QLatin1Char('&')));
  }
  std::set<QString> english;
  {
    ForeignDesk desk("en");
    english = desk.all_texts();
  }
  ForeignDesk desk("de");
  const std::set<QString> german = desk.all_texts();
  EXPECT_GT(german.size(), 400u);
  const QRegularExpression word(QStringLiteral("[A-Za-z]{4}"));
  for (const QString& text : german) {
    if (!english.contains(text) || same.contains(QString(text).remove(QLatin1Char('&'))) || !text.contains(word)) continue;
    ADD_FAILURE() << text.toStdString();
  }
}

}  // namespace
}  // namespace fluewright
