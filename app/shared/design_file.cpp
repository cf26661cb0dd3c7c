// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/design_file.hpp"

#include "app/shared/safe_save.hpp"
#include "app/shared/said.hpp"

#include <fmt/format.h>

#include <fstream>
#include <system_error>

namespace fluewright {

namespace fs = std::filesystem;

ReadResult read_design_file(const fs::path& path, const Library& library) {
  const auto fault = [&](const std::string& reason) {
    return FileFault{{said("“{}” could not be read: {}", path.string(), reason)}};
  };
  std::error_code error;
  const fs::file_status status = fs::status(path, error);
  if (!fs::exists(status)) return fault(said("there is no such file."));
  if (fs::is_directory(status)) return fault(said("it is a folder."));
  if (!fs::is_regular_file(status)) return fault(said("it is not an ordinary file."));
  const std::uintmax_t bytes = fs::file_size(path, error);
  if (error) return fault(error.message() + ".");
  if (bytes > largest_design_file) {
    return fault(said("it is {} MiB large; a design may be at most {} MiB.",
                             decimal_text(static_cast<double>(bytes) / (1024.0 * 1024.0), 1), largest_design_file / (1024 * 1024)));
  }
  std::ifstream stream(path, std::ios::binary);
  if (!stream) return fault(said("it cannot be opened (do you have the right to?)."));
  std::string text(static_cast<std::size_t>(bytes), '\0');
  stream.read(text.data(), static_cast<std::streamsize>(text.size()));
  if (stream.bad()) return fault(said("the disk reports an error."));
  text.resize(static_cast<std::size_t>(stream.gcount()));
  return read_design_text(text, library);
}

std::optional<FileFault> save_design_file(const DesignDocument& document, const Library& library,
                                          const fs::path& path) {
  if (document.read_only) {
    return FileFault{
        {said("This design comes from a newer version of the program and is open for reading only; saving it here "
         "could lose what this version does not know.")}};
  }
  const std::string text = write_design_text(document, library);
  // What could not be opened again must not replace what can.
  auto again = read_design_text(text, library);
  if (auto* fault = std::get_if<FileFault>(&again)) {
    fault->messages.insert(fault->messages.begin(), said("The design was not saved, because it could not be opened again:"));
    return std::move(*fault);
  }
  if (auto reason = save_safely(path, text)) return FileFault{{std::move(*reason)}};
  return std::nullopt;
}

}  // namespace fluewright
