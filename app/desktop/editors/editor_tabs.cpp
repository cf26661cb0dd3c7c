// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/editors/editor_tabs.hpp"
#include "app/desktop/variants/trial_panel.hpp"

#include "app/desktop/editors/conditions_editor.hpp"
#include "app/desktop/editors/fire_extras.hpp"
#include "app/desktop/editors/piece_editor.hpp"
#include "app/drawing/tr.hpp"

#include <QTabBar>

namespace fluewright {

EditorTabs::EditorTabs(Document& document, QWidget* parent) : QTabWidget(parent) {
  setObjectName(QStringLiteral("editors"));
  setDocumentMode(true);
  auto* fire_sheet = new ConditionsEditor(document, "fire.");
  new FireExtras(document, *fire_sheet);
  addTab(new PieceEditor(document), tr("Piece"));
  addTab(new ConditionsEditor(document, "site."), tr("Site"));
  addTab(new ConditionsEditor(document, "room."), tr("House"));
  addTab(fire_sheet, tr("Fire"));
  addTab(new TrialPanel(document), tr("What if"));
  setTabToolTip(piece, tr("The selected piece"));
  setTabToolTip(site, tr("Altitude, weather and wind"));
  setTabToolTip(house, tr("The room, the house's leaks and fans"));
  setTabToolTip(fire, tr("Wood, burn rate and air"));
  setTabToolTip(trial, tr("Other conditions tried out, the design left as it is"));
  tabBar()->setExpanding(true);
  setAccessibleName(tr("Editors"));
  tabBar()->setAccessibleName(tr("Editors"));
  connect(&document, &Document::selection_changed, this, [this, &document] {
    if (!document.selected().empty()) setCurrentIndex(piece);
  });
}

}  // namespace fluewright
