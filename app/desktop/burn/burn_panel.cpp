// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/burn_panel.hpp"

#include "app/desktop/burn/burn_plot.hpp"
#include "app/desktop/burn/burn_strip.hpp"
#include "app/desktop/burn/event_editor.hpp"
#include "app/desktop/burn/fan_words.hpp"
#include "app/desktop/burn/lane_bar.hpp"
#include "app/desktop/burn/slice_picture.hpp"
#include "app/desktop/fields/scroll_column.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/burn_file.hpp"
#include "app/shared/burn_report.hpp"
#include "app/shared/safe_save.hpp"

#include <QApplication>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>

namespace fluewright {

namespace {

constexpr int most_reasons = 3;

QFrame* rule() {
  auto* line = new QFrame;
  line->setFrameShape(QFrame::HLine);
  return line;
}

QLabel* banner(const QString& name) {
  auto* label = new QLabel;
  label->setObjectName(name);
  label->setWordWrap(true);
  label->setContentsMargins(12, 4, 12, 4);
  label->hide();
  return label;
}

QStringList lines_of(const std::vector<std::string>& messages) {
  QStringList lines;
  for (const std::string& message : messages) lines << QString::fromStdString(message);
  return lines;
}

}  // namespace

BurnPanel::BurnPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      book_(document),
      strip_(new BurnStrip(book_)),
      warning_(banner(QStringLiteral("burn_warning"))),
      refusal_(banner(QStringLiteral("burn_refusal"))),
      bar_(new LaneBar(book_, sight_)),
      plot_(new BurnPlot(sight_)),
      editor_(new EventEditor(book_)),
      slice_(new SlicePicture(book_)) {
  setObjectName(QStringLiteral("burn"));
  build();
  sight_.set_length(book_.plan().length);
  connect(bar_, &LaneBar::said, strip_, &BurnStrip::say);
  connect(strip_, &BurnStrip::refused, this, [this](const QString& sentence) { refuse(sentence, {}); });
  connect(strip_, &BurnStrip::open_wanted, this, &BurnPanel::choose_plan);
  connect(strip_, &BurnStrip::save_wanted, this, &BurnPanel::choose_place);
  connect(editor_, &EventEditor::weather_wanted, this, &BurnPanel::choose_weather);
  connect(plot_, &BurnPlot::time_chosen, this, [this](Time at) {
    bar_->setFocus(Qt::MouseFocusReason);
    book_.go_to(at);
  });
  connect(&book_, &BurnBook::time_changed, this, [this] {
    plot_->set_cursor(book_.now());
    if (book_.playing()) sight_.keep_in_sight(book_.now());
  });
  connect(&book_, &BurnBook::plan_changed, this, [this] {
    sight_.set_length(book_.plan().length);
    refusal_->hide();
    show_warning();
  });
  connect(&book_, &BurnBook::run_changed, this, &BurnPanel::show_run);
  connect(&document, &Document::units_changed, this, &BurnPanel::show_run);
  connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { follow_focus(now); });
  show_run();
}

// The focus still wanders while the parts of the panel go.
BurnPanel::~BurnPanel() { disconnect(qApp, nullptr, this, nullptr); }

void BurnPanel::build() {
  auto* charts = new QScrollArea;
  charts->setAccessibleName(tr("Curves over time"));
  charts->setWidget(plot_);
  charts->setWidgetResizable(true);
  charts->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  charts->setVerticalScrollBarPolicy(Qt::ScrollBarAsNeeded);
  charts->setFrameShape(QFrame::NoFrame);
  charts->setMinimumHeight(60);
  auto* times = new QWidget;
  auto* time_column = new QVBoxLayout(times);
  time_column->setContentsMargins(0, 0, 0, 0);
  time_column->setSpacing(0);
  time_column->addWidget(bar_);
  time_column->addWidget(rule());
  time_column->addWidget(charts, 1);
  auto* side = new QSplitter(Qt::Vertical);
  side->setChildrenCollapsible(true);
  side->setHandleWidth(1);
  side->addWidget(scroll_column(editor_, tr("Event"), side));
  side->addWidget(slice_);
  side->setStretchFactor(0, 1);
  side->setSizes({220, 150});
  auto* across = new QSplitter(Qt::Horizontal);
  across->setObjectName(QStringLiteral("burn_across"));
  across->setChildrenCollapsible(false);
  across->setHandleWidth(1);
  across->addWidget(times);
  across->addWidget(side);
  across->setStretchFactor(0, 1);
  across->setSizes({780, 290});
  side->setMinimumWidth(230);
  times->setMinimumWidth(360);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(warning_);
  column->addWidget(refusal_);
  column->addWidget(strip_);
  column->addWidget(rule());
  column->addWidget(across, 1);
}

void BurnPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  book_.set_open(true);
}

void BurnPanel::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  book_.set_open(false);
}

// What is worked on is what Undo undoes.
void BurnPanel::follow_focus(const QWidget* now) {
  if (now == nullptr) return;
  QUndoGroup& group = book_.document().undo_group();
  group.setActiveStack(isAncestorOf(now) ? &book_.undo_stack() : &book_.document().undo_stack());
}

void BurnPanel::show_run() {
  const KeptBurn* kept = book_.kept();
  const Document& document = book_.document();
  const BurnRecord* record = kept != nullptr ? kept->record.get() : nullptr;
  plot_->set_empty_words(book_.running() ? tr("The charts appear when the run is done.") : tr("The charts appear once there is a run."));
  if (record != drawn_ || document.units() != drawn_units_ || book_.stale() != drawn_stale_) {
    drawn_ = record;
    drawn_units_ = document.units();
    drawn_stale_ = book_.stale();
    plot_->show_picture(record != nullptr ? burn_picture(*record, kept->design, document.library(), drawn_units_) : BurnPicture{}, drawn_stale_);
    plot_->set_cursor(book_.now());
  }
  show_warning();
}

// Above all else: that the draft hangs on the fan. Then what is wrong with the time line or the run.
void BurnPanel::show_warning() {
  const KeptBurn* kept = book_.kept();
  const Document& document = book_.document();
  QStringList words;
  QString tone = QStringLiteral("fault");
  if (kept != nullptr && kept->fan) {
    const FanStatement fan = fan_statement(*kept->fan, kept->standard, document.units());
    if (!fan.unsafe) tone = kept->fan->holds() ? QStringLiteral("calm") : QStringLiteral("caution");
    words << QStringLiteral("%1<b>%2</b> %3").arg(fan.unsafe ? QStringLiteral("▲ ") : QString(), fan.headline.toHtmlEscaped(), fan.detail.toHtmlEscaped());
    if (book_.stale()) {
      words.last().prepend(tr("Before the last edit: "));
      tone = QString();
    }
  }
  if (!book_.faults().empty()) {
    tone = QStringLiteral("fault");
    const auto& faults = book_.faults();
    for (std::size_t i = 0; i < faults.size() && i < static_cast<std::size_t>(most_reasons); ++i) {
      words << QStringLiteral("▲ ") + QString::fromStdString(sentence(faults[i], document.design(), document.library())).toHtmlEscaped();
    }
    if (faults.size() > static_cast<std::size_t>(most_reasons)) words << tr("… and %1 more.").arg(faults.size() - most_reasons);
  } else if (kept != nullptr && !book_.stale() && kept->record->end != BurnEnd::done) {
    tone = QStringLiteral("fault");
    words << QStringLiteral("▲ ") + spoken(sentence(kept->record->end));
  }
  warning_->setText(words.join(QStringLiteral("<br>")));
  if (warning_->property("tone").toString() != tone) {
    warning_->setProperty("tone", tone);
    warning_->setStyleSheet(QStringLiteral(" "));  // the tone's rule is looked up again
    warning_->setStyleSheet(QString());
  }
  warning_->setVisible(!words.isEmpty());
}

void BurnPanel::refuse(const QString& what, const QStringList& why) {
  QStringList words{QStringLiteral("▲ ") + what};
  words << why.mid(0, most_reasons);
  if (why.size() > most_reasons) words << tr("… and %1 more.").arg(why.size() - most_reasons);
  refusal_->setTextFormat(Qt::PlainText);
  refusal_->setProperty("tone", "fault");
  refusal_->setText(words.join(QLatin1Char('\n')));
  refusal_->show();
}

bool BurnPanel::open_plan(const QString& path) {
  PlanReadResult read = read_plan_file(std::filesystem::path(path.toStdU16String()));
  if (const auto* fault = std::get_if<FileFault>(&read)) {
    refuse(tr("“%1” was not taken.").arg(QFileInfo(path).fileName()), lines_of(fault->messages));
    return false;
  }
  book_.adopt(std::get<BurnPlan>(std::move(read)), tr("Open a time line"));
  return true;
}

bool BurnPanel::save_plan(const QString& path) {
  const auto failure = save_safely(std::filesystem::path(path.toStdU16String()), write_plan_text(book_.plan()));
  if (failure) refuse(tr("“%1” was not saved.").arg(QFileInfo(path).fileName()), {QString::fromStdString(*failure)});
  return !failure;
}

bool BurnPanel::open_weather(const QString& path) {
  const QString name = QFileInfo(path).fileName();
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) {
    refuse(tr("The weather file “%1” cannot be opened.").arg(name), {});
    return false;
  }
  WeatherResult weather = read_weather_text(file.readAll().toStdString(), name.toStdString());
  if (const auto* fault = std::get_if<FileFault>(&weather)) {
    refuse(tr("“%1” was not taken.").arg(name), lines_of(fault->messages));
    return false;
  }
  BurnPlan plan = book_.plan();
  plan.outdoors = std::get<std::vector<OutdoorPoint>>(std::move(weather));
  book_.commit(std::move(plan), tr("Take a weather file"));
  return true;
}

void BurnPanel::choose_plan() {
  const QString path = QFileDialog::getOpenFileName(window(), tr("Open a time line"), {}, tr("Time lines (*.fluburn);;All files (*)"));
  if (!path.isEmpty()) open_plan(path);
}

void BurnPanel::choose_place() {
  QString path = QFileDialog::getSaveFileName(window(), tr("Save the time line as"), {}, tr("Time lines (*.fluburn);;All files (*)"));
  if (path.isEmpty()) return;
  if (QFileInfo(path).suffix().isEmpty()) path += QString::fromUtf8(burn_file_suffix.data(), static_cast<qsizetype>(burn_file_suffix.size()));
  save_plan(path);
}

void BurnPanel::choose_weather() {
  const QString path = QFileDialog::getOpenFileName(window(), tr("Take a weather file"), {}, tr("Comma-separated values (*.csv);;All files (*)"));
  if (!path.isEmpty()) open_weather(path);
}

}  // namespace fluewright
