// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/bulk_units.hpp"

#include <gtest/gtest.h>

namespace fluewright {
namespace {

TEST(BulkUnits, ReadAsBuildersReadThem) {
  const UnitSystem metric = UnitSystem::metric;
  const UnitSystem imperial = UnitSystem::imperial;
  EXPECT_EQ(show_weight(1234.4 * kilogram, metric).text(), "1234\u00A0kg");
  EXPECT_EQ(show_weight(45.359237 * kilogram, imperial).text(), "100\u00A0lb");  // a pound is 0.45359237 kg
  EXPECT_EQ(show_heap(0.3714 * cubic_metre, metric).text(), "371\u00A0L");
  EXPECT_EQ(show_heap(0.028316846592 * cubic_metre, imperial).text(), "1.0\u00A0ft³");
  EXPECT_EQ(show_area(1.5 * square_metre, metric).text(), "1.50\u00A0m²");
  EXPECT_EQ(show_area(0.09290304 * square_metre, imperial).text(), "1.0\u00A0ft²");
  EXPECT_EQ(show_load(720.0 * kilogram / square_metre, metric).text(), "720\u00A0kg/m²");
  // 40 lb/ft2 is 195.3 kg/m2.
  EXPECT_EQ(show_load(195.297 * kilogram / square_metre, imperial).text(), "40\u00A0lb/ft²");
}

}  // namespace
}  // namespace fluewright
