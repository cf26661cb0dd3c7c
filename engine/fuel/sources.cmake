set(ROOM_SOURCES wood.cpp combustion.cpp siegert.cpp)
