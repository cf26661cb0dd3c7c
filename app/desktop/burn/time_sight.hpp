// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"

#include <QObject>
#include <QString>

#include <vector>

namespace fluewright {

/// Which part of the run is in sight, and where a time stands across a widget. The bar and the plots share one, so that
/// one time is one vertical line through all of them.
class TimeSight : public QObject {
  Q_OBJECT

 public:
  explicit TimeSight(QObject* parent = nullptr) : QObject(parent) {}

  /// Room for names left of the time axis, and to its right, in pixels.
  static constexpr int gutter = 128;
  static constexpr int margin = 16;

  /// A run of that length: all of it stays in sight if all was.
  void set_length(Time length);
  [[nodiscard]] Time length() const { return length_; }
  [[nodiscard]] Time from() const { return from_; }
  [[nodiscard]] Time to() const { return to_; }
  void show_all();
  /// `factor` above 1 looks closer; the time `about` stays where it is.
  void zoom(Time about, double factor);
  void pan(Time by);
  void keep_in_sight(Time at);

  [[nodiscard]] double x_of(Time at, int width) const;
  [[nodiscard]] Time at(double x, int width) const;
  /// The step that hands snap to at that width: a whole one of which a few pixels remain.
  [[nodiscard]] Time snap(int width) const;
  struct Mark {
    Time at{};
    QString words;
  };
  [[nodiscard]] std::vector<Mark> marks(int width) const;

 signals:
  void changed();

 private:
  void set(Time from, Time to);

  Time length_ = 12.0 * hour;
  Time from_{};
  Time to_ = 12.0 * hour;
};

}  // namespace fluewright
