// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QScrollArea;
class QWidget;

namespace fluewright {

/// `content` in a frameless area that scrolls up and down only; the content is as wide as the area.
[[nodiscard]] QScrollArea* scroll_column(QWidget* content, QWidget* parent);

}  // namespace fluewright
