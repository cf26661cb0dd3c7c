set(ROOM_SOURCES file_lock.cpp file_lock.hpp versions.cpp versions.hpp working_copy.cpp working_copy.hpp)
