// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/dxf.hpp"

#include "app/paper/type.hpp"

#include <fmt/format.h>

#include <array>

namespace fluewright::paper {

namespace {

constexpr std::array all_layers{Layer::flue,    Layer::mass,  Layer::hidden,     Layer::axis, Layer::dimensions,
                                Layer::numbers, Layer::notes, Layer::clearances, Layer::frame};

/// Group codes: the number that says what the value on the next line is.
class Groups {
 public:
  void put(int code, std::string_view value) { text_ += fmt::format("{:>3}\r\n{}\r\n", code, value); }
  void put(int code, int value) { put(code, fmt::format("{}", value)); }
  void put(int code, double value) { put(code, fmt::format("{:.4f}", value)); }
  void point(double x, double y) {
    put(10, x);
    put(20, y);
    put(30, 0.0);
  }
  [[nodiscard]] std::string take() { return std::move(text_); }

 private:
  std::string text_;
};

const char* line_type(Stroke stroke) {
  switch (stroke) {
    case Stroke::hidden:
      return "DASHED";
    case Stroke::axis:
      return "CENTER";
    case Stroke::clearance:
      return "PHANTOM";
    default:
      return "CONTINUOUS";
  }
}

struct Dashes {
  const char* name;
  const char* picture;
  std::vector<double> lengths;  // mm of paper; negative: gaps
};

void put_line_types(Groups& g, double full_size) {
  const std::vector<Dashes> types{{"CONTINUOUS", "Solid line", {}},
                                  {"DASHED", "__ __ __", {1.6, -0.9}},
                                  {"CENTER", "____ _ ____", {5.0, -0.9, 0.5, -0.9}},
                                  {"PHANTOM", "____ _ _ ____", {4.0, -0.9, 0.5, -0.9, 0.5, -0.9}}};
  g.put(0, "TABLE");
  g.put(2, "LTYPE");
  g.put(70, static_cast<int>(types.size()));
  for (const Dashes& type : types) {
    double total = 0.0;
    for (const double l : type.lengths) total += std::abs(l);
    g.put(0, "LTYPE");
    g.put(2, type.name);
    g.put(70, 64);
    g.put(3, type.picture);
    g.put(72, 65);
    g.put(73, static_cast<int>(type.lengths.size()));
    g.put(40, total * full_size);
    for (const double l : type.lengths) g.put(49, l * full_size);
  }
  g.put(0, "ENDTAB");
}

void put_layers(Groups& g) {
  g.put(0, "TABLE");
  g.put(2, "LAYER");
  g.put(70, static_cast<int>(all_layers.size()));
  for (const Layer layer : all_layers) {
    g.put(0, "LAYER");
    g.put(2, layer_name(layer));
    g.put(70, 64);
    g.put(62, 7);
    g.put(6, "CONTINUOUS");
  }
  g.put(0, "ENDTAB");
}

/// Release 12 knows no letters beyond ASCII: signs that have a plain twin get it, others their number.
std::string plain(const QString& text) {
  std::string out;
  for (const QChar c : text) {
    const char16_t u = c.unicode();
    if (u >= 0x20 && u < 0x7f)
      out += static_cast<char>(u);
    else if (u == 0x2212 || u == 0x2013)
      out += '-';
    else if (u == 0x00A0)
      out += ' ';
    else if (u == 0x00D7)
      out += 'x';
    else if (u == 0x00B0)
      out += "%%d";
    else
      out += fmt::format("\\U+{:04X}", static_cast<unsigned>(u));
  }
  return out;
}

class Drawing {
 public:
  Drawing(Groups& g, double full_size, QPointF origin) : g_{g}, full_size_{full_size}, origin_{origin} {}

  void put(const Stroked& mark) {
    if (mark.stroke == Stroke::none) return;
    g_.put(0, "POLYLINE");
    g_.put(8, layer_name(mark.layer));
    g_.put(6, line_type(mark.stroke));
    g_.put(66, 1);
    g_.point(0.0, 0.0);
    g_.put(70, mark.closed ? 1 : 0);
    for (const QPointF& p : mark.points) {
      g_.put(0, "VERTEX");
      g_.put(8, layer_name(mark.layer));
      g_.point(x(p), y(p));
    }
    g_.put(0, "SEQEND");
    g_.put(8, layer_name(mark.layer));
  }

  void put(const Words& words) {
    if (words.ghost) return;
    const int alignment = words.anchor == Anchor::left ? 0 : words.anchor == Anchor::middle ? 1 : 2;
    g_.put(0, "TEXT");
    g_.put(8, layer_name(words.layer));
    g_.point(x(words.at), y(words.at));
    g_.put(40, cap_height(words.type) * full_size_);
    g_.put(1, plain(words.text));
    if (words.turn != 0.0) g_.put(50, words.turn);
    if (alignment == 0) return;
    g_.put(72, alignment);
    g_.put(11, x(words.at));
    g_.put(21, y(words.at));
    g_.put(31, 0.0);
  }

 private:
  [[nodiscard]] double x(QPointF p) const { return (p.x() - origin_.x()) * full_size_; }
  [[nodiscard]] double y(QPointF p) const { return (origin_.y() - p.y()) * full_size_; }

  Groups& g_;
  double full_size_;
  QPointF origin_;
};

}  // namespace

const char* layer_name(Layer layer) {
  switch (layer) {
    case Layer::flue:
      return "FLUE";
    case Layer::mass:
      return "MASS";
    case Layer::hidden:
      return "HIDDEN";
    case Layer::axis:
      return "AXIS";
    case Layer::dimensions:
      return "DIMENSIONS";
    case Layer::numbers:
      return "NUMBERS";
    case Layer::notes:
      return "NOTES";
    case Layer::clearances:
      return "CLEARANCES";
    case Layer::frame:
      break;
  }
  return "FRAME";
}

std::string to_dxf(const Figure& figure, double full_size, QPointF origin) {
  Groups g;
  g.put(0, "SECTION");
  g.put(2, "HEADER");
  g.put(9, "$ACADVER");
  g.put(1, "AC1009");
  g.put(0, "ENDSEC");
  g.put(0, "SECTION");
  g.put(2, "TABLES");
  put_line_types(g, full_size);
  put_layers(g);
  g.put(0, "ENDSEC");
  g.put(0, "SECTION");
  g.put(2, "ENTITIES");
  Drawing drawing(g, full_size, origin);
  for (const Mark& mark : figure.marks) {
    std::visit([&drawing](const auto& m) { drawing.put(m); }, mark);
  }
  g.put(0, "ENDSEC");
  g.put(0, "EOF");
  return g.take();
}

}  // namespace fluewright::paper
