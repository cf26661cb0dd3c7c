// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Files as a person meets them in the real window: saving, reopening, unsaved changes, bad files.

#include "panels_window.hpp"

namespace fluewright {
namespace {

using test::Desk;
using test::field_named;
using test::type_into;
using test::when_asked;
using test::when_asked_press;

TEST(Files, SaveAndReopenGiveTheSameNumbers) {
  for (const Demo& demo : shipped_demos()) {
    Desk desk;
    desk.open(QString::fromStdString(demo.id));
    const QString path = desk.saved_path("copy.fluepath");
    when_asked<QFileDialog>([path](QFileDialog& dialog) {
      auto* name = dialog.findChild<QLineEdit*>("fileNameEdit");
      ASSERT_NE(name, nullptr);
      name->setText(path);
      QTest::keyClick(name, Qt::Key_Return);
    });
    QTest::keyClick(&desk.window, Qt::Key_S, Qt::ControlModifier);
    ASSERT_TRUE(QFile::exists(path)) << demo.id;
    const QStringList before{desk.margin(), desk.figure("exit"), desk.figure("condensation")};
    ASSERT_TRUE(desk.window.files().start_new());
    ASSERT_TRUE(desk.window.files().open_path(path));
    EXPECT_EQ(QStringList({desk.margin(), desk.figure("exit"), desk.figure("condensation")}), before) << demo.id;
    EXPECT_TRUE(desk.window.windowTitle().contains("copy"));
    EXPECT_EQ(desk.memory.recent().size(), 1);
  }
}

struct Edited : Desk {
  Edited() {
    open(first_demo());
    Design design = document.design();
    design.site.outdoor_temperature = celsius(12.0);
    document.commit(design, "edit");
  }
};

TEST(UnsavedChanges, AreAskedAboutAndCancelKeepsEverything) {
  Edited desk;
  QString text;
  when_asked_press(QMessageBox::Cancel, &text);
  QTest::keyClick(&desk.window, Qt::Key_N, Qt::ControlModifier);
  EXPECT_TRUE(text.contains("not saved")) << text.toStdString();
  EXPECT_FALSE(desk.document.design().pieces.empty());
  EXPECT_TRUE(desk.document.modified());
}

TEST(UnsavedChanges, DiscardLeavesThemBehind) {
  Edited desk;
  when_asked_press(QMessageBox::Discard);
  QTest::keyClick(&desk.window, Qt::Key_N, Qt::ControlModifier);
  EXPECT_TRUE(desk.document.design().pieces.empty());
}

TEST(UnsavedChanges, ClosingTheWindowAsksToo) {
  Edited desk;
  when_asked_press(QMessageBox::Cancel);
  EXPECT_FALSE(desk.window.close());
  EXPECT_TRUE(desk.window.isVisible());
}

TEST(UnsavedChanges, NothingIsAskedWhenNothingChanged) {
  Desk desk;
  desk.open(desk.first_demo());
  EXPECT_TRUE(desk.window.files().start_new());
}

TEST(UnsavedChanges, ANumberStillBeingTypedCountsWhenOneSaves) {
  Desk desk;
  desk.open(desk.first_demo());
  ASSERT_FALSE(desk.document.save_to(desk.saved_path("a.fluepath")));
  desk.tab(EditorTabs::site);
  auto* field = field_named(*desk.find<EditorTabs>("editors")->widget(EditorTabs::site), "site.outdoor_temperature");
  type_into(*field, "-7", false);
  QTest::keyClick(field->findChild<QLineEdit*>(), Qt::Key_S, Qt::ControlModifier);
  EXPECT_NEAR(in_celsius(desk.document.design().site.outdoor_temperature), -7.0, 1e-9);
  EXPECT_FALSE(desk.document.modified());
}

class BadFile : public testing::TestWithParam<std::pair<const char*, QByteArray>> {};

TEST_P(BadFile, IsRefusedWithAWordAndNothingIsLost) {
  Edited desk;
  const Design before = desk.document.design();
  const QString path = desk.saved_path("bad.fluepath");
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write(GetParam().second);
  file.close();
  desk.document.undo_stack().setClean();
  QString text;
  when_asked_press(QMessageBox::Ok, &text);
  EXPECT_FALSE(desk.window.files().open_path(path));
  EXPECT_TRUE(text.contains("bad.fluepath")) << text.toStdString();
  EXPECT_GT(text.size(), 30);
  EXPECT_EQ(desk.document.design(), before);
  EXPECT_TRUE(desk.window.isVisible());
}

INSTANTIATE_TEST_SUITE_P(Files, BadFile,
                         testing::Values(std::pair{"not JSON", QByteArray("this is no design")},
                                         std::pair{"empty", QByteArray()},
                                         std::pair{"another JSON", QByteArray("{\"a\": [1, 2, 3]}")},
                                         std::pair{"too large", QByteArray(50 * 1024 * 1024, ' ')}),
                         [](const auto& of) {
                           std::string name = of.param.first;
                           std::replace(name.begin(), name.end(), ' ', '_');
                           return name;
                         });

TEST(Files, AMissingFileIsSaidAndNothingIsLost) {
  Edited desk;
  desk.document.undo_stack().setClean();
  const Design before = desk.document.design();
  QString text;
  when_asked_press(QMessageBox::Ok, &text);
  EXPECT_FALSE(desk.window.files().open_path(desk.saved_path("nowhere.fluepath")));
  EXPECT_TRUE(text.contains("nowhere.fluepath"));
  EXPECT_EQ(desk.document.design(), before);
}

}  // namespace
}  // namespace fluewright
