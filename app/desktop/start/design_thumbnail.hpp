// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"
#include "app/shared/library_reader.hpp"

#include <QImage>
#include <QSize>

namespace fluewright {

/// A demo as a small isometric drawing, coloured by its own gas, in the inks of the theme. Empty where it cannot be
/// read.
/// What lies on a document's desk, in the isometric view.
[[nodiscard]] QImage design_picture(const Document& document, QSize size, double pixel_ratio);
[[nodiscard]] QImage design_thumbnail(const Demo& demo, std::shared_ptr<const Library> library, QSize size,
                                      double pixel_ratio);

}  // namespace fluewright
