// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/fields/field_words.hpp"
#include "app/desktop/fields/pick_field.hpp"
#include "app/desktop/fields/quantity_field.hpp"
#include "panels_support.hpp"

#include <QVBoxLayout>
#include <QWheelEvent>

namespace fluewright {
namespace {

using test::type_into;

FieldSpec bore_spec() {
  FieldSpec spec;
  spec.key = "bore";
  spec.label = "Bore";
  spec.help = "Inside diameter.";
  spec.kind = FieldKind::length;
  spec.fallback = 150.0 * millimetre;
  spec.lowest = 50.0 * millimetre;
  spec.highest = 500.0 * millimetre;
  spec.usual_low = 100.0 * millimetre;
  spec.usual_high = 200.0 * millimetre;
  return spec;
}

/// A field in a window, with what it asked for.
struct Bench {
  explicit Bench(FieldSpec spec = bore_spec(), UnitSystem units = UnitSystem::metric) : field(new QuantityField(spec)) {
    auto* column = new QVBoxLayout(&window);
    column->addWidget(field);
    other = new QLineEdit;
    column->addWidget(other);
    field->show_value(spec.fallback, units);
    QObject::connect(field, &Field::asked, &window, [this](const FieldValue& value, const QString& key) {
      asked.push_back(value);
      keys.push_back(key);
    });
    window.show();
    window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    other->setFocus();
  }
  double millimetres(std::size_t i) const { return in(std::get<Length>(asked.at(i)), millimetre); }

  QWidget window;
  QuantityField* field;
  QLineEdit* other;
  std::vector<FieldValue> asked;
  std::vector<QString> keys;
};

TEST(QuantityField, ShowsItsNumberItsUnitAndWhatIsUsual) {
  Bench bench;
  EXPECT_EQ(bench.field->text(), "150");
  EXPECT_EQ(bench.field->unit(), "mm");
  EXPECT_TRUE(bench.field->aside().startsWith("usual 100–200")) << bench.field->aside().toStdString();
}

TEST(QuantityField, UnderstandsInchesWhileItShowsMillimetres) {
  Bench bench;
  type_into(*bench.field, "8 in");
  ASSERT_EQ(bench.asked.size(), 1u);
  EXPECT_NEAR(bench.millimetres(0), 203.2, 1e-9);  // 1 in = 25.4 mm exactly (ISO 80000-3)
}

TEST(QuantityField, UnderstandsMillimetresWhileItShowsInches) {
  Bench bench(bore_spec(), UnitSystem::imperial);
  type_into(*bench.field, "200 mm");
  ASSERT_EQ(bench.asked.size(), 1u);
  EXPECT_NEAR(bench.millimetres(0), 200.0, 1e-9);
}

TEST(QuantityField, TakesCommaAndDotAlike) {
  Bench bench;
  type_into(*bench.field, "152,4");
  type_into(*bench.field, "152.4");
  ASSERT_EQ(bench.asked.size(), 2u);
  EXPECT_NEAR(bench.millimetres(0), 152.4, 1e-9);
  EXPECT_NEAR(bench.millimetres(1), 152.4, 1e-9);
}

TEST(QuantityField, LeavesWhatIsOutOfRangeWhereItIsAndExplainsIt) {
  Bench bench;
  type_into(*bench.field, "900");
  EXPECT_TRUE(bench.asked.empty());
  EXPECT_EQ(bench.field->text(), "900");
  EXPECT_TRUE(bench.field->explanation().contains("50 to 500")) << bench.field->explanation().toStdString();
  // The same value told again (another edit elsewhere) does not take the typed one away.
  bench.field->show_value(150.0 * millimetre, UnitSystem::metric);
  EXPECT_EQ(bench.field->text(), "900");
}

TEST(QuantityField, ExplainsWhatItDoesNotUnderstand) {
  Bench bench;
  type_into(*bench.field, "wide");
  EXPECT_TRUE(bench.asked.empty());
  EXPECT_FALSE(bench.field->explanation().isEmpty());
}

TEST(QuantityField, EscapeGoesBackToTheDesignsValue) {
  Bench bench;
  type_into(*bench.field, "900", false);
  QTest::keyClick(bench.field->findChild<QLineEdit*>(), Qt::Key_Escape);
  EXPECT_EQ(bench.field->text(), "150");
  EXPECT_TRUE(bench.field->explanation().isEmpty());
}

TEST(QuantityField, LeavingTheFieldAsksForWhatWasTyped) {
  Bench bench;
  type_into(*bench.field, "180", false);
  bench.other->setFocus();
  ASSERT_EQ(bench.asked.size(), 1u);
  EXPECT_NEAR(bench.millimetres(0), 180.0, 1e-9);
}

TEST(QuantityField, LeavingItUntouchedAsksForNothing) {
  Bench bench;
  bench.field->setFocus();
  bench.other->setFocus();
  EXPECT_TRUE(bench.asked.empty());
}

void turn_wheel(QWidget* over, int notches) {
  const QPointF at = over->rect().center();
  QWheelEvent event(at, over->mapToGlobal(at), {}, {0, 120 * notches}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase,
                    false);
  QApplication::sendEvent(over, &event);
}

TEST(QuantityField, TheWheelChangesNothingWithoutTheFocus) {
  Bench bench;
  turn_wheel(bench.field->findChild<QLineEdit*>(), 3);
  EXPECT_TRUE(bench.asked.empty());
  bench.field->setFocus();
  turn_wheel(bench.field->findChild<QLineEdit*>(), 1);
  EXPECT_EQ(bench.asked.size(), 1u);
}

TEST(QuantityField, ArrowsStepAndOneVisitIsOneUndoStep) {
  Bench bench;
  auto* edit = bench.field->findChild<QLineEdit*>();
  bench.field->setFocus();
  QTest::keyClick(edit, Qt::Key_Up);
  QTest::keyClick(edit, Qt::Key_Down);
  bench.other->setFocus();
  bench.field->setFocus();
  QTest::keyClick(edit, Qt::Key_Up);
  ASSERT_EQ(bench.asked.size(), 3u);
  EXPECT_NEAR(bench.millimetres(0), 155.0, 1e-9);
  EXPECT_NEAR(bench.millimetres(1), 145.0, 1e-9);  // the design was not told of the first step here
  EXPECT_FALSE(bench.keys[0].isEmpty());
  EXPECT_EQ(bench.keys[0], bench.keys[1]);
  EXPECT_NE(bench.keys[1], bench.keys[2]);
}

TEST(QuantityField, SteppingStopsAtTheEndOfTheRangeAndSaysSo) {
  Bench bench;
  bench.field->show_value(500.0 * millimetre, UnitSystem::metric);
  bench.field->setFocus();
  QTest::keyClick(bench.field->findChild<QLineEdit*>(), Qt::Key_Up);
  EXPECT_TRUE(bench.asked.empty());
  EXPECT_FALSE(bench.field->explanation().isEmpty());
}

TEST(QuantityField, SwitchesUnitsInEveryWordItShows) {
  Bench bench;
  bench.field->show_value(152.4 * millimetre, UnitSystem::imperial);
  EXPECT_EQ(bench.field->text(), "6");
  EXPECT_EQ(bench.field->unit(), "in");
  EXPECT_TRUE(bench.field->aside().contains("in")) << bench.field->aside().toStdString();
}

TEST(QuantityField, SaysItsNameAndItsTroubleToAssistiveTools) {
  Bench bench;
  auto* edit = bench.field->findChild<QLineEdit*>();
  EXPECT_EQ(edit->accessibleName(), "Bore");
  type_into(*bench.field, "900");
  EXPECT_TRUE(edit->accessibleDescription().contains("50 to 500"));
}

TEST(FieldSteps, GoToTheNextWholeMarkOfTheScaleShown) {
  const FieldSpec spec = bore_spec();
  const auto metric = stepped(spec, 152.4 * millimetre, UnitSystem::metric, 1);
  ASSERT_TRUE(metric);
  EXPECT_NEAR(in(std::get<Length>(*metric), millimetre), 155.0, 1e-9);
  const auto imperial = stepped(spec, 150.0 * millimetre, UnitSystem::imperial, 1);
  ASSERT_TRUE(imperial);
  EXPECT_NEAR(in(std::get<Length>(*imperial), inch), 6.0, 1e-9);
}

TEST(FieldSteps, ATemperatureStepsOnItsOwnScale) {
  FieldSpec spec;
  spec.key = "outdoor_temperature";
  spec.kind = FieldKind::temperature;
  spec.fallback = celsius(4.4);
  const auto up = stepped(spec, spec.fallback, UnitSystem::metric, 1);
  ASSERT_TRUE(up);
  EXPECT_NEAR(in_celsius(std::get<Temperature>(*up)), 5.0, 1e-9);
  const auto warmer = stepped(spec, celsius(0.0), UnitSystem::imperial, 1);
  ASSERT_TRUE(warmer);
  EXPECT_NEAR(in_fahrenheit(std::get<Temperature>(*warmer)), 33.0, 1e-9);
}

TEST(PickField, AsksForTheIdAndShowsAnUnknownOneAsItIs) {
  FieldSpec spec;
  spec.key = "wall";
  spec.label = "Wall";
  spec.kind = FieldKind::wall;
  PickField field(spec);
  field.set_options({{"a", "First wall"}, {"b", "Second wall"}});
  field.show_value(FieldValue{std::string("b")}, UnitSystem::metric);
  EXPECT_EQ(field.list()->currentText(), "Second wall");
  std::vector<std::string> asked;
  QObject::connect(&field, &Field::asked, &field, [&asked](const FieldValue& value, const QString&) {
    asked.push_back(std::get<std::string>(value));
  });
  field.show();
  QTest::keyClick(field.list(), Qt::Key_Up);
  ASSERT_EQ(asked.size(), 1u);
  EXPECT_EQ(asked[0], "a");
  field.show_value(FieldValue{std::string("gone")}, UnitSystem::metric);
  EXPECT_TRUE(field.list()->currentText().contains("gone"));
}

}  // namespace
}  // namespace fluewright
