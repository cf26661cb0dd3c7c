// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/answer/answer_words.hpp"

#include "app/drawing/tr.hpp"
#include "app/shared/branch_words.hpp"
#include "app/shared/start_words.hpp"
#include "app/shared/words.hpp"

namespace fluewright {

namespace {

template <class Quantity>
QString text(const Quantity& quantity, UnitSystem units) {
  return QString::fromStdString(show(quantity, units).text());
}

QString text(Length length, UnitSystem units, Meaning meaning) {
  return QString::fromStdString(show(length, units, meaning).text());
}

QString capital(QString text) {
  if (!text.isEmpty()) text[0] = text[0].toUpper();
  return text;
}

}  // namespace

Tone tone_of(Verdict verdict) {
  switch (verdict) {
    case Verdict::draws:
      return Tone::calm;
    case Verdict::marginal:
      return Tone::caution;
    case Verdict::will_not_draw:
    case Verdict::unsafe:
      return Tone::fault;
  }
  return Tone::silent;
}

Tone tone_of(Severity severity) {
  switch (severity) {
    case Severity::note:
      return Tone::silent;
    case Severity::caution:
      return Tone::caution;
    case Severity::fault:
    case Severity::unsafe:
      return Tone::fault;
  }
  return Tone::silent;
}

QString symbol(Tone tone) {
  switch (tone) {
    case Tone::calm:
      return QStringLiteral("✓");
    case Tone::caution:
      return QStringLiteral("▲");
    case Tone::fault:
      return QStringLiteral("✕");
    case Tone::silent:
      return {};
  }
  return {};
}

HeadlineWords margin_headline(const AnswerContext& of) {
  HeadlineWords said;
  said.caption = tr("Draft margin");
  if (!of.assessment.verdict) {
    said.figure = QStringLiteral("–");
    said.state = tr("… path not complete");
    said.note = tr("known once the path leads from an inlet through a fire to a cap");
    return said;
  }
  said.figure = text(of.assessment.worst_margin, of.units);
  said.tone = tone_of(*of.assessment.verdict);
  const bool unsafe = *of.assessment.verdict == Verdict::unsafe;
  // Beside the figure there is room for a word; the note says why.
  said.state = QStringLiteral("%1 %2").arg(symbol(said.tone),
                                           unsafe ? tr("unsafe") : spoken(word(*of.assessment.verdict)));
  if (of.assessment.worst_age) {
    said.note = tr("the least of three bench ages: %1").arg(spoken(word(*of.assessment.worst_age)));
  }
  if (of.assessment.worst_margin_with_fans) {
    said.caption = tr("Draft margin, fan off");
    said.note += tr("; %1 with the fan on").arg(text(*of.assessment.worst_margin_with_fans, of.units));
    if (unsafe) said.note.prepend(tr("the draft depends on a fan; "));
  }
  return said;
}

HeadlineWords exit_headline(const AnswerContext& of) {
  HeadlineWords said;
  said.caption = tr("Exit temperature");
  if (!of.assessment.exit_temperature) {
    said.figure = QStringLiteral("–");
    said.note = tr("no gas without a fire on the path");
    return said;
  }
  said.figure = text(*of.assessment.exit_temperature, of.units);
  said.note = !of.assessment.path.complete         ? tr("at the open end, at the wanted air")
              : of.assessment.profile_is_operating ? tr("at the cap, where it settles")
                                                   : tr("at the cap, at the wanted air");
  return said;
}

HeadlineWords condensation_headline(const AnswerContext& of) {
  HeadlineWords said;
  said.caption = tr("Condensation begins");
  if (!of.assessment.condensation) {
    said.figure = QStringLiteral("–");
    said.note = tr("no gas without a fire on the path");
    return said;
  }
  const Condensation& wet = *of.assessment.condensation;
  const QString dew = text(wet.dew_point, of.units);
  if (!wet.starts_at || !wet.piece) {
    said.figure = tr("none");
    said.tone = Tone::calm;
    said.state = symbol(Tone::calm) + tr(" dry");
    said.note = tr("every wall is above the dew point, %1").arg(dew);
    return said;
  }
  said.figure = text(*wet.starts_at, of.units, Meaning::run_length);
  said.tone = Tone::caution;
  said.state = symbol(Tone::caution) + tr(" wet");
  said.note = tr("along, in %1; %2, dew point %3")
                  .arg(QString::fromStdString(piece_name(of.design, of.library, *wet.piece)),
                       QString::fromStdString(show(wet.rate, of.units, Meaning::water_rate).text()), dew);
  return said;
}

TableRow age_header(UnitSystem units) {
  const QString pressure = QString::fromStdString(unit_name(Meaning::pressure, units));
  const QString temperature = QString::fromStdString(unit_name(Meaning::temperature, units));
  return {QString(), tr("Margin\n%1").arg(pressure), tr("Buoyancy\n%1").arg(pressure),
          tr("Resistance\n%1").arg(pressure), tr("Exit\n%1").arg(temperature)};
}

std::vector<TableRow> age_rows(const AnswerContext& of) {
  const auto number = [&of](const auto& quantity) { return QString::fromStdString(show(quantity, of.units).number); };
  std::vector<TableRow> rows;
  for (const DesignFlow& flow : of.assessment.design_flow) {
    const bool below = flow.margin < Pressure{};
    rows.push_back({capital(spoken(word(flow.age))),
                    (below ? symbol(Tone::fault) + QLatin1Char(' ') : QString()) +
                        (flow.quick_estimate ? QStringLiteral("≈ ") : QString()) + number(flow.margin),
                    number(flow.buoyancy), number(flow.resistance), number(flow.exit_temperature)});
  }
  return rows;
}

QString estimate_words(const Assessment& assessment, bool under_way) {
  if (assessment.design_flow.empty()) return {};
  QStringList ages;
  for (const DesignFlow& flow : assessment.design_flow) {
    if (flow.quick_estimate) ages << spoken(word(flow.age));
  }
  if (ages.isEmpty()) return tr("The young ages are followed in time from the match on.");
  return tr("≈ quick estimate: %1%2")
      .arg(ages.join(tr(" and ")),
           under_way ? tr("; they are being followed in time …") : QString());
}

Remark power_cut_remark(const AnswerContext& of, const std::optional<LateAnswer>& late) {
  if (!of.assessment.worst_margin_with_fans) return {};
  const bool unsafe = of.assessment.verdict == Verdict::unsafe;
  if (!late || (!late->power_cut && !late->complete)) {
    return {unsafe ? Tone::fault : Tone::caution,
            unsafe ? tr("Unsafe: the draft depends on a fan.") : tr("A fan runs in this design."),
            tr("What a power cut does is being worked out …")};
  }
  if (!late->power_cut) {
    return {Tone::fault, tr("A fan runs in this design."),
            tr("What a power cut does could not be computed: take it for unsafe.")};
  }
  const PowerCutAnswer& cut = *late->power_cut;
  Remark remark;
  remark.detail = QString::fromStdString(power_cut_sentence(cut));
  const std::string_view headline = power_cut_headline(cut);
  if (!headline.empty()) {
    remark.tone = Tone::fault;
    remark.words = spoken(headline);
  } else if (unsafe) {
    remark.tone = Tone::fault;
    remark.words = tr("Unsafe: without the fan there is no draft to spare.");
  } else {
    remark.tone = Tone::calm;
    remark.words = tr("A power cut does no harm here.");
  }
  return remark;
}

std::vector<TableRow> operating_rows(const AnswerContext& of) {
  const OperatingPoint* point = of.assessment.running_point();
  if (!point) return {};
  const auto row = [&](const char* name, const QString& value) { return TableRow{tr(name), value}; };
  return {row(QT_TR_NOOP("Excess air"), QString::fromStdString(show(point->excess_air_ratio, of.units, Meaning::ratio).text())),
          row(QT_TR_NOOP("To the room"), text(point->heat.to_room, of.units)),
          row(QT_TR_NOOP("Burn rate"), text(point->burn_rate, of.units)),
          row(QT_TR_NOOP("Into the mass"), text(point->heat.into_mass, of.units)),
          row(QT_TR_NOOP("Fire"), text(point->fire_temperature, of.units)),
          row(QT_TR_NOOP("Up the stack"), text(point->heat.stack_loss, of.units)),
          row(QT_TR_NOOP("Released"), text(point->heat.released, of.units)),
          row(QT_TR_NOOP("Unburned"), text(point->heat.unburned, of.units))};
}

bool is_about_settling(FindingCode code) {
  return code == FindingCode::short_of_air || code == FindingCode::overdrawn ||
         code == FindingCode::can_run_backwards || code == FindingCode::never_draws_forward;
}

std::vector<Remark> operating_remarks(const AnswerContext& of) {
  std::vector<Remark> remarks;
  for (const Finding& finding : of.assessment.findings) {
    if (!is_about_settling(finding.code)) continue;
    remarks.push_back(
        {tone_of(finding.severity), QString::fromStdString(sentence(finding, of.design, of.library, of.units)), {}});
  }
  if (const auto& off = of.assessment.fans_off) {
    const OperatingPoint* left = off->running_point();
    const bool starved = left == nullptr || left->short_of_air || left->excess_air_ratio < 1.5;
    remarks.push_back({starved ? Tone::fault : Tone::silent,
                       left == nullptr
                           ? tr("With every fan standing still no flow to the cap holds itself.")
                           : tr("With every fan standing still it settles at %1 times the air it needs, exit %2.")
                                 .arg(QString::fromStdString(show(left->excess_air_ratio, of.units, Meaning::ratio).text()),
                                      text(left->exit_temperature, of.units)), {}});
  }
  return remarks;
}

QStringList branch_lines(const AnswerContext& of) {
  QStringList lines;
  for (const BranchState& state : of.assessment.branches) {
    if (state.on_main_path) continue;
    const BranchWords said = branch_words(of.assessment, state, of.design, of.library);
    lines << tr("%1: %2 from %3 to %4, %5 % of the cap's, leaves at %6")
                 .arg(QString::fromStdString(said.name),
                      QString::fromStdString(show(MassFlow(abs(state.flow)), of.units, Meaning::mass_flow_gas).text()),
                      QString::fromStdString(said.from), QString::fromStdString(said.to))
                 .arg(100.0 * state.share.value(), 0, 'f', 0)
                 .arg(text(state.leaving, of.units));
  }
  return lines;
}

QStringList missing_words(const AnswerContext& of) {
  QStringList missing;
  if (of.assessment.path.complete) return missing;
  for (const Finding& finding : of.assessment.findings) {
    if (finding.severity != Severity::fault) continue;
    missing << QString::fromStdString(sentence(finding, of.design, of.library, of.units));
  }
  return missing;
}

}  // namespace fluewright
