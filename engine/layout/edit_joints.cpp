// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/edit_joints.hpp"

namespace fluewright::edit {

JointIndex::JointIndex(const Design& design) : first_link_(design.pieces.size() + 1, 0) {
  by_id_.reserve(design.pieces.size());
  for (std::size_t i = 0; i < design.pieces.size(); ++i) {
    by_id_.emplace(design.pieces[i].id, i);  // of two with one id the first counts; the path check reports the other
  }
  struct Ends {
    std::size_t joint;
    std::size_t a;
    std::size_t b;
  };
  std::vector<Ends> ends;
  ends.reserve(design.joints.size());
  for (std::size_t j = 0; j < design.joints.size(); ++j) {
    const std::optional<std::size_t> a = piece(design.joints[j].a.piece);
    const std::optional<std::size_t> b = piece(design.joints[j].b.piece);
    if (a && b && *a != *b) {
      ends.push_back({j, *a, *b});
      ++first_link_[*a + 1];
      ++first_link_[*b + 1];
    }
  }
  for (std::size_t i = 1; i < first_link_.size(); ++i) {
    first_link_[i] += first_link_[i - 1];
  }
  links_.resize(2 * ends.size());
  std::vector<std::size_t> next{first_link_.begin(), first_link_.end() - 1};
  for (const Ends& end : ends) {
    const Joint& joint = design.joints[end.joint];
    links_[next[end.a]++] = {end.joint, joint.a.port, end.b, joint.b.port};
    links_[next[end.b]++] = {end.joint, joint.b.port, end.a, joint.a.port};
  }
}

std::optional<std::size_t> JointIndex::piece(std::string_view id) const {
  const auto found = by_id_.find(id);
  return found != by_id_.end() ? std::optional{found->second} : std::nullopt;
}

std::span<const Link> JointIndex::links(std::size_t piece) const {
  return std::span{links_}.subspan(first_link_[piece], first_link_[piece + 1] - first_link_[piece]);
}

const Link* JointIndex::link(std::size_t piece, std::string_view port) const {
  for (const Link& link : links(piece)) {
    if (link.port == port) {
      return &link;
    }
  }
  return nullptr;
}

std::vector<std::size_t> JointIndex::group(std::size_t piece) const {
  std::vector<char> seen(piece_count(), 0);
  std::vector<std::size_t> found{piece};
  seen[piece] = 1;
  for (std::size_t next = 0; next < found.size(); ++next) {
    for (const Link& link : links(found[next])) {
      if (seen[link.other] == 0) {
        seen[link.other] = 1;
        found.push_back(link.other);
      }
    }
  }
  return found;
}

}  // namespace fluewright::edit
