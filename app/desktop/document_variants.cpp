// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The document's variants, and conditions that are tried out.

#include "app/desktop/design_step.hpp"
#include "app/desktop/document.hpp"

#include <utility>

namespace fluewright {

namespace {

/// The file with another of its variants as the design.
void exchange(DesignDocument& file, std::size_t place) {
  if (place == file.place || place > file.others.size()) return;
  Variant gone{std::move(file.variant_name), std::move(file.design), std::move(file.unknown)};
  const auto at = static_cast<std::ptrdiff_t>(place < file.place ? place : place - 1);
  Variant come = std::move(file.others[static_cast<std::size_t>(at)]);
  file.others.erase(file.others.begin() + at);
  file.others.insert(file.others.begin() + static_cast<std::ptrdiff_t>(file.place < place ? file.place : file.place - 1),
                     std::move(gone));
  file.variant_name = std::move(come.name);
  file.design = std::move(come.design);
  file.unknown = std::move(come.unknown);
  file.place = place;
}

}  // namespace

Document::Trial Document::own_conditions() const {
  const Design& shown = design();
  return {shown.site.outdoor_temperature, shown.room.temperature, shown.fire.burn_rate, shown.fire.moisture,
          shown.room.exhaust_flow};
}

void Document::try_out(const std::optional<Trial>& trial) {
  if (trial == trial_) return;
  trial_ = trial;
  other_answers_.clear();
  refresh();
}

Design Document::tried(Design shown) const {
  if (!trial_) return shown;
  shown.site.outdoor_temperature = trial_->outdoor_temperature;
  shown.room.temperature = trial_->room_temperature;
  shown.fire.burn_rate = trial_->burn_rate;
  shown.fire.moisture = trial_->moisture;
  shown.room.exhaust_flow = trial_->exhaust_flow;
  return shown;
}

Assessment Document::answer(const Design& shown) const { return assess(trial_ ? tried(shown) : shown, *library_); }

QString Document::variant_name(std::size_t place) const {
  const std::string& name = place == file_.place ? file_.variant_name : file_.others[other(place)].name;
  return name.empty() ? tr("Variant %1").arg(place + 1) : QString::fromStdString(name);
}

const Design& Document::variant(std::size_t place) const {
  return place == file_.place ? design() : file_.others[other(place)].design;
}

const Assessment& Document::variant_assessment(std::size_t place) const {
  if (place == file_.place) return assessment_;
  other_answers_.resize(file_.others.size());
  auto& kept = other_answers_[other(place)];
  if (!kept) kept = answer(file_.others[other(place)].design);
  return *kept;
}

void Document::fork_variant(const QString& name) {
  if (file_.read_only) return;
  cancel_preview();
  DesignDocument after = file_;
  if (after.variant_name.empty()) after.variant_name = variant_name(file_.place).toStdString();
  after.others.insert(after.others.begin() + static_cast<std::ptrdiff_t>(after.place),
                      {after.variant_name, after.design, after.unknown});
  // The copy goes to the end and lies on the desk.
  after.variant_name = name.toStdString();
  after.place = after.others.size();
  undo_stack_.push(new VariantStep(*this, file_, std::move(after), tr("Fork “%1”").arg(name)));
}

void Document::name_variant(std::size_t place, const QString& name) {
  if (file_.read_only || place >= variant_count() || variant_name(place) == name) return;
  cancel_preview();
  DesignDocument after = file_;
  (place == file_.place ? after.variant_name : after.others[other(place)].name) = name.toStdString();
  undo_stack_.push(new VariantStep(*this, file_, std::move(after), tr("Name “%1”").arg(name)));
}

void Document::remove_variant(std::size_t place) {
  if (file_.read_only || file_.others.empty() || place >= variant_count()) return;
  cancel_preview();
  const QString text = tr("Take out “%1”").arg(variant_name(place));
  DesignDocument after = file_;
  if (place == after.place) exchange(after, place == 0 ? 1 : place - 1);
  const std::size_t gone = place < after.place ? place : place - 1;
  after.others.erase(after.others.begin() + static_cast<std::ptrdiff_t>(gone));
  if (place < after.place) --after.place;
  undo_stack_.push(new VariantStep(*this, file_, std::move(after), text));
}

void Document::change_over(std::size_t place) {
  if (place == file_.place || place >= variant_count()) return;
  cancel_preview();
  put_on_desk(place);
  refresh();
}

void Document::put_on_desk(std::size_t place) {
  if (place == file_.place) return;
  preview_.reset();
  exchange(file_, place);
  other_answers_.clear();
  emit variants_changed();
}

void Document::become(const DesignDocument& file) {
  preview_.reset();
  file_ = file;
  other_answers_.clear();
  refresh();
  emit variants_changed();
}

}  // namespace fluewright
