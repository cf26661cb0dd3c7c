// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/units.hpp"
#include "engine/burn/start_map.hpp"

#include <QAbstractTableModel>

#include <optional>

namespace fluewright {

/// A start map as a table: a row a room temperature, warmest first, a column an outdoor temperature.
class MapModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  using QAbstractTableModel::QAbstractTableModel;

  void show_map(const StartMap& map, UnitSystem units);
  void clear();

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  [[nodiscard]] const StartCell& cell(const QModelIndex& index) const;

  std::optional<StartMap> map_;
  UnitSystem units_ = UnitSystem::metric;
};

}  // namespace fluewright
