// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"
#include "app/desktop/editors/field_sheet.hpp"

#include <map>
#include <string>
#include <string_view>

namespace fluewright {

class Field;

/// One sheet of conditions: everything the library lists under "site.", "room." or "fire.".
class ConditionsEditor : public FieldSheet {
  Q_OBJECT

 public:
  ConditionsEditor(Document& document, std::string_view group, QWidget* parent = nullptr);

  /// The field of a condition ("fire.burn_rate"), nullptr if the sheet has none of that key.
  [[nodiscard]] Field* field(std::string_view key) const;

 private:
  void refresh();

  Document& document_;
  std::map<std::string, Field*, std::less<>> fields_;
};

}  // namespace fluewright
