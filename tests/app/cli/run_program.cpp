// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/cli/run_program.hpp"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdlib>
#include <fstream>
#include <sstream>

namespace fluewright {

namespace {

namespace fs = std::filesystem;

std::string all_of(const fs::path& path) {
  std::stringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  return text.str();
}

/// The child's half: never returns.
[[noreturn]] void become_cli(const std::vector<std::string>& arguments, const fs::path& folder,
                             const fs::path& scratch) {
  const auto redirect = [&](const char* name, int descriptor) {
    const int file = ::open((scratch / name).c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    ::dup2(file, descriptor);
  };
  redirect("output", STDOUT_FILENO);
  redirect("errors", STDERR_FILENO);
  std::vector<char*> words;
  std::string program = FLUEWRIGHT_CLI;
  words.push_back(program.data());
  std::vector<std::string> owned = arguments;
  for (std::string& argument : owned) words.push_back(argument.data());
  words.push_back(nullptr);
  if (::chdir(folder.c_str()) == 0 && ::setenv("XDG_STATE_HOME", scratch.c_str(), 1) == 0) {
    ::execv(program.c_str(), words.data());
  }
  ::_exit(127);
}

}  // namespace

ProgramRun run_cli(const std::vector<std::string>& arguments, const fs::path& folder) {
  std::string name = (fs::temp_directory_path() / "fluewright-cli-XXXXXX").string();
  if (::mkdtemp(name.data()) == nullptr) return {};
  const fs::path scratch = name;
  const pid_t child = ::fork();
  if (child == 0) become_cli(arguments, folder, scratch);
  int state = 0;
  ::waitpid(child, &state, 0);
  ProgramRun run{WIFEXITED(state) ? WEXITSTATUS(state) : -1, all_of(scratch / "output"), all_of(scratch / "errors")};
  fs::remove_all(scratch);
  return run;
}

}  // namespace fluewright
