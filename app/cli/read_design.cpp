// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/read_design.hpp"

#include "app/shared/library_reader.hpp"

#include <fmt/format.h>

#include <iostream>
#include <utility>

namespace fluewright {

ReadResult read_design(const std::string& name, const Library& library) {
  constexpr std::string_view demo_mark = "demo:";
  if (!name.starts_with(demo_mark)) return read_design_file(name, library);
  const std::string id = name.substr(demo_mark.size());
  std::string known;
  for (const Demo& demo : shipped_demos()) {
    if (demo.id == id) return read_design_text(demo.text, library);
    known += (known.empty() ? "" : ", ") + demo.id;
  }
  return FileFault{{fmt::format("There is no demo “{}”; it must be one of {}.", id, known)}};
}

std::optional<DesignDocument> opened_design(const std::string& name, const Library& library) {
  ReadResult read = read_design(name, library);
  if (const auto* fault = std::get_if<FileFault>(&read)) {
    std::cerr << fault->text() << '\n';
    return std::nullopt;
  }
  auto& document = std::get<DesignDocument>(read);
  for (const std::string& remark : document.remarks) std::cerr << remark << '\n';
  return std::move(document);
}

}  // namespace fluewright
