// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A hand at the drawing desk. Mouse and keys go in at the window, as the display server hands them over, so who gets
// them, who grabs them and which shortcut comes first is decided as it is for a person.

#include "app/desktop/desk/desk_widget.hpp"
#include "app/desktop/rack/rack.hpp"
#include "app/desktop/rack/rack_list.hpp"
#include "panels_window.hpp"

#include <QWindow>

#include <algorithm>

namespace fluewright::test {

struct Drafter : Desk {
  Drafter() {
    QTest::mouseClick(find<QPushButton>("start_new"), Qt::LeftButton);
    settle();
  }

  DeskWidget& desk() { return *window.findChild<DeskWidget*>(); }
  Rack& rack() { return *window.findChild<Rack*>(); }
  Board& board() { return desk().board(); }
  DeskView& front() { return desk().elevation(); }
  DeskView& plan() { return desk().plan(); }

  /// Layouts and the first fit take a turn or two of the event loop.
  static void settle() { QTest::qWait(20); }

  QPoint spot(const QWidget& widget, QPointF pixel) const { return widget.mapTo(&window, pixel.toPoint()); }
  void press(QPoint at, Qt::KeyboardModifiers keys = {}) {
    glide(at);
    QTest::mousePress(window.windowHandle(), Qt::LeftButton, keys, at);
  }
  void release(QPoint at, Qt::KeyboardModifiers keys = {}) {
    QTest::mouseRelease(window.windowHandle(), Qt::LeftButton, keys, at);
    here_ = at;
  }
  /// Moves in small steps, as a mouse reports them.
  void glide(QPoint to, Qt::KeyboardModifiers keys = {}) {
    const QPoint from = here_;
    for (int i = 1; i <= steps_of_a_glide; ++i) {
      QTest::mouseEvent(QTest::MouseMove, window.windowHandle(), Qt::NoButton, keys, from + (to - from) * i / steps_of_a_glide);
    }
    here_ = to;
  }
  int steps_of_a_glide = 6;
  void click(QPoint at) {
    press(at);
    release(at);
  }
  void drag(QPoint from, QPoint to) {
    press(from);
    glide(to);
    release(to);
  }
  void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) { QTest::keyClick(window.windowHandle(), key, modifiers); }
  void type(const QString& text) {
    for (const QChar letter : text) QTest::keyClick(window.windowHandle(), letter.toLatin1());
  }

  /// Where a piece's row is on the rack, scrolled into sight.
  QPoint row(const std::string& type) {
    RackList& list = rack().list();
    for (int i = 0; i < list.count(); ++i) {
      if (list.item(i)->data(Qt::UserRole).toString().toStdString() != type) continue;
      list.scrollToItem(list.item(i), QAbstractItemView::PositionAtCenter);
      return spot(*list.viewport(), list.visualItemRect(list.item(i)).center());
    }
    ADD_FAILURE() << "not on the rack: " << type;
    return {};
  }

  /// Pixel of a port's ring in a view.
  QPoint ring(DeskView& view, const PortRef& ref) {
    const DrawnPort* port = view.drawing().port(ref);
    EXPECT_NE(port, nullptr) << ref.piece << '.' << ref.port;
    return port == nullptr ? QPoint() : spot(view, handle_of(*port, view.camera()));
  }
  QPoint port_spot(DeskView& view, const PortRef& ref) {
    const DrawnPort* port = view.drawing().port(ref);
    EXPECT_NE(port, nullptr) << ref.piece << '.' << ref.port;
    return port == nullptr ? QPoint() : spot(view, view.camera().to_screen(port->at));
  }
  /// A place of the drawing (metres east, north, up) in a view.
  QPoint place(DeskView& view, const Metres& world) {
    return spot(view, view.camera().to_screen(view.projection().on_sheet(world)));
  }
  /// The end that the last gesture left ready to be drawn on.
  OpenEnd ready() {
    const auto& ref = board().focused_end();
    EXPECT_TRUE(ref) << "no end is ready";
    const OpenEnd* end = ref ? board().ends().find(*ref) : nullptr;
    return end == nullptr ? OpenEnd{} : *end;
  }
  /// From the ready end's ring to `metres` further along `way`.
  void pull(DeskView& view, const Heading& way, double metres_on) { drag(ring(view, ready().ref), beyond(view, way, metres_on)); }
  QPoint beyond(DeskView& view, const Heading& way, double metres_on) {
    const Metres unit = unit_of(way);
    const Metres from = metres(ready().port.at);
    return place(view, {from.x + metres_on * unit.x, from.y + metres_on * unit.y, from.z + metres_on * unit.z});
  }

  /// What the path grows with upright, by the list above the views.
  void choose_upright(const std::string& type) {
    for (auto* list : desk().findChildren<QComboBox*>()) {
      if (!list->accessibleName().contains(QLatin1String("upright"))) continue;
      const int row = list->findData(QString::fromStdString(type));
      list->setFocus();
      while (row >= 0 && list->currentIndex() != row) key(list->currentIndex() < row ? Qt::Key_Down : Qt::Key_Up);
    }
    EXPECT_EQ(board().upright_type(), type);
  }

  /// Rack to sheet with the mouse held down.
  void carry(const std::string& type, QPoint to) { drag(row(type), to); }
  /// Without the mouse: to the rack, its name as far as needed, Enter. It goes onto the ready end.
  void put_by_keys(const QString& name) {
    key(Qt::Key_1, Qt::ControlModifier);
    type(name);
    key(Qt::Key_Return);
    settle();
  }

  const Piece& piece(std::string_view type, std::size_t nth = 0) {
    for (const Piece& found : document.design().pieces) {
      if (found.type == type && nth-- == 0) return found;
    }
    ADD_FAILURE() << "no " << type << " on the desk";
    static const Piece none;
    return none;
  }
  std::size_t count(std::string_view type) {
    std::size_t found = 0;
    for (const Piece& piece : document.design().pieces) found += piece.type == type ? 1U : 0U;
    return found;
  }
  Length length_of_piece(const PieceId& id) {
    const auto& pieces = document.design().pieces;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
      if (pieces[i].id == id) return fluewright::length_of(document.geometries()[i].lines.front());
    }
    return {};
  }
  std::string text() {
    DesignDocument written;
    written.design = document.design();
    written.file_version = current_file_version;
    return write_design_text(written, document.library());
  }
  QStringList numbers() { return {margin(), find<Headline>("headline_margin")->state(), figure("exit"), figure("condensation")}; }
  int steps() { return document.undo_stack().index(); }

 private:
  QPoint here_;
};

}  // namespace fluewright::test
