// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/advice/limits_page.hpp"

#include "app/desktop/advice/limit_plot.hpp"
#include "app/desktop/fields/make_field.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace fluewright {

namespace {

constexpr std::size_t curve_points = 40;

FieldSpec wanted_margin_spec() {
  FieldSpec spec;
  spec.key = "wanted_margin";
  spec.label = "Draft to spare";
  spec.help = "What the margin is to be at the limit, at the worst of the three bench ages.";
  spec.kind = FieldKind::pressure;
  spec.fallback = marginal_below;
  spec.lowest = FieldValue(-50.0 * pascal);
  spec.highest = FieldValue(100.0 * pascal);
  spec.citation = {"under 2 Pa a path that draws is called marginal", Standing::common_practice};
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
      plot_(new LimitPlot(this)),
      task_(new BackgroundTask(this)) {
  setObjectName(QStringLiteral("limits_page"));
  kind_->setObjectName(QStringLiteral("limit_kind"));
  kind_->setAccessibleName(QStringLiteral("Limit"));
  for (const LimitKind kind : limit_kinds) kind_->addItem(from(limit_title(kind)), static_cast<int>(kind));
  words_->setObjectName(QStringLiteral("limit_words"));
  words_->setWordWrap(true);
  words_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  state_->setProperty("role", "caption");
  auto* side = new QVBoxLayout;
  side->setContentsMargins(12, 8, 8, 6);
  side->setSpacing(6);
  side->addWidget(kind_);
  side->addWidget(margin_);
  side->addWidget(words_, 1);
  side->addWidget(state_);
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
    if (answer_) tell(answer_, final_);
  });
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
  task_->call_off();
}

void LimitsPage::follow() {
  if (!isVisible()) return;
  soon_.start();
}

void LimitsPage::search() {
  const bool has_answer = document_.assessment().verdict.has_value();
  const auto scale = limit_scale(kind(), document_.design(), document_.library(), document_.assessment());
  if (!scale) {
    task_->call_off();
    answer_.reset();
    const QString why = QString::fromStdString(no_limit_sentence(kind(), has_answer));
    words_->setText(why);
    state_->clear();
    plot_->show_nothing(why);
    return;
  }
  state_->setText(QStringLiteral("working…"));
  task_->start([this, kind = kind(), design = document_.design(), &library = document_.library(), wanted = wanted_,
                scale = *scale](const Courier& courier) {
    const LimitSearch asked{kind, design, library, wanted, curve_points, courier.stop(), {}};
    LimitAnswer quick{kind, wanted, scale, LimitState::never, {}, {}, limit_curve(asked, scale, quick_slice)};
    if (courier.stop().stop_requested()) return;
    courier.bring([this, quick] { tell(quick, false); });
    const auto answer = search_limit(asked);
    if (answer) courier.bring([this, answer] { tell(answer, true); });
  });
}

void LimitsPage::tell(const std::optional<LimitAnswer>& answer, bool final) {
  answer_ = answer;
  final_ = final;
  plot_->show_answer(*answer, document_.units());
  if (final) words_->setText(QString::fromStdString(limit_sentence(*answer, document_.design(), document_.units())));
  state_->setText(final ? QStringLiteral("the worst of three bench ages") : QStringLiteral("quick curve; working…"));
}

}  // namespace fluewright
