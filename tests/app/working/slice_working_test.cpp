// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/working/hand_calculator.hpp"
#include "tests/app/working/worked_heater.hpp"

#include <gtest/gtest.h>

#include <iostream>

namespace fluewright::test {
namespace {

enum Stretches { feed, tunnel, riser, barrel, bench, foot, stack_inside, stack_outside };

const std::vector<std::string> headlines_of_a_slice{"Re", "f", "Nu", "h_i", "U", "q", "T_out", "T_m_again", "dp_f", "dp"};

TEST(ASliceWorkedByHand, GivesThePrintedDigitsEverywhereOnThePath) {
  const auto w = worked({}, a_day(5.0, 18.0));
  const auto run = retrace_profile(w->design, w->library, w->answer);
  ASSERT_NE(run, nullptr);
  for (std::size_t row = 0; row < run->rows.size(); ++row) {
    const Working working = explain_slice(*run, row);
    const Followed f = follow_by_digits(working);
    if (row % 25 == 0)
      std::cout << row << " relations " << f.relations << " looked up " << f.looked_up << " worst " << f.worst << " "
                << f.worst_step << " through " << follow_through(working, headlines_of_a_slice) << "\n";
  }
}

}  // namespace
}  // namespace fluewright::test
