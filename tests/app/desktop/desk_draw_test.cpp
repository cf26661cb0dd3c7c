// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// A path drawn from nothing with mouse and keys on the real window.

#include "app/desktop/desk/growth.hpp"
#include "app/desktop/desk/landmarks.hpp"
#include "app/desktop/theme/theme.hpp"
#include "desk_hand.hpp"

namespace fluewright {
namespace {

using test::Drafter;
using test::when_asked;

/// Feed from the rack onto the sheet, the fire's pieces after it, ready to draw the bench.
void light_the_fire(Drafter& hand) {
  hand.carry("feed_tube", hand.place(hand.front(), {0.0, 0.0, 0.5}));
  for (const char* type : {"burn_tunnel", "heat_riser", "barrel", "manifold"}) {
    Drafter::settle();
    hand.carry(type, hand.ring(hand.front(), hand.ready().ref));
  }
  Drafter::settle();
}

/// Bench east, round a corner north, a tee at the chimney's foot, chimney up, cap.
void draw_bench_and_chimney(Drafter& hand) {
  hand.pull(hand.front(), heading_east, 2.0);
  Drafter::settle();
  hand.pull(hand.plan(), heading_north, 1.0);
  Drafter::settle();
  hand.carry("tee", hand.ring(hand.plan(), hand.ready().ref));
  Drafter::settle();
  hand.choose_upright("stack_insulated");
  hand.board().focus_end(PortRef{hand.piece("tee").id, "branch"});
  hand.pull(hand.front(), heading_up(), 4.0);
  Drafter::settle();
  hand.carry("cap_rain", hand.ring(hand.front(), hand.ready().ref));
  Drafter::settle();
}

TEST(Drawing, AWholePathFromNothingAndBackToNothing) {
  Drafter hand;
  const std::string nothing = hand.text();
  light_the_fire(hand);
  EXPECT_EQ(hand.steps(), 5);
  EXPECT_EQ(hand.margin(), "–");
  draw_bench_and_chimney(hand);
  EXPECT_EQ(hand.count("elbow_smooth"), 1u) << "put in by itself";
  EXPECT_EQ(hand.count("bench_pipe"), 2u);
  EXPECT_EQ(hand.count("stack_insulated"), 1u);

  EXPECT_TRUE(hand.document.assessment().path.complete);
  EXPECT_NE(hand.margin(), "–");
  EXPECT_FALSE(hand.find<Headline>("headline_margin")->state().isEmpty());
  EXPECT_NE(hand.figure("exit"), "–");

  // One step a gesture; back to nothing, and forth to the same.
  EXPECT_EQ(hand.steps(), 10);
  const std::string drawn = hand.text();
  const QStringList numbers = hand.numbers();
  for (int i = 0; i < 10; ++i) hand.key(Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(hand.text(), nothing);
  EXPECT_FALSE(hand.document.modified());
  for (int i = 0; i < 10; ++i) hand.key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(hand.text(), drawn);
  EXPECT_EQ(hand.numbers(), numbers);
}

TEST(Drawing, SavedAndReopenedHasTheSameNumbers) {
  Drafter hand;
  light_the_fire(hand);
  draw_bench_and_chimney(hand);
  const std::string drawn = hand.text();
  const QStringList numbers = hand.numbers();
  const QString path = hand.saved_path("drawn.fluepath");
  when_asked<QFileDialog>([path](QFileDialog& dialog) {
    auto* name = dialog.findChild<QLineEdit*>("fileNameEdit");
    ASSERT_NE(name, nullptr);
    name->setText(path);
    QTest::keyClick(name, Qt::Key_Return);
  });
  hand.key(Qt::Key_S, Qt::ControlModifier);
  ASSERT_TRUE(QFile::exists(path));
  ASSERT_TRUE(hand.window.files().start_new());
  EXPECT_EQ(hand.margin(), "–");
  ASSERT_TRUE(hand.window.files().open_path(path));
  EXPECT_EQ(hand.text(), drawn);
  EXPECT_EQ(hand.numbers(), numbers);
}

TEST(Drawing, NumbersFollowTheMouseBeforeItIsLetGo) {
  Drafter hand;
  light_the_fire(hand);
  draw_bench_and_chimney(hand);
  const QStringList before = hand.numbers();
  const int steps = hand.steps();
  const PieceId pipe = hand.piece("bench_pipe").id;
  const PieceId elbow = hand.piece("elbow_smooth").id;
  const QPoint joint = hand.port_spot(hand.plan(), {elbow, "in"});
  hand.press(joint);
  QStringList seen;
  for (const int pixels : {30, 60, 90}) {
    hand.glide(joint - QPoint(pixels, 0));
    EXPECT_TRUE(hand.document.in_preview());
    seen << hand.numbers().join(' ') + QString::number(in(hand.length_of_piece(pipe), millimetre));
  }
  EXPECT_NE(hand.numbers(), before);
  EXPECT_EQ(seen.removeDuplicates(), 0) << seen.join('\n').toStdString();
  EXPECT_EQ(hand.steps(), steps);
  const QStringList last = hand.numbers();
  hand.release(joint - QPoint(90, 0));
  EXPECT_EQ(hand.numbers(), last);
  EXPECT_EQ(hand.steps(), steps + 1);
}

TEST(Growing, ShowsItsLengthWhileItIsDrawn) {
  Drafter hand;
  light_the_fire(hand);
  const Position from = hand.ready().port.at;
  hand.press(hand.ring(hand.front(), hand.ready().ref));
  hand.glide(hand.beyond(hand.front(), heading_east, 1.5));
  ASSERT_TRUE(hand.document.in_preview());
  const Length length = hand.length_of_piece(hand.piece("bench_pipe").id);
  EXPECT_NEAR(in(length, metre), 1.5, 0.0251);
  const double end = in(from.x + length, millimetre) / 25.0;
  EXPECT_NEAR(end, std::round(end), 1e-6) << "its far end lies on the grid";
  EXPECT_EQ(hand.board().tool().card(), length_words(length, hand.board()));
  EXPECT_EQ(hand.steps(), 5);
}

TEST(Growing, RoundsACornerInOneStroke) {
  Drafter hand;
  light_the_fire(hand);
  const Metres from = metres(hand.ready().port.at);
  hand.drag(hand.ring(hand.plan(), hand.ready().ref), hand.place(hand.plan(), {from.x + 1.5, from.y + 1.0, from.z}));
  EXPECT_EQ(hand.steps(), 6);
  ASSERT_EQ(hand.count("bench_pipe"), 2u);
  EXPECT_EQ(hand.count("elbow_smooth"), 1u);
  const Metres to = metres(hand.ready().port.at);
  EXPECT_NEAR(to.x, from.x + 1.5, 0.026);
  EXPECT_NEAR(to.y, from.y + 1.0, 0.026);
}

TEST(Growing, ATypedNumberIsTheExactLength) {
  struct Case {
    UnitSystem units;
    const char* typed;
    double millimetres;
  };
  Drafter hand;
  light_the_fire(hand);
  for (const Case& c : {Case{UnitSystem::metric, "1234", 1234.0}, Case{UnitSystem::metric, "1.2 m", 1200.0},
                        Case{UnitSystem::metric, "6 ft 4 in", 1930.4}, Case{UnitSystem::imperial, "80", 2032.0},
                        Case{UnitSystem::imperial, "6' 4\"", 1930.4}, Case{UnitSystem::imperial, "900 mm", 900.0}}) {
    hand.document.set_units(c.units);
    hand.press(hand.ring(hand.front(), hand.ready().ref));
    const QPoint to = hand.beyond(hand.front(), heading_east, 0.8);
    hand.glide(to);
    hand.type(c.typed);
    EXPECT_TRUE(hand.front().length_entry_open());
    hand.key(Qt::Key_Return);
    hand.release(to);
    EXPECT_EQ(hand.steps(), 6) << c.typed;
    EXPECT_FALSE(hand.document.in_preview());
    EXPECT_NEAR(in(hand.length_of_piece(hand.piece("bench_pipe").id), millimetre), c.millimetres, 1e-6) << c.typed;
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    hand.board().focus_end(PortRef{hand.piece("manifold").id, "out"});
  }
}

TEST(Growing, ATypedLengthWaitsForEnterAfterTheMouseIsLetGo) {
  Drafter hand;
  light_the_fire(hand);
  hand.press(hand.ring(hand.front(), hand.ready().ref));
  const QPoint to = hand.beyond(hand.front(), heading_east, 0.8);
  hand.glide(to);
  hand.type("1");
  hand.release(to);
  hand.type("500");
  hand.key(Qt::Key_Return);
  EXPECT_NEAR(in(hand.length_of_piece(hand.piece("bench_pipe").id), millimetre), 1500.0, 1e-6);
  EXPECT_EQ(hand.steps(), 6);
}

TEST(Growing, NonsenseTypedIsSaidAndNothingIsLost) {
  Drafter hand;
  light_the_fire(hand);
  hand.press(hand.ring(hand.front(), hand.ready().ref));
  const QPoint to = hand.beyond(hand.front(), heading_east, 0.8);
  hand.glide(to);
  hand.type("12 bananas");
  hand.key(Qt::Key_Return);
  EXPECT_TRUE(hand.front().length_entry_open());
  EXPECT_TRUE(hand.desk().sentence().contains("bananas")) << hand.desk().sentence().toStdString();
  hand.key(Qt::Key_Escape);
  EXPECT_FALSE(hand.front().length_entry_open());
  hand.release(to);
  EXPECT_EQ(hand.steps(), 6) << "the drag itself still counts";
}

TEST(Growing, EscapeForgetsADragAndLeavesNoStep) {
  Drafter hand;
  light_the_fire(hand);
  const std::string before = hand.text();
  hand.press(hand.ring(hand.front(), hand.ready().ref));
  const QPoint to = hand.beyond(hand.front(), heading_east, 1.0);
  hand.glide(to);
  EXPECT_NE(hand.text(), before);
  hand.key(Qt::Key_Escape);
  EXPECT_EQ(hand.text(), before);
  hand.glide(to + QPoint(40, 0));
  hand.release(to + QPoint(40, 0));
  EXPECT_EQ(hand.text(), before);
  EXPECT_EQ(hand.steps(), 5);
}

TEST(SmartGuide, ShowsAnOpenEndThatTheMouseHasComeLevelWithInTheIsometricViewToo) {
  Drafter hand;
  light_the_fire(hand);
  // A pipe by itself, north of the path, with two open ends; its west end is 1.5 m east of the path's.
  const Position from = hand.ready().port.at;
  const OpenEnd end = hand.ready();
  const EditResult lone = place_piece(hand.document.design(), hand.document.library(), "bench_pipe",
                                      grid_point_near({from.x + 1.5 * metre, from.y + 1.0 * metre, from.z}), heading_east);
  ASSERT_TRUE(lone.design);
  hand.document.commit(*lone.design, "lone pipe");
  hand.board().focus_end(end.ref);
  Drafter::settle();
  hand.desk().zoom_to_fit();
  DeskView& view = hand.desk().isometric();
  const Landmarks landmarks(hand.document, end.ref.piece);
  const QColor ink = theme().inks.calm;
  const auto inked = [&view, &ink](const QPointF& a, const QPointF& b) {
    const QImage seen = view.grab().toImage();
    int found = 0;
    for (int i = 0; i <= 60; ++i) {
      const QPoint at = (a + (b - a) * (i / 60.0)).toPoint();
      if (seen.rect().contains(at) && std::abs(seen.pixelColor(at).hue() - ink.hue()) < 12 && seen.pixelColor(at).saturation() > 60) ++found;
    }
    return found;
  };
  hand.press(hand.ring(view, end.ref));
  hand.glide(hand.place(view, {in(from.x, metre) + 1.5, in(from.y, metre), in(from.z, metre)}));
  EXPECT_NEAR(in(hand.length_of_piece(hand.piece("bench_pipe", 1).id), metre), 1.5, 1e-6) << "snapped in line";
  const Metres far{in(from.x, metre) + 1.5, in(from.y, metre), in(from.z, metre)};
  const auto guides = landmarks.level_with(far, view.projection());
  const auto to_lone = std::find_if(guides.begin(), guides.end(), [](const Landmarks::Guide& guide) { return guide.to.open; });
  ASSERT_NE(to_lone, guides.end());
  EXPECT_NEAR(to_lone->to.at.y, far.y + 1.0, 1e-6);
  const QPointF here = view.camera().to_screen(view.projection().on_sheet(far));
  const QPointF there = view.camera().to_screen(view.projection().on_sheet(to_lone->to.at));
  EXPECT_GT(inked(here, there), 15) << "a dashed line joins them";
  hand.key(Qt::Key_Escape);
  EXPECT_LT(inked(here, there), 8);
  hand.release(hand.ring(view, end.ref));
}

TEST(Growing, BackToTheRingDrawsNothing) {
  Drafter hand;
  light_the_fire(hand);
  const std::string before = hand.text();
  const QPoint ring = hand.ring(hand.front(), hand.ready().ref);
  hand.press(ring);
  hand.glide(hand.beyond(hand.front(), heading_east, 1.0));
  hand.glide(ring);
  hand.release(ring);
  EXPECT_EQ(hand.text(), before);
  EXPECT_EQ(hand.steps(), 5);
}

}  // namespace
}  // namespace fluewright
