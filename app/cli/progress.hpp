// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>

namespace fluewright {

/// A line on standard error that says how far something is, while that is a terminal; else nothing at all.
class Progress {
 public:
  explicit Progress(std::string what);
  ~Progress();
  Progress(const Progress&) = delete;
  Progress& operator=(const Progress&) = delete;

  void at(std::size_t done, std::size_t of);

 private:
  std::string what_;
  bool shown_;
};

}  // namespace fluewright
