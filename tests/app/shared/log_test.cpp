// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/log.hpp"

#include <gtest/gtest.h>
#include <spdlog/sinks/sink.h>
#include <spdlog/spdlog.h>

#include <cstdlib>
#include <fstream>
#include <sstream>

namespace fluewright {
namespace {

namespace fs = std::filesystem;

/// A state folder of its own for every case.
class Logging : public testing::Test {
 protected:
  void SetUp() override {
    std::string name = (fs::temp_directory_path() / "fluewright-log-XXXXXX").string();
    ASSERT_NE(::mkdtemp(name.data()), nullptr);
    folder_ = name;
    ::setenv("XDG_STATE_HOME", folder_.c_str(), 1);
  }
  void TearDown() override {
    spdlog::shutdown();
    fs::remove_all(folder_);
  }

  [[nodiscard]] std::string logged() const {
    std::stringstream text;
    text << std::ifstream(folder_ / "fluewright" / "prog.log").rdbuf();
    return text.str();
  }

  fs::path folder_;
};

TEST_F(Logging, WritesFromInfoOnIntoTheFileAndOnlyWarningsOnTheScreen) {
  testing::internal::CaptureStderr();
  start_logging("prog", "warn");
  spdlog::debug("a detail");
  spdlog::info("a fact");
  spdlog::warn("a warning");
  spdlog::default_logger()->flush();
  EXPECT_EQ(testing::internal::GetCapturedStderr(), "prog: warning: a warning\n");
  EXPECT_EQ(logged().find("a detail"), std::string::npos);
  EXPECT_NE(logged().find("info a fact"), std::string::npos);
  EXPECT_NE(logged().find("warning a warning"), std::string::npos);
}

TEST_F(Logging, FollowsTheLevel) {
  testing::internal::CaptureStderr();
  start_logging("prog", "debug");
  spdlog::debug("a detail");
  spdlog::default_logger()->flush();
  EXPECT_EQ(testing::internal::GetCapturedStderr(), "prog: debug: a detail\n");
  EXPECT_NE(logged().find("a detail"), std::string::npos);
}

TEST_F(Logging, IsSilentWhenOff) {
  testing::internal::CaptureStderr();
  start_logging("prog", "off");
  spdlog::error("a fault");
  EXPECT_EQ(testing::internal::GetCapturedStderr(), "");
  EXPECT_FALSE(fs::exists(folder_ / "fluewright"));
}

TEST_F(Logging, StaysWithinAFewFiles) {
  start_logging("prog", "off");
  start_logging("prog", "warn");
  spdlog::default_logger()->sinks().front()->set_level(spdlog::level::off);
  const std::string line(1000, 'x');
  for (int i = 0; i < 6000; ++i) spdlog::info("{}", line);
  spdlog::default_logger()->flush();
  std::uintmax_t bytes = 0;
  for (const auto& file : fs::directory_iterator(folder_ / "fluewright")) bytes += file.file_size();
  EXPECT_GT(bytes, 3'000'000u);
  EXPECT_LT(bytes, 4'500'000u);
}

TEST_F(Logging, WithoutAFolderToWriteToIsNoFault) {
  ::setenv("XDG_STATE_HOME", "/proc", 1);
  testing::internal::CaptureStderr();
  start_logging("prog", "warn");
  spdlog::warn("a warning");
  EXPECT_EQ(testing::internal::GetCapturedStderr(), "prog: warning: a warning\n");
}

TEST_F(Logging, UsesTheStateFolderAndElseTheHomeFolder) {
  EXPECT_EQ(log_folder(), folder_ / "fluewright");
  ::setenv("XDG_STATE_HOME", "relative", 1);
  ::setenv("HOME", folder_.c_str(), 1);
  EXPECT_EQ(log_folder(), folder_ / ".local" / "state" / "fluewright");
}

}  // namespace
}  // namespace fluewright
