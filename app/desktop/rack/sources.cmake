set(ROOM_SOURCES piece_symbol.cpp rack.cpp rack_list.cpp)
