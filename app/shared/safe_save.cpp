// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/safe_save.hpp"

#include "app/shared/said.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <system_error>

namespace fluewright {

namespace {

namespace fs = std::filesystem;

std::string why(const std::string& what, const fs::path& path, int error) {
  return fmt::format("{} “{}”: {}.", what, path.string(), std::generic_category().message(error));
}

/// A file beside another that goes away again unless it takes the other's place.
class FileBeside {
 public:
  explicit FileBeside(const fs::path& target)
      : name_{(target.parent_path() / ("." + target.filename().string() + ".XXXXXX")).string()} {
    descriptor_ = ::mkstemp(name_.data());
    error_ = descriptor_ < 0 ? errno : 0;
  }
  FileBeside(const FileBeside&) = delete;
  FileBeside& operator=(const FileBeside&) = delete;
  ~FileBeside() {
    if (descriptor_ >= 0) ::close(descriptor_);
    if (!name_.empty() && error_ == 0) ::unlink(name_.c_str());
  }

  /// 0, or the system's error.
  int write_and_flush(std::string_view text, mode_t mode) {
    if (error_ != 0) return error_;
    while (!text.empty()) {
      const ssize_t written = ::write(descriptor_, text.data(), text.size());
      if (written < 0 && errno == EINTR) continue;
      if (written < 0) return errno;
      text.remove_prefix(static_cast<std::size_t>(written));
    }
    if (::fchmod(descriptor_, mode) != 0 || ::fsync(descriptor_) != 0) return errno;
    const int closed = ::close(descriptor_);
    descriptor_ = -1;
    return closed == 0 ? 0 : errno;
  }

  int take_place_of(const fs::path& target) {
    if (::rename(name_.c_str(), target.c_str()) != 0) return errno;
    name_.clear();
    return 0;
  }

 private:
  std::string name_;
  int descriptor_ = -1;
  int error_ = 0;
};

/// The rights of the file that is replaced, else those of a new file.
mode_t mode_for(const fs::path& target) {
  struct stat status {};
  if (::stat(target.c_str(), &status) == 0) return status.st_mode & 07777u;
  const mode_t mask = ::umask(0);
  ::umask(mask);
  return 0666u & ~mask;
}

/// Another name for what stands there now; a copy where the disk knows no second names.
std::optional<std::string> keep_copy(const fs::path& target) {
  std::error_code error;
  if (!fs::exists(target, error)) return std::nullopt;
  const fs::path copy = target.string() + "~";
  const fs::path fresh = target.string() + "~new";
  fs::remove(fresh, error);
  fs::create_hard_link(target, fresh, error);
  if (error) fs::copy_file(target, fresh, fs::copy_options::overwrite_existing, error);
  if (!error) fs::rename(fresh, copy, error);
  if (!error) return std::nullopt;
  std::error_code ignored;
  fs::remove(fresh, ignored);
  return why(said("The previous copy could not be kept as"), copy, error.value());
}

void flush_folder(const fs::path& folder) {
  const int descriptor = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (descriptor < 0) return;  // the file itself is on the disk; only the moment of its new name is less certain
  ::fsync(descriptor);
  ::close(descriptor);
}

}  // namespace

std::optional<std::string> save_safely(const fs::path& path, std::string_view text) {
  std::error_code error;
  // A link stays a link: what it points to is replaced.
  fs::path target = fs::is_symlink(path, error) ? fs::weakly_canonical(path, error) : fs::absolute(path, error);
  if (error) return why(said("The file could not be found:"), path, error.value());
  if (fs::is_directory(target, error)) return why(said("The file could not be written:"), path, EISDIR);
  if (fs::exists(target, error) && !fs::is_regular_file(target, error)) {
    return said("The file could not be written: “{}” is not an ordinary file.", path.string());
  }
  FileBeside beside(target);
  if (const int failure = beside.write_and_flush(text, mode_for(target)); failure != 0) {
    return why(said("The file could not be written:"), path, failure);
  }
  if (auto fault = keep_copy(target)) return fault;
  if (const int failure = beside.take_place_of(target); failure != 0) {
    return why(said("The file could not be replaced:"), path, failure);
  }
  flush_folder(target.parent_path());
  return std::nullopt;
}

}  // namespace fluewright
