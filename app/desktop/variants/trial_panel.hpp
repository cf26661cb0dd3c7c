// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"

#include <QWidget>

#include <functional>
#include <vector>

class QLabel;
class QPushButton;
class QSlider;

namespace fluewright {

/// What if it were colder, the wood wetter, the hood on? Handles to drag while the answer follows; the design keeps its
/// own conditions and gets them back with one button.
class TrialPanel : public QWidget {
  Q_OBJECT

 public:
  explicit TrialPanel(Document& document, QWidget* parent = nullptr);

 private:
  struct Handle {
    const FieldSpec* spec = nullptr;
    double low = 0.0;   ///< in the handle's own unit
    double high = 0.0;
    double step = 0.0;
    std::function<double(const Document::Trial&)> get;
    std::function<void(Document::Trial&, double)> set;
    std::function<FieldValue(double)> value;
    QSlider* slider = nullptr;
    QLabel* figure = nullptr;
    QLabel* own = nullptr;
  };

  void add(Handle handle, const QString& name);
  void refresh();
  [[nodiscard]] QString words(const Handle& handle, double number) const;

  Document& document_;
  std::vector<Handle> handles_;
  QLabel* state_;
  QPushButton* back_;
  bool filling_ = false;
};

}  // namespace fluewright
