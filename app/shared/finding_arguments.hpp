// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/said.hpp"
#include "app/shared/words.hpp"

#include <fmt/format.h>

#include <string>

namespace fluewright {

/// A finding's arguments, ready to be put into a sentence.
class FindingArguments {
 public:
  FindingArguments(const Finding& finding, const Design& design, const Library& library, UnitSystem units)
      : finding_{finding}, units_{units} {
    if (!finding.piece.empty()) {
      piece_ = piece_name(design, library, std::string_view(finding.piece));
      if (design.piece(finding.text) != nullptr) other_ = piece_name(design, library, std::string_view(finding.text));
      const Piece* piece = design.piece(finding.piece);
      const PieceType* type = piece != nullptr ? library.piece_type(piece->type) : nullptr;
      if (type != nullptr) spec_ = type->field(finding.field);
    } else {
      spec_ = library.condition(finding.field);
      of_own_fan_ = finding.field == "fans";
      if (spec_ == nullptr && !finding.text.empty()) {
        spec_ = library.fan_field(finding.field);
        of_own_fan_ = of_own_fan_ || spec_ != nullptr;
      }
    }
  }

  [[nodiscard]] const std::string& piece() const { return piece_; }
  /// Where the text names a second piece.
  [[nodiscard]] const std::string& other() const { return other_; }
  [[nodiscard]] std::string label() const { return spec_ != nullptr ? spec_->label : finding_.field; }
  /// "Bench pipe 2, Bore", "Moisture" or, of the design's own build-ups and fans, "Wall “own”", "Fan “own”, Head".
  [[nodiscard]] std::string subject() const {
    if (of_own_fan_) {
      return spec_ != nullptr ? said("Fan “{}”, {}", finding_.text, label()) : said("Fan “{}”", finding_.text);
    }
    if (of_own_wall()) return said("Wall “{}”{}", own_wall(), layer());
    return piece_.empty() ? label() : piece_ + ", " + label();
  }
  [[nodiscard]] std::string value() const { return text(finding_.value); }
  [[nodiscard]] UnitSystem units() const { return units_; }
  /// A share in whole percent.
  [[nodiscard]] std::string share() const {
    const auto* ratio = std::get_if<Ratio>(&finding_.value);
    return ratio != nullptr ? fmt::format("{:.0f} %", 100.0 * ratio->value()) : value();
  }
  [[nodiscard]] std::string value(Meaning meaning) const {
    const auto* length = std::get_if<Length>(&finding_.value);
    return length != nullptr ? show(*length, units_, meaning).text() : value();
  }

  /// A length between two places: a gap's breadth, or feet and inches where it is a foot and more.
  [[nodiscard]] std::string apart() const {
    const auto* length = std::get_if<Length>(&finding_.value);
    return value(length != nullptr && *length >= foot ? Meaning::drawn_length : Meaning::small_length);
  }

  [[nodiscard]] std::string lowest() const { return finding_.lowest ? text(*finding_.lowest) : std::string{}; }
  [[nodiscard]] std::string highest() const { return finding_.highest ? text(*finding_.highest) : std::string{}; }

  /// "from 50 mm to 500 mm", "at least 150 mm".
  [[nodiscard]] std::string range() const {
    if (finding_.lowest && finding_.highest) {
      return said("from {} to {}", text(*finding_.lowest), text(*finding_.highest));
    }
    if (finding_.lowest) return said("at least {}", text(*finding_.lowest));
    if (finding_.highest) return said("at most {}", text(*finding_.highest));
    if (spec_ == nullptr || spec_->choices.empty()) return said("something else");
    std::string words;
    for (const std::string& choice : spec_->choices) words += (words.empty() ? said("one of ") : ", ") + choice;
    return words;
  }

 private:
  [[nodiscard]] bool of_own_wall() const { return piece_.empty() && finding_.field.starts_with("walls"); }
  /// ", layer 2" for "walls.2".
  [[nodiscard]] std::string layer() const {
    const auto dot = finding_.field.find('.');
    return dot == std::string::npos ? std::string{} : said(", layer ") + finding_.field.substr(dot + 1);
  }
  /// Which of the design's own walls: the argument, unless that is the material it lacks.
  [[nodiscard]] std::string own_wall() const {
    const auto* id = std::get_if<std::string>(&finding_.value);
    return id != nullptr ? *id : finding_.text;
  }
  [[nodiscard]] std::string text(const FieldValue& value) const {
    constexpr FieldKind kind_of_alternative[] = {FieldKind::length,    FieldKind::angle,    FieldKind::ratio,
                                                 FieldKind::count,     FieldKind::pressure, FieldKind::temperature,
                                                 FieldKind::mass_flow, FieldKind::velocity, FieldKind::volume_flow,
                                                 FieldKind::volume,    FieldKind::density,  FieldKind::power,
                                                 FieldKind::choice};
    const FieldKind kind = spec_ != nullptr ? spec_->kind : kind_of_alternative[value.index()];
    return show(value, units_, kind, finding_.field).text();
  }

  const Finding& finding_;
  UnitSystem units_;
  std::string piece_;
  bool of_own_fan_ = false;
  std::string other_;
  const FieldSpec* spec_ = nullptr;
};

}  // namespace fluewright
