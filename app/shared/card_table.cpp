// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/card_table.hpp"

#include "engine/burn/aids.hpp"

#include <utility>

namespace fluewright {

namespace {

/// What a start class asks of an owner who has the heater as it is drawn.
CardCell cell_of(const StartAnswer& answer, const StartQuestion& question) {
  switch (answer.start) {
    case StartClass::by_itself: return {CardStep::light, {}, {}};
    case StartClass::with_kindling: return {CardStep::kindle_at_the_foot, {}, {}};
    case StartClass::with_fan: return {CardStep::fan, {}, question.allowance.fan_lasts};
    case StartClass::with_priming:
    case StartClass::only_with_fan: break;
  }
  return {};
}

bool starts_without_help(const StartAnswer& answer) {
  return answer.start == StartClass::by_itself || answer.start == StartClass::with_kindling;
}

}  // namespace

CardDays card_days(UnitSystem units) {
  const bool metric = units == UnitSystem::metric;
  const auto all = [metric](std::initializer_list<double> levels) {
    std::vector<Temperature> temperatures;
    for (const double t : levels) temperatures.push_back(metric ? celsius(t) : celsius((t - 32.0) / 1.8));
    return temperatures;
  };
  return metric ? CardDays{all({-10.0, 0.0, 10.0, 20.0, 30.0}), all({5.0, 10.0, 15.0, 20.0})}
                : CardDays{all({10.0, 30.0, 50.0, 70.0, 90.0}), all({40.0, 50.0, 60.0, 70.0})};
}

std::unique_ptr<CardTableJob> CardTableJob::begin(const Design& design, std::shared_ptr<const Library> library,
                                                  const CardDays& days, std::function<void()> told) {
  auto question = ask_for_start(design, *library);
  if (!question) return nullptr;
  // An owner has the fan that is drawn and no other.
  if (question->fan && !question->fan->own) question->fan.reset();
  return std::unique_ptr<CardTableJob>(new CardTableJob(*std::move(question), std::move(library), days, std::move(told)));
}

CardTableJob::CardTableJob(StartQuestion question, std::shared_ptr<const Library> library, const CardDays& days,
                           std::function<void()> told)
    : question_{std::move(question)}, library_{std::move(library)} {
  question_.library = library_.get();
  table_.outdoor = days.outdoor;
  table_.room = days.room;
  table_.rows.assign(days.outdoor.size(), std::vector<CardCell>(days.room.size()));
  table_.kindling = question_.rules.kindling_share * question_.design.fire.burn_rate;
  table_.kindling_lasts = question_.rules.kindling_lasts;
  if (question_.can_prime) table_.primed_at = primed_at(question_.design, *library_).value_or(PieceId{});
  // Priming is searched by its amount; the class would try one amount only.
  question_.can_prime = false;
  workers_ = std::make_unique<Workers>([this] { return take(); }, [this] { return next_ == size(); }, std::move(told));
  workers_->begin(usual_threads());
}

CardTableJob::~CardTableJob() { workers_->cancel(), workers_->wait(); }

std::optional<CardCell> CardTableJob::cell_at(Temperature outdoors, Temperature room) const {
  const auto go_on = [this] { return !workers_->cancelled(); };
  const StartAnswer answer = classify_start(question_, outdoors, room, go_on);
  if (answer.cancelled) return std::nullopt;
  if (table_.primed_at.empty() || starts_without_help(answer)) return cell_of(answer, question_);
  Design day = question_.design;
  day.site.outdoor_temperature = outdoors;
  day.room.temperature = room;
  StartAid aid;
  aid.kind = StartAidKind::priming;
  aid.piece = table_.primed_at;
  aid.heating_value = starter("newspaper")->heating_value;
  const StartTrial trial = least_amount(day, *library_, aid, question_.rules, go_on).trial;
  if (trial.cancelled) return std::nullopt;
  return trial.holds ? CardCell{CardStep::prime, trial.aid.starter, trial.aid.lasts} : cell_of(answer, question_);
}

Workers::Work CardTableJob::take() {
  if (next_ == size()) return {};
  const std::size_t row = next_ / table_.room.size();
  const std::size_t column = next_ % table_.room.size();
  ++next_;
  return [this, row, column] {
    const auto cell = cell_at(table_.outdoor[row], table_.room[column]);
    const std::lock_guard lock(workers_->mutex());
    if (cell) {
      table_.rows[row][column] = *cell;
      ++computed_;
    }
    workers_->changed();
  };
}

std::optional<CardTable> CardTableJob::table() const {
  const std::lock_guard lock(workers_->mutex());
  if (computed_ < size()) return std::nullopt;
  return table_;
}

Ratio CardTableJob::progress() const {
  const std::lock_guard lock(workers_->mutex());
  return static_cast<double>(computed_) / static_cast<double>(size());
}

bool CardTableJob::done() const { return workers_->done(); }
void CardTableJob::cancel() { workers_->cancel(); }
void CardTableJob::wait() { workers_->wait(); }

}  // namespace fluewright
