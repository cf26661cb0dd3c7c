set(ROOM_SOURCES space.cpp design.cpp conditions.cpp)
