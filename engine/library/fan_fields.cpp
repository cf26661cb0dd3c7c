// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/library/fan_sheet.hpp"

#include <type_traits>

namespace fluewright {

namespace {

/// An entry over a member of the sheet.
template <auto Member>
constexpr FanField entry(std::string_view key, FieldKind kind) {
  return {key, kind, [](const FanSheet& s) -> FieldValue { return s.*Member; },
          [](FanSheet& s, const FieldValue& v) {
            auto& target = s.*Member;
            target = std::get<std::remove_reference_t<decltype(target)>>(v);
          }};
}

FieldValue motor_word(const FanSheet& s) {
  return std::string(s.motor_in_stream ? motor_in_the_stream : motor_outside);
}

void set_motor(FanSheet& s, const FieldValue& v) { s.motor_in_stream = std::get<std::string>(v) == motor_in_the_stream; }

constexpr FanField all_fields[] = {
    entry<&FanSheet::reference_density>("reference_density", FieldKind::density),
    entry<&FanSheet::off_loss>("off_loss", FieldKind::ratio),
    {"motor", FieldKind::choice, motor_word, set_motor},
    entry<&FanSheet::rated_gas>("rated_gas", FieldKind::temperature),
    entry<&FanSheet::rated_motor>("rated_motor", FieldKind::temperature),
    entry<&FanSheet::power>("power", FieldKind::power),
};

}  // namespace

std::span<const FanField> fan_fields() { return all_fields; }

}  // namespace fluewright
