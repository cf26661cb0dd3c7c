// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/answer/answer_panel.hpp"

#include "app/desktop/answer/answer_words.hpp"
#include "app/desktop/answer/findings_list.hpp"
#include "app/desktop/answer/follower.hpp"
#include "app/desktop/answer/headline.hpp"
#include "app/desktop/answer/value_table.hpp"
#include "app/desktop/fields/scroll_column.hpp"
#include "app/drawing/tr.hpp"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

namespace fluewright {

AnswerPanel::AnswerPanel(Document& document, QWidget* parent) : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("answer"));
  setAccessibleName(tr("Answer"));
  auto* body = new QWidget;
  column_ = new QVBoxLayout(body);
  column_->setContentsMargins(14, 10, 14, 10);
  column_->setSpacing(4);

  power_cut_ = add_label("heading");
  power_cut_->setObjectName(QStringLiteral("power_cut"));
  power_cut_detail_ = add_label(nullptr);
  power_cut_detail_->setObjectName(QStringLiteral("power_cut_detail"));
  margin_ = new Headline(Headline::Size::large, body);
  exit_ = new Headline(Headline::Size::plain, body);
  condensation_ = new Headline(Headline::Size::plain, body);
  margin_->setObjectName(QStringLiteral("headline_margin"));
  exit_->setObjectName(QStringLiteral("headline_exit"));
  condensation_->setObjectName(QStringLiteral("headline_condensation"));
  column_->addWidget(margin_);
  auto* pair = new QHBoxLayout;
  pair->setSpacing(16);
  pair->addWidget(exit_, 5);
  pair->addWidget(condensation_, 6);
  column_->addSpacing(4);
  column_->addLayout(pair);
  missing_ = add_label(nullptr);
  missing_->setObjectName(QStringLiteral("missing"));

  auto* rule = new QFrame(body);
  rule->setFrameShape(QFrame::HLine);
  column_->addSpacing(4);
  column_->addWidget(rule);

  ages_heading_ = add_label("caption");
  ages_heading_->setText(tr("At the wanted burn rate and air, for three ages of the bench"));
  ages_ = new ValueTable(5, 5, body);
  ages_->setObjectName(QStringLiteral("ages"));
  ages_->setAccessibleName(tr("Draft at three bench ages"));
  column_->addWidget(ages_);
  estimate_ = add_label("caption");
  estimate_->setObjectName(QStringLiteral("estimate"));
  estimate_->setToolTip(tr("Estimate: a closed form for a cylinder warming in a mass stands in until the heating-up has been followed in time."));

  column_->addSpacing(6);
  operating_heading_ = add_label("caption");
  operating_heading_->setText(tr("Where it settles by itself, bench charged"));
  operating_ = new ValueTable(4, 2, body);
  operating_->setObjectName(QStringLiteral("operating"));
  operating_->setAccessibleName(tr("Operating point"));
  column_->addWidget(operating_);
  for (int i = 0; i < 3; ++i) remarks_.push_back(add_label(nullptr));

  column_->addSpacing(6);
  branches_heading_ = add_label("caption");
  branches_ = add_label(nullptr);
  branches_->setObjectName(QStringLiteral("branches"));
  branches_->setAccessibleName(tr("Branches"));

  column_->addSpacing(6);
  findings_heading_ = add_label("caption");
  findings_heading_->setText(tr("Worth knowing"));
  findings_ = new FindingsList(document_, body);
  column_->addWidget(findings_);
  column_->addStretch(1);

  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(scroll_column(body, tr("Answer"), this));

  connect(margin_, &Headline::figure_clicked, this, [this] {
    const auto& worst = document_.followed().worst_age;
    if (worst) emit working_wanted(draft_margin(*worst));
  });
  connect(exit_, &Headline::figure_clicked, this, [this] { emit working_wanted(HeadlineNumber::exit_temperature); });
  connect(condensation_, &Headline::figure_clicked, this, [this] { emit working_wanted(HeadlineNumber::condensation); });
  connect(&document_, &Document::changed, this, &AnswerPanel::refresh);
  connect(&document_, &Document::late_answer_came, this, &AnswerPanel::refresh);
  connect(&document_, &Document::units_changed, this, &AnswerPanel::refresh);
  follower_ = new Follower(document_, this);
  connect(follower_, &Follower::busy_changed, this, &AnswerPanel::show_estimate);
  refresh();
}

QLabel* AnswerPanel::add_label(const char* role) {
  auto* label = new QLabel(this);
  label->setWordWrap(true);
  if (role) label->setProperty("role", role);
  column_->addWidget(label);
  return label;
}

void AnswerPanel::show_lines(QLabel* label, const QString& text) {
  label->setText(text);
  label->setVisible(!text.isEmpty());
}

void AnswerPanel::show_power_cut(const AnswerContext& of) {
  const Remark remark = power_cut_remark(of, document_.late_answer());
  set_tone(power_cut_, remark.tone);
  show_lines(power_cut_, (symbol(remark.tone) + QLatin1Char(' ') + remark.words).trimmed());
  show_lines(power_cut_detail_, remark.detail);
}

void AnswerPanel::show_estimate() {
  show_lines(estimate_, estimate_words(document_.followed(), follower_->busy()));
}

void AnswerPanel::refresh() {
  const AnswerContext of{document_.followed(), document_.design(), document_.library(), document_.units()};
  show_power_cut(of);
  margin_->say(margin_headline(of));
  exit_->say(exit_headline(of));
  condensation_->say(condensation_headline(of));

  const QStringList missing = missing_words(of);
  show_lines(missing_, missing.isEmpty()
                           ? QString()
                           : tr("Still missing: %1").arg(missing.mid(0, 3).join(QLatin1Char(' '))));

  const auto ages = age_rows(of);
  ages_->set_header(age_header(of.units));
  ages_->set_rows(ages);
  ages_->setVisible(!ages.empty());
  ages_heading_->setVisible(!ages.empty());
  show_estimate();

  // Pairs of name and value, two pairs a line.
  const auto pairs = operating_rows(of);
  std::vector<TableRow> lines;
  for (std::size_t i = 0; i < pairs.size(); i += 2) {
    TableRow line = pairs[i];
    if (i + 1 < pairs.size()) line.insert(line.end(), pairs[i + 1].begin(), pairs[i + 1].end());
    lines.push_back(std::move(line));
  }
  operating_->set_rows(lines);
  operating_->setVisible(!lines.empty());
  const auto remarks = operating_remarks(of);
  operating_heading_->setVisible(!lines.empty() || !remarks.empty());
  for (std::size_t i = 0; i < remarks_.size(); ++i) {
    const bool said = i < remarks.size();
    set_tone(remarks_[i], said ? remarks[i].tone : Tone::silent);
    show_lines(remarks_[i],
               said ? (symbol(remarks[i].tone) + QLatin1Char(' ') + remarks[i].words).trimmed() : QString());
  }
  const QStringList branches = branch_lines(of);
  show_lines(branches_heading_, branches.isEmpty()                     ? QString()
                                : of.assessment.profile_is_operating ? tr("Branches, where it settles")
                                                                     : tr("Branches, at the wanted fire"));
  show_lines(branches_, branches.join(QLatin1Char('\n')));
  findings_heading_->setVisible(findings_->count() > 0);
}

}  // namespace fluewright
