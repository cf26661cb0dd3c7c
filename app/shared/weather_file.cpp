// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/burn_file.hpp"
#include "app/shared/said.hpp"

#include <fmt/format.h>

#include <charconv>
#include <chrono>
#include <optional>

namespace fluewright {
namespace {

std::vector<std::string_view> cells_of(std::string_view line) {
  std::vector<std::string_view> cells;
  for (std::size_t begin = 0;;) {
    const std::size_t comma = line.find(',', begin);
    std::string_view cell = line.substr(begin, comma == std::string_view::npos ? comma : comma - begin);
    while (!cell.empty() && cell.front() == ' ') cell.remove_prefix(1);
    while (!cell.empty() && (cell.back() == ' ' || cell.back() == '\r')) cell.remove_suffix(1);
    cells.push_back(cell);
    if (comma == std::string_view::npos) return cells;
    begin = comma + 1;
  }
}

template <class Number>
std::optional<Number> number_in(std::string_view text) {
  Number n{};
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), n);
  if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  return n;
}

/// Minutes since 1970 of "2024-04-06T17:00", seconds allowed and left out.
std::optional<double> minutes_of(std::string_view text) {
  if (text.size() < 16 || text[4] != '-' || text[7] != '-' || (text[10] != 'T' && text[10] != ' ') || text[13] != ':') {
    return std::nullopt;
  }
  const auto year = number_in<int>(text.substr(0, 4));
  const auto month = number_in<unsigned>(text.substr(5, 2));
  const auto day = number_in<unsigned>(text.substr(8, 2));
  const auto hours = number_in<int>(text.substr(11, 2));
  const auto minutes = number_in<int>(text.substr(14, 2));
  if (!year || !month || !day || !hours || !minutes) return std::nullopt;
  const std::chrono::year_month_day date{std::chrono::year{*year}, std::chrono::month{*month}, std::chrono::day{*day}};
  if (!date.ok() || *hours < 0 || *hours > 23 || *minutes < 0 || *minutes > 59) return std::nullopt;
  const auto days = std::chrono::sys_days{date}.time_since_epoch().count();
  return 1440.0 * static_cast<double>(days) + 60.0 * *hours + *minutes;
}

}  // namespace

WeatherResult read_weather_text(std::string_view text, std::string_view name) {
  constexpr std::size_t none = static_cast<std::size_t>(-1);
  std::vector<std::string> faults;
  std::vector<OutdoorPoint> points;
  std::size_t time_column = none;
  std::size_t temperature_column = none;
  double first = 0.0;
  std::optional<double> last;
  std::optional<double> spacing;
  std::size_t line_number = 0;
  const auto fault = [&](const std::string& what) { faults.push_back(said("“{}”, line {}: {}", name, line_number, what)); };
  for (std::size_t begin = 0; begin < text.size();) {
    const std::size_t end = std::min(text.find('\n', begin), text.size());
    const std::string_view line = text.substr(begin, end - begin);
    begin = end + 1;
    ++line_number;
    const auto cells = cells_of(line);
    if (cells.size() == 1 && cells[0].empty()) continue;
    if (time_column == none) {
      for (std::size_t i = 0; i < cells.size(); ++i) {
        if (cells[i] == "time") time_column = i;
        if (cells[i] == "temperature_C") temperature_column = i;
      }
      if (time_column == none || temperature_column == none) {
        fault(said("the columns “time” and “temperature_C” are wanted."));
        return FileFault{std::move(faults)};
      }
      continue;
    }
    if (cells.size() <= std::max(time_column, temperature_column)) {
      fault(said("the row is too short."));
      continue;
    }
    const auto at = minutes_of(cells[time_column]);
    if (!at) {
      fault(said("“{}” is no time like 2024-04-06T17:00.", cells[time_column]));
      continue;
    }
    const auto temperature = number_in<double>(cells[temperature_column]);
    if (!temperature) {
      fault(cells[temperature_column].empty() ? said("the temperature is missing.")
                                              : said("“{}” is no temperature.", cells[temperature_column]));
    }
    if (last && *at <= *last) {
      fault(said("the row is not later than the one before."));
      continue;
    }
    if (last) {
      const double step = *at - *last;
      if (!spacing) spacing = step;
      if (step > 1.5 * *spacing) {
        fault(said("{:.0f} minutes are missing before this row; the rows before are {:.0f} minutes apart.", step - *spacing, *spacing));
      }
    } else {
      first = *at;
    }
    last = at;
    if (temperature) points.push_back({(*at - first) * minute, celsius(*temperature)});
  }
  if (time_column == none) faults.push_back(said("“{}” is empty.", name));
  if (!faults.empty()) return FileFault{std::move(faults)};
  return points;
}

}  // namespace fluewright
