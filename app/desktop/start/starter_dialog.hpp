// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"
#include "engine/layout/starter.hpp"

#include <QDialog>

class QComboBox;
class QLabel;
class QPushButton;

namespace fluewright {

class QuantityField;

/// Five questions that build a path: bore, shape of the bench, its length, where the stack stands, how high. A picture
/// shows what one gets. Every answer has a usual one already there, so Enter alone builds something sound.
class StarterDialog : public QDialog {
  Q_OBJECT

 public:
  StarterDialog(std::shared_ptr<const Library> library, UnitSystem units, QWidget* parent = nullptr);

  /// What the answers build; nothing while they do not go together.
  [[nodiscard]] const std::optional<Design>& design() const { return design_; }

 private:
  void refresh();

  Document sample_;  ///< what the answers build, for the picture and its numbers
  UnitSystem units_;
  StarterAnswers answers_;
  std::optional<Design> design_;
  QComboBox* bore_;
  QComboBox* shape_;
  QuantityField* length_;
  QComboBox* stack_;
  QuantityField* top_;
  QLabel* picture_;
  QLabel* word_;
  QPushButton* build_ = nullptr;
};

}  // namespace fluewright
