// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"

#include <QFrame>

class QLabel;
class QPushButton;

namespace fluewright {

/// Three gestures on a living example: draw on from a ring, pull a joint, take back. The card says what to do and goes on
/// when it has been done; it can be skipped at every moment.
class Tour : public QFrame {
  Q_OBJECT

 public:
  Tour(Document& document, QWidget* desk);

  /// A small heater whose bench has an open end.
  [[nodiscard]] static DesignDocument example(const Library& library);
  [[nodiscard]] int gesture() const { return gesture_; }  ///< 0 to 2; 3: done

 signals:
  void over();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void follow(int steps);
  void show_gesture();
  void place();

  Document& document_;
  QLabel* number_;
  QLabel* words_;
  QPushButton* skip_;
  int gesture_ = 0;
  int steps_ = 0;
  std::size_t joints_ = 0;
};

}  // namespace fluewright
