set(ROOM_SOURCES
    masses.cpp
    packing.cpp
    parts_list.cpp
    prism.cpp
    run_length.cpp
    upkeep.cpp)
