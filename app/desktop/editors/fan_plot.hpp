// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/units.hpp"
#include "engine/flow/fan.hpp"

#include <QWidget>

#include <memory>
#include <optional>

namespace fluewright {

/// A fan's curve as it is today: at its speed and in the gas that passes it, with the points of its sheet beside it and
/// a ring where it runs.
class FanPlot : public QWidget {
  Q_OBJECT

 public:
  explicit FanPlot(QWidget* parent = nullptr);
  ~FanPlot() override;

  struct Picture {
    Fan fan;
    Density gas{};                        ///< that the curve is drawn for
    Area area{};                          ///< of the flue
    std::optional<VolumeFlow> flow;       ///< through it, where it runs
    UnitSystem units = UnitSystem::metric;
  };
  void show_picture(Picture picture);

  QSize sizeHint() const override;

 protected:
  void changeEvent(QEvent* event) override;

 private:
  struct Drawing;
  std::unique_ptr<Drawing> drawing_;
};

}  // namespace fluewright
