// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/start/demo_card.hpp"

#include <QWidget>

#include <vector>

class QGridLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace fluewright {

/// The first sheet: what the program does, designs to open with one click, and the usual cautions.
class StartPage : public QWidget {
  Q_OBJECT

 public:
  explicit StartPage(QWidget* parent = nullptr);

  void add_demo(const QString& id, const QString& title, const QString& scene, DemoCard::Thumbnail thumbnail);
  void set_recent(const QStringList& paths);
  /// The design that lies on the desk behind this page; empty: none, and no way back is offered.
  void set_current(const QString& name);

 signals:
  void back_chosen();
  void new_chosen();
  void questions_chosen();
  void open_chosen();
  void recent_chosen(const QString& path);
  void demo_chosen(const QString& id);

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void arrange();

  QWidget* body_;
  QPushButton* back_;
  QGridLayout* cards_box_;
  std::vector<DemoCard*> cards_;
  int columns_ = 0;
  QLabel* recent_heading_;
  QVBoxLayout* recent_box_;
  std::vector<QWidget*> recent_;
};

}  // namespace fluewright
