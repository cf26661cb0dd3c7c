// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/print/paper_dialog.hpp"
#include "app/desktop/document.hpp"
#include "app/shared/design_file.hpp"
#include "app/shared/library_reader.hpp"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFile>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace fluewright {
namespace {

class ThePaperDialog : public testing::Test {
 protected:
  ThePaperDialog() : document_(shipped_library()) {
    ReadResult read = read_design_text(shipped_demos().front().text, document_.library());
    document_.adopt(std::get<DesignDocument>(std::move(read)), {});
  }
  static bool wait_for(QSignalSpy& spy, int count) {
    for (int i = 0; i < 60 && spy.count() < count; ++i) spy.wait(1000);
    return spy.count() >= count;
  }
  /// Words on the pages that begin so.
  static bool says(const PaperDialog& dialog, const QString& beginning) {
    for (const paper::Sheet& sheet : dialog.sheets()) {
      for (const paper::Mark& mark : sheet.content.marks) {
        const auto* words = std::get_if<paper::Words>(&mark);
        if (words != nullptr && words->text.startsWith(beginning)) return true;
      }
    }
    return false;
  }
  Document document_;
};

TEST_F(ThePaperDialog, LaysOutPagesBesideTheWindowAndSavesThem) {
  PaperDialog dialog(document_, QStringLiteral("A name"), nullptr);
  QSignalSpy done(&dialog, &PaperDialog::laid_out);
  EXPECT_TRUE(dialog.sheets().empty());  // the window was there before the pages
  ASSERT_TRUE(wait_for(done, 1));
  EXPECT_GT(dialog.sheets().size(), 3u);
  QTemporaryDir folder;
  ASSERT_EQ(dialog.save_pdf(folder.filePath(QStringLiteral("paper.pdf"))), PaperFault{});
  QFile file(folder.filePath(QStringLiteral("paper.pdf")));
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  EXPECT_TRUE(file.readAll().startsWith("%PDF"));
  EXPECT_TRUE(dialog.save_pdf(QStringLiteral("/dev/full")).has_value());
}

TEST_F(ThePaperDialog, ShowsTheLastChoiceOnly) {
  PaperDialog dialog(document_, QStringLiteral("A name"), nullptr);
  QSignalSpy done(&dialog, &PaperDialog::laid_out);
  auto* page = dialog.findChild<QComboBox*>(QStringLiteral("paper_page"));
  ASSERT_NE(page, nullptr);
  page->setCurrentIndex(static_cast<int>(PaperPage::client));
  page->setCurrentIndex(static_cast<int>(PaperPage::card));
  ASSERT_TRUE(wait_for(done, 1));
  ASSERT_EQ(dialog.sheets().size(), 1u);
  const bool card = says(dialog, QStringLiteral("Lighting: "));
  EXPECT_TRUE(card);
  EXPECT_EQ(done.count(), 1);  // what was asked before was never shown
}

TEST_F(ThePaperDialog, ComputesTheCardsTableBesideTheWindowAndMayLeaveItOut) {
  PaperDialog dialog(document_, QStringLiteral("A name"), nullptr);
  dialog.show();
  QSignalSpy done(&dialog, &PaperDialog::laid_out);
  auto* page = dialog.findChild<QComboBox*>(QStringLiteral("paper_page"));
  auto* call_off = dialog.findChild<QPushButton*>(QStringLiteral("paper_call_off"));
  page->setCurrentIndex(static_cast<int>(PaperPage::card));
  EXPECT_TRUE(call_off->isVisible());
  call_off->click();
  EXPECT_FALSE(call_off->isVisible());
  ASSERT_TRUE(wait_for(done, 1));
  EXPECT_TRUE(says(dialog, QStringLiteral("The table of outdoor against room temperature is not computed")));
  // Chosen again, it is computed; and then it is there.
  page->setCurrentIndex(static_cast<int>(PaperPage::client));
  page->setCurrentIndex(static_cast<int>(PaperPage::card));
  ASSERT_TRUE(wait_for(done, 2));
  EXPECT_TRUE(says(dialog, QStringLiteral("Outdoors, ")));
  EXPECT_FALSE(call_off->isVisible());
}

TEST_F(ThePaperDialog, SetsTheOtherVariantBesideThisOneOnTheClientsPage) {
  document_.name_variant(0, QStringLiteral("As it was"));
  document_.fork_variant(QStringLiteral("As it shall be"));
  PaperDialog dialog(document_, QStringLiteral("A name"), nullptr);
  QSignalSpy done(&dialog, &PaperDialog::laid_out);
  dialog.findChild<QComboBox*>(QStringLiteral("paper_page"))->setCurrentIndex(static_cast<int>(PaperPage::client));
  ASSERT_TRUE(wait_for(done, 1));
  EXPECT_TRUE(says(dialog, QStringLiteral("Before: As it was")));
  EXPECT_TRUE(says(dialog, QStringLiteral("Now: As it shall be")));
  dialog.findChild<QComboBox*>(QStringLiteral("paper_before"))->setCurrentIndex(0);
  ASSERT_TRUE(wait_for(done, 2));
  EXPECT_FALSE(says(dialog, QStringLiteral("Before: ")));
}

}  // namespace
}  // namespace fluewright
