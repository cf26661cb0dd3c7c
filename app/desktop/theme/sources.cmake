set(ROOM_SOURCES colour_scale.cpp inks.cpp lab.cpp style_sheet.cpp theme.cpp)
