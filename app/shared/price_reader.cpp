// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/price_reader.hpp"

#include "app/shared/data_entry.hpp"
#include "app/shared/json_text.hpp"
#include "app/shared/said.hpp"
#include "resources/embedded.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace fluewright {

namespace {

using nlohmann::ordered_json;

constexpr double dearest = 1e6;
constexpr std::uintmax_t largest_price_file = 1024u * 1024u;

PriceList read_list(std::string_view text, const std::string& where) {
  auto parsed = parse_json(text);
  if (const auto* fault = std::get_if<JsonFault>(&parsed)) throw std::runtime_error(fmt::format("{}: {}", where, fault->message));
  const ordered_json& json = std::get<ordered_json>(parsed);
  if (!json.is_object()) throw std::runtime_error(where + said(": a price list is an object with “currency” and “prices”"));
  DataEntry top(json, where);
  if (top.has("about")) (void)top.text("about");
  PriceList list;
  list.currency = top.text("currency");
  if (top.has("source")) list.citation = top.citation("source");
  for (const ordered_json& entry : top.list("prices")) {
    DataEntry price(entry, said("{}, price {}", where, list.prices.size() + 1));
    list.prices.push_back({price.text("type"), {price.number("each", 0.0, dearest)}, {price.number("per_metre", 0.0, dearest)}});
    price.finish();
  }
  top.finish();
  return list;
}

}  // namespace

const PriceList& shipped_prices() {
  static const PriceList list = [] {
    for (const EmbeddedFile& file : embedded_files()) {
      if (file.name == "prices.json") return read_list(file.text, "prices.json");
    }
    throw std::runtime_error("prices.json: is not among the data of this program");
  }();
  return list;
}

std::variant<PriceList, std::string> read_price_text(std::string_view text) {
  try {
    PriceList list = shipped_prices();
    PriceList own = read_list(text, said("Price list"));
    list.currency = own.currency;
    list.citation = own.citation;
    for (Price& price : own.prices) {
      const auto known = std::find_if(list.prices.begin(), list.prices.end(), [&](const Price& p) { return p.type == price.type; });
      if (known == list.prices.end()) return said("Price list: “{}” is not in the catalogue.", price.type);
      *known = std::move(price);
    }
    return list;
  } catch (const std::runtime_error& fault) {
    return std::string(fault.what());
  }
}

std::variant<PriceList, std::string> read_price_file(const std::filesystem::path& path) {
  std::error_code error;
  const std::uintmax_t size = std::filesystem::file_size(path, error);
  std::ifstream file(path, std::ios::binary);
  if (error || !file) return said("The price list {} cannot be read.", path.string());
  if (size > largest_price_file) return said("The price list {} is larger than 1 MiB.", path.string());
  std::stringstream text;
  text << file.rdbuf();
  return read_price_text(text.str());
}

}  // namespace fluewright
