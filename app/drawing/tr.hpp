// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/said.hpp"

#include <QCoreApplication>
#include <QString>

namespace fluewright {

/// An English text in the language in force, outside of classes that have a tr() from Qt. All texts share one context.
[[nodiscard]] inline QString tr(const char* english, const char* comment = nullptr, int count = -1) {
  return QCoreApplication::translate("Words", english, comment, count);
}

/// The same of a word that came out of a table: word(Verdict) and its like.
[[nodiscard]] inline QString spoken(std::string_view english) { return QString::fromStdString(said(english)); }

/// A number with so many decimals and the language's own mark before them.
[[nodiscard]] inline QString digits(double number, int decimals) {
  return QString::fromStdString(decimal_text(number, decimals));
}

/// The same with the decimals it needs, six digits at most.
[[nodiscard]] inline QString digits(double number) {
  return QString::fromStdString(with_decimal_mark(QString::number(number).toStdString()));
}

}  // namespace fluewright
