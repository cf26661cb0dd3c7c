set(ROOM_SOURCES outside_film.cpp conduction.cpp jet_film.cpp)
