// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document.hpp"

#include "app/desktop/design_step.hpp"
#include "app/shared/said.hpp"
#include "engine/layout/path.hpp"
#include "engine/solve/followed.hpp"

#include <algorithm>
#include <utility>

namespace fluewright {

Document::Document(std::shared_ptr<const Library> library, QObject* parent)
    : QObject(parent), library_{std::move(library)} {
  undo_group_.addStack(&undo_stack_);
  undo_group_.setActiveStack(&undo_stack_);
  connect(&undo_stack_, &QUndoStack::cleanChanged, this, &Document::file_changed);
  start_new();
}

const Design& Document::design() const { return preview_ ? *preview_ : file_.design; }

void Document::commit(Design changed, const QString& text, const QString& merge_key) {
  if (file_.read_only) return;
  if (changed == file_.design) {
    cancel_preview();
    return;
  }
  undo_stack_.push(new DesignStep(*this, file_.place, file_.design, std::move(changed), text, merge_key));
}

void Document::preview(Design changed) {
  if (file_.read_only || (preview_ && *preview_ == changed)) return;
  preview_ = std::move(changed);
  refresh();
}

void Document::commit_preview(const QString& text) {
  if (!preview_) return;
  commit(*preview_, text);
}

void Document::cancel_preview() {
  if (!preview_) return;
  preview_.reset();
  refresh();
}

void Document::become(std::size_t place, const Design& design) {
  put_on_desk(place);
  // A gesture's last preview is usually what is now committed: its answer stands.
  const bool already_shown = preview_ && *preview_ == design;
  preview_.reset();
  file_.design = design;
  if (already_shown) {
    emit changed();
  } else {
    refresh();
  }
}

void Document::refresh() {
  moment_.reset();  // it was of the design before
  const Design& shown = design();
  late_.reset();
  followed_.reset();
  geometries_ = fluewright::geometries(shown, *library_);
  assessment_ = answer(shown);
  findings_ = all_findings(shown, *library_, assessment_);
  // A preview may lack the selected piece for a moment; only a real edit lets go of it.
  if (!preview_) {
    std::vector<PieceId> left = selection_;
    std::erase_if(left, [&shown](const PieceId& id) { return shown.piece(id) == nullptr; });
    select_set(std::move(left));
  }
  if (!pointed_.piece.empty() && shown.piece(pointed_.piece) == nullptr) point_at({});
  emit changed();
}

void Document::add_late_answer(const Design& of, LateAnswer late) {
  if (!(of == answered_design())) return;
  if (!late.young.empty() && !followed_) {
    followed_ = with_design_flows(assessment_, late.young);
    findings_ = all_findings(design(), *library_, *followed_);
  }
  late_ = std::move(late);
  emit late_answer_came();
}

const PieceId& Document::selected() const {
  static const PieceId none;
  return selection_.empty() ? none : selection_.back();
}

bool Document::is_selected(const PieceId& piece) const {
  return std::find(selection_.begin(), selection_.end(), piece) != selection_.end();
}

void Document::select(const PieceId& piece) {
  select_set(piece.empty() ? std::vector<PieceId>{} : std::vector<PieceId>{piece});
}

void Document::select_set(std::vector<PieceId> pieces) {
  if (pieces == selection_) return;
  selection_ = std::move(pieces);
  emit selection_changed();
}

void Document::toggle_selected(const PieceId& piece) {
  std::vector<PieceId> now = selection_;
  if (std::erase(now, piece) == 0) now.push_back(piece);
  select_set(std::move(now));
}

void Document::show_piece(const PieceId& piece) {
  select(piece);
  emit piece_wanted();
}

void Document::point_at(Pointed pointed) {
  if (pointed.piece == pointed_.piece && pointed.s == pointed_.s) return;
  pointed_ = std::move(pointed);
  emit pointed_changed();
}

void Document::show_moment(std::optional<Moment> moment) {
  if (moment == moment_) return;
  moment_ = std::move(moment);
  emit moment_changed();
}

void Document::set_units(UnitSystem units) {
  if (units == units_) return;
  units_ = units;
  emit units_changed();
}

void Document::set_grid_step(Length step) {
  if (step == grid_step_ || !(step >= grid_count)) return;
  grid_step_ = step;
  emit units_changed();
}

void Document::set_tint(Tint tint) {
  if (tint == tint_) return;
  tint_ = tint;
  emit units_changed();
}

void Document::start_new() {
  DesignDocument fresh;
  fresh.file_version = current_file_version;
  adopt(std::move(fresh), {});
}

void Document::adopt(DesignDocument file, const QString& path, Came came) {
  preview_.reset();
  trial_.reset();
  other_answers_.clear();
  undo_stack_.clear();
  if (came == Came::unsaved) undo_stack_.resetClean();
  file_ = std::move(file);
  path_ = path;
  selection_.clear();
  pointed_ = {};
  emit selection_changed();
  emit pointed_changed();
  refresh();
  emit variants_changed();
  emit file_changed();
  emit adopted();
}

std::optional<FileFault> Document::save_to(const QString& path) {
  if (file_.read_only) {
    return FileFault{{said("This design comes from a newer version of the program and is open for reading only; saving it "
                      "here could lose what this version does not know.")}};
  }
  if (auto fault = save_design_file(file_, *library_, std::filesystem::path(path.toStdU16String()))) return fault;
  path_ = path;
  undo_stack_.setClean();
  emit file_changed();
  return std::nullopt;
}

}  // namespace fluewright
