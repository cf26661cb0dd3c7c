// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace fluewright::guards {

/// A file of the project, by its path from the top of the tree, with its lines.
struct ProjectFile {
  std::string path;
  std::vector<std::string> lines;
};

/// The top of the source tree.
[[nodiscard]] std::filesystem::path project_top();

/// Every file under `folder` ("" for the whole tree) whose name ends in one of `endings`; what .gitignore leaves out
/// (build folders, hidden folders but .ci) is left out here too. Never empty: a guard over nothing guards nothing.
[[nodiscard]] std::vector<ProjectFile> project_files(const std::string& folder, const std::vector<std::string>& endings);

/// "engine/flow/friction.cpp:12: text", the way compilers point at a line.
[[nodiscard]] std::string pointer_to(const ProjectFile& file, std::size_t line);

}  // namespace fluewright::guards
