// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

#include "tests/guards/tree.hpp"

#include <algorithm>
#include <fstream>
#include <stdexcept>

namespace fluewright::guards {

namespace {

bool left_out(const std::string& name) {
  return name == "build" || name == "out" || (name.starts_with('.') && name != ".ci");
}

std::vector<std::string> lines_of(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::vector<std::string> lines;
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

}  // namespace

std::filesystem::path project_top() { return FLUEWRIGHT_TOP; }

std::vector<ProjectFile> project_files(const std::string& folder, const std::vector<std::string>& endings) {
  std::vector<ProjectFile> files;
  auto walk = std::filesystem::recursive_directory_iterator(project_top() / folder);
  for (; walk != std::filesystem::recursive_directory_iterator{}; ++walk) {
    const std::string name = walk->path().filename().string();
    if (walk->is_directory()) {
      if (left_out(name)) walk.disable_recursion_pending();
      continue;
    }
    const bool wanted = std::any_of(endings.begin(), endings.end(), [&](const std::string& e) { return name.ends_with(e); });
    if (wanted) {
      files.push_back({walk->path().lexically_relative(project_top()).generic_string(), lines_of(walk->path())});
    }
  }
  if (files.empty()) throw std::runtime_error("no files to guard in '" + folder + "'");
  std::sort(files.begin(), files.end(), [](const auto& a, const auto& b) { return a.path < b.path; });
  return files;
}

std::string pointer_to(const ProjectFile& file, std::size_t line) {
  return file.path + ":" + std::to_string(line + 1) + ": " + file.lines[line];
}

}  // namespace fluewright::guards
