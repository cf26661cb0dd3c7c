// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Thousands of gestures without sense: whatever a hand does at the desk, what stands there afterwards is a connected
// model or an honest list of gaps, and undo leads back to the start to the byte.
//   FLUEWRIGHT_GESTURES=10000 ctest -R Gestures     as many as one likes; with every run of the tests some hundreds
//   FLUEWRIGHT_GESTURE_SEED=7                       another hand

#include "desk_hand.hpp"

#include <QContextMenuEvent>
#include <QDialog>
#include <QMenu>
#include <QWheelEvent>

#include <iostream>
#include <iterator>
#include <random>
#include <set>

namespace fluewright {
namespace {

using test::Drafter;

/// A hand that knows nothing; the same one for the same seed. Lists, menus and dialogs that it opens it answers as blindly.
class WildHand {
 public:
  WildHand(Drafter& desk, unsigned seed) : desk_{desk}, random_{seed} {
    desk_.steps_of_a_glide = 2;
    watch();
  }

  /// Armed anew before each answer: an answer may open the next dialog.
  void watch() {
    QTimer::singleShot(1, &watched_, [this] {
      watch();
      answer();
    });
  }
  /// What is open on top of the window is chosen from, accepted or sent away.
  void answer() {
    if (QWidget* popup = QApplication::activePopupWidget()) {
      for (int down = pick(6); down > 0; --down) QTest::keyClick(popup, Qt::Key_Down);
      QTest::keyClick(popup, pick(2) == 0 ? Qt::Key_Escape : Qt::Key_Return);
      if (QApplication::activePopupWidget() == popup) popup->close();
    } else if (auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget())) {
      ++dialogs_;
      pick(2) == 0 ? dialog->reject() : dialog->accept();
    }
  }
  [[nodiscard]] int dialogs() const { return dialogs_; }

  void gesture() {
    while (QApplication::activePopupWidget() != nullptr) answer();
    switch (pick(15)) {
      case 0: case 1: case 2: return drag(Qt::NoModifier);
      case 3: return drag(Qt::ShiftModifier);
      case 4: return drag(Qt::ControlModifier);
      case 5: return drag_from_end();
      case 6: return drag_from_joint();
      case 7: case 8: return key();
      case 9: return shortcut();
      case 10: return put_from_rack();
      case 11: return wheel();
      case 12: return desk_.click(anywhere(view()));
      case 13: return menu();
      default: return half_a_gesture();
    }
  }

 private:
  /// A view that has been pushed together is no pixel wide.
  int pick(int below) { return static_cast<int>(random_() % static_cast<unsigned>(std::max(1, below))); }
  DeskView& view() {
    DeskView* views[] = {&desk_.plan(), &desk_.front(), &desk_.desk().isometric()};
    return *views[pick(3)];
  }
  QPoint anywhere(DeskView& in) { return desk_.spot(in, QPointF(pick(in.width()), pick(in.height()))); }

  void drag(Qt::KeyboardModifiers keys) {
    DeskView& in = view();
    stroke(anywhere(in), anywhere(in), keys);
  }
  void stroke(QPoint from, QPoint to, Qt::KeyboardModifiers keys = {}) {
    desk_.press(from, keys);
    if (pick(5) == 0) desk_.type(QString::number(pick(3000)));
    desk_.glide(to, keys);
    if (pick(6) == 0) desk_.key(Qt::Key_Escape);
    desk_.release(to, keys);
  }
  void drag_from_end() {
    const auto& open = desk_.board().ends().open;
    if (open.empty()) return;
    DeskView& in = view();
    const DrawnPort* port = in.drawing().port(open[static_cast<std::size_t>(pick(static_cast<int>(open.size())))].ref);
    if (port == nullptr) return;
    const QPoint from = desk_.spot(in, handle_of(*port, in.camera()));
    if (!desk_.window.rect().contains(from)) return;
    stroke(from, from + QPoint(pick(240) - 120, pick(240) - 120));
  }
  void drag_from_joint() {
    const auto& joints = desk_.document.design().joints;
    if (joints.empty()) return;
    DeskView& in = view();
    const DrawnPort* port = in.drawing().port(joints[static_cast<std::size_t>(pick(static_cast<int>(joints.size())))].a);
    if (port == nullptr) return;
    const QPoint from = desk_.spot(in, in.camera().to_screen(port->at));
    if (!in.rect().translated(in.mapTo(&desk_.window, QPoint())).contains(from)) return;
    stroke(from, from + QPoint(pick(120) - 60, pick(120) - 60), pick(3) == 0 ? Qt::ControlModifier : Qt::NoModifier);
  }
  void key() {
    static constexpr Qt::Key keys[] = {Qt::Key_Left, Qt::Key_Right, Qt::Key_Up, Qt::Key_Down, Qt::Key_PageUp, Qt::Key_PageDown,
                                       Qt::Key_Return, Qt::Key_Escape, Qt::Key_Delete, Qt::Key_R, Qt::Key_Tab, Qt::Key_5,
                                       Qt::Key_0, Qt::Key_Period, Qt::Key_Plus, Qt::Key_Minus, Qt::Key_F};
    static constexpr Qt::KeyboardModifiers with[] = {Qt::NoModifier, Qt::NoModifier, Qt::ShiftModifier, Qt::AltModifier};
    if (pick(3) == 0) desk_.desk().setFocus();
    desk_.key(keys[pick(std::size(keys))], with[pick(4)]);
  }
  void shortcut() {
    struct Shortcut {
      Qt::Key key;
      Qt::KeyboardModifiers with;
    };
    static const Shortcut shortcuts[] = {{Qt::Key_Z, Qt::ControlModifier},
                                         {Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier},
                                         {Qt::Key_A, Qt::ControlModifier},
                                         {Qt::Key_C, Qt::ControlModifier},
                                         {Qt::Key_V, Qt::ControlModifier},
                                         {Qt::Key_X, Qt::ControlModifier},
                                         {Qt::Key_M, Qt::ControlModifier},
                                         {Qt::Key_M, Qt::ControlModifier | Qt::ShiftModifier},
                                         {Qt::Key_L, Qt::ControlModifier},
                                         {Qt::Key_J, Qt::ControlModifier},
                                         {Qt::Key_K, Qt::ControlModifier},
                                         {Qt::Key_B, Qt::ControlModifier},
                                         {Qt::Key_H, Qt::ControlModifier},
                                         {Qt::Key_Right, Qt::ControlModifier | Qt::ShiftModifier},
                                         {Qt::Key_Left, Qt::ControlModifier | Qt::ShiftModifier},
                                         {Qt::Key_F6, Qt::ControlModifier},
                                         {Qt::Key_F6, Qt::NoModifier},
                                         {Qt::Key_U, Qt::ControlModifier},
                                         {Qt::Key_I, Qt::ControlModifier},
                                         {Qt::Key_G, Qt::ControlModifier},
                                         {Qt::Key_H, Qt::ControlModifier | Qt::ShiftModifier},
                                         {Qt::Key_D, Qt::ControlModifier},
                                         {Qt::Key_F1, Qt::ShiftModifier},
                                         {Qt::Key_F7, Qt::NoModifier},
                                         {Qt::Key_0, Qt::ControlModifier}};
    const Shortcut& chosen = shortcuts[pick(std::size(shortcuts))];
    // What is copied doubles what is there: a desk of thousands of pieces would only test patience.
    const bool grows = chosen.key == Qt::Key_V || (chosen.key == Qt::Key_F6 && chosen.with != Qt::NoModifier);
    if (grows && (desk_.document.design().pieces.size() > 25 || desk_.document.variant_count() > 3)) return;
    desk_.key(chosen.key, chosen.with);
  }
  void put_from_rack() {
    const auto& types = desk_.document.library().piece_types;
    const std::string& type = types[static_cast<std::size_t>(pick(static_cast<int>(types.size())))].id;
    if (desk_.document.design().pieces.size() > 60) return;
    desk_.drag(desk_.row(type), anywhere(view()));
  }
  void wheel() {
    DeskView& in = view();
    const QPointF at(pick(in.width()), pick(in.height()));
    QWheelEvent event(at, in.mapToGlobal(at), {}, {0, pick(2) == 0 ? 120 : -120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(&in, &event);
  }
  void menu() {
    DeskView& in = view();
    const QPoint at(pick(in.width()), pick(in.height()));
    QContextMenuEvent event(QContextMenuEvent::Mouse, at, in.mapToGlobal(at));
    QApplication::sendEvent(&in, &event);
  }
  void half_a_gesture() {
    // Pressed in one view, let go in another, or pressed twice.
    const QPoint from = anywhere(view());
    desk_.press(from);
    desk_.glide(anywhere(view()));
    if (pick(2) == 0) desk_.press(anywhere(view()));
    desk_.release(anywhere(view()));
  }

  Drafter& desk_;
  std::mt19937 random_;
  QObject watched_;
  int dialogs_ = 0;
};

int asked(const char* variable, int otherwise) {
  bool wanted = false;
  const int number = qEnvironmentVariableIntValue(variable, &wanted);
  return wanted ? number : otherwise;
}

struct Calm : Drafter {
  void let_go_of_all() {
    desk().setFocus();
    for (int escape = 0; escape < 3; ++escape) key(Qt::Key_Escape);
    QApplication::processEvents();
  }
};

/// Every joint's ports meet or the findings say that they do not; no id twice; all values can be read back.
void expect_honest(Drafter& hand) {
  const Design& design = hand.document.design();
  std::set<std::string> ids;
  for (const Piece& piece : design.pieces) EXPECT_TRUE(ids.insert(piece.id).second) << piece.id;
  const auto says_gap = [&hand](const Joint& joint) {
    for (const Finding& finding : hand.document.assessment().findings) {
      if (finding.code == FindingCode::gap && (finding.piece == joint.a.piece || finding.piece == joint.b.piece)) return true;
    }
    return false;
  };
  const auto port = [&](const PortRef& ref) -> const Port* {
    for (std::size_t i = 0; i < design.pieces.size(); ++i) {
      if (design.pieces[i].id == ref.piece) return hand.document.geometries()[i].port(ref.port);
    }
    return nullptr;
  };
  EXPECT_TRUE(hand.document.assessment().path.complete || !hand.document.assessment().findings.empty());
  for (const Joint& joint : design.joints) {
    const Port* a = port(joint.a);
    const Port* b = port(joint.b);
    ASSERT_TRUE(a != nullptr && b != nullptr) << joint.a.piece << ' ' << joint.b.piece;
    if (distance(a->at, b->at) > 1.0 * millimetre) {
      EXPECT_TRUE(says_gap(joint)) << joint.a.piece << ' ' << joint.b.piece;
    }
  }
  EXPECT_TRUE(std::holds_alternative<DesignDocument>(read_design_text(write_design_text(hand.document.file(), hand.document.library()), hand.document.library())));
}

TEST(GesturesWithoutSense, LeaveAConnectedModelOrAnHonestListOfGapsAndUndoLeadsBack) {
  Calm hand;
  hand.open("bench_small_150");
  Drafter::settle();
  const std::string before = write_design_text(hand.document.file(), hand.document.library());
  constexpr int in_every_run = 700;
  const int gestures = asked("FLUEWRIGHT_GESTURES", in_every_run);
  {
    WildHand wild(hand, static_cast<unsigned>(asked("FLUEWRIGHT_GESTURE_SEED", 20260501)));
    for (int i = 0; i < gestures && !testing::Test::HasFailure(); ++i) {
      SCOPED_TRACE("gesture " + std::to_string(i));
      wild.gesture();
      if (i % 100 == 99) {
        hand.let_go_of_all();
        expect_honest(hand);
      }
    }
    std::cerr << hand.steps() << " steps, " << hand.document.design().pieces.size() << " pieces, "
              << hand.document.variant_count() << " variants, " << wild.dialogs() << " dialogs\n";
  }
  hand.let_go_of_all();
  EXPECT_FALSE(hand.document.in_preview());
  expect_honest(hand);
  EXPECT_GT(hand.steps(), gestures / 40) << "the storm should have done something";
  hand.document.undo_stack().setIndex(0);
  hand.document.change_over(0);
  EXPECT_EQ(write_design_text(hand.document.file(), hand.document.library()), before);
}

}  // namespace
}  // namespace fluewright
