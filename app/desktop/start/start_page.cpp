// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/start/start_page.hpp"

#include "app/desktop/fields/scroll_column.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/words.hpp"

#include <QDir>
#include <QFileInfo>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QResizeEvent>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace fluewright {

namespace {

constexpr int page_width = 1180;
constexpr int card_width = 250;

QLabel* words(const QString& text, const char* role) {
  auto* label = new QLabel(text);
  label->setWordWrap(true);
  if (role) label->setProperty("role", role);
  return label;
}

}  // namespace

StartPage::StartPage(QWidget* parent)
    : QWidget(parent),
      body_(new QWidget),
      back_(new QPushButton),
      cards_box_(new QGridLayout),
      recent_heading_(words(tr("Recent"), "heading")),
      recent_box_(new QVBoxLayout) {
  setObjectName(QStringLiteral("start_page"));
  auto* title = words(QStringLiteral("Fluewright"), "figure");
  auto* sentence = words(tr("Draw the flue path of a bench heater, from feed to cap, and see at every "
                                        "edit whether it draws."),
                         "heading");
  auto* fresh = new QPushButton(tr("Empty sheet"));
  fresh->setProperty("prominent", true);
  fresh->setObjectName(QStringLiteral("start_new"));
  fresh->setToolTip(QKeySequence(QStringLiteral("Ctrl+N")).toString(QKeySequence::NativeText));
  auto* open = new QPushButton(tr("Open a design…"));
  open->setObjectName(QStringLiteral("start_open"));
  open->setToolTip(QKeySequence(QStringLiteral("Ctrl+O")).toString(QKeySequence::NativeText));
  connect(fresh, &QPushButton::clicked, this, &StartPage::new_chosen);
  connect(open, &QPushButton::clicked, this, &StartPage::open_chosen);
  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(10);
  auto* questions = new QPushButton(tr("A path by five questions…"));
  questions->setObjectName(QStringLiteral("start_questions"));
  questions->setToolTip(QKeySequence(QStringLiteral("Ctrl+Shift+N")).toString(QKeySequence::NativeText));
  connect(questions, &QPushButton::clicked, this, &StartPage::questions_chosen);
  buttons->addWidget(questions);
  buttons->addWidget(fresh);
  buttons->addWidget(open);
  back_->setObjectName(QStringLiteral("start_back"));
  connect(back_, &QPushButton::clicked, this, &StartPage::back_chosen);
  buttons->addWidget(back_);
  buttons->addStretch(1);

  auto* main = new QVBoxLayout;
  main->setSpacing(8);
  main->addWidget(title);
  main->addWidget(sentence);
  main->addSpacing(6);
  main->addLayout(buttons);
  main->addSpacing(14);
  main->addWidget(words(tr("Designs to look at"), "heading"));
  main->addWidget(
      words(tr("All invented; change them as you like, they open as unsaved copies."), "caption"));
  cards_box_->setSpacing(14);
  main->addLayout(cards_box_);
  main->addStretch(1);

  auto* side = new QVBoxLayout;
  side->setSpacing(8);
  side->addWidget(recent_heading_);
  recent_box_->setSpacing(2);
  side->addLayout(recent_box_);
  side->addSpacing(14);
  side->addWidget(words(tr("Before you light a fire"), "heading"));
  for (const std::string& caution : cautions()) {
    auto* line = words(QStringLiteral("▲  %1").arg(QString::fromStdString(caution)), nullptr);
    side->addWidget(line);
  }
  side->addStretch(1);

  auto* page = new QHBoxLayout(body_);
  page->setContentsMargins(36, 24, 36, 24);
  page->setSpacing(40);
  page->addLayout(main, 3);
  page->addLayout(side, 1);

  auto* centre = new QWidget;
  auto* around = new QHBoxLayout(centre);
  around->setContentsMargins(0, 0, 0, 0);
  body_->setMaximumWidth(page_width + 100);
  around->addWidget(body_);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(scroll_column(centre, tr("Start page"), this));
  set_recent({});
  set_current({});
}

void StartPage::add_demo(const QString& id, const QString& title, const QString& scene, DemoCard::Thumbnail thumbnail) {
  auto* card = new DemoCard(title, scene, std::move(thumbnail), body_);
  card->setObjectName(QStringLiteral("demo:%1").arg(id));
  connect(card, &DemoCard::clicked, this, [this, id] { emit demo_chosen(id); });
  cards_.push_back(card);
  columns_ = 0;
  arrange();
}

void StartPage::set_recent(const QStringList& paths) {
  for (QWidget* line : recent_) {
    line->hide();
    line->deleteLater();
  }
  recent_.clear();
  for (const QString& path : paths) {
    const QFileInfo file(path);
    auto* line = new QPushButton(file.completeBaseName());
    line->setFlat(true);
    line->setProperty("link", true);
    line->setToolTip(QDir::toNativeSeparators(path));
    line->setAccessibleName(tr("Open %1").arg(path));
    connect(line, &QPushButton::clicked, this, [this, path] { emit recent_chosen(path); });
    recent_box_->addWidget(line, 0, Qt::AlignLeft);
    recent_.push_back(line);
  }
  recent_heading_->setVisible(!paths.isEmpty());
}

void StartPage::set_current(const QString& name) {
  back_->setText(tr("Back to %1").arg(name));
  back_->setVisible(!name.isEmpty());
}

void StartPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

// As many cards in a row as keep their scenes readable.
void StartPage::arrange() {
  const int room = (std::min(width(), page_width) - 112) * 3 / 4;
  const int columns = std::clamp(room / card_width, 1, 3);
  if (columns == columns_) return;
  columns_ = columns;
  int place = 0;
  for (DemoCard* card : cards_) {
    cards_box_->addWidget(card, place / columns, place % columns);
    ++place;
  }
  for (int c = 0; c < 3; ++c) cards_box_->setColumnStretch(c, c < columns ? 1 : 0);
}

}  // namespace fluewright
