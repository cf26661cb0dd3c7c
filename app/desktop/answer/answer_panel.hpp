// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"
#include "engine/working/explain.hpp"

#include <QWidget>

class QLabel;
class QVBoxLayout;

namespace fluewright {

class FindingsList;
class Follower;
class Headline;
class ValueTable;

/// The live answer. Where a fan runs, what a power cut does stands above all else; then three large numbers, what they rest on beneath, then what was found.
class AnswerPanel : public QWidget {
  Q_OBJECT

 public:
  explicit AnswerPanel(Document& document, QWidget* parent = nullptr);
  [[nodiscard]] const Follower& follower() const { return *follower_; }

 signals:
  /// A number was clicked: how did it come about?
  void working_wanted(fluewright::HeadlineNumber number);

 private:
  void refresh();
  void show_power_cut(const struct AnswerContext& of);
  void show_estimate();
  QLabel* add_label(const char* role);
  void show_lines(QLabel* label, const QString& text);

  Document& document_;
  QVBoxLayout* column_;
  Follower* follower_;
  QLabel* power_cut_;
  QLabel* power_cut_detail_;
  Headline* margin_;
  Headline* exit_;
  Headline* condensation_;
  QLabel* missing_;
  QLabel* ages_heading_;
  ValueTable* ages_;
  QLabel* estimate_;
  QLabel* operating_heading_;
  ValueTable* operating_;
  std::vector<QLabel*> remarks_;
  QLabel* findings_heading_;
  QLabel* branches_heading_ = nullptr;
  QLabel* branches_ = nullptr;
  FindingsList* findings_;
};

}  // namespace fluewright
