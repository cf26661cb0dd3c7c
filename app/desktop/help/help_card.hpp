// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace fluewright {

class Document;

/// "What is this, and what is usual": a card for every piece of the catalogue and every number of the answer, with a
/// picture. Opens at the selected piece; the window stays open beside the work.
void show_help_card(const Document& document, QWidget* parent);

}  // namespace fluewright
