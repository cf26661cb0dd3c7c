// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/editors/edit_words.hpp"

#include "app/drawing/tr.hpp"

#include <array>
#include <cmath>

namespace fluewright {

QString refusal_sentence(Refusal refusal) {
  switch (refusal) {
    case Refusal::too_short:
      return tr("There is no room for that: the run is too short.");
    case Refusal::not_an_open_end:
      return tr("That end is already joined to something.");
    case Refusal::not_a_run:
      return tr("Only a straight run can be split or stretched.");
    case Refusal::does_not_fit:
      return tr("The pieces on either side could not meet any more.");
    case Refusal::unknown_piece:
      return tr("That piece is no longer on the drawing.");
    case Refusal::unknown_type:
      return tr("The catalogue has no such piece.");
    case Refusal::out_of_range:
      return tr("That is outside the allowed range.");
  }
  return {};
}

QString heading_words(const Heading& heading) {
  const double elevation = in(heading.elevation, degree);
  if (elevation > 89.0) return tr("up");
  if (elevation < -89.0) return tr("down");
  const std::array names{
      tr("east"), tr("north-east"), tr("north"), tr("north-west"),
      tr("west"), tr("south-west"), tr("south"), tr("south-east")};
  const double eighths = in(heading.azimuth, degree) / 45.0;
  const auto place = static_cast<std::size_t>(((std::lround(eighths) % 8) + 8) % 8);
  QString words = tr("to the %1").arg(names[place]);
  if (elevation > 1.0) words += tr(", rising");
  if (elevation < -1.0) words += tr(", falling");
  return words;
}

QString turn_word(Turn turn) {
  switch (turn) {
    case Turn::left:
      return tr("Left");
    case Turn::right:
      return tr("Right");
    case Turn::up:
      return tr("Up");
    case Turn::down:
      return tr("Down");
  }
  return {};
}

}  // namespace fluewright
