// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace fluewright {

class Document;

/// The variants side by side in a window that stays open and follows what is drawn: their names, what matters of each
/// with its difference from the first, and their parts. A second call brings the open window to the front.
void show_variants(Document& document, QWidget* parent);

}  // namespace fluewright
