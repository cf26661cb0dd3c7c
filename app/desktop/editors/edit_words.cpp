// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/editors/edit_words.hpp"

#include <array>
#include <cmath>

namespace fluewright {

QString refusal_sentence(Refusal refusal) {
  switch (refusal) {
    case Refusal::too_short:
      return QStringLiteral("There is no room for that: the run is too short.");
    case Refusal::not_an_open_end:
      return QStringLiteral("That end is already joined to something.");
    case Refusal::not_a_run:
      return QStringLiteral("Only a straight run can be split or stretched.");
    case Refusal::does_not_fit:
      return QStringLiteral("The pieces on either side could not meet any more.");
    case Refusal::unknown_piece:
      return QStringLiteral("That piece is no longer on the drawing.");
    case Refusal::unknown_type:
      return QStringLiteral("The catalogue has no such piece.");
    case Refusal::out_of_range:
      return QStringLiteral("That is outside the allowed range.");
  }
  return {};
}

QString heading_words(const Heading& heading) {
  const double elevation = in(heading.elevation, degree);
  if (elevation > 89.0) return QStringLiteral("up");
  if (elevation < -89.0) return QStringLiteral("down");
  static const std::array names{
      QStringLiteral("east"), QStringLiteral("north-east"), QStringLiteral("north"), QStringLiteral("north-west"),
      QStringLiteral("west"), QStringLiteral("south-west"), QStringLiteral("south"), QStringLiteral("south-east")};
  const double eighths = in(heading.azimuth, degree) / 45.0;
  const auto place = static_cast<std::size_t>(((std::lround(eighths) % 8) + 8) % 8);
  QString words = QStringLiteral("to the %1").arg(names[place]);
  if (elevation > 1.0) words += QStringLiteral(", rising");
  if (elevation < -1.0) words += QStringLiteral(", falling");
  return words;
}

QString turn_word(Turn turn) {
  switch (turn) {
    case Turn::left:
      return QStringLiteral("Left");
    case Turn::right:
      return QStringLiteral("Right");
    case Turn::up:
      return QStringLiteral("Up");
    case Turn::down:
      return QStringLiteral("Down");
  }
  return {};
}

}  // namespace fluewright
