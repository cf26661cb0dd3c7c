// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPixmap>
#include <QString>

#include <vector>

namespace fluewright {

/// A number of the answer explained: what it is, what is usual, and a small picture.
struct NumberHelp {
  QString name;
  QString what;
  QString usual;
  enum class Picture { margin, buoyancy, resistance, exit, wet, excess_air, standing, balance, neutral, plot } picture{};
};

[[nodiscard]] std::vector<NumberHelp> number_helps();
[[nodiscard]] QPixmap picture_of(NumberHelp::Picture picture, QSize size, double pixel_ratio);

}  // namespace fluewright
