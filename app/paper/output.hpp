// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/mark.hpp"
#include "app/paper/paper.hpp"

#include <QByteArray>
#include <QImage>

class QPainter;
class QPagedPaintDevice;

namespace fluewright::paper {

/// Qt needs an application object for its fonts; where there is none (the command line) this makes one that wants no
/// display. Call before anything else of this room.
void need_fonts();

/// The pages of a document.
[[nodiscard]] std::vector<Sheet> pages(const Design& design, const Library& library, const PaperOptions& options);

[[nodiscard]] QByteArray to_pdf(const std::vector<Sheet>& sheets, const QString& title);
[[nodiscard]] QByteArray to_svg(const Sheet& sheet, const QString& title);
[[nodiscard]] QImage to_image(const Sheet& sheet, double dots_per_mm);
/// Paints a page into a rectangle of any device, its width filled.
void paint_page(QPainter& painter, const Sheet& sheet, const QRectF& into);

}  // namespace fluewright::paper
