set(ROOM_SOURCES paper_dialog.cpp paper_room.cpp)
