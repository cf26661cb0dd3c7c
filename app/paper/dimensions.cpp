// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/tr.hpp"
#include "app/paper/type.hpp"
#include "app/paper/view_figure.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace fluewright::paper {

namespace {

constexpr double row_height = 7.5;  // from one dimension line to the next
constexpr double past = 1.5;        // of witness lines over the dimension line

QString dimension_text(Length length, UnitSystem units) {
  const Shown shown = show(length, units, Meaning::drawn_length);
  return text(shown.number);
}

/// Rounded places along a direction, each once, rising.
std::vector<Length> places(std::vector<Length> raw, UnitSystem units) {
  for (Length& place : raw) place = on_the_tape(place, units);
  std::sort(raw.begin(), raw.end(), [](Length a, Length b) { return a < b; });
  const auto same = [](Length a, Length b) { return bu::abs(a - b) < 0.4 * millimetre; };
  raw.erase(std::unique(raw.begin(), raw.end(), same), raw.end());
  return raw;
}

DimensionChain chain_of(const std::vector<Length>& at) {
  DimensionChain chain;
  for (std::size_t i = 1; i < at.size(); ++i) chain.parts.push_back(at[i] - at[i - 1]);
  chain.total = at.back() - at.front();
  return chain;
}

/// A slanted stroke where dimension and witness line cross, as builders draw it.
void put_tick(Figure& figure, QPointF at) {
  figure.line(at + QPointF(-0.9, 0.9), at + QPointF(0.9, -0.9), Stroke::outline, Layer::dimensions);
}

/// One dimension line, level or (turned) upright, with what it says over each part. Words too long for their part go
/// one row up.
class DimensionLine {
 public:
  DimensionLine(Figure& figure, bool upright, double offset) : figure_{figure}, upright_{upright}, offset_{offset} {}

  void put(const std::vector<double>& at, const std::vector<QString>& words) {
    figure_.line(point(at.front() - past), point(at.back() + past), Stroke::thin, Layer::dimensions);
    for (const double a : at) put_tick(figure_, point(a));
    // Rows for words, the nearest first: on the line, over that, under the line, higher.
    const std::array<double, 5> lifts{0.8, 0.8 + row_step(), -cap_height(Type::note) - 0.9, 0.8 + 2.0 * row_step(),
                                      0.8 + 3.0 * row_step()};
    std::array<double, 5> free_from{};
    free_from.fill(-1e9);
    for (std::size_t i = 0; i < words.size(); ++i) {
      const double width = width_of(words[i], Type::note);
      const double middle = 0.5 * (at[i] + at[i + 1]);
      const bool fits = width + 0.6 < std::abs(at[i + 1] - at[i]);
      std::size_t row = fits ? 0 : 1;
      while (row + 1 < lifts.size() && middle - 0.5 * width < free_from[row] + 0.6) ++row;
      free_from[row] = middle + 0.5 * width;
      const double lift = lifts[row];
      const QPointF base = point(middle) + (upright_ ? QPointF(-lift, 0.0) : QPointF(0.0, -lift));
      const Words said{base, words[i], Type::note, Anchor::middle, upright_ ? 90.0 : 0.0, Layer::dimensions, false};
      figure_.box(extent(said).adjusted(-0.4, 0.2, 0.4, upright_ ? -0.2 : -0.9), Stroke::none, Fill::white,
                  Layer::dimensions);
      figure_.marks.emplace_back(said);
    }
  }
  void witness(double at, double from) {
    const QPointF near_end = upright_ ? QPointF(from, at) : QPointF(at, from);
    const QPointF far = point(at);
    const double way = upright_ ? far.x() - near_end.x() : far.y() - near_end.y();
    const double over = way >= 0.0 ? past : -past;
    figure_.line(near_end, upright_ ? far + QPointF(over, 0) : far + QPointF(0, over), Stroke::thin, Layer::dimensions);
  }

 private:
  static double row_step() { return cap_height(Type::note) + 0.7; }
  [[nodiscard]] QPointF point(double along) const {
    return upright_ ? QPointF(offset_, along) : QPointF(along, offset_);
  }

  Figure& figure_;
  bool upright_;
  double offset_;
};

struct Axis {
  bool upright = false;  ///< along the sheet's second axis
  double edge = 0.0;     ///< of what is drawn, where witness lines start
  double first_line = 0.0;
  double next_line = 0.0;  ///< step from one line to the next
};

/// A chain and, where it has more than one part, its total on the next line. Gives the place of the next free line.
double put_chain(DrawnView& drawn, const Dossier& dossier, const Board& board, const Axis& axis, double line,
                 const std::vector<Length>& raw) {
  const std::vector<Length> at = places(raw, dossier.units());
  if (at.size() < 2) return line;
  std::vector<double> on_paper;
  for (const Length& a : at) on_paper.push_back(axis.upright ? -board.on_paper(a) : board.on_paper(a));
  const DimensionChain chain = chain_of(at);
  std::vector<QString> words;
  for (const Length& part : chain.parts) words.push_back(dimension_text(part, dossier.units()));
  const auto put = [&](const std::vector<double>& places_on_paper, const std::vector<QString>& said) {
    DimensionLine dimension(drawn.figure, axis.upright, line);
    for (const double p : places_on_paper) dimension.witness(p, axis.edge);
    // Upright words read from the right: upwards is against the sheet's second axis.
    if (axis.upright) {
      std::vector<double> rising(places_on_paper.rbegin(), places_on_paper.rend());
      std::vector<QString> turned_words(said.rbegin(), said.rend());
      dimension.put(rising, turned_words);
    } else {
      dimension.put(places_on_paper, said);
    }
    line += axis.next_line;
  };
  put(on_paper, words);
  if (chain.parts.size() > 1) put({on_paper.front(), on_paper.back()}, {dimension_text(chain.total, dossier.units())});
  drawn.chains.push_back(chain);
  return line;
}

Length along(const Position& p, ViewKind view, bool upright) {
  if (upright) return view == ViewKind::plan ? p.y : p.z;
  return view == ViewKind::side ? p.y : p.x;
}

/// A height worth a mark, with what it is.
struct Level {
  Length height{};
  QString what;
};

std::vector<Level> levels_of(const Dossier& dossier) {
  std::vector<Level> levels{{Length{}, tr("floor")}};
  const auto& corners = dossier.corners();
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const bool end = i == 0 || i + 1 == corners.size();
    levels.push_back({corners[i].at.z, end ? dossier.name(corners[i].piece) : tr("axis")});
  }
  for (std::size_t i = 0; i < dossier.design().pieces.size(); ++i) {
    if (!dossier.can_be_drawn(i)) continue;
    for (const Prism& prism : dossier.mass(i)) {
      // Around a standing branch the mass ends where the branch does: no level of its own.
      const bool lying = bu::abs(prism.top - prism.bottom - dossier.view(i).length("mass_height")) < millimetre;
      if (lying) levels.push_back({prism.top, tr("top of mass")});
    }
    for (const CentreLine& line : dossier.geometry(i).lines) {
      if (!line.upright_body || line.points.size() < 2) continue;
      levels.push_back({std::max(line.points.front().z, line.points.back().z), dossier.name(i)});
    }
  }
  std::stable_sort(levels.begin(), levels.end(), [](const Level& a, const Level& b) { return a.height < b.height; });
  constexpr Length apart = 5.0 * millimetre;
  std::vector<Level> distinct;
  for (Level& level : levels) {
    const bool again = !distinct.empty() && level.height - distinct.back().height < apart;
    if (!again)
      distinct.push_back(std::move(level));
    else if (distinct.back().what == tr("axis"))
      distinct.back().what = level.what;
  }
  return distinct;
}

void put_levels(DrawnView& drawn, const Dossier& dossier, const Board& board, const QRectF& around, Taken& taken) {
  const double x = around.right() + 6.0;
  double lowest_free = 1e9;
  constexpr double pitch = 4.2;
  for (const Level& level : levels_of(dossier)) {
    const double y = -board.on_paper(level.height);
    const double at = std::min(y, lowest_free - pitch);
    lowest_free = at;
    drawn.figure.line({around.right() + 1.0, y}, {x, y}, Stroke::thin, Layer::dimensions);
    drawn.figure.line({x, y}, {x + 4.0, at}, Stroke::thin, Layer::dimensions);
    drawn.figure.line({x + 4.0, at}, {x + 6.0, at}, Stroke::thin, Layer::dimensions);
    const Shown shown = show(on_the_tape(level.height, dossier.units()), dossier.units(), Meaning::drawn_height);
    QString number = text(shown.number);
    if (dossier.units() == UnitSystem::metric) {
      number = digits(in(on_the_tape(level.height, dossier.units()), metre), 3);
      number.replace(QLatin1Char('-'), QChar(0x2212));
    }
    if (level.height > Length{}) number.prepend(QLatin1Char('+'));
    const Words words{{x + 6.8, at + 0.5 * cap_height(Type::note)},
                      number + QStringLiteral("  ") + level.what,
                      Type::note,
                      Anchor::left,
                      0.0,
                      Layer::dimensions,
                      false};
    drawn.figure.marks.emplace_back(words);
    taken.take(extent(words));
    taken.take(QRectF(around.right() + 1.0, std::min(y, at) - 0.5, 12.0, std::abs(y - at) + 1.0));
  }
}

}  // namespace

Length on_the_tape(Length length, UnitSystem units) {
  const Length step = units == UnitSystem::metric ? millimetre : inch / 16.0;
  return std::round(in(length, step)) * step;
}

void put_dimensions(DrawnView& drawn, const Dossier& dossier, const Board& board, const QRectF& around, Taken& taken) {
  std::vector<Length> level_axis;
  std::vector<Length> upright_axis;
  for (const Corner& corner : dossier.corners()) {
    level_axis.push_back(along(corner.at, board.view(), false));
    upright_axis.push_back(along(corner.at, board.view(), true));
  }
  std::vector<Length> level_mass;
  std::vector<Length> upright_mass;
  for (std::size_t i = 0; i < dossier.design().pieces.size(); ++i) {
    for (const Prism& prism : dossier.mass(i)) {
      for (const Position& p : prism.outline) {
        level_mass.push_back(along(p, board.view(), false));
        if (board.view() == ViewKind::plan) upright_mass.push_back(p.y);
      }
    }
  }
  const auto ends = [](const std::vector<Length>& all) {
    if (all.empty()) return all;
    const auto [low, high] = std::minmax_element(all.begin(), all.end(), [](Length a, Length b) { return a < b; });
    return std::vector<Length>{*low, *high};
  };
  const Axis level{false, around.bottom() + 1.0, around.bottom() + 12.0, row_height};
  double line = put_chain(drawn, dossier, board, level, level.first_line, level_axis);
  // Witness lines of the mass start under the lines of the axis: they would cross its numbers.
  const Axis level_after{false, line - row_height + 2.0, line, row_height};
  line = put_chain(drawn, dossier, board, level_after, line, ends(level_mass));
  taken.take(QRectF(around.left() - 5.0, around.bottom() + 6.0, around.width() + 10.0, line - around.bottom() - 6.0));
  const Axis upright{true, around.left() - 1.0, around.left() - 9.0, -row_height};
  double column = put_chain(drawn, dossier, board, upright, upright.first_line, upright_axis);
  const Axis upright_after{true, column + row_height - 2.0, column, -row_height};
  column = put_chain(drawn, dossier, board, upright_after, column, ends(upright_mass));
  taken.take(QRectF(column, around.top() - 5.0, around.left() - 4.0 - column, around.height() + 10.0));
  if (board.view() != ViewKind::plan) put_levels(drawn, dossier, board, around, taken);
}

}  // namespace fluewright::paper
