// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/units.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace fluewright {
namespace {

using enum UnitSystem;

const std::string space = "\u00A0";
const std::string minus = "\u2212";

std::string metric_text(Length l, Meaning m = Meaning::small_length) { return show(l, metric, m).text(); }
std::string imperial_text(Length l, Meaning m = Meaning::small_length) { return show(l, imperial, m).text(); }

TEST(ShowingLengths, SmallOnesReadInWholeMillimetresUnlessSetFiner) {
  EXPECT_EQ(metric_text(150.0 * millimetre), "150" + space + "mm");
  EXPECT_EQ(metric_text(0.7 * millimetre), "0.7" + space + "mm");
  EXPECT_EQ(metric_text(0.55 * millimetre), "0.55" + space + "mm");
  EXPECT_EQ(metric_text(152.4 * millimetre), "152.4" + space + "mm");
}

TEST(ShowingLengths, InchesOnATapesMarkReadAsFractions) {
  EXPECT_EQ(imperial_text(6.0 * inch), "6" + space + "in");
  EXPECT_EQ(imperial_text(6.5 * inch), "6 1/2" + space + "in");
  EXPECT_EQ(imperial_text(3.0 / 16.0 * inch), "3/16" + space + "in");
  EXPECT_EQ(imperial_text(150.0 * millimetre), "5.9" + space + "in");
  EXPECT_EQ(imperial_text(0.7 * millimetre), "0.028" + space + "in");
}

TEST(ShowingLengths, RunsReadInMetresOrInFeetAndInches) {
  EXPECT_EQ(metric_text(7.4 * metre, Meaning::run_length), "7.40" + space + "m");
  EXPECT_EQ(imperial_text(7.4 * metre, Meaning::run_length), "24 ft 3.3 in");
  EXPECT_EQ(imperial_text(24.0 * foot, Meaning::run_length), "24 ft");
  EXPECT_EQ(imperial_text(0.0 * foot, Meaning::run_length), "0 ft");
  EXPECT_EQ(imperial_text(8.5 * inch, Meaning::run_length), "8 1/2 in");
  EXPECT_EQ(imperial_text(8.53 * inch, Meaning::run_length), "8 1/2 in");
  EXPECT_EQ(imperial_text(-1.0 * foot, Meaning::height), minus + "1 ft");
}

TEST(ShowingLengths, ElevenInchesAndAllButNothingRoundUpToAFoot) {
  EXPECT_EQ(imperial_text(23.97 * inch, Meaning::run_length), "2 ft");
}

TEST(ShowingLengths, WhatSomeoneSetKeepsItsMillimetres) {
  EXPECT_EQ(metric_text(2.525 * metre, Meaning::drawn_length), "2525" + space + "mm");
  EXPECT_EQ(metric_text(2.525 * metre, Meaning::drawn_height), "2.525" + space + "m");
  EXPECT_EQ(metric_text(2.5 * metre, Meaning::drawn_height), "2.50" + space + "m");
  EXPECT_EQ(imperial_text(98.4375 * inch, Meaning::drawn_length), "8 ft 2 7/16 in");
}

TEST(ShowingPressures, TenthsOfAPascalAndThousandthsOfAnInch) {
  EXPECT_EQ(show(3.44 * pascal, metric).text(), "3.4" + space + "Pa");
  EXPECT_EQ(show(-3.44 * pascal, metric).text(), minus + "3.4" + space + "Pa");
  EXPECT_EQ(show(25.0 * pascal, imperial).text(), "0.100" + space + "in w.c.");
}

TEST(ShowingPressures, RoundingLeavesNoMinusBeforeZero) {
  EXPECT_EQ(show(-0.04 * pascal, metric).number, "0.0");
  EXPECT_EQ(show(-0.06 * pascal, metric).number, minus + "0.1");
}

TEST(ShowingTemperatures, WholeDegrees) {
  EXPECT_EQ(show(celsius(63.4), metric).text(), "63" + space + "°C");
  EXPECT_EQ(show(celsius(100.0), imperial).text(), "212" + space + "°F");
  EXPECT_EQ(show(celsius(-10.0), metric).number, minus + "10");
  EXPECT_EQ(show(TemperatureDifference{10.0 * kelvin}, imperial).text(), "18" + space + "°F");
}

TEST(ShowingTheRest, EachInItsUnit) {
  EXPECT_EQ(show(3.0 * kilogram_per_hour, metric).text(), "3" + space + "kg/h");
  EXPECT_EQ(show(1.0 * kilogram_per_hour, imperial).text(), "2.2" + space + "lb/h");
  EXPECT_EQ(show(0.0123 * kilogram_per_second, metric, Meaning::mass_flow_gas).text(), "12.3" + space + "g/s");
  EXPECT_EQ(show(1.234 * metre_per_second, metric).text(), "1.23" + space + "m/s");
  EXPECT_EQ(show(VolumeFlow{90.0 * cubic_metre / hour}, metric).text(), "90" + space + "m³/h");
  EXPECT_EQ(show(VolumeFlow{0.0471947 * cubic_metre / second}, imperial).text(), "100" + space + "cfm");
  EXPECT_EQ(show(45.0 * degree, metric).text(), "45°");
  EXPECT_EQ(show(Ratio{0.18}, metric, Meaning::share).text(), "18" + space + "%");
  EXPECT_EQ(show(Ratio{2.5}, metric).text(), "2.5");
  EXPECT_EQ(show(11400.0 * watt, metric).text(), "11.40" + space + "kW");
  EXPECT_EQ(show(1000.0 * watt, imperial).text(), "3412" + space + "Btu/h");
}

TEST(ShowingTheRest, WhatIsNoNumberShowsADash) {
  EXPECT_EQ(show(std::nan("") * pascal, metric).number, "—");
  EXPECT_EQ(show(std::nan("") * metre, imperial, Meaning::run_length).number, "—");
}

TEST(Fields, ShowInTheUnitOfTheirMeaning) {
  EXPECT_EQ(show(FieldValue{Ratio{0.18}}, metric, FieldKind::ratio, "fire.moisture").text(), "18" + space + "%");
  EXPECT_EQ(show(FieldValue{250.0 * metre}, metric, FieldKind::length, "site.altitude").text(), "250" + space + "m");
  EXPECT_EQ(show(FieldValue{Count{5}}, imperial, FieldKind::count, "gores").text(), "5");
  EXPECT_EQ(show(FieldValue{std::string("smooth")}, metric, FieldKind::choice, "build").text(), "smooth");
}

double typed_mm(std::string_view typed, UnitSystem system = metric, Meaning meaning = Meaning::small_length) {
  const auto parsed = parse_length(typed, system, meaning);
  EXPECT_TRUE(parsed.value.has_value()) << typed << ": " << parsed.failure.message;
  return parsed.value ? in(*parsed.value, millimetre) : std::nan("");
}

TEST(TypingLengths, EitherSystemUnderstandsTheOther) {
  for (const UnitSystem system : {metric, imperial}) {
    EXPECT_NEAR(typed_mm("6 ft 4 in", system), 1930.4, 1e-9);
    EXPECT_NEAR(typed_mm("6'4\"", system), 1930.4, 1e-9);
    EXPECT_NEAR(typed_mm("6' 4 1/2\"", system), 1943.1, 1e-9);
    EXPECT_NEAR(typed_mm("6'-4\"", system), 1930.4, 1e-9);
    EXPECT_NEAR(typed_mm("6′ 4″", system), 1930.4, 1e-9);
    EXPECT_NEAR(typed_mm("6' 4", system), 1930.4, 1e-9);
    EXPECT_NEAR(typed_mm("1.2 m", system), 1200.0, 1e-9);
    EXPECT_NEAR(typed_mm("1,2 m", system), 1200.0, 1e-9);
    EXPECT_NEAR(typed_mm("120 cm", system), 1200.0, 1e-9);
    EXPECT_NEAR(typed_mm("80 in", system), 2032.0, 1e-9);
    EXPECT_NEAR(typed_mm("80in.", system), 2032.0, 1e-9);
    EXPECT_NEAR(typed_mm(" 1200MM ", system), 1200.0, 1e-9);
    EXPECT_NEAR(typed_mm("1 m 20 cm", system), 1200.0, 1e-9);
    EXPECT_NEAR(typed_mm("-1.2 m", system), -1200.0, 1e-9);
    EXPECT_NEAR(typed_mm("−1.2 m", system), -1200.0, 1e-9);
    EXPECT_NEAR(typed_mm(".5 m", system), 500.0, 1e-9);
    EXPECT_NEAR(typed_mm("3/4 in", system), 19.05, 1e-9);
  }
}

TEST(TypingLengths, ABareNumberIsInTheUnitThatIsShown) {
  EXPECT_NEAR(typed_mm("1200"), 1200.0, 1e-9);
  EXPECT_NEAR(typed_mm("6 1/2", imperial), 165.1, 1e-9);
  EXPECT_NEAR(typed_mm("1.2", metric, Meaning::run_length), 1200.0, 1e-9);
  EXPECT_NEAR(typed_mm("10", imperial, Meaning::drawn_height), 3048.0, 1e-9);
  EXPECT_NEAR(typed_mm("80", imperial, Meaning::drawn_length), 2032.0, 1e-9);
  EXPECT_NEAR(typed_mm("0,125"), 0.125, 1e-9);
}

TEST(TypingLengths, WhatIsNoLengthIsRefusedWithASentence) {
  for (const char* typed : {"abc", "4 in 6 ft", "6 ft 4 ft", "1 2", "5 stone", "1.2.3 m", "6 ft x", "1e3", "--5", "inf",
                            "nan", "1/0 in", "m", "5 m m", "\xff\xfe"}) {
    const auto parsed = parse_length(typed, metric);
    EXPECT_FALSE(parsed.value.has_value()) << typed;
    EXPECT_NE(parsed.failure.message.find("is not a length"), std::string::npos)
        << typed << ": " << parsed.failure.message;
  }
  EXPECT_EQ(parse_length("  ", metric).failure.message, "Nothing is written: a length is wanted here.");
  EXPECT_FALSE(parse_length(std::string(400, '9'), metric).value.has_value());
}

TEST(TypingLengths, AThousandsCommaIsAskedAboutAndNotGuessed) {
  EXPECT_EQ(parse_length("1,200 mm", metric).failure.message,
            "“1,200” could mean 1.200 or 1200: write it one of these ways.");
}

template <class Quantity>
Quantity typed(std::string_view text, FieldKind kind, std::string_view key = "", UnitSystem system = metric) {
  const auto parsed = parse_field(text, system, kind, key);
  EXPECT_TRUE(parsed.value.has_value()) << text << ": " << parsed.failure.message;
  return parsed.value ? std::get<Quantity>(*parsed.value) : Quantity{};
}

TEST(TypingFields, EachKindUnderstandsItsUnits) {
  EXPECT_NEAR(in_celsius(typed<Temperature>("20 C", FieldKind::temperature)), 20.0, 1e-9);
  EXPECT_NEAR(in_celsius(typed<Temperature>("68 °F", FieldKind::temperature)), 20.0, 1e-9);
  EXPECT_NEAR(in_celsius(typed<Temperature>("68", FieldKind::temperature, "", imperial)), 20.0, 1e-9);
  EXPECT_NEAR(in_celsius(typed<Temperature>("−5", FieldKind::temperature)), -5.0, 1e-9);
  EXPECT_NEAR(in_kelvin(typed<Temperature>("300 K", FieldKind::temperature)), 300.0, 1e-9);
  EXPECT_NEAR(in(typed<Pressure>("5 Pa", FieldKind::pressure), pascal), 5.0, 1e-9);
  EXPECT_NEAR(in(typed<Pressure>("0.02 in w.c.", FieldKind::pressure), pascal), 4.9817782, 1e-7);
  EXPECT_NEAR(in(typed<Pressure>("0.02 in", FieldKind::pressure), inch_of_water), 0.02, 1e-12);
  EXPECT_NEAR(typed<Ratio>("35 %", FieldKind::ratio, "fire.moisture"), 0.35, 1e-12);
  EXPECT_NEAR(typed<Ratio>("35", FieldKind::ratio, "fire.moisture"), 0.35, 1e-12);
  EXPECT_NEAR(typed<Ratio>("2,5", FieldKind::ratio, "fire.wanted_excess_air"), 2.5, 1e-12);
  EXPECT_NEAR(in(typed<MassFlow>("3 kg/h", FieldKind::mass_flow), kilogram_per_hour), 3.0, 1e-12);
  EXPECT_NEAR(in(typed<MassFlow>("6.6 lb/h", FieldKind::mass_flow), kilogram_per_hour), 2.9937, 1e-4);
  EXPECT_NEAR(in(typed<Angle>("45 deg", FieldKind::angle), degree), 45.0, 1e-12);
  EXPECT_NEAR(in(typed<Angle>("45°", FieldKind::angle), degree), 45.0, 1e-12);
  EXPECT_NEAR(in(typed<Velocity>("36 km/h", FieldKind::velocity), metre_per_second), 10.0, 1e-12);
  EXPECT_NEAR(in(typed<Volume>("300 m³", FieldKind::volume), cubic_metre), 300.0, 1e-12);
  EXPECT_EQ(typed<Count>("5", FieldKind::count).value, 5);
  EXPECT_EQ(typed<std::string>(" cob ", FieldKind::material), "cob");
}

TEST(TypingFields, TheWrongUnitIsRefusedWithASentence) {
  EXPECT_EQ(parse_field("20 Pa", metric, FieldKind::temperature, "").failure.message,
            "“20 Pa” is not a temperature: write it like 20 C or 68 F.");
  EXPECT_FALSE(parse_field("2.5", metric, FieldKind::count, "gores").value.has_value());
  EXPECT_FALSE(parse_field("", metric, FieldKind::material, "").value.has_value());
  EXPECT_FALSE(parse_field("5 5", metric, FieldKind::pressure, "").value.has_value());
}

// What is shown can be typed back: the same text comes out, and the value within what the text can tell.

RC_GTEST_PROP(ShownText, OfALengthReadsBack, ()) {
  const auto system = *rc::gen::element(metric, imperial);
  const auto meaning = *rc::gen::element(Meaning::small_length, Meaning::run_length, Meaning::height,
                                         Meaning::drawn_length, Meaning::altitude);
  const double tenths = *rc::gen::inRange(-300'000, 300'000);
  const Length length = tenths * (0.1 * millimetre);
  const std::string text = show(length, system, meaning).text();
  const auto parsed = parse_length(text, system, meaning);
  RC_ASSERT(parsed.value.has_value());
  RC_ASSERT(std::abs(in(*parsed.value - length, millimetre)) <= (meaning == Meaning::altitude ? 500.1 : 5.1));
  RC_ASSERT(show(*parsed.value, system, meaning).text() == text);
}

RC_GTEST_PROP(ShownText, OfAnyFieldReadsBack, ()) {
  const auto system = *rc::gen::element(metric, imperial);
  const double number = *rc::gen::inRange(-50'000, 50'000) / 100.0;
  struct Case {
    FieldKind kind;
    const char* key;
    FieldValue value;
  };
  const Case cases[] = {
      {FieldKind::pressure, "set_draft", number * pascal},
      {FieldKind::temperature, "rating", celsius(number)},
      {FieldKind::mass_flow, "burn_rate", number * kilogram_per_hour},
      {FieldKind::velocity, "wind_speed", number * metre_per_second},
      {FieldKind::volume, "house_volume", number * cubic_metre},
      {FieldKind::angle, "angle", number * degree},
      {FieldKind::ratio, "moisture", Ratio{number}},
      {FieldKind::ratio, "excess_air", Ratio{number}},
      {FieldKind::count, "gores", Count{static_cast<int>(number)}},
  };
  const auto& field = cases[*rc::gen::inRange<std::size_t>(0, std::size(cases))];
  const std::string text = show(field.value, system, field.kind, field.key).text();
  const auto parsed = parse_field(text, system, field.kind, field.key);
  RC_ASSERT(parsed.value.has_value());
  RC_ASSERT(show(*parsed.value, system, field.kind, field.key).text() == text);
}

RC_GTEST_PROP(TypedText, OfAnyBytesNeitherCrashesNorHangs, ()) {
  const auto bytes = *rc::gen::container<std::string>(
      rc::gen::oneOf(rc::gen::arbitrary<char>(), rc::gen::elementOf(std::string("0123456789 .,'\"/-mincftkPa%"))));
  (void)parse_length(bytes, metric);
  for (const FieldKind kind :
       {FieldKind::angle, FieldKind::ratio, FieldKind::count, FieldKind::pressure, FieldKind::temperature,
        FieldKind::mass_flow, FieldKind::volume_flow, FieldKind::choice}) {
    const auto parsed = parse_field(bytes, imperial, kind, "moisture");
    RC_ASSERT(parsed.value.has_value() != !parsed.failure.message.empty());
  }
}

}  // namespace
}  // namespace fluewright
