// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"
#include "app/desktop/fields/quantity_field.hpp"
#include "app/shared/library_reader.hpp"

#include <QApplication>
#include <QLineEdit>
#include <QTest>

#include <gtest/gtest.h>

namespace fluewright::test {

/// Types like a person: click into the box, take out what is there, type, press Enter.
inline void type_into(Field& field, const QString& text, bool enter = true) {
  auto* edit = field.findChild<QLineEdit*>();
  ASSERT_NE(edit, nullptr);
  QTest::mouseClick(edit, Qt::LeftButton);
  edit->setFocus();
  QTest::keyClick(edit, Qt::Key_A, Qt::ControlModifier);
  QTest::keyClicks(edit, text);
  if (enter) QTest::keyClick(edit, Qt::Key_Return);
}

inline Field* field_named(QWidget& in, const QString& key) {
  for (auto* field : in.findChildren<Field*>(QStringLiteral("field:") + key)) {
    if (!field->isHidden()) return field;
  }
  return nullptr;
}

/// Puts a demo on the desk.
inline void open_demo(Document& document, const Demo& demo) {
  ReadResult read = read_design_text(demo.text, document.library());
  ASSERT_TRUE(std::holds_alternative<DesignDocument>(read)) << demo.id;
  document.adopt(std::get<DesignDocument>(std::move(read)), {});
}

/// The first piece of the design whose type has a field of that key.
inline PieceId piece_with(const Document& document, std::string_view field) {
  for (const Piece& piece : document.design().pieces) {
    const PieceType* type = document.library().piece_type(piece.type);
    if (type && type->field(field)) return piece.id;
  }
  return {};
}

}  // namespace fluewright::test
