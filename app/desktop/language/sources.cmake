set(ROOM_SOURCES language.cpp)
