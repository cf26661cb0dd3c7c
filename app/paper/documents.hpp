// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/dossier.hpp"
#include "app/paper/flow.hpp"
#include "app/paper/view_figure.hpp"

namespace fluewright::paper {

[[nodiscard]] std::vector<Sheet> build_sheet(const Dossier& dossier, const PaperOptions& options);
[[nodiscard]] std::vector<Sheet> client_page(const Dossier& dossier, const PaperOptions& options);
[[nodiscard]] std::vector<Sheet> lighting_card(const Dossier& dossier, const PaperOptions& options);
[[nodiscard]] std::vector<Sheet> working_pages(const Dossier& dossier, const PaperOptions& options);

// What documents share.

[[nodiscard]] TitleBlock title_block(const Dossier& dossier, const PaperOptions& options, const QString& document);
[[nodiscard]] QString design_title(const Dossier& dossier);
/// Whether it draws, in one sentence.
[[nodiscard]] QString verdict_sentence(const Dossier& dossier);
/// What keeps an unfinished drawing from being calculated; nothing on a finished one.
void add_missing(Flow& flow, const Dossier& dossier);
/// The largest usual scale at which the view with all its marks fits.
[[nodiscard]] DrawnView fitted_view(const Dossier& dossier, ViewKind view, QSizeF room, const ViewWish& wish = {});

/// The view no higher than `most`, or on a lying page of its own where that gives a much larger scale.
void add_view(Flow& flow, const Dossier& dossier, ViewKind view, const ViewWish& wish = {}, double most = 1e9);

/// The isometric view as large as it goes, to no named scale, without words.
[[nodiscard]] Figure picture(const Dossier& dossier, QSizeF room);

// Parts of the build sheet.

void add_parts(Flow& flow, const Dossier& dossier, const PaperOptions& options);
void add_masses(Flow& flow, const Dossier& dossier, const PaperOptions& options);
void add_upkeep(Flow& flow, const Dossier& dossier);
void add_results(Flow& flow, const Dossier& dossier);
void add_assumptions(Flow& flow, const Dossier& dossier);

/// A list of pieces by their numbers: "3, 5-7".
[[nodiscard]] QString number_list(const Dossier& dossier, std::vector<std::size_t> pieces);
/// "150", "133 × 133", "½ 570": a section's inside size without its unit.
[[nodiscard]] QString section_text(const Section& section, UnitSystem units);

}  // namespace fluewright::paper
