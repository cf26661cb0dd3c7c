// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/starts/map_model.hpp"

#include "app/desktop/starts/start_colours.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/start_words.hpp"

namespace fluewright {

void MapModel::show_map(const StartMap& map, UnitSystem units) {
  const bool same = map_ && map_->grid().outdoors.count == map.grid().outdoors.count &&
                    map_->grid().room.count == map.grid().room.count && units == units_;
  // The same table with new cells keeps its place under the reader's eye.
  if (!same) beginResetModel();
  map_ = map;
  units_ = units;
  if (!same) {
    endResetModel();
  } else {
    emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
  }
}

void MapModel::clear() {
  beginResetModel();
  map_.reset();
  endResetModel();
}

int MapModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() || !map_ ? 0 : static_cast<int>(map_->grid().room.count);
}

int MapModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() || !map_ ? 0 : static_cast<int>(map_->grid().outdoors.count);
}

const StartCell& MapModel::cell(const QModelIndex& index) const {
  const std::size_t room = map_->grid().room.count - 1 - static_cast<std::size_t>(index.row());
  return map_->cell(map_->index(static_cast<std::size_t>(index.column()), room));
}

QVariant MapModel::data(const QModelIndex& index, int role) const {
  if (!map_ || !index.isValid()) return {};
  const StartCell& c = cell(index);
  const bool known = c.state != CellState::unknown;
  const bool computed = c.state == CellState::computed;
  switch (role) {
    case Qt::DisplayRole: {
      if (!known) return QStringLiteral("·");
      const QChar mark = QLatin1Char(letter(c.start));
      return computed ? QString(mark) : QString(mark.toLower());
    }
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole: {
      if (!known) return tr("not known yet");
      const std::string words = said(word(c.start, !computed || c.draws_with_fan));
      return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
    }
    case Qt::TextAlignmentRole: return static_cast<int>(Qt::AlignCenter);
    case Qt::BackgroundRole: return computed ? QVariant(start_colour(c.start, theme().sheet)) : QVariant();
    case Qt::ForegroundRole:
      return computed ? QVariant(letter_colour(start_colour(c.start, theme().sheet))) : QVariant(theme().inks.ink);
    default: return {};
  }
}

QVariant MapModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (!map_ || role != Qt::DisplayRole) return {};
  const StartMapGrid& grid = map_->grid();
  const auto at = static_cast<std::size_t>(section);
  const Temperature level = orientation == Qt::Horizontal ? grid.outdoors.at(at) : grid.room.at(grid.room.count - 1 - at);
  return QString::fromStdString(show(level, units_).text());
}

}  // namespace fluewright
