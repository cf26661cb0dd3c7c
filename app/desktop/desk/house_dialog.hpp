// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace fluewright {

class Document;

/// Asks where the walls, the ceiling and the roof are; begins with a house around what is drawn. The drawing follows
/// while one types. The house can also be taken away again.
void ask_for_house(Document& document, QWidget* parent);

}  // namespace fluewright
