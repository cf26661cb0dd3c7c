// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/answer/answer_words.hpp"

#include <QWidget>

class QLabel;

namespace fluewright {

/// A large quiet number with its caption above, its state beside or under it, and a note beneath.
class Headline : public QWidget {
  Q_OBJECT

 public:
  enum class Size { large, plain };
  /// A large one says its state beside the figure, a plain one beside the caption.
  explicit Headline(Size size, QWidget* parent = nullptr);

  void say(const HeadlineWords& words);
  [[nodiscard]] QString figure() const;
  [[nodiscard]] QString state() const;
  [[nodiscard]] QString note() const;

 signals:
  void figure_clicked();

 protected:
  void mouseReleaseEvent(QMouseEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void fit_figure();

  QLabel* caption_;
  QLabel* figure_;
  QLabel* state_;
  QLabel* note_;
};

/// Give a label the ink of a tone; it follows the theme.
void set_tone(QLabel* label, Tone tone);

}  // namespace fluewright
