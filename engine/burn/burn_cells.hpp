// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/burn/film_tables.hpp"
#include "engine/burn/wall_nodes.hpp"

#include <cstddef>
#include <limits>
#include <optional>
#include <vector>

namespace fluewright::kernel {

inline constexpr std::size_t nowhere = std::numeric_limits<std::size_t>::max();

/// Losses at one end of a cell, over m^2/(2 rho): zeta/A^2 [1/m4].
struct EndLoss {
  double forward = 0.0;
  double backward = 0.0;
  double mitre_forward = 0.0;   ///< that part which grows at a low Reynolds number
  double mitre_backward = 0.0;
};

/// A slice made ready: everything about it that no flow and no temperature changes. Plain SI.
struct Cell {
  std::size_t slice = 0;        ///< index in its SlicedPath
  std::size_t piece = 0;
  Place place = Place::room;
  bool under_sky = false;       ///< Place::ground: the surface above is outdoors
  bool lid = false;
  bool chamber = false;
  bool opens = false;           ///< begins its stretch
  bool closes = false;
  bool fire = false;            ///< the fuel burns where it begins
  bool variable = false;        ///< conductivity of its wall depends on temperature
  double length = 0.0;
  double rise = 0.0;
  double end_height = 0.0;
  double area = 0.0;
  double diameter = 0.0;        ///< hydraulic
  double surface = 0.0;
  double volume = 0.0;
  double friction = 0.0;        ///< L/(D A^2): loss = f x this x m^2/(2 rho)
  EndLoss at_start;             ///< of its stretch, where it opens it
  EndLoss at_end;
  double step_forward = 0.0;    ///< change of area before it
  double step_backward = 0.0;
  double upright_height = 0.1;
  double outer_surface = 0.0;   ///< that gives heat away
  const Lid* lid_shape = nullptr;
  const Fan* fan = nullptr;     ///< behind the losses at its start, or before those at its end
  std::size_t film = 0;         ///< in CellTables
  std::size_t radiation = 0;
  std::size_t outer = nowhere;  ///< nowhere: ground (its film is in its cover) or jacket (the gas around it)
  std::size_t base = 0;         ///< first of its unknowns: gas temperature, share of flue gas, wall nodes from the gas outwards
  std::size_t first_node = 0;
  std::size_t node_count = 0;
};

struct CellTables {
  std::vector<DuctFilm> films;
  std::vector<DuctRadiation> radiations;
  std::vector<OuterFilm> outers;
};

/// A riser inside a barrel or bell, in cells.
struct CellJacket {
  std::size_t first = 0;
  std::size_t chamber = 0;
  std::size_t last = 0;
  double chamber_surface = 0.0;
};

/// A hole between two ends. Plain SI.
struct HoleCell {
  double area = 0.0;                    ///< wide open
  double shut_area = 0.0;
  std::size_t flap = nowhere;           ///< in BurnCells::flaps
  bool priming_tee = false;             ///< open only while a priming fire burns in its node
};

/// A draft regulator's flap: how far it stands open is an unknown of its own.
struct FlapCell {
  std::size_t unknown = 0;
  double set_draft = 0.0;               ///< [Pa]
  double span = 1.0;
};

/// Where branches meet: a little gas of its own.
struct JunctionCell {
  std::size_t base = 0;                 ///< its unknowns: gas temperature, share of flue gas
  double volume = 0.0;
  std::size_t piece = 0;
  std::optional<JunctionForm> form;     ///< nothing: the same total pressure at every port
};

/// One branch in cells; a hole has none.
struct BranchCells {
  std::size_t first = 0;       ///< cells [first, last)
  std::size_t last = 0;
  std::size_t flow = 0;        ///< its unknown
  double inertia = 0.0;        ///< sum of L/A [1/m]
  BranchEnd from;
  BranchEnd to;
  std::size_t fire = nowhere;  ///< the cell at whose beginning the fuel burns
  std::size_t foot = nowhere;  ///< the cell from which it only rises to its outdoor end
  std::vector<CellJacket> jackets;
  std::optional<HoleCell> hole;
};

/// The range of air temperatures a run will see outside the flue.
struct AirRange {
  double coldest_outdoors = 0.0;
  double warmest_outdoors = 0.0;
  double room = 0.0;
  double absolute = 101325.0;
  double wind = 0.0;
};

/// The whole flue in cells, nodes and tables. The sliced paths must outlive it.
class BurnCells {
 public:
  /// One series path.
  BurnCells(const SlicedPath& path, const GasPair& gas, const AirRange& air, const BurnGrid& grid);
  /// A path a branch of the network; `priming_hole` is the branch that is open only while a priming fire burns.
  BurnCells(const FlueNetwork& network, const std::vector<SlicedPath>& paths, std::optional<std::size_t> priming_hole,
            const GasPair& gas, const AirRange& air, const BurnGrid& grid);

  std::vector<Cell> cells;
  std::vector<WallNode> nodes;
  std::vector<BranchCells> branches;
  std::vector<JunctionCell> junctions;
  std::vector<FlapCell> flaps;
  std::vector<std::size_t> main_path;  ///< branches from the inlet through the fire to the cap
  std::size_t fire_branch = 0;
  CellTables tables;
  std::size_t unknowns = 0;    ///< all cells', then nodes', flaps', and a flow a branch

 private:
  void number();
  void add_hole(const Branch& branch, bool priming_tee);
  void add_branch(const SlicedPath& path, const GasPair& gas, const AirRange& air, const BurnGrid& grid);
  void add_cell(const SlicedPath& path, std::size_t index, const GasPair& gas, const AirRange& air, const BurnGrid& grid);
  std::size_t outer_film(const OuterKind& kind, const AirRange& air);
};

}  // namespace fluewright::kernel
