// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/price_reader.hpp"
#include "tests/app/advice/advised.hpp"

namespace fluewright {
namespace {

TEST(ThePriceList, NamesEveryPieceOfTheCatalogue) {
  for (const PieceType& type : shipped_library()->piece_types) {
    EXPECT_NE(shipped_prices().price(type.id), nullptr) << type.id;
  }
  EXPECT_EQ(shipped_prices().citation.standing, Standing::common_practice);
}

TEST(ThePartsOfADesign, CostWhatIsOnTheListByPieceMetreAndBore) {
  Design design;
  design.pieces.push_back({"p1", "stovepipe", "", {}, {}, Turn::left, {{"length", Length(2.0 * metre)}, {"bore", Length(300.0 * millimetre)}}, ""});
  design.pieces.push_back({"p2", "cap_plain", "", {}, {}, Turn::left, {}, ""});
  design.pieces.push_back({"p3", "no such type", "", {}, {}, Turn::left, {}, ""});
  const PriceList prices{"EUR", {{"stovepipe", {5.0}, {30.0}}, {"cap_plain", {40.0}, {0.0}}}, {}};
  const PartsCost cost = parts_cost(design, *shipped_library(), prices);
  EXPECT_DOUBLE_EQ(cost.total.amount, 2.0 * (5.0 + 2.0 * 30.0) + 40.0);
  EXPECT_EQ(cost.without_price, 1u);
}

TEST(OnesOwnPrices, StandInForTheShippedOnes) {
  const auto read = read_price_text(R"({"currency": "USD", "prices": [{"type": "stovepipe", "each": 8, "per_metre": 42}]})");
  ASSERT_TRUE(std::holds_alternative<PriceList>(read));
  const auto& list = std::get<PriceList>(read);
  EXPECT_EQ(list.currency, "USD");
  EXPECT_EQ(list.price("stovepipe")->per_metre, Money{42.0});
  EXPECT_EQ(list.price("cap_plain")->each, shipped_prices().price("cap_plain")->each);
}

TEST(APriceListThatIsNone, SaysWhatIsWrong) {
  for (const char* text : {"", "[]", "{\"currency\": \"EUR\"}",
                           R"({"currency": "EUR", "prices": [{"type": "stovepipe", "each": -1, "per_metre": 0}]})",
                           R"({"currency": "EUR", "prices": [{"type": "gold", "each": 1, "per_metre": 0}]})"}) {
    const auto read = read_price_text(text);
    ASSERT_TRUE(std::holds_alternative<std::string>(read)) << text;
    EXPECT_FALSE(std::get<std::string>(read).empty());
  }
}

}  // namespace
}  // namespace fluewright
