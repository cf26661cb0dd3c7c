// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/editors/piece_editor.hpp"

#include "app/desktop/editors/edit_words.hpp"
#include "app/desktop/editors/fan_panel.hpp"
#include "app/desktop/fields/field_words.hpp"
#include "app/desktop/fields/make_field.hpp"
#include "app/desktop/fields/pick_field.hpp"
#include "app/desktop/fields/text_field.hpp"
#include "app/desktop/language/language.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/words.hpp"
#include "engine/layout/edit.hpp"
#include "engine/pieces/shape.hpp"

#include <QEvent>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <array>

namespace fluewright {

namespace {

constexpr std::array turns{Turn::left, Turn::right, Turn::up, Turn::down};

FieldSpec words_spec(std::string key, std::string label, std::string help, FieldKind kind = FieldKind::choice) {
  FieldSpec spec;
  spec.key = std::move(key);
  spec.label = std::move(label);
  spec.help = std::move(help);
  spec.kind = kind;
  spec.fallback = std::string{};
  spec.citation = {said("your drawing"), Standing::chosen};
  return spec;
}

/// Where the piece leads when turned so: the direction of the first port that the turn moves.
std::optional<Heading> leads(const Design& design, const Library& library, const PieceType& type, Piece piece,
                             Turn turn) {
  const Shape* shape = find_shape(type.shape);
  if (!shape) return std::nullopt;
  const auto ports_for = [&](Turn t) {
    piece.turn = t;
    return shape->geometry(PieceView(design, library, piece, type)).ports;
  };
  const auto here = ports_for(turn);
  const auto other = ports_for(turn == Turn::left ? Turn::right : Turn::left);
  for (std::size_t i = 0; i < here.size() && i < other.size(); ++i) {
    if (!same_direction(here[i].outward, other[i].outward)) return here[i].outward;
  }
  return std::nullopt;
}

}  // namespace

PieceEditor::PieceEditor(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      pages_(new QStackedWidget(this)),
      nothing_(new QLabel(this)),
      sheet_(new FieldSheet(this)),
      title_(new QLabel),
      summary_(new QLabel),
      type_(new PickField(
          words_spec("type", said("Kind"), said("Put another piece of the same family in its place; the path stays connected.")))),
      turn_(new PickField(words_spec("turn", said("Turns"), said("Which way the gas, or the branch, leaves the piece.")))),
      fan_(new FanPanel(document, *sheet_)),
      name_(new TextField(
          words_spec("label", said("Own name"), said("What you call this piece; it stands on the drawing and on the sheet.")))),
      notes_label_(new QLabel(tr("Notes"))),
      notes_(new QPlainTextEdit),
      remove_(new QPushButton(tr("Take out"))) {
  setObjectName(QStringLiteral("piece_editor"));
  nothing_->setText(
      tr("No piece is selected.\n\nClick a piece on the drawing, on the plot or in the list of "
                     "findings: its sizes, walls and surroundings can be changed here."));
  nothing_->setWordWrap(true);
  nothing_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  nothing_->setProperty("role", "caption");
  nothing_->setMargin(14);

  title_->setProperty("role", "heading");
  title_->setObjectName(QStringLiteral("piece_title"));
  title_->setWordWrap(true);
  summary_->setWordWrap(true);
  summary_->setProperty("role", "caption");
  notes_->setAccessibleName(tr("Notes"));
  notes_->setPlaceholderText(tr("Anything worth remembering about this piece"));
  notes_->setFixedHeight(4 * fontMetrics().lineSpacing());
  notes_->setTabChangesFocus(true);
  notes_->installEventFilter(this);
  notes_label_->setBuddy(notes_);
  remove_->setToolTip(tr("Take this piece out of the path (Del on the drawing)"));
  remove_->setAutoDefault(false);

  sheet_->add(title_);
  sheet_->add(summary_);
  sheet_->add(type_);
  sheet_->add(turn_);
  sheet_->add(fan_);
  sheet_->add(name_);
  sheet_->add(notes_label_);
  sheet_->add(notes_);
  sheet_->add(remove_);

  pages_->addWidget(nothing_);
  pages_->addWidget(sheet_);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(pages_);

  const Library& library = document_.library();
  connect(type_, &Field::asked, this, [this, &library](const FieldValue& value, const QString& key) {
    const auto& id = std::get<std::string>(value);
    const PieceType* type = library.piece_type(id);
    apply(set_type(document_.design(), library, shown_piece_, id),
          tr("Change to %1").arg(type ? QString::fromStdString(type->name) : QString()), key, type_);
  });
  connect(turn_, &Field::asked, this, [this, &library](const FieldValue& value, const QString& key) {
    const auto place = static_cast<std::size_t>(QString::fromStdString(std::get<std::string>(value)).toUInt());
    apply(set_turn(document_.design(), library, shown_piece_, turns.at(place)), tr("Turn piece"), key,
          turn_);
  });
  connect(name_, &Field::asked, this, [this](const FieldValue& value, const QString& key) {
    Design design = document_.design();
    Piece* piece = design.piece(shown_piece_);
    if (!piece) return;
    piece->label = std::get<std::string>(value);
    document_.commit(std::move(design), tr("Name piece"), key);
  });
  connect(remove_, &QPushButton::clicked, this, [this, &library] {
    apply(remove_piece(document_.design(), library, shown_piece_), tr("Take out %1").arg(title_->text()),
          {}, name_);
  });
  connect(&document_, &Document::changed, this, &PieceEditor::refresh);
  connect(&document_, &Document::selection_changed, this, &PieceEditor::refresh);
  connect(&document_, &Document::units_changed, this, &PieceEditor::refresh);
  connect(&document_, &Document::file_changed, this, &PieceEditor::refresh);
  refresh();
}

void PieceEditor::refresh() {
  const Piece* piece = document_.design().piece(document_.selected());
  const PieceType* type = piece ? document_.library().piece_type(piece->type) : nullptr;
  if (!type) {
    pages_->setCurrentWidget(nothing_);
    shown_piece_.clear();
    return;
  }
  if (piece->id != shown_piece_ || type->id != shown_type_) rebuild(*piece, *type);
  show_values(*piece, *type);
  pages_->setCurrentWidget(sheet_);
}

void PieceEditor::rebuild(const Piece& piece, const PieceType& type) {
  for (Field* field : fields_) {
    field->hide();
    field->deleteLater();
  }
  fields_.clear();
  shown_piece_ = piece.id;
  shown_type_ = type.id;
  shown_notes_ = QString::fromStdString(piece.notes);
  notes_->setPlainText(shown_notes_);
  type_->explain({});
  turn_->explain({});

  QWidget* previous = turn_;
  for (const FieldSpec& spec : type.fields) {
    Field* field = make_field(spec, sheet_->body());
    sheet_->add(field, fan_);
    QWidget::setTabOrder(previous, field);
    previous = field;
    const PieceId id = piece.id;
    connect(field, &Field::asked, this, [this, field, id](const FieldValue& value, const QString& key) {
      apply(set_field(document_.design(), document_.library(), id, field->spec().key, value),
            tr("Set %1").arg(inside_sentence(QString::fromStdString(field->spec().label))), key, field);
    });
    fields_.push_back(field);
  }
  QWidget::setTabOrder(previous, name_);
  QStringList rests_on;
  for (const Citation& citation : type.citations) rests_on << source_words(citation);
  sheet_->note(rests_on.isEmpty() ? QString() : tr("What this piece's losses rest on:"),
               rests_on.join(QStringLiteral(". ")));
}

void PieceEditor::show_values(const Piece& piece, const PieceType& type) {
  const Library& library = document_.library();
  const Design& design = document_.design();
  title_->setText(QString::fromStdString(piece_name(design, library, piece.id)));
  summary_->setText(QString::fromStdString(type.summary));

  QList<QuietCombo::Option> kinds;
  for (const PieceType& other : library.piece_types) {
    if (other.family == type.family)
      kinds.append({QString::fromStdString(other.id), QString::fromStdString(other.name)});
  }
  type_->set_options(kinds);
  type_->show_value(FieldValue{piece.type}, document_.units());
  type_->setVisible(kinds.size() > 1);
  offer_turns(piece, type);
  name_->set_hint(QString::fromStdString(type.name));
  name_->show_value(FieldValue{piece.label}, document_.units());

  const PieceView view(design, library, piece, type);
  const bool read_only = document_.read_only();
  for (Field* field : fields_) {
    offer_options(*field, library, design);
    field->show_value(view.value(field->spec().key), document_.units());
    field->set_read_only(read_only);
  }
  fan_->show_piece(piece.id);
  for (Field* field : std::initializer_list<Field*>{type_, turn_, name_}) field->set_read_only(read_only);
  notes_->setReadOnly(read_only);
  remove_->setEnabled(!read_only);
  const QString notes = QString::fromStdString(piece.notes);
  if (notes != shown_notes_) {
    shown_notes_ = notes;
    notes_->setPlainText(notes);
  }
}

void PieceEditor::offer_turns(const Piece& piece, const PieceType& type) {
  QList<QuietCombo::Option> options;
  const bool upright = std::abs(in(piece.heading.elevation, degree)) > 89.0;
  for (std::size_t i = 0; i < turns.size(); ++i) {
    const auto way = leads(document_.design(), document_.library(), type, piece, turns[i]);
    if (!way) continue;
    // On a vertical piece left and right mean little; the compass says it all.
    QString words = heading_words(*way);
    if (upright)
      words[0] = words[0].toUpper();
    else if (words != turn_word(turns[i]).toLower())
      words = QStringLiteral("%1, %2").arg(turn_word(turns[i]), words);
    else
      words = turn_word(turns[i]);
    options.append({QString::number(i), words});
  }
  turn_->setVisible(options.size() > 1);
  turn_->set_options(options);
  for (std::size_t i = 0; i < turns.size(); ++i) {
    if (turns[i] == piece.turn) turn_->show_value(FieldValue{std::to_string(i)}, document_.units());
  }
}

void PieceEditor::apply(const EditResult& result, const QString& text, const QString& merge_key, Field* field) {
  if (!result.design) {
    refresh();  // lists go back to what the design has; a typed number stays to be mended
    field->explain(refusal_sentence(result.refusal));
    return;
  }
  field->explain({});
  document_.commit(*result.design, text, merge_key);
}

bool PieceEditor::eventFilter(QObject* watched, QEvent* event) {
  if (watched == notes_ && event->type() == QEvent::FocusOut) commit_notes();
  return QWidget::eventFilter(watched, event);
}

void PieceEditor::commit_notes() {
  const QString notes = notes_->toPlainText();
  if (notes == shown_notes_ || document_.read_only()) return;
  Design design = document_.design();
  Piece* piece = design.piece(shown_piece_);
  if (!piece) return;
  shown_notes_ = notes;
  piece->notes = notes.toStdString();
  document_.commit(std::move(design), tr("Write notes"));
}

}  // namespace fluewright
