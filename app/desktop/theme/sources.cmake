set(ROOM_SOURCES colour_scale.cpp inks.cpp style_sheet.cpp theme.cpp)
