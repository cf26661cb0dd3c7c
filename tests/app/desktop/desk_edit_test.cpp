// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// A drawn path changed by hand: joints, pieces put in and taken out, the keyboard alone, and the link to the plot.

#include "app/desktop/desk/growth.hpp"
#include "desk_hand.hpp"

namespace fluewright {
namespace {

using test::Drafter;

/// The small bench, which has a run from east to west, a corner, a tee and a chimney.
struct BenchAtHand : Drafter {
  BenchAtHand() {
    open("bench_small_150");
    settle();
    before = text();
    numbers_before = numbers();
  }
  double run_length(const PieceId& id) { return in(length_of_piece(id), millimetre); }
  /// Every joint's two ports lie in one place, and the path is whole.
  void expect_connected() {
    EXPECT_TRUE(document.assessment().path.complete);
    for (const Finding& finding : document.assessment().findings) EXPECT_NE(finding.code, FindingCode::gap) << finding.piece;
  }
  /// One step was made, and undoing it brings everything back.
  void expect_one_step() {
    EXPECT_EQ(steps(), 1);
    EXPECT_FALSE(document.in_preview());
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(text(), before);
    EXPECT_EQ(numbers(), numbers_before);
  }
  QPoint middle_of(DeskView& view, const PieceId& id) {
    const DrawnPiece* drawn = view.drawing().piece(id);
    const QPolygonF& axis = drawn->lines.front().axis;
    return spot(view, view.camera().to_screen(0.5 * (axis.front() + axis.back())));
  }

  std::string before;
  QStringList numbers_before;
};

TEST(Joints, ADraggedJointStretchesItsNeighbours) {
  BenchAtHand hand;
  // The far corner of the bench: both of its runs lie east to west, so both grow.
  const QPoint joint = hand.port_spot(hand.plan(), {"p7", "in"});
  hand.press(joint);
  hand.glide(joint + QPoint(60, 0));
  EXPECT_TRUE(hand.board().tool().card().endsWith(QLatin1String("east"))) << hand.board().tool().card().toStdString();
  hand.release(joint + QPoint(60, 0));
  EXPECT_GT(hand.run_length("p6"), 2000.0);
  EXPECT_NEAR(hand.run_length("p6"), hand.run_length("p9"), 1e-6);
  hand.expect_connected();
  EXPECT_NE(hand.numbers(), hand.numbers_before);
  hand.expect_one_step();
}

TEST(Joints, EscapeForgetsTheDrag) {
  BenchAtHand hand;
  const QPoint joint = hand.port_spot(hand.plan(), {"p7", "in"});
  hand.press(joint);
  hand.glide(joint + QPoint(60, 0));
  EXPECT_NE(hand.text(), hand.before);
  hand.key(Qt::Key_Escape);
  EXPECT_EQ(hand.text(), hand.before);
  hand.release(joint + QPoint(60, 0));
  EXPECT_EQ(hand.text(), hand.before);
  EXPECT_EQ(hand.numbers(), hand.numbers_before);
  EXPECT_EQ(hand.steps(), 0);
}

TEST(Joints, AClickMovesNothing) {
  BenchAtHand hand;
  hand.click(hand.port_spot(hand.plan(), {"p7", "in"}));
  EXPECT_EQ(hand.steps(), 0);
  EXPECT_EQ(hand.text(), hand.before);
}

TEST(Pieces, WithShiftTheWholePathMoves) {
  BenchAtHand hand;
  const QPoint at = hand.middle_of(hand.plan(), "p6");
  hand.press(at, Qt::ShiftModifier);
  hand.glide(at + QPoint(0, 40), Qt::ShiftModifier);
  hand.release(at + QPoint(0, 40), Qt::ShiftModifier);
  const Design& design = hand.document.design();
  ASSERT_EQ(hand.steps(), 1);
  EXPECT_EQ(hand.numbers(), hand.numbers_before);
  const GridPoint first = design.pieces.front().at;
  EXPECT_LT(first.y, 0) << "southward";
  for (const Piece& piece : design.pieces) {
    const ReadResult old = read_design_text(hand.before, hand.document.library());
    EXPECT_EQ(piece.at.y - std::get<DesignDocument>(old).design.piece(piece.id)->at.y, first.y) << piece.id;
  }
  hand.expect_one_step();
}

TEST(Dropping, ATeeOnARunSplitsIt) {
  BenchAtHand hand;
  const double length = hand.run_length("p6");
  const Pressure margin = hand.document.assessment().worst_margin;
  const QPoint at = hand.middle_of(hand.plan(), "p6");
  hand.press(hand.row("tee"));
  hand.glide(at);
  EXPECT_TRUE(hand.document.in_preview());
  EXPECT_NE(hand.document.assessment().worst_margin, margin) << "its loss is in the numbers before it is let go";
  hand.release(at);
  ASSERT_EQ(hand.count("tee"), 1u);
  ASSERT_EQ(hand.count("bench_pipe"), 3u);
  hand.expect_connected();
  double pieces = hand.run_length(hand.piece("tee").id);
  for (std::size_t i = 0; i < 3; ++i) {
    const PieceId& id = hand.piece("bench_pipe", i).id;
    if (id != "p9") pieces += hand.run_length(id);
  }
  EXPECT_NEAR(pieces, length, 1e-6) << "the far end stays where it was";
  hand.expect_one_step();
}

TEST(Dropping, OutsideTheSheetPutsItBack) {
  BenchAtHand hand;
  hand.drag(hand.row("tee"), hand.spot(hand.rack(), {60.0, 30.0}));
  EXPECT_EQ(hand.text(), hand.before);
  EXPECT_EQ(hand.steps(), 0);
}

TEST(Dropping, APieceInHandGoesBackByEscape) {
  BenchAtHand hand;
  hand.click(hand.row("damper"));
  hand.glide(hand.middle_of(hand.plan(), "p6"));
  EXPECT_TRUE(hand.document.in_preview());
  hand.key(Qt::Key_Escape);
  EXPECT_EQ(hand.text(), hand.before);
  hand.glide(hand.middle_of(hand.plan(), "p9"));
  EXPECT_EQ(hand.text(), hand.before) << "the hand is empty";
  EXPECT_EQ(hand.steps(), 0);
}

TEST(Dropping, EscapeWhileTheMouseCarriesPutsItBackForGood) {
  BenchAtHand hand;
  hand.press(hand.row("damper"));
  hand.glide(hand.middle_of(hand.plan(), "p6"));
  EXPECT_TRUE(hand.document.in_preview());
  hand.key(Qt::Key_Escape);
  EXPECT_EQ(hand.text(), hand.before);
  hand.glide(hand.middle_of(hand.plan(), "p9"));
  hand.release(hand.middle_of(hand.plan(), "p9"));
  EXPECT_EQ(hand.text(), hand.before);
  EXPECT_EQ(hand.steps(), 0);
}

TEST(Dropping, RTurnsThePieceInHand) {
  BenchAtHand hand;
  hand.click(hand.row("tee"));
  hand.glide(hand.middle_of(hand.plan(), "p6"));
  const Turn first = hand.piece("tee").turn;
  hand.key(Qt::Key_R);
  EXPECT_NE(hand.piece("tee").turn, first);
  hand.click(hand.middle_of(hand.plan(), "p6"));
  hand.expect_connected();
  hand.expect_one_step();
}

TEST(Rack, FindsAPieceByItsNameAndShowsItsSymbol) {
  Drafter hand;
  hand.key(Qt::Key_1, Qt::ControlModifier);
  hand.type("riser");
  EXPECT_EQ(hand.rack().list().selected_type(), "heat_riser") << "not one that is merely about it";
  hand.key(Qt::Key_Escape);
  EXPECT_TRUE(hand.rack().search().text().isEmpty());
  hand.key(Qt::Key_Escape);
  EXPECT_TRUE(hand.plan().hasFocus() || hand.front().hasFocus());
  for (int i = 0; i < hand.rack().list().count(); ++i) {
    const QListWidgetItem* item = hand.rack().list().item(i);
    if (item->data(Qt::UserRole).isNull()) continue;
    const QImage symbol = item->data(Qt::DecorationRole).value<QPixmap>().toImage();
    QRect ink;
    for (int y = 0; y < symbol.height(); ++y) {
      for (int x = 0; x < symbol.width(); ++x) {
        if (qAlpha(symbol.pixel(x, y)) > 40) ink |= QRect(x, y, 1, 1);
      }
    }
    EXPECT_TRUE(ink.width() > 0.85 * symbol.width() || ink.height() > 0.85 * symbol.height()) << item->text().toStdString();
  }
}

TEST(Dropping, ADoubleClickPutsItAndLeavesTheHandEmpty) {
  Drafter hand;
  const QPoint row = hand.row("feed_tube");
  hand.click(row);
  QTest::mouseDClick(hand.window.windowHandle(), Qt::LeftButton, {}, row);
  EXPECT_EQ(hand.count("feed_tube"), 1u);
  hand.glide(hand.place(hand.plan(), {1.0, 0.5, 0.0}));
  EXPECT_EQ(hand.count("feed_tube"), 1u);
  EXPECT_EQ(hand.steps(), 1);
}

TEST(Keyboard, DrawsAPathWithoutTheMouse) {
  Drafter hand;
  const std::string nothing = hand.text();
  for (const char* name : {"feed t", "burn t", "heat r", "barrel", "manifold"}) hand.put_by_keys(name);
  ASSERT_EQ(hand.document.design().pieces.size(), 5u);
  hand.key(Qt::Key_2, Qt::ControlModifier);
  hand.board().focus_end(std::nullopt);
  hand.key(Qt::Key_Tab);
  ASSERT_TRUE(hand.board().focused_end());
  EXPECT_EQ(hand.board().focused_end()->piece, hand.piece("manifold").id);
  hand.key(Qt::Key_Right);
  EXPECT_TRUE(hand.document.in_preview());
  EXPECT_FALSE(hand.board().tool().card().isEmpty());
  hand.type("1750");
  hand.key(Qt::Key_Return);
  EXPECT_FALSE(hand.document.in_preview());
  EXPECT_NEAR(in(hand.length_of_piece(hand.piece("bench_pipe").id), millimetre), 1750.0, 1e-6);
  EXPECT_EQ(hand.steps(), 6);

  // Up with ten more grid steps than offered at first, the elbow put in by itself.
  hand.key(Qt::Key_PageUp);
  EXPECT_EQ(hand.count("elbow_smooth"), 1u);
  const PieceId chimney = hand.piece(hand.board().upright_type()).id;
  const Length offered = hand.length_of_piece(chimney);
  hand.key(Qt::Key_PageUp, Qt::ShiftModifier);
  EXPECT_NEAR(in(hand.length_of_piece(chimney) - offered, millimetre), 250.0, 1e-6);
  hand.key(Qt::Key_Return);
  EXPECT_EQ(hand.steps(), 7);

  // Enter on the open end goes to the rack; what is chosen there goes onto that end.
  hand.key(Qt::Key_Return);
  hand.type("rain");
  hand.key(Qt::Key_Return);
  EXPECT_EQ(hand.count("cap_rain"), 1u);
  EXPECT_TRUE(hand.document.assessment().path.complete);
  EXPECT_NE(hand.margin(), "–");

  hand.key(Qt::Key_2, Qt::ControlModifier);
  hand.document.select(hand.piece("cap_rain").id);
  hand.key(Qt::Key_Delete);
  EXPECT_EQ(hand.count("cap_rain"), 0u);
  EXPECT_EQ(hand.margin(), "–");
  hand.key(Qt::Key_Z, Qt::ControlModifier);
  EXPECT_NE(hand.margin(), "–");
  while (hand.steps() > 0) hand.key(Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(hand.text(), nothing);
}

TEST(Keyboard, AFeedStandsHighEnoughForItsTunnel) {
  Drafter hand;
  hand.put_by_keys("feed t");
  EXPECT_NEAR(in(hand.ready().port.at.z, millimetre), 150.0, 1e-6);
}

TEST(Paper, StaysWhereItIsWhileEverythingIsInSight) {
  Drafter hand;
  const double scale = hand.front().camera().scale();
  const QPointF centre = hand.front().camera().centre();
  hand.carry("feed_tube", hand.place(hand.front(), {0.0, 0.0, 0.5}));
  Drafter::settle();
  EXPECT_EQ(hand.front().camera().scale(), scale);
  EXPECT_EQ(hand.front().camera().centre(), centre);
}

TEST(Keyboard, EscapeForgetsWhatTheArrowsBegan) {
  Drafter hand;
  for (const char* name : {"feed t", "burn t"}) hand.put_by_keys(name);
  const std::string before = hand.text();
  hand.key(Qt::Key_2, Qt::ControlModifier);
  ASSERT_TRUE(hand.board().focused_end());
  hand.key(Qt::Key_Right);
  EXPECT_NE(hand.text(), before);
  hand.key(Qt::Key_Escape);
  EXPECT_EQ(hand.text(), before);
  EXPECT_EQ(hand.steps(), 2);
}

TEST(Keyboard, NudgesBecomeOneStep) {
  BenchAtHand hand;
  hand.key(Qt::Key_2, Qt::ControlModifier);
  hand.document.select("p7");
  for (int i = 0; i < 4; ++i) hand.key(Qt::Key_Right, Qt::AltModifier);
  EXPECT_NEAR(hand.run_length("p6"), 2100.0, 1e-6);
  hand.expect_connected();
  hand.expect_one_step();
}

TEST(Keyboard, WalksAlongThePathWithTheGas) {
  BenchAtHand hand;
  hand.key(Qt::Key_2, Qt::ControlModifier);
  for (const char* id : {"p1", "p2", "p3", "p4"}) {
    hand.key(Qt::Key_Right);
    EXPECT_EQ(hand.document.selected(), id);
  }
  hand.key(Qt::Key_Left);
  EXPECT_EQ(hand.document.selected(), "p3");
}

TEST(Pointing, AtAPieceTellsThePlotAndPointingAtThePlotLightsTheDesk) {
  BenchAtHand hand;
  hand.glide(hand.middle_of(hand.plan(), "p9"));
  EXPECT_EQ(hand.document.pointed().piece, "p9");
  ASSERT_TRUE(hand.document.pointed().s);
  auto* plot = hand.find<LinePlot>("pressure_plot");
  ASSERT_TRUE(plot->marked());
  EXPECT_NEAR(*plot->marked(), in(*hand.document.pointed().s, metre), 1e-9);

  const QImage dark = hand.plan().grab().toImage();
  const PlotPiece& first = plot->picture().pieces.at(5);
  QTest::mouseMove(hand.window.windowHandle(), plot->mapTo(&hand.window, plot->place_of(0.5 * (first.from + first.to))));
  EXPECT_EQ(hand.document.pointed().piece, first.id);
  EXPECT_NE(first.id, "p9");
  // The piece's surroundings in the plan change their colour: it glows.
  const QPoint beside = hand.middle_of(hand.plan(), first.id) - hand.plan().mapTo(&hand.window, QPoint());
  const QImage lit = hand.plan().grab().toImage();
  const QRect around(beside - QPoint(20, 20), QSize(40, 40));
  EXPECT_NE(lit.copy(around), dark.copy(around)) << first.id;
}

TEST(Reading, ANewerVersionsDesignIsLookedAtAndNotChanged) {
  BenchAtHand hand;
  DesignDocument newer;
  newer.design = hand.document.design();
  newer.read_only = true;
  newer.file_version = current_file_version + 1;
  hand.document.adopt(newer, {});
  const QPoint joint = hand.port_spot(hand.plan(), {"p7", "in"});
  hand.drag(joint, joint + QPoint(60, 0));
  hand.carry("tee", hand.middle_of(hand.plan(), "p6"));
  hand.document.select("p15");
  hand.key(Qt::Key_2, Qt::ControlModifier);
  hand.key(Qt::Key_Delete);
  EXPECT_EQ(hand.document.design(), newer.design);
  EXPECT_EQ(hand.steps(), 0);
  hand.click(hand.middle_of(hand.plan(), "p6"));
  EXPECT_EQ(hand.document.selected(), "p6");
}

}  // namespace
}  // namespace fluewright
