// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/log.hpp"

#include <spdlog/sinks/rotating_file_sink.h>
#include <spdlog/sinks/stdout_sinks.h>
#include <spdlog/spdlog.h>

#include <algorithm>
#include <cstdlib>
#include <memory>
#include <vector>

namespace fluewright {

namespace {

constexpr std::size_t largest_log = 1024 * 1024;
constexpr std::size_t kept_logs = 3;

spdlog::sink_ptr file_sink(std::string_view program, spdlog::level::level_enum level) {
  const auto folder = log_folder();
  if (!folder) return nullptr;
  try {
    std::filesystem::create_directories(*folder);
    const auto file = *folder / (std::string(program) + ".log");
    auto sink = std::make_shared<spdlog::sinks::rotating_file_sink_mt>(file.string(), largest_log, kept_logs);
    sink->set_level(std::min(level, spdlog::level::info));
    sink->set_pattern("%Y-%m-%d %H:%M:%S.%e %l %v");
    return sink;
  } catch (const std::exception&) {
    return nullptr;
  }
}

}  // namespace

std::optional<std::filesystem::path> log_folder() {
  const auto from = [](const char* name) -> std::optional<std::filesystem::path> {
    const char* value = std::getenv(name);
    // The XDG base directory specification has relative paths ignored.
    if (value == nullptr || value[0] != '/') return std::nullopt;
    return std::filesystem::path(value);
  };
  if (const auto state = from("XDG_STATE_HOME")) return *state / "fluewright";
  if (const auto home = from("HOME")) return *home / ".local" / "state" / "fluewright";
  return std::nullopt;
}

void start_logging(std::string_view program, std::string_view level) {
  const auto wanted = spdlog::level::from_str(std::string(level));
  auto screen = std::make_shared<spdlog::sinks::stderr_sink_mt>();
  screen->set_level(wanted);
  screen->set_pattern("%n: %l: %v");
  std::vector<spdlog::sink_ptr> sinks{screen};
  // "off" writes nothing anywhere.
  const auto file = wanted == spdlog::level::off ? nullptr : file_sink(program, wanted);
  if (file) sinks.push_back(file);
  auto logger = std::make_shared<spdlog::logger>(std::string(program), sinks.begin(), sinks.end());
  logger->set_level(wanted == spdlog::level::off ? wanted : std::min(wanted, spdlog::level::info));
  logger->flush_on(spdlog::level::info);
  // A full disk while logging must not put a second message on the screen for every line.
  logger->set_error_handler([](const std::string&) {});
  spdlog::set_default_logger(std::move(logger));
  if (!file && wanted != spdlog::level::off) spdlog::info("no log file: its folder cannot be written");
}

}  // namespace fluewright
