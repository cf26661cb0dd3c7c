// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"

#include <QObject>

namespace fluewright {

class ConditionsEditor;
class PickField;
class QuantityField;

/// What the fire's sheet has beyond its plain fields: the burn rate usual at the drawn bore, moisture in the trade's
/// words, and the choke of the inlet, which belongs to the feed piece but is the fire's other hand.
class FireExtras : public QObject {
  Q_OBJECT

 public:
  FireExtras(Document& document, ConditionsEditor& sheet);

 private:
  void refresh();
  void show_usual_burn_rate();
  void show_moisture_words();
  void show_choke();

  Document& document_;
  ConditionsEditor& sheet_;
  PickField* moisture_words_;
  QuantityField* choke_ = nullptr;
  std::string choke_type_;
  PieceId feed_;
};

}  // namespace fluewright
