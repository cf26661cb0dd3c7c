set(ROOM_SOURCES species.cpp mixture.cpp gas_table.cpp)
