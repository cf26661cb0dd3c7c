set(ROOM_SOURCES
    file_room.cpp
    file_room.hpp
    help_pages.cpp
    help_pages.hpp
    memory.cpp
    memory.hpp)
