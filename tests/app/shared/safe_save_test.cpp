// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/safe_save.hpp"

#include "app/shared/design_file.hpp"
#include "app/shared/library_reader.hpp"

#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>

#include <csignal>
#include <cstdlib>
#include <fstream>
#include <sstream>

namespace fluewright {
namespace {

namespace fs = std::filesystem;

/// A folder of its own for every case.
class SavingTo : public testing::Test {
 protected:
  void SetUp() override {
    std::string name = (fs::temp_directory_path() / "fluewright-save-XXXXXX").string();
    ASSERT_NE(::mkdtemp(name.data()), nullptr);
    folder_ = name;
    file_ = folder_ / "heater.fluepath";
  }
  void TearDown() override { fs::remove_all(folder_); }

  static std::string content(const fs::path& path) {
    std::stringstream text;
    text << std::ifstream(path).rdbuf();
    return text.str();
  }
  [[nodiscard]] std::size_t files() const {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder_), fs::directory_iterator()));
  }

  fs::path folder_;
  fs::path file_;
};

TEST_F(SavingTo, ANewFileWritesItAndNothingElse) {
  EXPECT_EQ(save_safely(file_, "one"), std::nullopt);
  EXPECT_EQ(content(file_), "one");
  EXPECT_EQ(files(), 1u);
}

TEST_F(SavingTo, AnOldFileKeepsThePreviousCopy) {
  EXPECT_EQ(save_safely(file_, "one"), std::nullopt);
  EXPECT_EQ(save_safely(file_, "two"), std::nullopt);
  EXPECT_EQ(save_safely(file_, "three"), std::nullopt);
  EXPECT_EQ(content(file_), "three");
  EXPECT_EQ(content(file_.string() + "~"), "two");
  EXPECT_EQ(files(), 2u);
}

TEST_F(SavingTo, AnOldFileKeepsItsRights) {
  EXPECT_EQ(save_safely(file_, "one"), std::nullopt);
  ASSERT_EQ(::chmod(file_.c_str(), 0640), 0);
  EXPECT_EQ(save_safely(file_, "two"), std::nullopt);
  EXPECT_EQ(fs::status(file_).permissions(), static_cast<fs::perms>(0640));
}

TEST_F(SavingTo, ALinkLeavesTheLinkAndReplacesWhatItPointsTo) {
  EXPECT_EQ(save_safely(file_, "one"), std::nullopt);
  const fs::path link = folder_ / "link.fluepath";
  fs::create_symlink(file_, link);
  EXPECT_EQ(save_safely(link, "two"), std::nullopt);
  EXPECT_TRUE(fs::is_symlink(link));
  EXPECT_EQ(content(file_), "two");
}

TEST_F(SavingTo, AFolderThatIsNotThereSaysSo) {
  const auto fault = save_safely(folder_ / "none" / "x.fluepath", "one");
  ASSERT_TRUE(fault.has_value());
  EXPECT_NE(fault->find("No such file or directory"), std::string::npos) << *fault;
}

TEST_F(SavingTo, AFolderItselfSaysSo) {
  const auto fault = save_safely(folder_, "one");
  ASSERT_TRUE(fault.has_value());
  EXPECT_NE(fault->find("Is a directory"), std::string::npos) << *fault;
}

TEST_F(SavingTo, AFullDiskLeavesTheOldFileAndNoRubbish) {
  EXPECT_EQ(save_safely(file_, "one"), std::nullopt);
  // A limit on the size of files stands in for the full disk: writing stops half way in the same place.
  std::signal(SIGXFSZ, SIG_IGN);
  rlimit before{};
  ASSERT_EQ(::getrlimit(RLIMIT_FSIZE, &before), 0);
  const rlimit small{1024, before.rlim_max};
  ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &small), 0);
  const auto fault = save_safely(file_, std::string(4096, 'x'));
  ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &before), 0);
  ASSERT_TRUE(fault.has_value());
  EXPECT_NE(fault->find("File too large"), std::string::npos) << *fault;
  EXPECT_EQ(content(file_), "one");
  EXPECT_EQ(files(), 1u);
}

TEST_F(SavingTo, APlaceWithoutTheRightToWriteSaysSoAndLeavesTheOldFile) {
  // Not even root may create files in /proc.
  const auto fault = save_safely("/proc/heater.fluepath", "one");
  ASSERT_TRUE(fault.has_value());
  EXPECT_NE(fault->find("“/proc/heater.fluepath”"), std::string::npos) << *fault;
}

TEST_F(SavingTo, ADesignThatCouldNotBeOpenedAgainIsNotSaved) {
  DesignDocument document;
  document.design.title = "good";
  EXPECT_EQ(save_design_file(document, *shipped_library(), file_).has_value(), false);
  const std::string good = content(file_);
  document.design.fire.moisture = 0.7;
  const auto fault = save_design_file(document, *shipped_library(), file_);
  ASSERT_TRUE(fault.has_value());
  EXPECT_NE(fault->text().find("fire, moisture_share: 0.7"), std::string::npos) << fault->text();
  EXPECT_EQ(content(file_), good);
}

TEST_F(SavingTo, ADesignFromANewerVersionIsNotSaved) {
  DesignDocument document;
  document.read_only = true;
  EXPECT_TRUE(save_design_file(document, *shipped_library(), file_).has_value());
  EXPECT_FALSE(fs::exists(file_));
}

TEST_F(SavingTo, ADesignReadsBackTheSame) {
  DesignDocument document;
  document.design.title = "Ümlaut and 火";
  ASSERT_FALSE(save_design_file(document, *shipped_library(), file_).has_value());
  const ReadResult again = read_design_file(file_, *shipped_library());
  ASSERT_TRUE(std::holds_alternative<DesignDocument>(again));
  EXPECT_EQ(std::get<DesignDocument>(again).design, document.design);
}

}  // namespace
}  // namespace fluewright
