set(ROOM_SOURCES outside_film.cpp conduction.cpp)
