set(ROOM_SOURCES
    working_model.cpp
    working_model.hpp
    working_panel.cpp
    working_panel.hpp)
