// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/burn/plan_numbers.hpp"
#include "app/desktop/fields/field.hpp"

class QLineEdit;

namespace fluewright {

/// A number of the time line with its unit. Enter or leaving it asks for it, Escape goes back, up and down step; what
/// is not understood stays where it was typed and is explained.
class PlanField : public Field {
  Q_OBJECT

 public:
  PlanField(const std::string& key, const std::string& label, const std::string& help, PlanMeaning meaning,
            QWidget* parent = nullptr);

  void show_number(const PlanNumber& number, UnitSystem units);
  void show_value(const FieldValue&, UnitSystem) override {}
  void commit_typing() override;
  void set_read_only(bool read_only) override;
  [[nodiscard]] PlanMeaning meaning() const { return meaning_; }
  [[nodiscard]] QString text() const;

 signals:
  void number_asked(const fluewright::PlanNumber& number, const QString& merge_key);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void focus_arrived() override { ++go_; }
  [[nodiscard]] bool mid_typing() const override;

 private:
  void write();
  void step(int steps);

  PlanMeaning meaning_;
  QLineEdit* edit_;
  std::optional<PlanNumber> number_;
  UnitSystem units_ = UnitSystem::metric;
  QString written_;
  int go_ = 0;
};

}  // namespace fluewright
