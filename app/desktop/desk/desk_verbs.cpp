// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/desk_verbs.hpp"

#include "app/desktop/desk/growth.hpp"
#include "app/shared/words.hpp"

#include <QApplication>
#include <QClipboard>
#include <QMimeData>

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

// The clipboard holds a design of the cut pieces alone, so that they can go to another window.
const auto mime = QStringLiteral("application/x-fluewright-pieces");

/// South of the pieces, clear of them: where a copy of them goes.
GridPoint step_clear_of(const Design& design, const Library& library, const std::vector<Piece>& pieces, Length grid) {
  double low = 1e9;
  double high = -1e9;
  Design alone = design;
  alone.pieces = pieces;
  alone.joints.clear();
  for (const PieceGeometry& geometry : geometries(alone, library)) {
    for (const CentreLine& line : geometry.lines) {
      for (const Position& point : line.points) {
        low = std::min(low, in(point.y, metre) - 0.5 * in(line.width, metre));
        high = std::max(high, in(point.y, metre) + 0.5 * in(line.width, metre));
      }
    }
  }
  constexpr double gap = 0.3;
  const double down = high > low ? high - low + gap : gap;
  const double step = in(grid, metre);
  return grid_point_near({{}, -std::ceil(down / step) * step * metre, {}});
}

}  // namespace

QString DeskVerbs::subject() const {
  const auto& selection = document().selection();
  if (selection.size() == 1) {
    return QString::fromStdString(piece_name(document().design(), document().library(), selection.front()));
  }
  return Board::tr("%n piece(s)", nullptr, static_cast<int>(selection.size()));
}

bool DeskVerbs::commit(const SetResult& result, const QString& text) {
  if (document().read_only()) return false;
  if (!board_.commit(result.edit, text)) return false;
  document().select_set(result.pieces);
  return true;
}

void DeskVerbs::select_all() {
  std::vector<PieceId> all;
  for (const Piece& piece : document().design().pieces) all.push_back(piece.id);
  document().select_set(std::move(all));
}

void DeskVerbs::copy() const {
  const Clip clip = copy_pieces(document().design(), document().library(), document().selection());
  if (clip.pieces.empty()) return;
  DesignDocument file;
  file.file_version = current_file_version;
  file.design.pieces = clip.pieces;
  file.design.joints = clip.joints;
  file.design.walls = clip.walls;
  file.design.fans = clip.fans;
  auto* data = new QMimeData;
  data->setData(mime, QByteArray::fromStdString(write_design_text(file, document().library())));
  QApplication::clipboard()->setMimeData(data);
  board_.remark(Board::tr("%1 copied.").arg(subject()));
}

void DeskVerbs::cut() {
  if (!anything_selected() || document().read_only()) return;
  copy();
  remove();
}

void DeskVerbs::paste() {
  const QMimeData* data = QApplication::clipboard()->mimeData();
  if (data == nullptr || !data->hasFormat(mime) || document().read_only()) {
    board_.remark(Board::tr("Nothing has been copied that could be put here."));
    return;
  }
  const ReadResult read = read_design_text(data->data(mime).toStdString(), document().library());
  const auto* file = std::get_if<DesignDocument>(&read);
  if (file == nullptr) {
    board_.remark(Board::tr("What was copied cannot be put here."));
    return;
  }
  const Clip clip{file->design.pieces, file->design.joints, file->design.walls, file->design.fans};
  const GridPoint step = step_clear_of(document().design(), document().library(), clip.pieces, document().grid_step());
  const int count = static_cast<int>(clip.pieces.size());
  commit(paste_pieces(document().design(), document().library(), clip, step), Board::tr("Paste %n piece(s)", nullptr, count));
}

void DeskVerbs::remove() {
  if (!anything_selected()) return;
  commit(remove_pieces(document().design(), document().library(), document().selection()), Board::tr("Take out %1").arg(subject()));
}

void DeskVerbs::mirror(const Heading& across) {
  if (!anything_selected()) return;
  const auto& design = document().design();
  const GridPoint pivot = middle_of(design, document().library(), document().selection(), document().grid_step());
  commit(mirror_pieces(design, document().library(), document().selection(), across, pivot), Board::tr("Mirror %1").arg(subject()));
}

void DeskVerbs::rotate(int quarters) {
  if (!anything_selected()) return;
  const auto& design = document().design();
  const GridPoint pivot = middle_of(design, document().library(), document().selection(), document().grid_step());
  commit(turn_pieces(design, document().library(), document().selection(), quarters, pivot), Board::tr("Rotate %1").arg(subject()));
}

void DeskVerbs::reverse() {
  if (document().selected().empty() || document().read_only()) return;
  board_.commit(reverse_piece(document().design(), document().library(), document().selected()),
                Board::tr("Turn %1 end for end").arg(subject()));
}

std::optional<PortRef> DeskVerbs::joint_after(const PieceId& piece) const {
  const auto& passages = document().assessment().path.passages;
  const Design& design = document().design();
  for (const Passage& passage : passages) {
    if (passage.piece >= design.pieces.size() || design.pieces[passage.piece].id != piece) continue;
    const PortRef exit{piece, passage.exit};
    if (design.joined_to(exit)) return exit;
  }
  for (const Joint& joint : design.joints) {
    if (joint.a.piece == piece) return joint.a;
    if (joint.b.piece == piece) return joint.b;
  }
  return std::nullopt;
}

void DeskVerbs::pull_apart() {
  if (const auto joint = joint_after(document().selected())) pull_apart(*joint);
}

void DeskVerbs::pull_apart(const PortRef& joint) {
  if (document().read_only()) return;
  board_.commit(break_joint(document().design(), joint), Board::tr("Pull a joint apart"));
}

bool DeskVerbs::can_heal() const { return heal_joints(document().design(), document().library()).design.has_value(); }

void DeskVerbs::heal() {
  if (document().read_only()) return;
  const EditResult healed = heal_joints(document().design(), document().library());
  if (!healed.design) {
    board_.remark(Board::tr("There are no two open ends that meet. Drag one to the other first."));
    return;
  }
  board_.commit(healed, Board::tr("Join what meets"));
}

void DeskVerbs::lengthen_bench(int steps) {
  if (document().selected().empty() || document().read_only()) return;
  const Length by = static_cast<double>(steps) * document().grid_step();
  board_.commit(stretch_bench(document().design(), document().library(), document().selected(), by),
                steps > 0 ? Board::tr("Make the bench longer") : Board::tr("Make the bench shorter"), QStringLiteral("bench length"));
}

EditResult DeskVerbs::try_winding(const Serpentine& serpentine) const {
  std::optional<PortRef> end = board_.focused_end();
  if (!end && board_.ends().open.size() == 1) end = board_.ends().open.front().ref;
  if (!end) return {std::nullopt, Refusal::not_an_open_end, {}};
  return grow_serpentine(document().design(), document().library(), *end, serpentine, board_.run_type(), board_.bend_type());
}

void DeskVerbs::wind(const Serpentine& serpentine) {
  if (document().read_only()) return;
  board_.commit(try_winding(serpentine), Board::tr("Draw %n pass(es)", nullptr, serpentine.passes));
}

std::vector<const PieceType*> DeskVerbs::replacements() const {
  return types_that_fit(document().design(), document().library(), document().selected());
}

void DeskVerbs::replace(const std::string& type) {
  const PieceType* found = document().library().piece_type(type);
  if (found == nullptr || document().read_only()) return;
  board_.commit(set_type(document().design(), document().library(), document().selected(), type),
                Board::tr("Replace by %1").arg(QString::fromStdString(found->name)));
}

std::optional<PortRef> DeskVerbs::joint_without_reducer() const {
  const Design& design = document().design();
  for (const Joint& joint : design.joints) {
    if (joint.a.piece != document().selected() && joint.b.piece != document().selected()) continue;
    if (wants_reducer(design, document().library(), joint.a)) return joint.a;
  }
  return std::nullopt;
}

void DeskVerbs::put_reducer() {
  const auto joint = joint_without_reducer();
  if (!joint || document().read_only()) return;
  EditResult last{std::nullopt, Refusal::does_not_fit, {}};
  for (const PieceType& type : document().library().piece_types) {
    if (type.shape != "taper") continue;
    EditResult put = fluewright::put_reducer(document().design(), document().library(), *joint, type.id);
    // The one that matches both sides; of two channels that is another type than of two pipes.
    const bool fits = put.design && !wants_reducer(*put.design, document().library(), *put.design->joined_to({put.touched, "in"})) &&
                      !wants_reducer(*put.design, document().library(), *put.design->joined_to({put.touched, "out"}));
    if (fits) {
      board_.commit(put, Board::tr("Put in %1").arg(QString::fromStdString(type.name)));
      return;
    }
    if (!put.design) last = std::move(put);
  }
  last.design.reset();
  board_.commit(last, {});
}

}  // namespace fluewright
