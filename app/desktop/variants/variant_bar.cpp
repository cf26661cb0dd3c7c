// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/variants/variant_bar.hpp"

#include <QInputDialog>

namespace fluewright {

VariantBar::VariantBar(Document& document, QWidget* parent) : QTabBar(parent), document_(document) {
  setObjectName(QStringLiteral("variants_bar"));
  setAccessibleName(tr("Variants"));
  setExpanding(false);
  setDrawBase(false);
  connect(this, &QTabBar::currentChanged, this, [this](int tab) {
    if (!filling_ && tab >= 0) document_.change_over(static_cast<std::size_t>(tab));
  });
  connect(this, &QTabBar::tabBarDoubleClicked, this, &VariantBar::ask_for_name);
  connect(&document_, &Document::variants_changed, this, &VariantBar::refresh);
  refresh();
}

void VariantBar::refresh() {
  filling_ = true;
  const int wanted = static_cast<int>(document_.variant_count());
  while (count() > wanted) removeTab(count() - 1);
  while (count() < wanted) addTab({});
  for (int tab = 0; tab < wanted; ++tab) setTabText(tab, document_.variant_name(static_cast<std::size_t>(tab)));
  setCurrentIndex(static_cast<int>(document_.active_variant()));
  setVisible(wanted > 1);
  filling_ = false;
}

void VariantBar::ask_for_name(int tab) {
  if (tab < 0 || document_.read_only()) return;
  const auto place = static_cast<std::size_t>(tab);
  bool named = false;
  const QString name = QInputDialog::getText(this, tr("Name the variant"), tr("Name"), QLineEdit::Normal,
                                             document_.variant_name(place), &named);
  if (named && !name.trimmed().isEmpty()) document_.name_variant(place, name.trimmed());
}

}  // namespace fluewright
