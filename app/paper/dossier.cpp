// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/dossier.hpp"

#include "app/shared/words.hpp"
#include "engine/advice/findings.hpp"
#include "engine/pieces/parts.hpp"

#include <cmath>

namespace fluewright::paper {

namespace {

struct Direction {
  double x, y, z;
};
Direction direction(const Heading& heading) {
  const Frame frame = frame_of(heading);
  return {frame.forward[0], frame.forward[1], frame.forward[2]};
}
double dot(const Direction& a, const Direction& b) { return a.x * b.x + a.y * b.y + a.z * b.z; }

/// Where the line into a piece and the line out of it come nearest to one another; nothing if they are parallel.
std::optional<Position> meeting_of(const Port& entry, const Port& exit) {
  const Direction u = direction(opposite(entry.outward));
  const Direction v = direction(exit.outward);
  const double cosine = dot(u, v);
  const double square = 1.0 - cosine * cosine;
  if (square < 1e-6) return std::nullopt;
  const Position step = exit.at - entry.at;
  const Direction d{in(step.x, metre), in(step.y, metre), in(step.z, metre)};
  const double along = (dot(d, u) - cosine * dot(d, v)) / square;
  return Position{entry.at.x + along * u.x * metre, entry.at.y + along * u.y * metre, entry.at.z + along * u.z * metre};
}

}  // namespace

QString text(std::string_view utf8) { return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size())); }

Dossier::Dossier(const Design& design, const Library& library, UnitSystem units)
    : design_{design},
      library_{library},
      units_{units},
      answer_{assess(design, library)},
      findings_{all_findings(design, library, answer_)},
      drawn_{drawn_pieces(design, library)},
      order_{building_order(design, answer_.path)},
      number_(design.pieces.size(), 0),
      masses_(design.pieces.size()),
      upkeep_{fluewright::upkeep(design, library)} {
  for (std::size_t i = 0; i < order_.size(); ++i) number_[order_[i]] = i + 1;
  for (std::size_t i = 0; i < drawn_.size(); ++i) {
    if (!drawn_[i].sound || place(i) != Place::mass) continue;
    const PieceView piece = view(i);
    masses_[i] = mass_around(geometry(i), piece.length("mass_width"), piece.length("mass_height"));
  }
  find_corners();
}

PieceView Dossier::view(std::size_t piece) const {
  return {design_, library_, design_.pieces[piece], *drawn_[piece].known.type};
}

Place Dossier::place(std::size_t piece) const {
  if (!drawn_[piece].sound) return Place::room;
  return parts::stretch_of(view(piece), piece, Section::circle(millimetre), millimetre, {}).place;
}

QString Dossier::name(std::size_t piece) const { return text(piece_name(design_, library_, piece)); }

const SliceState* Dossier::middle_row(std::size_t piece) const {
  std::size_t first = answer_.profile.size();
  std::size_t last = 0;
  for (std::size_t i = 0; i < answer_.profile.size(); ++i) {
    if (answer_.profile[i].piece != piece) continue;
    first = std::min(first, i);
    last = i;
  }
  return first < answer_.profile.size() ? &answer_.profile[(first + last) / 2] : nullptr;
}

void Dossier::find_corners() {
  const auto& passages = answer_.path.passages;
  for (std::size_t i = 0; i < passages.size(); ++i) {
    const PieceGeometry& g = geometry(passages[i].piece);
    const Port* entry = g.port(passages[i].entry);
    const Port* exit = g.port(passages[i].exit);
    if (i == 0 && entry != nullptr) corners_.push_back({passages[i].piece, entry->at});
    if (entry == nullptr || exit == nullptr) continue;
    if (const auto corner = meeting_of(*entry, *exit)) corners_.push_back({passages[i].piece, *corner});
    if (i + 1 == passages.size()) corners_.push_back({passages[i].piece, exit->at});
  }
}

}  // namespace fluewright::paper
