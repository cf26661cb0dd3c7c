// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QScrollArea;
class QWidget;

namespace fluewright {

/// `content` in a frameless area that scrolls up and down only; the content is as wide as the area. It takes
/// the keyboard, so it has a `name` for assistive tools.
[[nodiscard]] QScrollArea* scroll_column(QWidget* content, const QString& name, QWidget* parent);

}  // namespace fluewright
