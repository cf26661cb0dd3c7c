// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/finding_report.hpp"

#include "app/shared/text_table.hpp"
#include "app/shared/words.hpp"

#include <fmt/format.h>

namespace fluewright {

namespace {

using nlohmann::ordered_json;


}  // namespace

ordered_json finding_json(const Finding& finding, const Design& design, const Library& library) {
  ordered_json json = {
      {"finding", finding_name(finding.code)}, {"severity", word(finding.severity)}, {"piece", nullptr}};
  if (!finding.piece.empty()) json["piece"] = finding.piece;
  json["sentence"] = sentence(finding, design, library, UnitSystem::metric);
  json["why"] = why_it_matters(finding.code);
  json["source"] = finding_source_words(finding);
  json["acknowledge_as"] = acknowledged_as(finding);
  const Acknowledgement* acknowledged = acknowledgement_of(finding, design);
  json["acknowledged"] = acknowledged != nullptr ? ordered_json(acknowledged->reason) : ordered_json();
  return json;
}

std::string findings_text(const std::vector<Finding>& findings, const Design& design, const Library& library,
                          UnitSystem units) {
  std::string open;
  std::string settled;
  for (const Finding& finding : findings) {
    const std::string said = fmt::format("{}: {}", word(finding.severity), sentence(finding, design, library, units));
    if (const Acknowledgement* acknowledged = acknowledgement_of(finding, design)) {
      settled += wrapped(said, report_width, 2, 2) + wrapped("acknowledged: " + acknowledged->reason, report_width, 6, 2);
      continue;
    }
    open += wrapped(said, report_width, 2, 2) + wrapped(why_it_matters(finding.code), report_width, 6) +
            wrapped("source: " + finding_source_words(finding), report_width, 6, 2);
  }
  if (open.empty()) open = "  nothing\n";
  return settled.empty() ? open : open + "\nAcknowledged\n" + settled;
}

}  // namespace fluewright
