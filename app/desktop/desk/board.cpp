// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/board.hpp"

#include "app/desktop/desk/pointer_tool.hpp"
#include "app/desktop/desk/projection.hpp"
#include "app/desktop/editors/edit_words.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace fluewright {

Board::Board(Document& document, QObject* parent)
    : QObject(parent), document_{document}, tool_{std::make_unique<PointerTool>(*this)} {
  connect(&document_, &Document::changed, this, &Board::follow_document);
  connect(&document_, &Document::units_changed, this, &Board::follow_units);
  connect(&document_, &Document::moment_changed, this, &Board::follow_moment);
  connect(&document_, &Document::selection_changed, this, &Board::touch_up);
  connect(&document_, &Document::pointed_changed, this, &Board::touch_up);
  const auto runs = run_types();
  const auto first_of = [&runs](const char* family) {
    const auto found = std::find_if(runs.begin(), runs.end(), [family](const PieceType* type) { return type->family == family; });
    return runs.empty() ? std::string() : (found != runs.end() ? *found : runs.front())->id;
  };
  run_type_ = first_of("bench");
  upright_type_ = first_of("stack");
  const auto bends = bend_types();
  if (!bends.empty()) bend_type_ = bends.front()->id;
  follow_document();
}

Board::~Board() = default;

void Board::follow_document() {
  measure_ = PathMeasure(document_.assessment(), document_.geometries());
  choose_tint();
  const Design& design = document_.design();
  ends_.open = open_ends(design, document_.library());
  ends_.capped.clear();
  const auto& geometries = document_.geometries();
  for (std::size_t i = 0; i < design.pieces.size() && i < geometries.size(); ++i) {
    for (const Port& port : geometries[i].ports) {
      PortRef ref{design.pieces[i].id, port.name};
      if (port.may_stay_shut && !design.joined_to(ref)) ends_.capped.push_back({std::move(ref), port});
    }
  }
  if (!document_.in_preview()) {
    if (focused_end_ && ends_.find(*focused_end_) == nullptr) focused_end_.reset();
    if (hovered_end_ && ends_.find(*hovered_end_) == nullptr) hovered_end_.reset();
  }
  emit redraw();
}

void Board::follow_units() {
  choose_tint();
  emit redraw();
  emit sentence_changed(sentence());
}

void Board::follow_moment() {
  choose_tint();
  emit redraw();
}

// A moment that is played has gas temperatures only.
void Board::choose_tint() {
  tint_ = document_.moment() ? Tint(*document_.moment()) : Tint(document_.assessment(), document_.tint());
}

const OpenEnd* Ends::find(const PortRef& ref) const {
  for (const auto* ends : {&open, &capped}) {
    const auto found = std::find_if(ends->begin(), ends->end(), [&](const OpenEnd& e) { return e.ref == ref; });
    if (found != ends->end()) return &*found;
  }
  return nullptr;
}

void Board::focus_end(std::optional<PortRef> end) {
  if (end == focused_end_) return;
  focused_end_ = std::move(end);
  emit touch_up();
  emit sentence_changed(sentence());
}

void Board::hover_end(std::optional<PortRef> end) {
  if (end == hovered_end_) return;
  hovered_end_ = std::move(end);
  emit touch_up();
}

void Board::set_pipe_drawing(bool on) {
  if (on == pipe_drawing_) return;
  pipe_drawing_ = on;
  emit redraw();
}

void Board::set_run_type(const std::string& type) {
  if (type == run_type_) return;
  run_type_ = type;
  emit growth_changed();
}

void Board::set_upright_type(const std::string& type) {
  if (type == upright_type_) return;
  upright_type_ = type;
  emit growth_changed();
}

const std::string& Board::type_towards(const Heading& heading) const {
  return std::abs(unit_of(heading).z) > 0.7 ? upright_type_ : run_type_;
}

void Board::set_bend_type(const std::string& type) {
  if (type == bend_type_) return;
  bend_type_ = type;
  emit growth_changed();
}

std::vector<const PieceType*> Board::run_types() const {
  std::vector<const PieceType*> found;
  for (const PieceType& type : document_.library().piece_types) {
    if (type.shape == "run") found.push_back(&type);
  }
  return found;
}

std::vector<const PieceType*> Board::bend_types() const {
  std::vector<const PieceType*> found;
  for (const PieceType& type : document_.library().piece_types) {
    if (type.shape == "bend") found.push_back(&type);
  }
  return found;
}

void Board::take_up(std::unique_ptr<Tool> tool) {
  if (tool_) {
    tool_->put_down();
    retired_.push_back(std::move(tool_));
  }
  tool_ = std::move(tool);
  remark_.clear();
  emit touch_up();
  emit sentence_changed(sentence());
}

void Board::put_down() { take_up(std::make_unique<PointerTool>(*this)); }

void Board::step_back() {
  if (!tool_->step_back()) put_down();
  emit touch_up();
}

bool Board::preview(const EditResult& result) {
  if (!result.design) {
    remark(refusal_sentence(result.refusal));
    return false;
  }
  document_.preview(*result.design);
  remark({});
  return true;
}

bool Board::commit(const EditResult& result, const QString& text, const QString& merge_key) {
  if (!result.design) {
    document_.cancel_preview();
    remark(refusal_sentence(result.refusal));
    return false;
  }
  document_.commit(*result.design, text, merge_key);
  if (!result.touched.empty()) document_.select(result.touched);
  remark({});
  return true;
}

QString Board::sentence() const {
  if (document_.read_only()) return tr("This design is from a newer version: it is open for reading only.");
  return remark_.isEmpty() ? tool_->sentence() : remark_;
}

void Board::remark(const QString& remark) {
  if (remark == remark_) return;
  remark_ = remark;
  emit sentence_changed(sentence());
}

bool Board::is_run(const PieceId& id) const {
  const Piece* piece = document_.design().piece(id);
  const PieceType* type = piece == nullptr ? nullptr : document_.library().piece_type(piece->type);
  return type != nullptr && type->shape == "run";
}

std::optional<OpenEnd> Board::open_end_of(const Design& design, const PieceId& piece) const {
  for (OpenEnd& open : open_ends(design, document_.library())) {
    if (open.ref.piece == piece) return std::move(open);
  }
  return std::nullopt;
}

}  // namespace fluewright
