// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/documents.hpp"
#include "app/paper/output.hpp"
#include "app/paper/type.hpp"
#include "app/shared/design_file.hpp"
#include "app/shared/library_reader.hpp"

#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <array>

namespace fluewright::paper {

inline const Library& library() { return *shipped_library(); }

inline Design demo(std::string_view id) {
  for (const Demo& d : shipped_demos()) {
    if (d.id == id) return std::get<DesignDocument>(read_design_text(d.text, library())).design;
  }
  ADD_FAILURE() << "no demo " << id;
  return {};
}

inline constexpr std::array all_pages{PaperPage::build, PaperPage::client, PaperPage::card, PaperPage::working};

inline PaperOptions wanting(PaperPage page, PaperSize size = PaperSize::a4, UnitSystem units = UnitSystem::metric) {
  PaperOptions options;
  options.page = page;
  options.size = size;
  options.units = units;
  options.stamp = {"a file.fluepath", "2001-02-03", "9.9.9"};
  return options;
}

/// Many pieces in a row, each its own: nothing meets a chimney, so it is a draft.
inline Design many_pieces(std::size_t pieces) {
  Design design;
  design.title = "Many pieces";
  for (std::size_t i = 0; i < pieces; ++i) {
    Piece piece;
    piece.id = design.fresh_id();
    piece.type = i == 0 ? "feed_tube" : "bench_pipe";
    piece.heading = i == 0 ? heading_down() : heading_east;
    piece.at = {static_cast<std::int32_t>(i) * 4000, 0, 6000};
    piece.fields["length"] = (200.0 + static_cast<double>(i)) * millimetre;
    design.pieces.push_back(piece);
  }
  return design;
}

struct Ran {
  int exit = -1;
  QString out;
  QString err;
};
inline Ran run(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  process.waitForFinished(120000);
  return {process.exitCode(), QString::fromUtf8(process.readAllStandardOutput()),
          QString::fromUtf8(process.readAllStandardError())};
}

/// The text of a PDF as another program reads it.
inline QString pdf_text(const QString& path, bool laid_out = true) {
  const Ran ran =
      run(QStringLiteral("pdftotext"), laid_out ? QStringList{QStringLiteral("-layout"), path, QStringLiteral("-")}
                                                : QStringList{path, QStringLiteral("-")});
  EXPECT_EQ(ran.exit, 0) << ran.err.toStdString();
  return ran.out;
}

/// Every word on a sheet, in the order in which it was set.
inline QStringList words_on(const Sheet& sheet) {
  QStringList all;
  for (const Mark& mark : sheet.content.marks) {
    if (const auto* words = std::get_if<Words>(&mark)) all << words->text;
  }
  return all;
}
inline QStringList words_on(const std::vector<Sheet>& sheets) {
  QStringList all;
  for (const Sheet& sheet : sheets) all << words_on(sheet);
  return all;
}

}  // namespace fluewright::paper
