// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace fluewright {

/// How far a value may be trusted to be what its source says.
enum class Standing {
  published,        ///< read in the named publication, or in a library that cites it
  from_memory,      ///< written down from memory; check before relying on it
  common_practice,  ///< what the trade does; no source
  chosen            ///< our own modelling choice, explained where it stands
};

/// Where a number comes from.
struct Citation {
  std::string source;
  Standing standing = Standing::common_practice;
  friend bool operator==(const Citation&, const Citation&) = default;
};

}  // namespace fluewright
