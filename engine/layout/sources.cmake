set(ROOM_SOURCES space.cpp design.cpp conditions.cpp value_range.cpp piece_check.cpp
    design_check.cpp port_graph.cpp path.cpp)
