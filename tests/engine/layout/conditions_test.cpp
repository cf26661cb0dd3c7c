// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/conditions.hpp"

#include <gtest/gtest.h>

#include <set>

namespace fluewright {
namespace {

/// A value of a kind, different for every seed.
FieldValue some_value(FieldKind kind, double seed) {
  switch (kind) {
    case FieldKind::length:
      return seed * metre;
    case FieldKind::temperature:
      return celsius(seed);
    case FieldKind::velocity:
      return seed * metre_per_second;
    case FieldKind::pressure:
      return seed * pascal;
    case FieldKind::volume_flow:
      return seed * cubic_metre / second;
    case FieldKind::volume:
      return seed * cubic_metre;
    case FieldKind::mass_flow:
      return seed * kilogram_per_hour;
    case FieldKind::wood:
    case FieldKind::choice:
      return "wood " + std::to_string(seed);
    default:
      return Ratio{seed};
  }
}

TEST(TheConditions, HaveEachTheirOwnKey) {
  std::set<std::string_view> keys;
  for (const Condition& c : conditions()) keys.insert(c.key);
  EXPECT_EQ(keys.size(), conditions().size());
  EXPECT_EQ(keys.size(), 25u);  // 7 of the site, 8 of the room, 6 of the fire, 4 of the house: every member of the four
}

TEST(TheConditions, GiveBackWhatWasSetAndTouchNothingElse) {
  Design design;
  double seed = 1.0;
  for (const Condition& c : conditions()) c.set(design, some_value(c.kind, seed += 1.0));
  seed = 1.0;
  for (const Condition& c : conditions()) EXPECT_EQ(c.get(design), some_value(c.kind, seed += 1.0)) << c.key;
}

TEST(TheConditions, ReachTheMemberTheirKeyNames) {
  Design design;
  find_condition("site.altitude")->set(design, 900.0 * metre);
  find_condition("room.neutral_plane")->set(design, 3.5 * metre);
  find_condition("fire.moisture")->set(design, Ratio{0.25});
  EXPECT_DOUBLE_EQ(in(design.site.altitude, metre), 900.0);
  EXPECT_DOUBLE_EQ(in(design.room.neutral_plane, metre), 3.5);
  EXPECT_DOUBLE_EQ(design.fire.moisture, 0.25);
}

TEST(TheConditions, AreFoundByKeyOnly) {
  ASSERT_NE(find_condition("fire.wood"), nullptr);
  EXPECT_EQ(find_condition("fire.wood")->kind, FieldKind::wood);
  EXPECT_EQ(find_condition("altitude"), nullptr);
}

}  // namespace
}  // namespace fluewright
