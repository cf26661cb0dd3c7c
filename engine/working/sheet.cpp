// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/working/sheet.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

namespace fluewright {

namespace {

/// What is printed of a value unless its inputs carry less; one more than is promised back.
constexpr int full_digits = 7;
/// Temperatures are levels far from their zero: more digits, so that their differences keep enough.
constexpr int temperature_digits = 9;
constexpr int least_digits = 2;

struct Size {
  double operator()(const Temperature& t) const { return in_kelvin(t); }
  template <class Quantity>
  double operator()(const Quantity& q) const {
    return std::abs(q.value());
  }
};

double size_of(const WorkingValue& value) { return std::visit(Size{}, value); }

int full(const WorkingValue& value) {
  return std::holds_alternative<Temperature>(value) ? temperature_digits : full_digits;
}

/// The power of ten of the leading digit; nothing for zero.
std::optional<int> exponent_of(double size) {
  if (!(size > 0.0) || !std::isfinite(size)) return std::nullopt;
  return static_cast<int>(std::floor(std::log10(size)));
}

bool of_name(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
}
bool of_number(char c) { return (c >= '0' && c <= '9') || c == '.'; }

constexpr std::array<std::string_view, 9> known_words{"sqrt", "ln", "exp", "abs", "min", "max", "acosh", "pi", ""};

/// The names in a relation, each once, in their order. Numbers with an exponent ("5.67e-8") hold no name.
std::vector<std::string> names_in(std::string_view relation) {
  std::vector<std::string> names;
  std::size_t i = 0;
  while (i < relation.size()) {
    if (!of_name(relation[i]) && !of_number(relation[i])) {
      ++i;
      continue;
    }
    const std::size_t start = i;
    const bool number = of_number(relation[i]);
    const auto goes_on = [&] {
      const bool sign = relation[i] == '-' || relation[i] == '+';
      if (number && sign) return relation[i - 1] == 'e';
      return of_name(relation[i]) || (number && relation[i] == '.');
    };
    while (i < relation.size() && goes_on()) ++i;
    const std::string_view word = relation.substr(start, i - start);
    const bool taken = number || std::find(known_words.begin(), known_words.end(), word) != known_words.end() ||
                       std::find(names.begin(), names.end(), word) != names.end();
    if (!taken) names.emplace_back(word);
  }
  return names;
}

/// Half a unit of the last digit of a step as it is printed.
double half_unit(const WorkingStep& step) {
  const auto exponent = exponent_of(size_of(step.value));
  return exponent ? 0.5 * std::pow(10.0, *exponent - step.digits + 1) : 0.0;
}

/// A relation may hold powers of its inputs; most are below the second.
constexpr double usual_power = 2.0;

/// How far the rounding of the inputs may move the result.
double carried(const Working& working, const WorkingStep& step, Carries carries) {
  double moved = 0.0;
  for (const std::string& name : step.uses) {
    const WorkingStep& used = *working.step(name);
    const double size = size_of(used.value);
    if (carries == Carries::sum) {
      moved += half_unit(used);
    } else if (size > 0.0) {
      moved += usual_power * half_unit(used) / size * size_of(step.value);
    }
  }
  return moved;
}

/// One digit more than comes back to within two units.
int digits_for(const WorkingStep& step, double moved) {
  const auto exponent = exponent_of(size_of(step.value));
  if (!exponent || !(moved > 0.0)) return full(step.value);
  const int back = *exponent + 1 + static_cast<int>(std::floor(std::log10(2.0 / moved)));
  return std::min(full(step.value), back + 1);
}

}  // namespace

const WorkingStep* Working::step(std::string_view symbol) const {
  const auto found = std::find_if(steps.begin(), steps.end(), [symbol](const WorkingStep& s) { return s.symbol == symbol; });
  return found == steps.end() ? nullptr : &*found;
}

Sheet::Last Sheet::Last::remark(std::string text) const {
  step_->remark = step_->remark.empty() ? std::move(text) : step_->remark + "; " + text;
  return *this;
}

Sheet::Last Sheet::Last::piece(std::size_t index) const {
  step_->piece = index;
  return *this;
}

Sheet::Last Sheet::Last::within(std::string text, bool holds) const {
  step_->range = RelationRange{std::move(text), !holds};
  return *this;
}

Sheet::Last Sheet::Last::losing(Ratio size_over_difference) const {
  const double loss = size_over_difference.value();
  if (loss > 1.0) step_->digits -= static_cast<int>(std::ceil(std::log10(std::min(loss, 1e9))));
  step_->digits = std::max(step_->digits, least_digits);
  return *this;
}

Sheet::Last Sheet::add(WorkingStep step) {
  assert(!has(step.symbol) && "a symbol means one thing in a working");
  step.part = part_;
  step.digits = std::max(step.digits, least_digits);
  working_.steps.push_back(std::move(step));
  return Last{working_.steps.back()};
}

Sheet::Last Sheet::given(std::string symbol, std::string meaning, WorkingValue value, Citation citation) {
  WorkingStep step;
  step.symbol = std::move(symbol);
  step.meaning = std::move(meaning);
  step.value = value;
  step.citation = std::move(citation);
  step.digits = full(value);
  return add(std::move(step));
}

Sheet::Last Sheet::read(std::string symbol, std::string meaning, std::vector<std::string> uses, WorkingValue value,
                        Citation citation, std::string how) {
  const Last last = given(std::move(symbol), std::move(meaning), value, std::move(citation));
  for ([[maybe_unused]] const std::string& name : uses) assert(has(name) && "a step uses what no step has given");
  working_.steps.back().uses = std::move(uses);
  return last.remark(std::move(how));
}

Sheet::Last Sheet::step(std::string symbol, std::string meaning, std::string relation, WorkingValue value,
                        Citation citation, Carries carries) {
  WorkingStep step;
  step.symbol = std::move(symbol);
  step.meaning = std::move(meaning);
  step.uses = names_in(relation);
  for ([[maybe_unused]] const std::string& name : step.uses) assert(has(name) && "a step uses what no step has given");
  step.relation = std::move(relation);
  step.value = value;
  step.citation = std::move(citation);
  step.digits = digits_for(step, carried(working_, step, carries));
  return add(std::move(step));
}

Citation published(std::string source) { return {std::move(source), Standing::published}; }
Citation from_memory(std::string source) { return {std::move(source), Standing::from_memory}; }
Citation common_practice(std::string source) { return {std::move(source), Standing::common_practice}; }
Citation chosen(std::string source) { return {std::move(source), Standing::chosen}; }
Citation by_definition() { return {"definition", Standing::published}; }
Citation as_drawn() { return {"the drawing", Standing::chosen}; }
Citation from_the_walk() { return {"the walk along the path", Standing::chosen}; }

}  // namespace fluewright
