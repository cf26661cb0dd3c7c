set(ROOM_SOURCES saturation.cpp condensation.cpp)
