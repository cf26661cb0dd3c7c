// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"

#include <QString>
#include <QStringList>

#include <vector>

namespace fluewright {

/// One line of the comparison: what is compared, and for each variant its value and how far that is from the first's.
struct ComparedLine {
  QString what;
  QStringList values;
  QStringList differences;  ///< empty words for the first variant, and where nothing differs
};

/// What matters of each variant, in their order: draft margin, exit temperature, where water begins, heat kept and heat
/// given to the room, length of the path, number of pieces.
[[nodiscard]] std::vector<ComparedLine> compared_variants(const Document& document);
/// What a variant has more or fewer of than the first: "1 × Cleanout tee more, 2 × Smooth elbow fewer"; or that nothing
/// of its pieces differs.
[[nodiscard]] QString parts_words(const Document& document, std::size_t place);

}  // namespace fluewright
