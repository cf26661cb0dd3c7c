// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Several pieces at once, the bench as a whole, one piece for another, and the path check, by mouse and by keys.

#include "app/desktop/answer/findings_list.hpp"
#include "app/desktop/desk/desk_menu.hpp"
#include "desk_hand.hpp"
#include "engine/layout/house.hpp"

#include <QClipboard>
#include <QDialog>
#include <QMenu>
#include <QSpinBox>

namespace fluewright {
namespace {

using test::Drafter;

struct BenchAtHand : Drafter {
  BenchAtHand() {
    open("bench_small_150");
    settle();
    before = text();
  }
  double run_length(const PieceId& id) { return in(length_of_piece(id), millimetre); }
  QPoint middle_of(DeskView& view, const PieceId& id) {
    const DrawnPiece* drawn = view.drawing().piece(id);
    const QPolygonF& axis = drawn->lines.front().axis;
    return spot(view, view.camera().to_screen(0.5 * (axis.front() + axis.back())));
  }
  std::size_t findings(FindingCode code) {
    std::size_t found = 0;
    for (const Finding& finding : document.assessment().findings) found += finding.code == code ? 1U : 0U;
    return found;
  }
  void expect_undone_in_one() {
    EXPECT_EQ(steps(), 1);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(text(), before);
  }
  QTemporaryDir unused;
  std::string before;
};

TEST(SeveralPieces, ControlAndClickAddsAndTakesAway) {
  BenchAtHand hand;
  hand.click(hand.middle_of(hand.plan(), "p6"));
  const QPoint other = hand.middle_of(hand.plan(), "p9");
  for (const std::size_t selected : {2U, 1U}) {
    hand.press(other, Qt::ControlModifier);
    hand.release(other, Qt::ControlModifier);
    EXPECT_EQ(hand.document.selection().size(), selected);
  }
  EXPECT_EQ(hand.text(), hand.before);
}

TEST(SeveralPieces, AFrameWithShiftSelectsWhatLiesInIt) {
  BenchAtHand hand;
  // Around the far end of the bench: both elbows, no run.
  const QPoint from = hand.place(hand.plan(), {3.05, -0.6, 0.0});
  const QPoint to = hand.place(hand.plan(), {3.9, 0.9, 0.0});
  hand.press(from, Qt::ShiftModifier);
  hand.glide(to, Qt::ShiftModifier);
  hand.release(to, Qt::ShiftModifier);
  EXPECT_TRUE(hand.document.is_selected("p7"));
  EXPECT_TRUE(hand.document.is_selected("p8"));
  EXPECT_FALSE(hand.document.is_selected("p6"));
  EXPECT_EQ(hand.text(), hand.before);
}

TEST(SeveralPieces, DraggedAlongTheirRunsTheyStayConnected) {
  BenchAtHand hand;
  hand.document.select_set({"p7", "p8"});
  const QPoint at = hand.middle_of(hand.plan(), "p7");
  hand.drag(at, at + QPoint(50, 0));
  EXPECT_GT(hand.run_length("p6"), 2000.0);
  EXPECT_NEAR(hand.run_length("p6"), hand.run_length("p9"), 1e-6);
  EXPECT_TRUE(hand.document.assessment().path.complete);
  hand.expect_undone_in_one();
}

TEST(SeveralPieces, AreSelectedAllCopiedAndPastedByKeys) {
  BenchAtHand hand;
  hand.desk().setFocus();
  hand.key(Qt::Key_A, Qt::ControlModifier);
  EXPECT_EQ(hand.document.selection().size(), hand.document.design().pieces.size());
  const std::size_t pieces = hand.document.design().pieces.size();
  hand.key(Qt::Key_C, Qt::ControlModifier);
  hand.key(Qt::Key_V, Qt::ControlModifier);
  EXPECT_EQ(hand.document.design().pieces.size(), 2 * pieces);
  EXPECT_EQ(hand.document.selection().size(), pieces) << "what was pasted is selected";
  EXPECT_EQ(hand.findings(FindingCode::clash), 0U) << "the copy lies clear";
  hand.expect_undone_in_one();
}

TEST(AFan, TakesItsOwnDataSheetAlongToAnotherDesign) {
  BenchAtHand hand;
  Design design = hand.document.design();
  const EditResult placed = place_piece(design, hand.document.library(), "fan_inline", grid_point_near({{}, 3.0 * metre, {}}), heading_east);
  ASSERT_TRUE(placed.design);
  design = *placed.design;
  FanSheet own = hand.document.library().fans.front();
  own.id = "mine";
  own.name = "A fan of one's own";
  design.fans.push_back(own);
  design.piece(placed.touched)->fields["fan"] = own.id;
  hand.document.commit(design, "fan");
  hand.desk().setFocus();
  hand.document.select(placed.touched);
  hand.key(Qt::Key_C, Qt::ControlModifier);
  hand.document.adopt({}, {});
  hand.desk().setFocus();
  hand.key(Qt::Key_V, Qt::ControlModifier);
  ASSERT_EQ(hand.document.design().pieces.size(), 1U);
  ASSERT_EQ(hand.document.design().fans.size(), 1U);
  EXPECT_EQ(hand.document.design().fans.front(), own);
  EXPECT_EQ(hand.findings(FindingCode::unknown_fan), 0U);
}

TEST(OnePiece, IsTurnedEndForEndByKey) {
  BenchAtHand hand;
  // A taper has ends that differ.
  const EditResult placed = place_piece(hand.document.design(), hand.document.library(), "reducer", grid_point_near({{}, 3.0 * metre, {}}), heading_east);
  ASSERT_TRUE(placed.design);
  hand.document.commit(*placed.design, "reducer");
  hand.desk().setFocus();
  hand.document.select(placed.touched);
  const auto heading = [&] { return in(hand.document.design().piece(placed.touched)->heading.azimuth, degree); };
  const double before = heading();
  hand.key(Qt::Key_J, Qt::ControlModifier);
  EXPECT_NEAR(std::abs(std::remainder(heading() - before, 360.0)), 180.0, 1e-6);
  hand.key(Qt::Key_J, Qt::ControlModifier);
  EXPECT_NEAR(std::remainder(heading() - before, 360.0), 0.0, 1e-6);
}

TEST(SeveralPieces, MirroredTwiceAndRotatedFourTimesByKeysAreAsBefore) {
  BenchAtHand hand;
  hand.desk().setFocus();
  hand.key(Qt::Key_A, Qt::ControlModifier);
  for (const auto& [key, modifiers, times] :
       {std::tuple{Qt::Key_M, Qt::KeyboardModifiers(Qt::ControlModifier), 2},
        std::tuple{Qt::Key_M, Qt::ControlModifier | Qt::ShiftModifier, 2}, std::tuple{Qt::Key_L, Qt::KeyboardModifiers(Qt::ControlModifier), 4}}) {
    for (int i = 0; i < times; ++i) {
      if (i > 0) EXPECT_NE(hand.text(), hand.before) << "the key did nothing";
      hand.key(key, modifiers);
      EXPECT_TRUE(hand.document.assessment().path.complete) << "a mirrored path is still a path";
      EXPECT_EQ(hand.document.selection().size(), hand.document.design().pieces.size());
    }
    EXPECT_EQ(hand.text(), hand.before);
  }
}

TEST(SeveralPieces, DeleteTakesAllOfThemOut) {
  BenchAtHand hand;
  hand.desk().setFocus();
  hand.document.select_set({"p7", "p8"});
  hand.key(Qt::Key_Delete);
  EXPECT_EQ(hand.document.design().piece("p7"), nullptr);
  EXPECT_EQ(hand.document.design().piece("p8"), nullptr);
  hand.expect_undone_in_one();
}

TEST(TheBench, GetsLongerWithItsReturnRunByControlDragAndByKeys) {
  BenchAtHand hand;
  const QPoint at = hand.middle_of(hand.plan(), "p7");
  hand.press(at);
  hand.glide(at + QPoint(60, 0), Qt::ControlModifier);
  hand.release(at + QPoint(60, 0), Qt::ControlModifier);
  EXPECT_GT(hand.run_length("p6"), 2000.0);
  EXPECT_NEAR(hand.run_length("p6"), hand.run_length("p9"), 1e-6);
  hand.expect_undone_in_one();
  hand.desk().setFocus();
  hand.document.select("p9");
  for (int i = 0; i < 4; ++i) hand.key(Qt::Key_Right, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_NEAR(hand.run_length("p6"), 2100.0, 1e-6);
  EXPECT_NEAR(hand.run_length("p9"), 2100.0, 1e-6);
  hand.expect_undone_in_one();
}

TEST(Passes, AreDrawnFromTheOpenEndByTheirDialog) {
  Drafter hand;
  hand.carry("feed_tube", hand.place(hand.front(), {0.0, 0.0, 0.8}));
  for (const char* name : {"Burn tunnel", "Heat riser", "Barrel"}) hand.put_by_keys(name);
  hand.put_by_keys("Pipe in the bench");
  const std::size_t before = hand.document.design().pieces.size();
  const int steps = hand.steps();
  test::when_asked<QDialog>([&hand, before](QDialog& dialog) {
    dialog.findChild<QSpinBox*>()->setValue(4);
    EXPECT_TRUE(hand.document.in_preview());
    EXPECT_GT(hand.document.design().pieces.size(), before + 8);
    QTest::mouseClick(dialog.findChild<QPushButton*>("draw"), Qt::LeftButton);
  });
  hand.key(Qt::Key_G, Qt::ControlModifier);
  EXPECT_EQ(hand.document.design().pieces.size(), before + 9) << "three turns of two bends and a run between, or none";
  EXPECT_EQ(hand.steps(), steps + 1);
  EXPECT_EQ(hand.board().ends().open.size(), 1U);
}

TEST(OnePiece, IsReplacedFromTheMenuByAnotherThatFits) {
  BenchAtHand hand;
  hand.document.select("p11");
  QMenu menu;
  fill_replace_menu(menu, hand.desk().verbs());
  QAction* insulated = nullptr;
  for (QAction* action : menu.actions()) {
    if (action->text().contains("insulated", Qt::CaseInsensitive)) insulated = action;
  }
  ASSERT_NE(insulated, nullptr);
  insulated->trigger();
  EXPECT_NE(hand.document.design().piece("p11")->type, "stovepipe");
  EXPECT_TRUE(hand.document.assessment().path.complete);
  hand.expect_undone_in_one();
}

TEST(OnePiece, AReducerIsOfferedWhereBoresDifferAndOnlyThere) {
  BenchAtHand hand;
  hand.document.select("p12");
  EXPECT_FALSE(hand.desk().verbs().joint_without_reducer());
  Design wider = hand.document.design();
  for (const char* id : {"p12", "p13", "p14", "p15"}) wider.piece(id)->fields["bore"] = 200.0 * millimetre;
  hand.document.commit(wider, "wider");
  ASSERT_TRUE(hand.desk().verbs().joint_without_reducer());
  hand.desk().setFocus();
  hand.key(Qt::Key_K, Qt::ControlModifier);
  EXPECT_EQ(hand.count("reducer"), 1U);
  EXPECT_EQ(hand.findings(FindingCode::bore_mismatch), 0U);
  EXPECT_TRUE(hand.document.assessment().path.complete);
}

TEST(AJoint, IsPulledApartAndHealedByKeys) {
  BenchAtHand hand;
  hand.desk().setFocus();
  hand.document.select("p6");
  hand.key(Qt::Key_B, Qt::ControlModifier);
  EXPECT_EQ(hand.board().ends().open.size(), 2U);
  EXPECT_FALSE(hand.document.assessment().path.complete);
  hand.key(Qt::Key_H, Qt::ControlModifier);
  EXPECT_TRUE(hand.document.assessment().path.complete);
  EXPECT_TRUE(hand.board().ends().open.empty());
}

TEST(ThePathCheck, ListsAClashAndAClickGoesThere) {
  BenchAtHand hand;
  Design design = hand.document.design();
  const EditResult across = place_piece(design, hand.document.library(), "stovepipe", grid_point_near({2.0 * metre, -0.5 * metre, 0.25 * metre}), heading_north);
  hand.document.commit(*across.design, "across");
  ASSERT_EQ(hand.findings(FindingCode::clash), 2U) << "it crosses the run out and the run back";
  hand.plan().camera().set_centre({50.0, 50.0});
  auto* list = hand.find<FindingsList>("findings");
  QListWidgetItem* line = nullptr;
  for (int i = 0; i < list->count(); ++i) {
    if (list->item(i)->text().contains("same place")) line = list->item(i);
  }
  ASSERT_NE(line, nullptr);
  list->setFocus();
  list->setCurrentItem(line);
  QTest::keyClick(list, Qt::Key_Return);
  EXPECT_FALSE(hand.document.selected().empty());
  EXPECT_TRUE(hand.plan().camera().in_sight().contains(hand.plan().drawing().piece(hand.document.selected())->bounds.center()));
}

TEST(AHouse, DrawnAroundThePathShowsThePipeThatGoesThroughItsRoof) {
  BenchAtHand hand;
  Design design = hand.document.design();
  design.building = house_around(hand.document.geometries(), 1.0 * metre);
  hand.document.commit(design, "house");
  // The demo has its passage in the roof; a plain pipe there is found.
  const std::size_t with_passage = hand.findings(FindingCode::through_house);
  design.piece("p13")->type = "stovepipe";
  hand.document.commit(design, "pipe");
  EXPECT_GT(hand.findings(FindingCode::through_house), with_passage);
}

TEST(TheRolledOutElevation, ShowsThePathOnwardsAndGrowsFromItsEnd) {
  BenchAtHand hand;
  hand.desk().look_from(ViewKind::unrolled);
  Drafter::settle();
  double last = -1.0;
  for (const char* id : {"p6", "p7", "p8", "p9"}) {
    const DrawnPiece* drawn = hand.front().drawing().piece(id);
    const double middle = drawn->bounds.center().x();
    EXPECT_GT(middle, last) << id << ": what comes later stands farther on";
    last = middle;
  }
  // Take the cap away and draw on upwards from the stack, in this view.
  hand.document.commit(*remove_piece(hand.document.design(), hand.document.library(), "p15").design, "cap off");
  const auto& open = hand.board().ends().open;
  ASSERT_EQ(open.size(), 1U);
  hand.desk().zoom_to_fit();
  Drafter::settle();
  const QPoint ring = hand.ring(hand.front(), open.front().ref);
  const QPoint from = hand.port_spot(hand.front(), open.front().ref);
  const double before = in(open.front().port.at.z, metre);
  const QPoint to = from - QPoint(0, 60);
  const double pulled = 60.0 / hand.front().camera().scale();
  hand.drag(ring, to);
  ASSERT_EQ(hand.board().ends().open.size(), 1U);
  EXPECT_NEAR(in(hand.board().ends().open.front().port.at.z, metre) - before, pulled, 0.1);
}

TEST(AStarter, IsBuiltByItsQuestionsAndLiesOnTheDeskReadyToBeEdited) {
  Drafter hand;
  test::when_asked<QDialog>([](QDialog& dialog) {
    EXPECT_EQ(dialog.objectName(), "starter");
    QTest::keyClick(&dialog, Qt::Key_Return);
  });
  hand.key(Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_TRUE(hand.document.assessment().path.complete);
  EXPECT_TRUE(hand.document.modified());
  EXPECT_GT(hand.document.design().pieces.size(), 12U);
}

}  // namespace
}  // namespace fluewright
