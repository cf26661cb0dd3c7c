// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Paper without a word of Qt, so that the command line can ask for it: documents as PDF, views as PDF, SVG, PNG and
// DXF, parts as CSV. Works without a display.

#include "app/shared/card_table.hpp"
#include "app/shared/units.hpp"
#include "engine/bill/masses.hpp"
#include "engine/bill/parts_list.hpp"
#include "engine/layout/design.hpp"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace fluewright {

enum class PaperPage {
  build,   ///< for whoever builds it
  client,  ///< for whoever it is built for
  card,    ///< for whoever lights it
  working  ///< the calculation by hand
};
enum class PaperSize { a4, letter };

/// What the layout does not look up itself, so that the same input gives the same page.
struct PaperStamp {
  std::string file;
  std::string date;
  std::string version;
};

/// Another design for the same room: a variant of the same file, or what stood there before.
struct PaperVariant {
  Design design;
  std::string name;  ///< empty: the design's title is its name
};

struct PaperOptions {
  PaperPage page = PaperPage::build;
  PaperSize size = PaperSize::a4;
  UnitSystem units = UnitSystem::metric;
  PaperStamp stamp;
  StockPipe stock;
  CobRecipe recipe;
  std::optional<PaperVariant> before;  ///< what the design is compared with on the client's page
  std::string variant_name;            ///< of the design itself, where it is one of several
  std::optional<CardTable> starts;     ///< without it the card says that it is not computed
};

/// What went wrong, as a sentence; nothing on success.
using PaperFault = std::optional<std::string>;

/// The document into a PDF file. On any fault the file that stood there stays as it was.
[[nodiscard]] PaperFault write_paper(const Design& design, const Library& library, const PaperOptions& options,
                                     const std::filesystem::path& path);

enum class PaperView { plan, front, side, isometric };
struct ViewOptions {
  PaperView view = PaperView::isometric;
  UnitSystem units = UnitSystem::metric;
  PaperSize size = PaperSize::a4;  ///< the scale is the largest usual one that fits on it
};

/// One view by the file's suffix: .pdf, .svg, .png or .dxf (plan and elevations; in millimetres at full size).
[[nodiscard]] PaperFault write_view(const Design& design, const Library& library, const ViewOptions& options,
                                    const std::filesystem::path& path);

/// The parts list for a spreadsheet: a line a part, lengths in mm, by RFC 4180.
[[nodiscard]] std::string parts_csv(const Design& design, const Library& library);

/// The text into the file; the same promise as write_paper().
[[nodiscard]] PaperFault write_file(const std::filesystem::path& path, std::string_view bytes);

}  // namespace fluewright
