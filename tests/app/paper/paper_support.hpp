// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/documents.hpp"
#include "app/paper/output.hpp"
#include "app/paper/type.hpp"
#include "app/shared/design_file.hpp"
#include "app/shared/library_reader.hpp"
#include "engine/layout/edit.hpp"
#include "tests/engine/layout/chain.hpp"

#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <array>
#include <stdexcept>

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

/// A heater whose flue winds to and fro at one level until it has so many pieces, give or take two, every other run a
/// millimetre longer than the one before; drawn with the verbs of the desk. Its path is complete.
inline Design long_way(std::size_t pieces) {
  test::Chain fire;
  fire.place("feed_tube", {0, 0, 6000}, heading_down());
  fire.add("burn_tunnel");
  fire.add("heat_riser");
  fire.add("barrel");
  Design design = fire.design;
  design.title = "A long way";
  const auto apply = [&design](EditResult result) {
    if (!result.design) throw std::runtime_error("an edit was refused");
    design = *std::move(result.design);
  };
  const auto end = [&design] { return open_ends(design, library()).back().ref; };
  apply(attach_piece(design, library(), end(), "bench_pipe"));
  const std::array<Heading, 4> ways{heading_north, heading_east, heading_south, heading_east};
  for (std::size_t i = 0; design.pieces.size() + 4 < pieces; ++i) {
    const Length across = i % 2 == 0 ? (1000.0 + static_cast<double>(i)) * millimetre : 400.0 * millimetre;
    apply(grow(design, library(), end(), ways[i % 4], across, "bench_pipe", "bench_elbow"));
  }
  apply(grow(design, library(), end(), heading_up(), 4.0 * metre, "stack_insulated", "bench_elbow"));
  apply(attach_piece(design, library(), end(), "cap_rain"));
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

/// No word leaves the paper, and no run's length is in hundreds of inches.
inline void expect_all_on_paper(const Sheet& sheet, const std::string& what) {
  const QRectF paper(8.0, 8.0, sheet.width - 16.0, sheet.height - 16.0);
  static const QRegularExpression many_inches(QStringLiteral("(?<![\\d.,])\\d{3,}([.,]\\d+)?\u00A0in(?!\\sw)"));
  for (const Mark& mark : sheet.content.marks) {
    const auto* words = std::get_if<Words>(&mark);
    if (words == nullptr || words->ghost) continue;
    EXPECT_TRUE(paper.contains(extent(*words))) << what << ": " << words->text.toStdString();
    EXPECT_FALSE(words->text.contains(many_inches)) << what << ": " << words->text.toStdString();
  }
}

/// No word lies over another.
inline void expect_none_over_another(const Sheet& sheet, const std::string& what) {
  std::vector<std::pair<QRectF, QString>> set;
  for (const Mark& mark : sheet.content.marks) {
    const auto* words = std::get_if<Words>(&mark);
    if (words == nullptr || words->ghost) continue;
    const QRectF box = extent(*words).adjusted(0.2, 0.3, -0.2, -0.6);
    for (const auto& [other, text] : set) {
      EXPECT_FALSE(box.intersects(other)) << what << ": " << words->text.toStdString() << " over " << text.toStdString();
    }
    set.emplace_back(box, words->text);
  }
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
