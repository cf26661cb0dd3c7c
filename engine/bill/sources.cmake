set(ROOM_SOURCES
    masses.cpp
    packing.cpp
    parts_list.cpp
    prism.cpp
    upkeep.cpp)
