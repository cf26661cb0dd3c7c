// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/progress.hpp"

#include <unistd.h>

#include <cstdio>
#include <iostream>
#include <utility>

namespace fluewright {

Progress::Progress(std::string what) : what_{std::move(what)}, shown_{isatty(fileno(stderr)) != 0} {}

Progress::~Progress() {
  if (shown_) std::cerr << "\r\033[K" << std::flush;
}

void Progress::at(std::size_t done, std::size_t of) {
  if (shown_) std::cerr << "\r\033[K" << what_ << ' ' << done << " of " << of << std::flush;
}

}  // namespace fluewright
