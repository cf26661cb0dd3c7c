// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The answer in words: what each part of the panel says, without any widget.

#include "app/desktop/document.hpp"
#include "app/shared/units.hpp"
#include "engine/solve/assessment.hpp"

#include <QString>
#include <QStringList>

#include <vector>

namespace fluewright {

/// How a statement is meant. Every tone has a symbol of its own, so colour is never the only sign.
enum class Tone { calm, caution, fault, silent };
[[nodiscard]] Tone tone_of(Verdict verdict);
[[nodiscard]] Tone tone_of(Severity severity);
/// "✓", "▲", "✕" or nothing.
[[nodiscard]] QString symbol(Tone tone);

/// One of the three large answers.
struct HeadlineWords {
  QString caption;
  QString figure;
  QString state;  ///< symbol and word; may be empty
  Tone tone = Tone::silent;
  QString note;
};

/// What an answer is read against.
struct AnswerContext {
  const Assessment& assessment;
  const Design& design;
  const Library& library;
  UnitSystem units;
};

[[nodiscard]] HeadlineWords margin_headline(const AnswerContext& of);
[[nodiscard]] HeadlineWords exit_headline(const AnswerContext& of);
[[nodiscard]] HeadlineWords condensation_headline(const AnswerContext& of);

/// One row of a small table.
using TableRow = std::vector<QString>;
/// The header of age_rows(), each with its unit beneath.
[[nodiscard]] TableRow age_header(UnitSystem units);
/// The three bench ages: age, margin, gas at the cap, buoyancy, resistance. Empty while the path is incomplete.
[[nodiscard]] std::vector<TableRow> age_rows(const AnswerContext& of);
/// "cold bench and one hour: quick estimate", and whether something better is under way; or that the young ages were
/// followed in time. Empty while there are none.
[[nodiscard]] QString estimate_words(const Assessment& assessment, bool under_way);
/// Name and value of what the running point is; empty where there is none.
[[nodiscard]] std::vector<TableRow> operating_rows(const AnswerContext& of);
/// Whether a finding is about how the path settles (starved, overdrawn, backwards, not at all) rather than about a
/// piece: those stand beside the operating point.
[[nodiscard]] bool is_about_settling(FindingCode code);
struct Remark {
  Tone tone = Tone::silent;
  QString words;
  QString detail;
};
/// What a power cut does, above all else where a fan runs; without words where none does. Nothing late yet: that it is
/// being worked out.
[[nodiscard]] Remark power_cut_remark(const AnswerContext& of, const std::optional<LateAnswer>& late);
[[nodiscard]] std::vector<Remark> operating_remarks(const AnswerContext& of);
/// One sentence a side branch: where it leads the way its gas runs, how much, how warm. Empty for a path without any.
[[nodiscard]] QStringList branch_lines(const AnswerContext& of);
/// What is still missing on an incomplete drawing, as sentences; empty when it is complete.
[[nodiscard]] QStringList missing_words(const AnswerContext& of);

}  // namespace fluewright
