// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/working/hand_calculator.hpp"
#include "tests/app/working/worked_heater.hpp"

#include <gtest/gtest.h>

#include <iostream>

namespace fluewright::test {
namespace {

TEST(AHeadlineWorkedByHand, GivesThePrintedDigits) {
  const auto w = worked({}, a_day(5.0, 18.0));
  for (const NamedHeadline& headline : headlines()) {
    const auto working = explain_headline(w->design, w->library, w->answer, headline.headline);
    ASSERT_TRUE(working) << headline.name;
    const Followed f = follow_by_digits(*working);
    std::cout << headline.name << " " << f.relations << " " << f.worst << " " << f.worst_step << "\n";
  }
}

}  // namespace
}  // namespace fluewright::test
