// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/said_library.hpp"

#include "app/shared/design_file.hpp"
#include "app/shared/library_reader.hpp"
#include "app/shared/price_reader.hpp"
#include "app/shared/said.hpp"
#include "engine/advice/practice.hpp"
#include "engine/burn/burn_plan.hpp"
#include "engine/layout/finding.hpp"

#include <algorithm>
#include <set>

namespace fluewright {

namespace {

using Visit = std::function<void(std::string&)>;

void visit_field(FieldSpec& field, const Visit& visit) {
  visit(field.label);
  visit(field.help);
  visit(field.citation.source);
}

template <class Entry>
void visit_named(std::vector<Entry>& entries, const Visit& visit) {
  for (Entry& entry : entries) {
    visit(entry.name);
    visit(entry.citation.source);
  }
}

/// "will_not_draw" as people read it: "will not draw".
std::string read_aloud(std::string_view code) {
  std::string words(code);
  std::replace(words.begin(), words.end(), '_', ' ');
  return words;
}

}  // namespace

void visit_texts(Library& library, const Visit& visit) {
  for (Material& material : library.materials) {
    visit(material.name);
    visit(material.thermal_citation.source);
    visit(material.roughness_citation.source);
    visit(material.emissivity_citation.source);
  }
  visit_named(library.walls, visit);
  visit_named(library.woods, visit);
  visit_named(library.moisture_states, visit);
  visit_named(library.fans, visit);
  for (UsualBurnRate& usual : library.burn_rates) visit(usual.citation.source);
  for (PieceType& type : library.piece_types) {
    visit(type.name);
    visit(type.summary);
    for (Citation& citation : type.citations) visit(citation.source);
    for (FieldSpec& field : type.fields) visit_field(field, visit);
  }
  for (FieldSpec& field : library.fan_fields) visit_field(field, visit);
  for (FieldSpec& condition : library.conditions) visit_field(condition, visit);
}

void visit_texts(Design& design, const Visit& visit) {
  visit(design.title);
  visit(design.scene);
  visit(design.notes);
  for (Piece& piece : design.pieces) {
    visit(piece.label);
    visit(piece.notes);
  }
}

Library said_library(Library library) {
  visit_texts(library, [](std::string& text) { text = said(text); });
  return library;
}

std::vector<std::string> texts_of_data() {
  std::set<std::string> texts;
  Library library = *shipped_library();
  visit_texts(library, [&texts](std::string& text) { texts.insert(text); });
  const auto add_choices = [&texts](const std::vector<FieldSpec>& fields) {
    for (const FieldSpec& field : fields) {
      for (const std::string& choice : field.choices) texts.insert(read_aloud(choice));
    }
  };
  for (const PieceType& type : library.piece_types) add_choices(type.fields);
  add_choices(library.fan_fields);
  add_choices(library.conditions);
  for (const Demo& demo : shipped_demos()) {
    texts.insert({demo.title, demo.scene});
    ReadResult read = read_design_text(demo.text, library);
    if (auto* document = std::get_if<DesignDocument>(&read)) {
      visit_texts(document->design, [&texts](std::string& text) { texts.insert(text); });
    }
  }
  texts.insert(shipped_prices().citation.source);
  for (int i = 0; !finding_name(static_cast<FindingCode>(i)).empty(); ++i) {
    texts.insert(read_aloud(finding_name(static_cast<FindingCode>(i))));
    texts.insert(finding_source(static_cast<FindingCode>(i)).source);
  }
  for (const Starter& starter : starters) texts.insert(std::string(starter.name));
  for (const PlanPreset& preset : plan_presets) texts.insert({std::string(preset.name), std::string(preset.story)});
  texts.erase(std::string());
  return {texts.begin(), texts.end()};
}

}  // namespace fluewright
