// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/variants/variants_words.hpp"

#include "app/drawing/tr.hpp"

#include <QCoreApplication>

#include <cmath>
#include <functional>
#include <map>
#include <optional>

namespace fluewright {

namespace {


QString sign(double difference) { return difference > 0.0 ? QStringLiteral("+") : QStringLiteral("−"); }

/// A row of numbers; a variant without one says so and has no difference.
template <class Value>
ComparedLine line(const Document& document, const char* what, const std::function<std::optional<Value>(std::size_t)>& value,
                  const std::function<QString(const Value&)>& words, const std::function<QString(const Value&, const Value&)>& apart) {
  ComparedLine made;
  made.what = tr(what);
  const std::optional<Value> first = value(0);
  for (std::size_t i = 0; i < document.variant_count(); ++i) {
    const std::optional<Value> here = value(i);
    made.values << (here ? words(*here) : tr("not known yet"));
    made.differences << (i > 0 && here && first ? apart(*first, *here) : QString());
  }
  return made;
}

template <class Quantity>
std::function<QString(const Quantity&)> shown(UnitSystem units) {
  return [units](const Quantity& q) { return QString::fromStdString(show(q, units).text()); };
}

template <class Quantity>
std::function<QString(const Quantity&, const Quantity&)> apart(UnitSystem units) {
  return [units](const Quantity& first, const Quantity& here) {
    const Quantity by = here - first;
    if (by.value() == 0.0) return QString();
    const QString amount = QString::fromStdString(show(by.value() < 0.0 ? -by : by, units).text());
    return sign(by.value()) + amount;
  };
}

std::map<std::string, int> parts_of(const Design& design) {
  std::map<std::string, int> parts;
  for (const Piece& piece : design.pieces) ++parts[piece.type];
  return parts;
}

}  // namespace

std::vector<ComparedLine> compared_variants(const Document& document) {
  const UnitSystem units = document.units();
  const auto answer = [&document](std::size_t i) -> const Assessment& { return document.variant_assessment(i); };
  std::vector<ComparedLine> lines;
  lines.push_back(line<Pressure>(
      document, QT_TR_NOOP("Draft margin"),
      [&](std::size_t i) { return answer(i).verdict ? std::optional(answer(i).worst_margin) : std::nullopt; },
      shown<Pressure>(units), apart<Pressure>(units)));
  lines.push_back(line<Temperature>(
      document, QT_TR_NOOP("Exit temperature"), [&](std::size_t i) { return answer(i).exit_temperature; },
      [units](const Temperature& t) { return QString::fromStdString(show(t, units).text()); },
      [units](const Temperature& first, const Temperature& here) {
        const bool metric = units == UnitSystem::metric;
        const double by = (in_celsius(here) - in_celsius(first)) * (metric ? 1.0 : 1.8);
        if (std::abs(by) < 0.5) return QString();
        return sign(by) + QStringLiteral("%1 %2").arg(std::lround(std::abs(by))).arg(metric ? QStringLiteral("K") : QStringLiteral("°F"));
      }));
  ComparedLine wet;
  wet.what = tr("Water begins");
  for (std::size_t i = 0; i < document.variant_count(); ++i) {
    const auto& condensation = answer(i).condensation;
    wet.values << (!condensation              ? tr("not known yet")
                   : !condensation->starts_at ? tr("nowhere")
                                              : QString::fromStdString(show(*condensation->starts_at, units, Meaning::run_length).text()));
    wet.differences << QString();
  }
  lines.push_back(std::move(wet));
  const auto balance = [&](Power HeatBalance::*part) {
    return [&, part](std::size_t i) -> std::optional<Power> {
      const OperatingPoint* running = answer(i).running_point();
      return running != nullptr ? std::optional(running->heat.*part) : std::nullopt;
    };
  };
  lines.push_back(line<Power>(document, QT_TR_NOOP("Heat kept in the mass"), balance(&HeatBalance::into_mass),
                              shown<Power>(units), apart<Power>(units)));
  lines.push_back(line<Power>(document, QT_TR_NOOP("Heat to the room"), balance(&HeatBalance::to_room),
                              shown<Power>(units), apart<Power>(units)));
  lines.push_back(line<Length>(
      document, QT_TR_NOOP("Length of the path"),
      [&](std::size_t i) { return answer(i).profile.empty() ? std::nullopt : std::optional(answer(i).path_length); },
      [units](const Length& s) { return QString::fromStdString(show(s, units, Meaning::run_length).text()); },
      [units](const Length& first, const Length& here) {
        const Length by = here - first;
        if (bu::abs(by) < 0.5 * millimetre) return QString();
        return sign(by.value()) + QString::fromStdString(show(bu::abs(by), units, Meaning::run_length).text());
      }));
  ComparedLine pieces;
  pieces.what = tr("Pieces");
  const auto count = [&document](std::size_t i) { return static_cast<int>(document.variant(i).pieces.size()); };
  for (std::size_t i = 0; i < document.variant_count(); ++i) {
    const int by = count(i) - count(0);
    pieces.values << QString::number(count(i));
    pieces.differences << (by == 0 ? QString() : sign(by) + QString::number(std::abs(by)));
  }
  lines.push_back(std::move(pieces));
  return lines;
}

QString parts_words(const Document& document, std::size_t place) {
  std::map<std::string, int> parts = parts_of(document.variant(place));
  for (const auto& [type, number] : parts_of(document.variant(0))) parts[type] -= number;
  QStringList words;
  for (const auto& [type, number] : parts) {
    if (number == 0) continue;
    const PieceType* known = document.library().piece_type(type);
    const QString name = QString::fromStdString(known == nullptr ? type : known->name);
    words << (number > 0 ? tr("%1 × %2 more") : tr("%1 × %2 fewer"))
                 .arg(std::abs(number))
                 .arg(name);
  }
  return words.isEmpty() ? tr("the same pieces") : words.join(QStringLiteral(", "));
}

}  // namespace fluewright
