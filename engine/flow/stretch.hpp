// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What a piece hands to the solver: stretches of flue with one section each. A stretch knows shape and
// surroundings; it knows no flow and no temperature.

#include "engine/flow/fan.hpp"
#include "engine/flow/junction.hpp"
#include "engine/flow/section.hpp"
#include "engine/library/library.hpp"
#include "engine/quantities/quantities.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace fluewright {

/// A local loss, on the velocity head of the stretch that carries it.
struct LocalLoss {
  /// How the coefficient depends on the Reynolds number.
  enum class Reynolds {
    none,
    mitre  ///< SMACNA correction of sharp bends: see mitre_reynolds_factor()
  };
  Ratio forward = 0.0;   ///< with flow the way the stretch is written
  Ratio backward = 0.0;  ///< with flow against it
  Reynolds correction = Reynolds::none;
  std::string name;      ///< "90 degree bend", for the working
  Citation citation;
};

/// One layer of the wall with its material at hand.
struct WallLayerView {
  const Material* material = nullptr;
  Length thickness{};
};

/// What lies outside the wall.
enum class Place {
  room,      ///< free air of the heated room
  outdoors,  ///< free air outdoors, wind included
  attic,     ///< unheated space, midway between room and outdoors
  mass,      ///< in the bench: heat goes through the mass to the room
  ground,    ///< under the floor
  jacket     ///< inside a barrel or bell: what is lost here is regained by the gas around it
};

/// The mass or ground around a stretch; unused in free air.
struct Embedding {
  const Material* material = nullptr;
  Length width{};           ///< of the mass across the run
  Length height{};
  Length depth{};           ///< centre line under the surface (Place::ground)
  Ratio exposed_share = 1.0;///< of the mass's outline that gives heat to the room (a bench on the floor against a wall: about 0.5)
  bool under_open_sky = false;  ///< Place::ground: the surface above is outdoors instead of the room
};

/// The flat top of a barrel or bell: the gas meets it before it goes down.
struct Lid {
  Area surface{};
  Length across{};         ///< diameter, or the shorter side
  Length jet_diameter{};   ///< of the riser whose gas strikes it; zero where nothing strikes it (a bell)
  Length jet_gap{};        ///< from the riser's rim to the lid
};

/// A length of flue with one section, one wall and one place.
struct Stretch {
  std::size_t piece = 0;     ///< index in Design::pieces
  Length length{};           ///< along the flow; > 0
  Length rise{};             ///< height of the end above the start
  Length start_height{};     ///< height of the start above the floor
  Section section = Section::circle(150.0 * millimetre);
  Length roughness{};
  Citation roughness_citation;
  std::vector<LocalLoss> at_start;  ///< beyond friction and the step in area, which the solver adds itself
  std::vector<LocalLoss> at_end;
  /// The section changes gradually on the way into this stretch (a taper): that loss is already among the piece's own
  /// losses on either side of the step, so the solver adds none there, only the change of velocity head.
  bool eased_step_at_start = false;
  std::vector<WallLayerView> wall;  ///< from the gas outwards; empty = no wall worth the name
  Place place = Place::room;
  Embedding embedding;
  std::optional<Lid> lid;    ///< the gas passes under it where the stretch starts
  bool chamber = false;      ///< wide and slow: free convection joins the forced film (barrel, bell)
  std::optional<Fan> fan;    ///< behind the losses at the start, or before those at the end
  bool fire = false;         ///< the fuel burns at the start of this stretch
  bool stands_upright = false;  ///< outside film: vertical wall instead of horizontal cylinder
};

/// Where an end of a branch opens or meets.
enum class EndKind { room_air, outdoor_air, node };

/// One end of a branch.
struct BranchEnd {
  EndKind kind = EndKind::node;
  std::size_t node = 0;    ///< for EndKind::node
  Length height{};         ///< above the floor
  JunctionPort port = JunctionPort::run_in;  ///< for EndKind::node: which of the junction's ports this end is
  bool cap = false;        ///< for EndKind::outdoor_air: the top of the stack, where the wind's pressure acts
};

/// A hole without length between two ends: a leaky joint, a draft regulator's flap.
struct Opening {
  std::size_t piece = 0;   ///< index in Design::pieces
  Area area{};             ///< of the hole, or of the flap standing wide open
  Area shut_area{};        ///< what a shut flap leaks by
  std::optional<Pressure> set_draft;  ///< a flap: the draft above which it opens; a plain hole has none
  Pressure span{};         ///< a flap: it stands wide open this much above
};

/// A run of stretches between two ends, in the direction in which it is written; or an opening.
struct Branch {
  BranchEnd from;
  BranchEnd to;
  std::vector<Stretch> stretches;
  std::optional<Opening> opening;  ///< in place of stretches
};

/// Where three branches meet.
struct NetworkNode {
  std::size_t piece = 0;   ///< index in Design::pieces
  Length height{};         ///< above the floor
  JunctionForm form;
};

/// The flue as a network. A plain heater is one branch from room air to outdoor air; tees and wyes make nodes.
struct FlueNetwork {
  std::vector<NetworkNode> nodes;
  std::vector<Branch> branches;
  /// The branches from the inlet through the fire to the cap, in that order and written that way. A series path is its
  /// own main path.
  std::vector<std::size_t> main_path{0};

  /// The main path's stretches one after another.
  [[nodiscard]] std::vector<const Stretch*> main_stretches() const {
    std::vector<const Stretch*> found;
    for (const std::size_t b : main_path) {
      if (b >= branches.size()) continue;
      for (const Stretch& s : branches[b].stretches) found.push_back(&s);
    }
    return found;
  }

  /// One branch from the room (or an outside-air duct) to the outdoors, with one fire on it.
  [[nodiscard]] bool is_series() const { return branches.size() == 1 && nodes.empty(); }
};

}  // namespace fluewright
