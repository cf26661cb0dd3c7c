// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"

#include <QTabWidget>

namespace fluewright {

/// The editors beside one another: the selected piece, and the conditions of site, house and fire.
class EditorTabs : public QTabWidget {
  Q_OBJECT

 public:
  explicit EditorTabs(Document& document, QWidget* parent = nullptr);

  enum Page { piece, site, house, fire, trial };
};

}  // namespace fluewright
