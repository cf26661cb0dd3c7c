// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/remedy_report.hpp"

#include "app/shared/remedy_words.hpp"
#include "app/shared/text_table.hpp"
#include "app/shared/words.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace fluewright {

namespace {

using nlohmann::ordered_json;


ordered_json outcome_json(const Outcome& outcome) {
  ordered_json json = {{"verdict", word(outcome.verdict)},
                       {"margin_Pa", in(outcome.margin, pascal)},
                       {"age", word(outcome.age)},
                       {"exit_C", in_celsius(outcome.exit)},
                       {"heat_kept_W", in(outcome.kept, watt)},
                       {"condensing_g_h", in(outcome.water, MassFlow(gram / hour))},
                       {"parts", outcome.parts.amount}};
  if (outcome.shut) json["charged_margin_blade_shut_Pa"] = in(*outcome.shut, pascal);
  return json;
}

ordered_json titles_json(const std::vector<Finding>& findings) {
  ordered_json json = ordered_json::array();
  for (const Finding& finding : findings) {
    ordered_json entry = {{"finding", finding_name(finding.code)}, {"piece", nullptr}};
    if (!finding.piece.empty()) entry["piece"] = finding.piece;
    json.push_back(std::move(entry));
  }
  return json;
}

/// Titles, each once, with how often.
std::string titles(const std::vector<Finding>& findings) {
  std::vector<std::pair<FindingCode, int>> counted;
  for (const Finding& finding : findings) {
    const auto known = std::find_if(counted.begin(), counted.end(), [&](const auto& c) { return c.first == finding.code; });
    if (known == counted.end()) {
      counted.emplace_back(finding.code, 1);
    } else {
      ++known->second;
    }
  }
  std::string text;
  for (const auto& [code, count] : counted) {
    text += (text.empty() ? "" : ", ") + finding_title(code) + (count > 1 ? fmt::format(" ({})", count) : "");
  }
  return text;
}

std::string outcome_line(const Outcome& outcome, UnitSystem units) {
  const std::string shut =
      outcome.shut ? fmt::format(", warm and with the blade shut {}", show(*outcome.shut, units).text()) : std::string{};
  const bool only_open = lasting_verdict(outcome) == Verdict::will_not_draw && outcome.verdict < Verdict::will_not_draw;
  return fmt::format("{}, margin {} ({}){}, exit {}, heat kept {}",
                     only_open ? "draws only while the blade is open" : word(outcome.verdict), show(outcome.margin, units).text(),
                     word(outcome.age), shut, show(outcome.exit, units).text(), show(outcome.kept, units).text());
}

}  // namespace

ordered_json remedies_json(const RemedyList& list, const Design& design, const Library& library, const PriceList& prices) {
  ordered_json json;
  json["title"] = design.title;
  json["before"] = list.before ? outcome_json(*list.before) : ordered_json();
  json["currency"] = prices.currency;
  json["prices_source"] = prices.citation.source;
  json["tried"] = list.state.tried;
  json["remedies"] = ordered_json::array();
  for (const TriedRemedy& tried : list.remedies) {
    ordered_json entry;
    entry["changes"] = ordered_json::array();
    for (const Change& change : tried.remedy.changes) entry["changes"].push_back(change_name(change.kind));
    entry["sentence"] = remedy_sentence(tried.remedy, design, library, UnitSystem::metric);
    entry["after"] = outcome_json(tried.after);
    entry["margin_gain_Pa"] = in(Pressure(tried.after.margin - list.before->margin), pascal);
    entry["parts_difference"] = (tried.after.parts - list.before->parts).amount;
    entry["mends"] = titles_json(tried.mended);
    entry["raises"] = titles_json(tried.raised);
    json["remedies"].push_back(std::move(entry));
  }
  return json;
}

std::string remedies_text(const RemedyList& list, const Design& design, const Library& library, const PriceList& prices,
                          UnitSystem units, std::size_t most) {
  std::string text = (design.title.empty() ? "Untitled" : design.title) + "\n";
  if (!list.before) return text + "  The drawing has no answer yet; its faults come first (fluewright-cli findings).\n";
  text += wrapped("now: " + outcome_line(*list.before, units), report_width, 2, 2) + "\n";
  std::size_t number = 0;
  for (const TriedRemedy& tried : list.remedies) {
    if (number == most) break;
    text += wrapped(fmt::format("{}. {}", ++number, remedy_sentence(tried.remedy, design, library, units)), report_width, 2, 3);
    text += wrapped(outcome_line(tried.after, units) + ", parts " +
                        money_text(tried.after.parts - list.before->parts, prices.currency),
                    report_width, 5, 2);
    if (!tried.mended.empty()) text += wrapped("mends: " + titles(tried.mended), report_width, 5, 2);
    if (!tried.raised.empty()) text += wrapped("raises: " + titles(tried.raised), report_width, 5, 2);
  }
  if (list.remedies.empty()) text += "  Nothing that was tried brings anything.\n";
  text += fmt::format("\n  {} tried, {} worth a look. Prices: {}.\n", list.state.tried, list.remedies.size(), prices.citation.source);
  return text;
}

}  // namespace fluewright
