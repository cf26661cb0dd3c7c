set(ROOM_SOURCES language.cpp language.hpp)
