// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What a file holds and this version does not know is kept in a tree of its own: the same nesting as the file, with
// lists turned into objects by id ("pieces" -> "p1"), so that it finds its way back after pieces come and go.

#include <nlohmann/json.hpp>

#include <initializer_list>
#include <string>
#include <string_view>

namespace fluewright {

/// Copies the keys of `from` that are not among `known` into `kept`.
void keep_unknown(const nlohmann::ordered_json& from, std::initializer_list<std::string_view> known,
                  nlohmann::ordered_json& kept);

/// Puts `kept` into `parent` under `key`, unless nothing was kept.
void keep_under(nlohmann::ordered_json& parent, const std::string& key, nlohmann::ordered_json kept);

/// The branch of a kept tree under `key`; an empty object if there is none.
[[nodiscard]] const nlohmann::ordered_json& kept_under(const nlohmann::ordered_json& kept, const std::string& key);

/// Puts kept keys back behind those that `object` has.
void put_back(nlohmann::ordered_json& object, const nlohmann::ordered_json& kept);

}  // namespace fluewright
