// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/shell/help_pages.hpp"

#include "app/drawing/tr.hpp"
#include "app/shared/words.hpp"

#include <QAction>
#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QScrollArea>
#include <QVBoxLayout>

#include <utility>
#include <vector>

namespace fluewright {

namespace {

QLabel* line(const QString& text, const char* role = nullptr) {
  auto* label = new QLabel(text);
  label->setWordWrap(true);
  if (role) label->setProperty("role", role);
  return label;
}

void add_close(QDialog& dialog, QVBoxLayout& column) {
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, &dialog);
  QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
  column.addWidget(buttons);
}

/// Actions of a menu and its submenus that have a shortcut.
void collect(const QMenu& menu, std::vector<std::pair<QString, QString>>& keys) {
  for (const QAction* action : menu.actions()) {
    if (action->menu())
      collect(*action->menu(), keys);
    else if (!action->shortcut().isEmpty()) {
      QString words = action->text();
      words.remove(QLatin1Char('&'));
      words.remove(QStringLiteral("…"));
      QStringList all;
      for (const QKeySequence& key : action->shortcuts()) all << key.toString(QKeySequence::NativeText);
      keys.emplace_back(all.join(QStringLiteral(", ")), words);
    }
  }
}

}  // namespace

void show_about(QWidget* parent) {
  QDialog dialog(parent);
  dialog.setObjectName(QStringLiteral("about"));
  dialog.setWindowTitle(tr("About Fluewright"));
  auto* column = new QVBoxLayout(&dialog);
  column->setContentsMargins(28, 22, 28, 18);
  column->setSpacing(8);
  column->addWidget(line(QStringLiteral("Fluewright"), "figure"));
  column->addWidget(line(tr("Draw the flue path of a bench heater and see whether it draws. Version %1, "
                                        "GPL-3.0-or-later.")
                             .arg(QCoreApplication::applicationVersion())));
  column->addSpacing(8);
  column->addWidget(line(tr("Before you light a fire"), "heading"));
  for (const std::string& caution : cautions()) {
    column->addWidget(line(QStringLiteral("▲  %1").arg(QString::fromStdString(caution))));
  }
  column->addWidget(line(tr("No compliance with any standard is claimed."), "caption"));
  column->addSpacing(8);
  add_close(dialog, *column);
  dialog.setMinimumWidth(560);
  dialog.exec();
}

void show_shortcuts(QWidget* parent, const QMenuBar& menus) {
  std::vector<std::pair<QString, QString>> keys;
  for (const QAction* action : menus.actions()) {
    if (action->menu()) collect(*action->menu(), keys);
  }
  const std::vector<std::pair<QString, QString>> more{
      {QStringLiteral("↑ ↓"), tr("In a field: one step up or down; Page keys: ten")},
      {tr("Enter, Esc"), tr("In a field: use what is typed, or go back to what was")},
      {tr("← →, Enter"), tr("On the plot: walk along the path, select the piece")},
      {tr("Tab, Shift+Tab"), tr("To the next control, or back")}};
  keys.insert(keys.end(), more.begin(), more.end());

  QDialog dialog(parent);
  dialog.setObjectName(QStringLiteral("shortcuts"));
  dialog.setWindowTitle(tr("Keyboard"));
  auto* table = new QWidget;
  auto* grid = new QGridLayout(table);
  grid->setHorizontalSpacing(24);
  grid->setVerticalSpacing(4);
  int row = 0;
  for (const auto& [key, words] : keys) {
    grid->addWidget(new QLabel(key), row, 0);
    grid->addWidget(line(words), row, 1);
    ++row;
  }
  grid->setColumnStretch(1, 1);
  auto* scroll = new QScrollArea;
  scroll->setAccessibleName(tr("Keys"));
  scroll->setWidget(table);
  scroll->setWidgetResizable(true);
  auto* column = new QVBoxLayout(&dialog);
  column->setContentsMargins(20, 18, 20, 14);
  column->addWidget(line(tr("Everything by keyboard"), "heading"));
  column->addWidget(scroll, 1);
  add_close(dialog, *column);
  dialog.resize(520, 560);
  dialog.exec();
}

}  // namespace fluewright
