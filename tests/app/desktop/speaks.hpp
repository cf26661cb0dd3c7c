// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/language/language.hpp"

#include <QApplication>

namespace fluewright::test {

/// A language for as long as it lives.
struct Speaks {
  explicit Speaks(const QString& code) { speak(*qApp, code); }
  ~Speaks() { speak(*qApp, QStringLiteral("en")); }
  Speaks(const Speaks&) = delete;
  Speaks& operator=(const Speaks&) = delete;
};

}  // namespace fluewright::test
