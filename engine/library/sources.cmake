set(ROOM_SOURCES library.cpp fan_fields.cpp fan_sheet.cpp)
