set(ROOM_SOURCES atmosphere.cpp house.cpp)
