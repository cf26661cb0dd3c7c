// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>

namespace fluewright {

/// A list to pick from that leaves the wheel to the sheet it lies on unless it has the focus.
class QuietCombo : public QComboBox {
  Q_OBJECT

 public:
  explicit QuietCombo(QWidget* parent = nullptr);

  struct Option {
    QString id;
    QString words;
    friend bool operator==(const Option&, const Option&) = default;
  };
  /// Nothing happens (and nothing flickers) if the options are the same as before.
  void set_options(const QList<Option>& options);
  /// Pick without telling anybody. An id that is not offered is shown as it is.
  void show_id(const QString& id);
  [[nodiscard]] QString id() const { return currentData().toString(); }

 protected:
  void wheelEvent(QWheelEvent* event) override;
  /// The style sheet takes the native arrow away; a fine chevron in the theme's ink says that there is a list.
  void paintEvent(QPaintEvent* event) override;

 private:
  QList<Option> options_;
};

}  // namespace fluewright
