// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/help/number_help.hpp"

#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>

#include <cmath>

namespace fluewright {

namespace {


/// A sketch on a field of 100 by 70, with the sheet's own inks.
class Sketch {
 public:
  Sketch(QPainter& painter) : painter_{painter}, inks_{theme().inks} {
    painter_.setRenderHint(QPainter::Antialiasing, true);
    QFont font = type(TypeRole::caption);
    font.setPixelSize(6);
    painter_.setFont(font);
  }

  void stack() {
    line({{20, 62}, {80, 62}}, inks_.ink, 1.0);
    box({24, 50, 12, 12}, inks_.mass);
    line({{36, 56}, {62, 56}}, inks_.accent, 3.0);
    line({{62, 57}, {62, 10}}, inks_.accent, 3.0);
  }
  void bar(double x, double height, const QColor& colour, const QString& words) {
    box({x, 60.0 - height, 14, height}, colour);
    painter_.setPen(inks_.faint_ink);
    painter_.drawText(QRectF(x - 10.0, 61.0, 34.0, 8.0), Qt::AlignCenter, words);
  }
  void box(const QRectF& rect, const QColor& fill) {
    painter_.setPen(QPen(inks_.ink, 0.7));
    painter_.setBrush(fill);
    painter_.drawRect(rect);
  }
  void line(const QPolygonF& points, const QColor& colour, double width, Qt::PenStyle style = Qt::SolidLine) {
    painter_.setPen(QPen(colour, width, style, Qt::FlatCap, Qt::MiterJoin));
    painter_.setBrush(Qt::NoBrush);
    painter_.drawPolyline(points);
  }
  void arrow(QPointF from, QPointF to, const QColor& colour) {
    line({from, to}, colour, 1.2);
    const QPointF step = (to - from) / std::hypot(to.x() - from.x(), to.y() - from.y());
    const QPointF aside(-step.y(), step.x());
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(colour);
    painter_.drawPolygon(QPolygonF{to, to - 4.0 * step + 2.0 * aside, to - 4.0 * step - 2.0 * aside});
  }
  void words(QPointF at, const QString& text) {
    painter_.setPen(inks_.ink);
    painter_.drawText(at, text);
  }
  void drop(QPointF at) {
    QPainterPath path(at);
    path.cubicTo(at + QPointF(1, 3), at + QPointF(3, 4.5), at + QPointF(3, 7));
    path.arcTo(QRectF(at + QPointF(-3, 4), QSizeF(6, 6)), 0.0, -180.0);
    path.cubicTo(at + QPointF(-3, 4.5), at + QPointF(-1, 3), at);
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(inks_.water);
    painter_.drawPath(path);
  }
  const Inks& inks() const { return inks_; }

 private:
  QPainter& painter_;
  const Inks& inks_;
};

void draw(Sketch& s, NumberHelp::Picture picture) {
  const Inks& inks = s.inks();
  switch (picture) {
    case NumberHelp::Picture::margin:
      s.bar(16, 46, inks.accent, tr("pull"));
      s.bar(44, 30, inks.calm, tr("loss"));
      s.bar(72, 16, inks.caution, tr("margin"));
      s.line({{16, 14}, {86, 14}}, inks.faint_ink, 0.6, Qt::DashLine);
      return;
    case NumberHelp::Picture::buoyancy:
      s.stack();
      s.arrow({74, 56}, {74, 14}, inks.accent);
      s.words({77, 36}, tr("light"));
      s.arrow({12, 14}, {12, 56}, inks.calm);
      s.words({1, 10}, tr("heavy"));
      return;
    case NumberHelp::Picture::resistance:
      s.line({{8, 20}, {46, 20}, {46, 50}, {92, 50}}, inks.ink, 6.0);
      s.line({{8, 20}, {46, 20}, {46, 50}, {92, 50}}, inks.accent, 4.0);
      s.words({28, 14}, tr("rubs"));
      s.words({52, 36}, tr("turns"));
      return;
    case NumberHelp::Picture::exit:
      s.stack();
      s.arrow({62, 10}, {62, 2}, inks.accent);
      s.words({66, 9}, tr("this warm"));
      return;
    case NumberHelp::Picture::wet:
      s.line({{8, 26}, {92, 26}}, inks.accent, 5.0);
      s.line({{8, 33}, {92, 33}}, inks.ink, 1.0);
      for (const double x : {56.0, 68.0, 80.0}) s.drop({x, 36});
      s.words({10, 20}, tr("warm wall: dry"));
      s.words({52, 56}, tr("cold wall: wet"));
      return;
    case NumberHelp::Picture::excess_air:
      s.box({14, 26, 20, 30}, inks.mass);
      for (const double y : {34.0, 42.0, 50.0}) s.arrow({52, y}, {36, y}, inks.calm);
      s.words({10, 20}, tr("what the wood needs"));
      s.words({56, 44}, tr("and more"));
      return;
    case NumberHelp::Picture::standing:
      s.stack();
      s.arrow({62, 50}, {62, 24}, inks.calm);
      s.words({66, 38}, tr("before the fire"));
      return;
    case NumberHelp::Picture::balance:
      s.box({10, 30, 80, 12}, inks.bare);
      s.box({10, 30, 30, 12}, inks.mass);
      s.box({40, 30, 26, 12}, inks.accent);
      s.box({66, 30, 24, 12}, inks.calm);
      s.words({13, 52}, tr("mass"));
      s.words({43, 52}, tr("room"));
      s.words({68, 52}, tr("stack"));
      return;
    case NumberHelp::Picture::neutral:
      s.line({{22, 62}, {22, 12}, {78, 12}, {78, 62}, {22, 62}}, inks.ink, 1.2);
      s.line({{16, 37}, {84, 37}}, inks.calm, 0.8, Qt::DashLine);
      s.arrow({14, 52}, {26, 52}, inks.calm);
      s.arrow({74, 20}, {88, 20}, inks.accent);
      return;
    case NumberHelp::Picture::plot:
      s.line({{8, 10}, {8, 62}, {94, 62}}, inks.ink, 0.8);
      s.line({{8, 30}, {24, 42}, {34, 26}, {60, 40}, {78, 46}, {92, 18}}, inks.ink, 1.6);
      s.line({{8, 18}, {92, 22}}, inks.calm, 1.0, Qt::DashLine);
      return;
  }
}

}  // namespace

std::vector<NumberHelp> number_helps() {
  using Picture = NumberHelp::Picture;
  return {
      {tr("Draft margin"),
       tr("What is left of the stack's pull when all losses of the path, with their safety factor, and the wind's share are taken off. "
          "It is the least of three ages of the bench: cold, after an hour, warmed through."),
       tr("Above 2 Pa the path draws with something to spare. Below zero it smokes into the room."), Picture::margin},
      {tr("Buoyancy"),
       tr("The pull itself: a column of warm gas is lighter than as much outdoor air beside it. It grows with height and with warmth."),
       tr("Heaters with a bench live on 8 to 20 Pa."), Picture::buoyancy},
      {tr("Resistance"),
       tr("What friction along the walls and every bend, tee and change of size cost at the flow the fire wants."),
       tr("Half of the buoyancy or less leaves a sound margin. Bends and narrow places cost most."), Picture::resistance},
      {tr("Exit temperature"), tr("How warm the gas leaves the cap when the bench is warm and the path has settled."),
       tr("60 to 120 °C is common. Colder saves heat and risks water and a weak pull; hotter means that heat is thrown away."),
       Picture::exit},
      {tr("Condensation begins"),
       tr("Where the inner wall is colder than the dew point of the gas, water settles. It carries soot and acid."),
       tr("Nowhere is best; in a bench that is still cold a little at the start is common."), Picture::wet},
      {tr("Excess air"), tr("How much air comes with the wood, as a multiple of what it needs to burn."),
       tr("2 to 3 is common for an open feed. Under 1.5 it smokes; over 6 it cools the fire."), Picture::excess_air},
      {tr("Standing draft"),
       tr("The pull before anything burns, from the house's warmth and the weather alone. Below zero the path runs backwards until it is "
          "warmed."),
       tr("A little above zero makes lighting easy. A chimney outdoors often stands below."), Picture::standing},
      {tr("Heat"), tr("Where the wood's heat goes: into the bench's mass, through bare walls to the room, up the stack, out of the house."),
       tr("A third to a half in the mass is common for a bench of a few metres."), Picture::balance},
      {tr("Neutral plane"),
       tr("The height in the house at which indoor and outdoor pressure agree. Below it air wants in, above it out. A fire below it has the "
          "house against it."),
       tr("About the middle of the heated height; range hoods lift it."), Picture::neutral},
      {tr("The curves along the path"),
       tr("Pressure in the flue from feed to cap, beside that of the room at the same height. Where the flue lies above the room, smoke can "
          "leak out of a crack."),
       tr("The flue should lie below the room everywhere indoors."), Picture::plot},
  };
}

QPixmap picture_of(NumberHelp::Picture picture, QSize size, double pixel_ratio) {
  QPixmap pixmap(size * pixel_ratio);
  pixmap.setDevicePixelRatio(pixel_ratio);
  pixmap.fill(theme().inks.paper);
  QPainter painter(&pixmap);
  painter.scale(size.width() / 100.0, size.height() / 70.0);
  Sketch sketch(painter);
  draw(sketch, picture);
  return pixmap;
}

}  // namespace fluewright
