// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/json_text.hpp"

#include "app/shared/said.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <stdexcept>
#include <vector>

namespace fluewright {

namespace {

using nlohmann::ordered_json;

/// Stops the parser from inside its callback.
struct Refused : std::runtime_error {
  using std::runtime_error::runtime_error;
};

/// Watches the parser's events for what nlohmann lets pass.
class Watch {
 public:
  bool operator()(int depth, ordered_json::parse_event_t event, ordered_json& parsed) {
    using Event = ordered_json::parse_event_t;
    if (event == Event::object_start || event == Event::array_start) {
      if (depth >= deepest_nesting)
        throw Refused(said("The file is nested more than {} deep.", deepest_nesting));
      if (event == Event::object_start) keys_.emplace_back();
    } else if (event == Event::object_end) {
      keys_.pop_back();
    } else if (event == Event::key) {
      const std::string& key = parsed.get_ref<const std::string&>();
      if (!keys_.back().insert(key).second) {
        throw Refused(said("The key “{}” stands twice in the same object: only one can be meant.", key));
      }
    }
    return true;
  }

 private:
  std::vector<std::set<std::string, std::less<>>> keys_;
};

struct TextPlace {
  std::size_t line = 1;
  std::size_t column = 1;
};

TextPlace place_of(std::string_view text, std::size_t byte) {
  const std::string_view before = text.substr(0, std::min(byte, text.size()));
  const auto last_break = before.rfind('\n');
  return {static_cast<std::size_t>(std::count(before.begin(), before.end(), '\n')) + 1,
          last_break == std::string_view::npos ? before.size() + 1 : before.size() - last_break};
}

std::string scalar(const ordered_json& json) {
  return json.dump(-1, ' ', false, ordered_json::error_handler_t::replace);
}

bool all_scalar(const ordered_json& json) {
  return std::all_of(json.begin(), json.end(), [](const ordered_json& entry) { return entry.is_primitive(); });
}

std::string key_text(const std::string& key) { return scalar(ordered_json(key)) + ": "; }

std::string one_line(const ordered_json& json) {
  std::string text(1, json.is_object() ? '{' : '[');
  for (auto entry = json.begin(); entry != json.end(); ++entry) {
    if (entry != json.begin()) text += ", ";
    if (json.is_object()) text += key_text(entry.key());
    text += scalar(entry.value());
  }
  return text + (json.is_object() ? '}' : ']');
}

void put(std::string& out, const ordered_json& json, int depth) {
  constexpr std::size_t longest_line = 100;
  constexpr int always_broken = 2;  // the top two levels
  if (json.is_primitive()) {
    out += scalar(json);
    return;
  }
  if (all_scalar(json) && (depth >= always_broken || json.empty())) {
    const std::string line = one_line(json);
    if (line.size() <= longest_line) {
      out += line;
      return;
    }
  }
  const std::string indent(static_cast<std::size_t>(depth + 1) * 2, ' ');
  out += json.is_object() ? "{\n" : "[\n";
  for (auto entry = json.begin(); entry != json.end(); ++entry) {
    if (entry != json.begin()) out += ",\n";
    out += indent;
    if (json.is_object()) out += key_text(entry.key());
    put(out, entry.value(), depth + 1);
  }
  out += "\n" + std::string(static_cast<std::size_t>(depth) * 2, ' ') + (json.is_object() ? "}" : "]");
}

}  // namespace

std::variant<ordered_json, JsonFault> parse_json(std::string_view text) {
  try {
    Watch watch;
    return ordered_json::parse(text, [&watch](int depth, ordered_json::parse_event_t event, ordered_json& parsed) {
      return watch(depth, event, parsed);
    });
  } catch (const ordered_json::parse_error& error) {
    const TextPlace place = place_of(text, error.byte == 0 ? 0 : error.byte - 1);
    return JsonFault{
        said("This is not JSON: at line {}, column {} something else was expected.", place.line, place.column)};
  } catch (const ordered_json::exception&) {
    return JsonFault{said("This is not JSON that can be read: a number in it is too large.")};
  } catch (const Refused& refused) {
    return JsonFault{refused.what()};
  }
}

std::string lay_out_json(const ordered_json& json) {
  std::string out;
  put(out, json, 0);
  return out + "\n";
}

}  // namespace fluewright
