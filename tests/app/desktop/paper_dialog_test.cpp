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
  bool card = false;
  for (const paper::Mark& mark : dialog.sheets().front().content.marks) {
    const auto* words = std::get_if<paper::Words>(&mark);
    card = card || (words != nullptr && words->text.startsWith(QStringLiteral("Lighting:")));
  }
  EXPECT_TRUE(card);
  EXPECT_EQ(done.count(), 1);  // what was asked before was never shown
}

}  // namespace
}  // namespace fluewright
