// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QPixmap>

#include <functional>

namespace fluewright {

/// A demo design on the start page: a small drawing, its title and its scene. One click, Enter or space opens it.
class DemoCard : public QAbstractButton {
  Q_OBJECT

 public:
  /// Draws the picture into a rectangle of that size; asked again when the theme changes.
  using Thumbnail = std::function<QImage(QSize size, double pixel_ratio)>;

  DemoCard(const QString& title, const QString& scene, Thumbnail thumbnail, QWidget* parent = nullptr);

  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;
  void enterEvent(QEnterEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  [[nodiscard]] QRect words_box(int width) const;

  QString scene_;
  Thumbnail thumbnail_;
  QImage picture_;
};

}  // namespace fluewright
