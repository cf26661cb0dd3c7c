set(ROOM_SOURCES library.cpp fan_sheet.cpp)
