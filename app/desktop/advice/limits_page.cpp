// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/advice/limits_page.hpp"

#include "app/desktop/advice/limit_plot.hpp"
#include "app/desktop/fields/make_field.hpp"
#include "app/drawing/tr.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace fluewright {

namespace {

constexpr std::size_t curve_points = 40;

FieldSpec wanted_margin_spec() {
  FieldSpec spec;
  spec.key = "wanted_margin";
  spec.label = said("Draft to spare");
  spec.help = said("What the margin is to be at the limit, at the worst of the three bench ages.");
  spec.kind = FieldKind::pressure;
  spec.fallback = marginal_below;
  spec.lowest = FieldValue(-50.0 * pascal);
  spec.highest = FieldValue(100.0 * pascal);
  spec.citation = {said("under 2 Pa a path that draws is called marginal"), Standing::common_practice};
  return spec;
}

QString from(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

}  // namespace

LimitsPage::LimitsPage(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      kind_(new QuietCombo(this)),
      margin_(make_field(wanted_margin_spec(), this)),
      words_(new QLabel(this)),
      state_(new QLabel(this)),
      stop_(new QPushButton(tr("Stop"), this)),
      plot_(new LimitPlot(this)),
      task_(new BackgroundTask(this)) {
  setObjectName(QStringLiteral("limits_page"));
  kind_->setObjectName(QStringLiteral("limit_kind"));
  kind_->setAccessibleName(tr("Limit"));
  for (const LimitKind kind : limit_kinds) kind_->addItem(from(limit_title(kind)), static_cast<int>(kind));
  words_->setObjectName(QStringLiteral("limit_words"));
  words_->setWordWrap(true);
  words_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  state_->setProperty("role", "caption");
  state_->setObjectName(QStringLiteral("limit_state"));
  state_->setWordWrap(true);
  stop_->setObjectName(QStringLiteral("stop_limit"));
  stop_->setToolTip(tr("The quick estimate stays; the points worked out so far too"));
  stop_->hide();
  auto* side = new QVBoxLayout;
  side->setContentsMargins(12, 8, 8, 6);
  side->setSpacing(6);
  side->addWidget(kind_);
  side->addWidget(margin_);
  side->addWidget(words_, 1);
  auto* foot = new QHBoxLayout;
  foot->addWidget(state_, 1);
  foot->addWidget(stop_);
  side->addLayout(foot);
  auto* box = new QWidget(this);
  box->setLayout(side);
  box->setFixedWidth(300);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(0);
  row->addWidget(box);
  row->addWidget(plot_, 1);

  soon_.setSingleShot(true);
  soon_.setInterval(40);
  connect(&soon_, &QTimer::timeout, this, &LimitsPage::search);
  connect(kind_, &QComboBox::currentIndexChanged, this, &LimitsPage::follow);
  connect(margin_, &Field::asked, this, [this](const FieldValue& value) {
    wanted_ = std::get<Pressure>(value);
    margin_->show_value(value, document_.units());
    follow();
  });
  connect(&document_, &Document::changed, this, &LimitsPage::follow);
  connect(&document_, &Document::units_changed, this, [this] {
    margin_->show_value(wanted_, document_.units());
    if (!answer_) return;
    const Stage stage = stage_;
    const auto refined = refined_answer_;
    const std::vector<LimitPoint> points = refined_;
    tell(*answer_, stage);
    refined_ = points;
    if (!points.empty()) plot_->show_refined(points);
    if (refined) finish(*refined);
  });
  connect(stop_, &QPushButton::clicked, this, &LimitsPage::stop);
  connect(task_, &BackgroundTask::ended, this, &LimitsPage::say_state);
  margin_->show_value(wanted_, document_.units());
}

LimitKind LimitsPage::kind() const { return static_cast<LimitKind>(kind_->currentData().toInt()); }

void LimitsPage::choose(LimitKind kind) { kind_->setCurrentIndex(kind_->findData(static_cast<int>(kind))); }

void LimitsPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  follow();
}

void LimitsPage::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  soon_.stop();
  if (task_->runs()) stop();
}

void LimitsPage::follow() {
  if (!isVisible() || (answered_ && *answered_ == question())) return;
  answered_.reset();
  soon_.start();
}

void LimitsPage::search() {
  const bool has_answer = document_.assessment().verdict.has_value();
  const auto scale = limit_scale(kind(), document_.design(), document_.library(), document_.assessment());
  answered_.reset();
  refined_answer_.reset();
  refined_.clear();
  stage_ = Stage::quick;
  if (!scale) {
    task_->call_off();
    answer_.reset();
    const QString why = QString::fromStdString(no_limit_sentence(kind(), has_answer));
    words_->setText(why);
    plot_->show_nothing(why);
    say_state();
    return;
  }
  in_series_ = has_steps_in_time(document_.assessment());
  task_->start([this, kind = kind(), design = document_.design(), &library = document_.library(), wanted = wanted_,
                scale = *scale](const Courier& courier) {
    const LimitSearch asked{kind, design, library, wanted, curve_points, courier.stop(), {}};
    LimitAnswer quick{kind, wanted, scale, LimitState::never, {}, {}, MarginBy::estimate, limit_curve(asked, scale, quick_slice)};
    if (courier.stop().stop_requested()) return;
    courier.bring([this, quick] { tell(quick, Stage::quick); });
    const auto answer = search_limit(asked);
    if (!answer) return;
    courier.bring([this, answer] { tell(*answer, Stage::estimated); });
    const auto refined = refined_limit(asked, *answer, [this, &courier](std::size_t, const LimitPoint& point) {
      courier.bring([this, point] { take(point); });
    });
    if (refined) courier.bring([this, refined] { finish(*refined); });
  });
  say_state();
}

void LimitsPage::tell(const LimitAnswer& answer, Stage stage) {
  answer_ = answer;
  stage_ = stage;
  plot_->show_answer(answer, document_.units());
  if (stage != Stage::quick) words_->setText(QString::fromStdString(limit_sentence(answer, document_.design(), document_.units())));
  say_state();
}

void LimitsPage::take(const LimitPoint& point) {
  stage_ = Stage::refining;
  const auto place = std::upper_bound(refined_.begin(), refined_.end(), limit_number(point.x),
                                      [](double x, const LimitPoint& p) { return x < limit_number(p.x); });
  refined_.insert(place, point);
  plot_->show_refined(refined_);
  say_state();
}

/// The limit in time takes the place of the estimated one; the estimated curve stays behind it.
void LimitsPage::finish(const LimitAnswer& refined) {
  refined_answer_ = refined;
  LimitAnswer shown = refined;
  shown.curve = answer_->curve;
  plot_->show_answer(shown, document_.units());
  refined_ = refined.curve;
  plot_->show_refined(refined_);
  words_->setText(QString::fromStdString(limit_sentence(refined, document_.design(), document_.units())));
  stage_ = Stage::refined;
  answered_ = question();
  say_state();
}

void LimitsPage::stop() {
  task_->call_off();
  if (stage_ == Stage::refining || stage_ == Stage::estimated) stage_ = Stage::stopped;
  say_state();
}

void LimitsPage::say_state() {
  const bool runs = task_->runs();
  stop_->setVisible(runs && (stage_ == Stage::refining || stage_ == Stage::estimated));
  const std::size_t of = answer_ ? answer_->curve.size() : 0;
  if (!answer_ && !runs) {
    state_->clear();
  } else if (stage_ == Stage::quick) {
    state_->setText(answer_ ? tr("quick curve; working…") : tr("working…"));
  } else if (stage_ == Stage::refined) {
    state_->setText(tr("worked out step by step in time, the worst of three bench ages; dotted: the quick estimate"));
  } else if (stage_ == Stage::stopped) {
    state_->setText(tr("stopped after %1 of %2 points in time; the limit is that of the quick estimate").arg(refined_.size()).arg(of));
  } else if (runs) {
    state_->setText(tr("quick estimate; worked out in time: %1 of %2 points").arg(refined_.size()).arg(of));
  } else {
    state_->setText(in_series_ ? tr("quick estimate, the worst of three bench ages")
                               : tr("quick estimate, the worst of three bench ages; a path that branches has no steps in time"));
  }
}

}  // namespace fluewright
