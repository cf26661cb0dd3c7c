set(ROOM_SOURCES library.cpp)
