// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/editors/fire_extras.hpp"

#include "app/desktop/editors/conditions_editor.hpp"
#include "app/desktop/editors/edit_words.hpp"
#include "app/desktop/fields/field_words.hpp"
#include "app/desktop/fields/pick_field.hpp"
#include "app/desktop/fields/quantity_field.hpp"
#include "app/drawing/tr.hpp"
#include "engine/layout/edit.hpp"

#include <algorithm>

namespace fluewright {

namespace {

constexpr std::string_view choke_key = "free_share";
constexpr std::string_view burn_rate_key = "fire.burn_rate";
constexpr std::string_view moisture_key = "fire.moisture";

FieldSpec moisture_words_spec() {
  FieldSpec spec;
  spec.key = "moisture_words";
  spec.label = said("Moisture in words");
  spec.help = said("Picking a word puts its usual moisture into the field above.");
  spec.kind = FieldKind::choice;
  spec.fallback = std::string{};
  return spec;
}

/// The bore that most pieces of the drawing have.
std::optional<Length> main_bore(const Design& design, const Library& library) {
  std::optional<Length> bore;
  std::map<double, int> pieces;
  for (const Piece& piece : design.pieces) {
    const PieceType* type = library.piece_type(piece.type);
    if (!type) continue;
    const PieceView view(design, library, piece, *type);
    if (view.has("bore")) ++pieces[in(view.length("bore"), millimetre)];
  }
  const auto most =
      std::max_element(pieces.begin(), pieces.end(), [](const auto& a, const auto& b) { return a.second < b.second; });
  if (most != pieces.end()) bore = most->first * millimetre;
  return bore;
}

}  // namespace

FireExtras::FireExtras(Document& document, ConditionsEditor& sheet)
    : QObject(&sheet),
      document_(document),
      sheet_(sheet),
      moisture_words_(new PickField(moisture_words_spec(), sheet.body())) {
  sheet_.add(moisture_words_, sheet_.field("fire.wanted_excess_air"));
  connect(moisture_words_, &Field::asked, this, [this](const FieldValue& value, const QString& key) {
    for (const MoistureState& state : document_.library().moisture_states) {
      if (state.id != std::get<std::string>(value)) continue;
      Design design = document_.design();
      design.fire.moisture = state.usual;
      document_.commit(std::move(design), tr("Set moisture"), key);
    }
  });
  connect(&document_, &Document::changed, this, &FireExtras::refresh);
  connect(&document_, &Document::units_changed, this, &FireExtras::refresh);
  connect(&document_, &Document::file_changed, this, &FireExtras::refresh);
  refresh();
}

void FireExtras::refresh() {
  show_usual_burn_rate();
  show_moisture_words();
  show_choke();
}

void FireExtras::show_usual_burn_rate() {
  Field* field = sheet_.field(burn_rate_key);
  const auto bore = main_bore(document_.design(), document_.library());
  const auto& rates = document_.library().burn_rates;
  if (!field || !bore || rates.empty()) return;
  const auto nearest =
      std::min_element(rates.begin(), rates.end(), [&](const UsualBurnRate& a, const UsualBurnRate& b) {
        return bu::abs(a.bore - *bore) < bu::abs(b.bore - *bore);
      });
  const QString at = QString::fromStdString(show(nearest->bore, document_.units()).text());
  field->set_usual(FieldValue{nearest->low}, FieldValue{nearest->high}, nearest->citation,
                   tr("at %1").arg(at));
  field->show_value(FieldValue{document_.design().fire.burn_rate}, document_.units());
}

void FireExtras::show_moisture_words() {
  const UnitSystem units = document_.units();
  const Ratio moisture = document_.design().fire.moisture;
  QList<QuietCombo::Option> options;
  std::string now;
  double nearest = 1.0;
  for (const MoistureState& state : document_.library().moisture_states) {
    options.append({QString::fromStdString(state.id),
                    QStringLiteral("%1, %2–%3")
                        .arg(QString::fromStdString(state.name),
                             QString::fromStdString(show(state.usual_low, units, Meaning::share).number),
                             QString::fromStdString(show(state.usual_high, units, Meaning::share).text()))});
    const double away = std::abs(moisture.value() - state.usual.value());
    if (moisture >= state.usual_low && moisture <= state.usual_high && away < nearest) {
      now = state.id;
      nearest = away;
    }
  }
  options.append({QString(), tr("(between the usual words)")});
  moisture_words_->set_options(options);
  moisture_words_->show_value(FieldValue{now}, units);
  moisture_words_->set_read_only(document_.read_only());
}

// The feed may be any piece type that has a free share; its field's spec is the catalogue's.
void FireExtras::show_choke() {
  const Design& design = document_.design();
  const Library& library = document_.library();
  const Piece* feed = nullptr;
  const PieceType* type = nullptr;
  for (const Piece& piece : design.pieces) {
    type = library.piece_type(piece.type);
    if (type && type->field(choke_key)) {
      feed = &piece;
      break;
    }
  }
  if (!feed) {
    feed_.clear();
    if (choke_) choke_->hide();
    return;
  }
  feed_ = feed->id;
  if (!choke_ || choke_type_ != type->id) {
    if (choke_) {
      choke_->hide();
      choke_->deleteLater();
    }
    FieldSpec spec = *type->field(choke_key);
    spec.label = said("Inlet choke: {}", spec.label);
    choke_ = new QuantityField(spec, sheet_.body());
    choke_type_ = type->id;
    sheet_.add(choke_, sheet_.field("fire.unburned_share"));
    connect(choke_, &Field::asked, this, [this](const FieldValue& value, const QString& key) {
      const EditResult result = set_field(document_.design(), document_.library(), feed_, choke_key, value);
      if (result.design)
        document_.commit(*result.design, tr("Set inlet choke"), key);
      else
        choke_->explain(refusal_sentence(result.refusal));
    });
  }
  choke_->show();
  choke_->show_value(PieceView(design, library, *feed, *type).value(choke_key), document_.units());
  choke_->set_read_only(document_.read_only());
}

}  // namespace fluewright
