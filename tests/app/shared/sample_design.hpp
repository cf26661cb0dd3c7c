// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/design.hpp"

namespace fluewright {

/// A design with something in every place that the file has. It need not be buildable.
[[nodiscard]] inline Design sample_design() {
  Design design;
  design.title = "Sample “with quotes” and \\ strokes";
  design.scene = "Invented.";
  design.notes = "Several\nlines";
  design.site = {310.0 * metre, celsius(-12.5), 0.8, celsius(8.0), 4.5 * metre_per_second, 0.44, 25.0 * pascal};
  design.room = {celsius(16.0),       0.45, 6200.0 * millimetre, 3.1 * metre, 90.0 * cubic_metre / hour,
                 280.0 * cubic_metre, 3.5,  2.0 * pascal};
  design.fire = {2.6 * kilogram_per_hour, "red_oak", 0.16, 2.2, 0.02, 1.2};
  Piece feed{"p1", "feed_tube", "Mouth", {0, 254, 9000}, heading_down(), Turn::left, {}, {}};
  feed.fields = {{"length", 400.0 * millimetre}, {"free_share", Ratio{0.3}}};
  Piece bend{"p2", "elbow_segmented",    {}, {0, 0, -12505}, {30.0 * degree, -2.5 * degree}, Turn::right,
             {},   "Two lines\nof notes"};
  bend.fields = {{"gores", Count{5}}, {"wall", std::string("own")}};
  Piece tilted{"p3", "stovepipe", {}, {1, -2, 3}, heading_up(37.0 * degree), Turn::down, {}, {}};
  design.pieces = {feed, bend, tilted};
  design.joints = {{{"p1", "out"}, {"p2", "in"}}, {{"p2", "out"}, {"p3", "in"}}};
  design.walls = {{"own",
                   "My own wall",
                   {{"steel", 0.7 * millimetre}, {"cob", 100.0 * millimetre}},
                   {"measured", Standing::chosen}}};
  return design;
}

}  // namespace fluewright
