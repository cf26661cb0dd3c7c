set(ROOM_SOURCES help_card.cpp help_card.hpp number_help.cpp number_help.hpp)
