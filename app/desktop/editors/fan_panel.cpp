// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/editors/fan_panel.hpp"

#include "app/desktop/editors/fan_plot.hpp"
#include "app/desktop/editors/field_sheet.hpp"
#include "app/desktop/fields/field_words.hpp"
#include "app/desktop/fields/make_field.hpp"
#include "app/desktop/fields/text_field.hpp"
#include "app/desktop/language/language.hpp"
#include "app/drawing/tr.hpp"
#include "engine/layout/edit.hpp"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSlider>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

constexpr int flow_column = 0;
constexpr int head_column = 1;
constexpr int least_points = 2;
constexpr int most_points = 60;

QString text(const Shown& shown) { return QString::fromStdString(shown.text()); }

FieldSpec name_spec() {
  FieldSpec spec;
  spec.key = "fan_name";
  spec.label = said("Sheet's name");
  spec.help = said("What you call this data sheet; pieces with a fan offer it.");
  spec.fallback = std::string{};
  spec.kind = FieldKind::choice;
  spec.citation = {said("your own data sheet"), Standing::chosen};
  return spec;
}

/// An id that neither the design nor the library has.
std::string fresh_fan_id(const Design& design, const Library& library) {
  for (int n = 1;; ++n) {
    const std::string id = "fan_" + std::to_string(n);
    const bool taken = std::any_of(design.fans.begin(), design.fans.end(), [&](const FanSheet& s) { return s.id == id; });
    if (!taken && library.fan(id) == nullptr) return id;
  }
}

QWidget* row_of(std::initializer_list<QWidget*> widgets) {
  auto* row = new QWidget;
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  for (QWidget* widget : widgets) line->addWidget(widget);
  line->addStretch(1);
  return row;
}

}  // namespace

FanPanel::FanPanel(Document& document, FieldSheet& sheet)
    : QWidget(sheet.body()),
      document_(document),
      speed_(new QSlider(Qt::Horizontal)),
      speed_words_(new QLabel),
      plot_(new FanPlot),
      today_(new QLabel),
      source_(new QLabel),
      own_(new QPushButton(tr("Write my own data sheet"))),
      writing_(new QWidget),
      name_(new TextField(name_spec())),
      points_(new QTableWidget(0, 2)),
      complaint_(new QLabel),
      add_(new QPushButton(tr("Add point"))),
      remove_(new QPushButton(tr("Remove point"))) {
  setObjectName(QStringLiteral("fan_panel"));
  speed_->setRange(0, 100);
  speed_->setPageStep(10);
  speed_->setObjectName(QStringLiteral("fan_speed"));
  speed_->setAccessibleName(tr("Fan speed"));
  speed_words_->setProperty("role", "caption");
  for (QLabel* words : {today_, source_}) {
    words->setWordWrap(true);
    words->setProperty("role", "caption");
  }
  today_->setObjectName(QStringLiteral("fan_today"));
  complaint_->setWordWrap(true);
  complaint_->setProperty("tone", "fault");
  complaint_->setObjectName(QStringLiteral("fan_complaint"));
  complaint_->hide();
  for (QPushButton* button : {own_, add_, remove_}) button->setAutoDefault(false);
  own_->setObjectName(QStringLiteral("fan_own"));

  points_->setObjectName(QStringLiteral("fan_points"));
  points_->setAccessibleName(tr("Points of the fan curve"));
  points_->verticalHeader()->hide();
  points_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  points_->horizontalHeader()->setFixedHeight(fontMetrics().lineSpacing() + fontMetrics().lineSpacing() / 2);
  points_->horizontalHeader()->setHighlightSections(false);
  points_->verticalHeader()->setDefaultSectionSize(fontMetrics().lineSpacing() + fontMetrics().lineSpacing() / 2);
  points_->setSelectionMode(QAbstractItemView::SingleSelection);
  points_->setTabKeyNavigation(false);

  auto* slider = new QWidget;
  auto* line = new QHBoxLayout(slider);
  line->setContentsMargins(0, 0, 0, 0);
  auto* title = new QLabel(tr("Speed"));
  title->setBuddy(speed_);
  line->addWidget(title);
  line->addWidget(speed_, 1);
  line->addWidget(speed_words_);

  auto* pen = new QVBoxLayout(writing_);
  pen->setContentsMargins(0, 0, 0, 0);
  pen->setSpacing(5);
  pen->addWidget(name_);
  pen->addWidget(points_);
  pen->addWidget(complaint_);
  pen->addWidget(row_of({add_, remove_}));
  const auto attend = [&sheet](Field* field) {
    sheet.note(QString::fromStdString(field->spec().help), source_words(field->spec().citation));
  };
  connect(name_, &Field::attended, this, [this, attend] { attend(name_); });
  for (const FanField& entry : fan_fields()) {
    Field* field = make_field(*document_.library().fan_field(entry.key), writing_);
    pen->addWidget(field);
    fields_.push_back(field);
    connect(field, &Field::attended, this, [field, attend] { attend(field); });
    connect(field, &Field::asked, this, [this, field, &entry](const FieldValue& value, const QString& key) {
      const FanSheet* own = own_sheet();
      if (own == nullptr) return;
      FanSheet changed = *own;
      entry.set(changed, value);
      change_sheet(changed, tr("Set %1 of the fan").arg(inside_sentence(QString::fromStdString(field->spec().label))),
                   key);
    });
  }

  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(5);
  column->addWidget(slider);
  column->addWidget(plot_);
  column->addWidget(today_);
  column->addWidget(source_);
  column->addWidget(row_of({own_}));
  column->addWidget(writing_);

  connect(speed_, &QSlider::valueChanged, this, &FanPanel::set_speed);
  connect(own_, &QPushButton::clicked, this, &FanPanel::make_own);
  connect(add_, &QPushButton::clicked, this, &FanPanel::add_point);
  connect(remove_, &QPushButton::clicked, this, &FanPanel::remove_point);
  connect(points_, &QTableWidget::itemChanged, this, &FanPanel::cell_changed);
  connect(name_, &Field::asked, this, [this](const FieldValue& value, const QString& key) {
    const FanSheet* own = own_sheet();
    if (own == nullptr) return;
    FanSheet changed = *own;
    changed.name = std::get<std::string>(value);
    change_sheet(changed, tr("Name the fan's sheet"), key);
  });
}

const FanSheet* FanPanel::sheet_of_piece() const {
  const Piece* piece = document_.design().piece(piece_);
  const PieceType* type = piece != nullptr ? document_.library().piece_type(piece->type) : nullptr;
  if (type == nullptr || type->field("fan") == nullptr) return nullptr;
  return PieceView(document_.design(), document_.library(), *piece, *type).fan("fan");
}

const FanSheet* FanPanel::own_sheet() const {
  const FanSheet* sheet = sheet_of_piece();
  const auto& own = document_.design().fans;
  const bool is_own = std::any_of(own.begin(), own.end(), [sheet](const FanSheet& s) { return &s == sheet; });
  return is_own ? sheet : nullptr;
}

void FanPanel::show_piece(const PieceId& piece) {
  if (piece_ != piece) complain({});
  piece_ = piece;
  const FanSheet* sheet = sheet_of_piece();
  setVisible(sheet != nullptr);
  if (sheet == nullptr) return;
  const Piece& shown = *document_.design().piece(piece_);
  const PieceView view(document_.design(), document_.library(), shown, *document_.library().piece_type(shown.type));
  show_speed(view);
  show_curve(view);
  show_sheet(*sheet, own_sheet() != nullptr);
}

void FanPanel::show_speed(const PieceView& view) {
  const QSignalBlocker quiet(speed_);
  const Ratio speed = view.ratio("speed");
  // Not while it is being pulled: the hand is ahead of the answer.
  if (!speed_->isSliderDown()) speed_->setValue(static_cast<int>(std::lround(speed.value() * 100.0)));
  speed_->setEnabled(!document_.read_only());
  speed_words_->setText(speed > 0.0 ? text(fluewright::show(speed, document_.units(), Meaning::share)) : tr("off"));
}

void FanPanel::show_curve(const PieceView& view) {
  const FanSheet& sheet = *view.fan("fan");
  const UnitSystem units = document_.units();
  const auto& answers = document_.assessment().fans;
  const auto& pieces = document_.design().pieces;
  const auto answer = std::find_if(answers.begin(), answers.end(), [&](const FanAnswer& a) {
    return a.state.piece < pieces.size() && pieces[a.state.piece].id == piece_;
  });
  FanPlot::Picture picture{{FanCurve{sheet}, view.ratio("speed"), true, false}, sheet.reference_density,
                           Section::circle(view.length("bore")).area(), std::nullopt, units};
  QString words = tr("Not on a path with a fire yet: the curve is for the sheet's own gas.");
  if (answer != answers.end()) {
    picture.gas = answer->state.density;
    picture.flow = answer->state.flow;
    words = tr("Now %1 at %2, %3. Gas up to %4 (rated %5), motor %6 (rated %7). Line: at this speed in this gas; "
                           "dots: the sheet.")
                .arg(text(fluewright::show(answer->state.effect.head - answer->state.effect.loss, units)),
                     text(fluewright::show(answer->state.flow, units)),
                     text(fluewright::show(answer->power, units, Meaning::electric_power)),
                     text(fluewright::show(answer->hottest_gas, units)), text(fluewright::show(sheet.rated_gas, units)),
                     text(fluewright::show(answer->motor, units)), text(fluewright::show(sheet.rated_motor, units)));
  }
  today_->setText(words);
  plot_->show_picture(std::move(picture));
  plot_->setAccessibleDescription(words);
}

void FanPanel::show_sheet(const FanSheet& sheet, bool own) {
  source_->setText(full_stop(source_words(sheet.citation)));
  source_->setVisible(!own);
  own_->setVisible(!own && !document_.read_only());
  writing_->setVisible(own);
  if (!own) return;
  name_->show_value(FieldValue{sheet.name}, document_.units());
  name_->set_read_only(document_.read_only());
  draft_ = sheet.points;
  show_points();
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    offer_options(*fields_[i], document_.library(), document_.design());
    fields_[i]->show_value(fan_fields()[i].get(sheet), document_.units());
    fields_[i]->set_read_only(document_.read_only());
  }
}

void FanPanel::show_points() {
  const QSignalBlocker quiet(points_);
  const UnitSystem units = document_.units();
  const auto title = [&](const char* key, Meaning meaning) {
    return QStringLiteral("%1, %2").arg(QString::fromStdString(document_.library().fan_field(key)->label),
                                        QString::fromStdString(unit_name(meaning, units)));
  };
  points_->setHorizontalHeaderLabels({title("flow", Meaning::volume_flow), title("head", Meaning::pressure)});
  points_->setRowCount(static_cast<int>(draft_.size()));
  for (int row = 0; row < points_->rowCount(); ++row) {
    const FanPoint& point = draft_[static_cast<std::size_t>(row)];
    const auto put = [&](int column, const Shown& shown) {
      auto* item = new QTableWidgetItem(QString::fromStdString(shown.number));
      item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
      // The first point is the head at no flow, always.
      const bool fixed = document_.read_only() || (row == 0 && column == flow_column);
      if (fixed) item->setFlags(item->flags() & ~Qt::ItemIsEditable);
      points_->setItem(row, column, item);
    };
    put(flow_column, fluewright::show(point.flow, units));
    put(head_column, fluewright::show(point.head, units));
  }
  const int lines = std::min(points_->rowCount(), 9);
  points_->setFixedHeight(points_->horizontalHeader()->height() +
                          lines * points_->verticalHeader()->defaultSectionSize() + 2 * points_->frameWidth());
  add_->setEnabled(!document_.read_only() && points_->rowCount() < most_points);
  remove_->setEnabled(!document_.read_only() && points_->rowCount() > least_points);
}

void FanPanel::set_speed(int percent) {
  const EditResult result =
      set_field(document_.design(), document_.library(), piece_, "speed", Ratio{static_cast<double>(percent) / 100.0});
  if (!result.design) return;
  document_.commit(*result.design, tr("Set speed"),
                   QStringLiteral("fan speed %1").arg(QString::fromStdString(piece_)));
}

void FanPanel::make_own() {
  const FanSheet* sheet = sheet_of_piece();
  if (sheet == nullptr) return;
  Design design = document_.design();
  FanSheet own = *sheet;
  own.id = fresh_fan_id(design, document_.library());
  own.name = said("My fan");
  own.citation = {};
  own.citation.standing = Standing::chosen;
  design.fans.push_back(own);
  design.piece(piece_)->fields.insert_or_assign("fan", own.id);
  document_.commit(std::move(design), tr("Write own data sheet"));
}

void FanPanel::cell_changed(QTableWidgetItem* item) {
  const auto row = static_cast<std::size_t>(item->row());
  if (row >= draft_.size()) return;
  const bool is_flow = item->column() == flow_column;
  const FieldSpec& spec = *document_.library().fan_field(is_flow ? "flow" : "head");
  const auto parsed = parse_field(item->text().trimmed().toStdString(), document_.units(), spec.kind, spec.key);
  if (!parsed.value) return complain(QString::fromStdString(parsed.failure.message));
  if (!is_allowed(spec, *parsed.value)) {
    return complain(tr("Point %1, %2: %3 is outside the allowed range of %4, so it is not used")
                        .arg(item->row() + 1)
                        .arg(inside_sentence(QString::fromStdString(spec.label)),
                             value_text(spec, *parsed.value, document_.units()), allowed_words(spec, document_.units())));
  }
  if (is_flow) {
    draft_[row].flow = std::get<VolumeFlow>(*parsed.value);
  } else {
    draft_[row].head = std::get<Pressure>(*parsed.value);
  }
  use_points();
}

/// The draft becomes the sheet if it makes a curve; else it stays in the table with what is wrong beneath.
void FanPanel::use_points() {
  const FanSheet* own = own_sheet();
  if (own == nullptr) return;
  for (std::size_t i = 1; i < draft_.size(); ++i) {
    if (draft_[i].flow > draft_[i - 1].flow) continue;
    return complain(tr("Point %1, flow: %2 is not above the %3 of the point before, so the sheet still has its "
                                   "old points")
                        .arg(i + 1)
                        .arg(text(fluewright::show(draft_[i].flow, document_.units())),
                             text(fluewright::show(draft_[i - 1].flow, document_.units()))));
  }
  if (!makes_a_curve(draft_)) {
    return complain(tr("Every head is 0: at least one must be more, so the sheet still has its old points"));
  }
  complain({});
  FanSheet changed = *own;
  changed.points = draft_;
  change_sheet(changed, tr("Set points of the fan"), {});
}

void FanPanel::add_point() {
  if (draft_.size() < static_cast<std::size_t>(least_points)) return;
  const FanPoint& last = draft_.back();
  const FanPoint& before = draft_[draft_.size() - 2];
  // On along the last two points, as far again, not below nothing.
  FanPoint next{2.0 * last.flow - before.flow, std::max(Pressure(2.0 * last.head - before.head), Pressure{})};
  draft_.push_back(next);
  use_points();
  points_->setCurrentCell(points_->rowCount() - 1, flow_column);
}

void FanPanel::remove_point() {
  const int row = points_->currentRow() >= 0 ? points_->currentRow() : points_->rowCount() - 1;
  if (row == 0) return complain(tr("The first point is the head at no flow; a curve begins there"));
  if (draft_.size() <= static_cast<std::size_t>(least_points)) return;
  draft_.erase(draft_.begin() + row);
  use_points();
}

void FanPanel::change_sheet(const FanSheet& changed, const QString& text, const QString& merge_key) {
  Design design = document_.design();
  const auto sheet =
      std::find_if(design.fans.begin(), design.fans.end(), [&](const FanSheet& s) { return s.id == changed.id; });
  if (sheet == design.fans.end()) return;
  *sheet = changed;
  document_.commit(std::move(design), text, merge_key);
}

void FanPanel::complain(const QString& sentence) {
  complaint_->setText(sentence.isEmpty() ? QString() : QStringLiteral("▲ %1").arg(full_stop(sentence)));
  complaint_->setVisible(!sentence.isEmpty());
}

}  // namespace fluewright
