// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Nothing lost: working copies, the killed program, one file in two windows, versions, undo over a save, settings.

#include "app/desktop/desk/desk_widget.hpp"
#include "panels_window.hpp"

#include <QDir>
#include <QProcess>

namespace fluewright {
namespace {

using test::Desk;
using test::when_asked;

QString working_folder(const Desk& desk) { return desk.memory.folder() + QStringLiteral("/working"); }

void give_title(Document& document, const std::string& title) {
  Design design = document.design();
  design.title = title;
  document.commit(design, "title");
}

/// Presses the button of that name in the next message.
void when_asked_choose(const QString& box, const QString& button) {
  when_asked<QMessageBox>([box, button](QMessageBox& asked) {
    EXPECT_EQ(asked.objectName(), box);
    auto* found = asked.findChild<QPushButton*>(button);
    ASSERT_NE(found, nullptr) << button.toStdString();
    QTest::mouseClick(found, Qt::LeftButton);
  });
}

TEST(WorkingCopy, IsThereWithinTwoSecondsOfAnEditAndGoesWhenTheDesignIsSaved) {
  Desk desk;
  desk.open(desk.first_demo());
  const QDir folder(working_folder(desk));
  EXPECT_TRUE(folder.entryList({"*.working"}).isEmpty());
  QElapsedTimer clock;
  clock.start();
  give_title(desk.document, "half done");
  while (folder.entryList({"*.working"}).isEmpty() && clock.elapsed() < 2000) QTest::qWait(20);
  EXPECT_LT(clock.elapsed(), 2000);
  ASSERT_FALSE(desk.document.save_to(desk.saved_path("kept.fluepath")));
  EXPECT_TRUE(folder.entryList({"*.working"}).isEmpty());
}

TEST(WorkingCopy, OfARunningProgramIsNotOfferedToAnother) {
  Desk desk;
  desk.open(desk.first_demo());
  give_title(desk.document, "half done");
  QTest::qWait(WorkingCopy::delay_milliseconds + 300);
  EXPECT_FALSE(QDir(working_folder(desk)).entryList({"*.working"}).isEmpty());
  EXPECT_TRUE(WorkingCopy::lost_in(working_folder(desk)).empty());
}

TEST(KilledInTheMiddleOfEdits, TheProgramOffersBackWhatStoodThereTwoSecondsBefore) {
  QTemporaryDir folder;
  const QString settings = folder.filePath("settings.ini");
  QProcess program;
  program.setProcessChannelMode(QProcess::ForwardedErrorChannel);
  program.start(QStringLiteral(EDITS_UNTIL_KILLED), {settings});
  ASSERT_TRUE(program.waitForStarted());
  QElapsedTimer clock;
  std::vector<std::pair<qint64, int>> edits;  // when, number
  clock.start();
  qint64 first = -1;
  while (first < 0 || clock.elapsed() < first + 3500) {
    ASSERT_TRUE(program.waitForReadyRead(30000));
    while (program.canReadLine()) edits.emplace_back(clock.elapsed(), program.readLine().trimmed().toInt());
    if (first < 0 && !edits.empty()) first = clock.elapsed();
  }
  const qint64 killed_at = clock.elapsed();
  program.kill();  // SIGKILL: no chance to tidy up
  ASSERT_TRUE(program.waitForFinished());
  int two_seconds_before = 0;
  for (const auto& [when, number] : edits) {
    if (when < killed_at - 2000) two_seconds_before = number;
  }
  ASSERT_GT(two_seconds_before, 3);

  Memory memory(settings);
  Document document(shipped_library());
  MainWindow window(document, memory);
  window.show();
  when_asked_choose("lost_work", "go_on");
  ASSERT_TRUE(window.files().offer_lost_work());
  const std::string title = document.design().title;
  ASSERT_EQ(title.substr(0, 5), "edit ");
  EXPECT_GE(std::stoi(title.substr(5)), two_seconds_before);
  EXPECT_FALSE(document.design().pieces.empty());
  EXPECT_TRUE(document.modified());
  EXPECT_FALSE(window.files().offer_lost_work()) << "offered twice";
}

TEST(LostWork, ThatIsThrownAwayIsNotOfferedAgain) {
  Desk desk;
  QDir().mkpath(working_folder(desk));
  QFile file(working_folder(desk) + "/old.working");
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write(R"({"name": "Old", "path": "", "when": "2026-01-02T03:04:05.000", "design": "{}"})");
  file.close();
  when_asked_choose("lost_work", "throw_away");
  EXPECT_FALSE(desk.window.files().offer_lost_work());
  EXPECT_TRUE(WorkingCopy::lost_in(working_folder(desk)).empty());
}

TEST(OneFileInTwoWindows, TheSecondIsToldAndMayWorkOnACopy) {
  Desk first;
  first.open(first.first_demo());
  const QString path = first.saved_path("shared.fluepath");
  ASSERT_FALSE(first.document.save_to(path));
  ASSERT_TRUE(first.window.files().open_path(path));

  Document document(shipped_library());
  Memory memory(first.saved_path("other.ini"));
  MainWindow second(document, memory);
  second.show();
  when_asked_choose("already_open", "open_copy");
  ASSERT_TRUE(second.files().open_path(path));
  EXPECT_TRUE(document.path().isEmpty());
  EXPECT_EQ(document.design(), first.document.design());

  // Once the first has left the file, it opens as usual.
  ASSERT_TRUE(first.window.files().start_new());
  ASSERT_TRUE(second.files().open_path(path));
  EXPECT_FALSE(document.path().isEmpty());
}

TEST(OneFileInTwoWindows, SavingOverTheOthersFileIsRefused) {
  Desk first;
  first.open(first.first_demo());
  const QString path = first.saved_path("shared.fluepath");
  ASSERT_FALSE(first.document.save_to(path));
  ASSERT_TRUE(first.window.files().open_path(path));
  FileLock lock;
  EXPECT_EQ(lock.take(path), FileLock::Outcome::taken);
  EXPECT_EQ(lock.holder().process, QCoreApplication::applicationPid());
}

TEST(EarlierVersions, AreKeptAtEachSaveAndGoingBackIsAnUndoableStep) {
  Desk desk;
  desk.open(desk.first_demo());
  const QString path = desk.saved_path("kept.fluepath");
  ASSERT_FALSE(desk.document.save_to(path));
  ASSERT_TRUE(desk.window.files().open_path(path));
  const Design first = desk.document.design();
  give_title(desk.document, "second");
  QTest::qWait(20);  // versions are told apart by the time of saving
  ASSERT_TRUE(desk.window.files().save());
  EXPECT_EQ(Versions(desk.memory.folder() + "/versions").of(path).size(), 1U);
  when_asked<QDialog>([](QDialog& dialog) {
    EXPECT_EQ(dialog.findChild<QListWidget*>()->count(), 1);
    QTest::mouseClick(dialog.findChild<QPushButton*>("go_back"), Qt::LeftButton);
  });
  desk.window.files().earlier_versions();
  EXPECT_EQ(desk.document.design(), first);
  desk.document.undo_stack().undo();
  EXPECT_EQ(desk.document.design().title, "second");
}

TEST(EarlierVersions, OfOldDaysOneADayIsEnough) {
  QTemporaryDir folder;
  const QString path = folder.filePath("design.fluepath");
  const Versions versions(folder.filePath("versions"));
  const QDateTime start(QDate(2026, 3, 1), QTime(8, 0));
  for (int i = 0; i < 60; ++i) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray::number(i));
    ASSERT_TRUE(file.flush());
    ASSERT_TRUE(file.setFileTime(start.addSecs(i * 6 * 3600), QFileDevice::FileModificationTime));
    file.close();
    ASSERT_TRUE(versions.keep(path));
  }
  const auto kept = versions.of(path);
  // Four a day over 15 days: the last ten all, before that the last of each day.
  EXPECT_GE(kept.size(), 20U);
  EXPECT_LE(kept.size(), 24U);
  EXPECT_EQ(kept.front().saved, start.addSecs(59 * 6 * 3600));
  EXPECT_EQ(kept.back().saved.date(), start.date());
}

TEST(Undo, ReachesBackOverASave) {
  Desk desk;
  desk.open(desk.first_demo());
  const Design before = desk.document.design();
  give_title(desk.document, "changed");
  ASSERT_FALSE(desk.document.save_to(desk.saved_path("a.fluepath")));
  EXPECT_FALSE(desk.document.modified());
  desk.document.undo_stack().undo();
  EXPECT_EQ(desk.document.design(), before);
  EXPECT_TRUE(desk.document.modified());
  desk.document.undo_stack().redo();
  EXPECT_FALSE(desk.document.modified());
}

TEST(Settings, OfTheDeskAreThereAtTheNextStart) {
  QTemporaryDir folder;
  Memory memory(folder.filePath("settings.ini"));
  {
    Document document(shipped_library());
    MainWindow window(document, memory);
    document.set_grid_step(100.0 * millimetre);
    document.set_tint(Document::Tint::gauge_pressure);
    auto* desk = window.findChild<DeskWidget*>();
    desk->look_from(ViewKind::side);
    desk->board().set_upright_type("stack_insulated");
    ASSERT_TRUE(window.close());
  }
  Document document(shipped_library());
  const MainWindow window(document, memory);
  const auto* desk = window.findChild<DeskWidget*>();
  EXPECT_NEAR(in(document.grid_step(), millimetre), 100.0, 1e-9);
  EXPECT_EQ(document.tint(), Document::Tint::gauge_pressure);
  EXPECT_EQ(const_cast<DeskWidget*>(desk)->elevation().projection().kind(), ViewKind::side);
  EXPECT_EQ(const_cast<DeskWidget*>(desk)->board().upright_type(), "stack_insulated");
}

}  // namespace
}  // namespace fluewright
