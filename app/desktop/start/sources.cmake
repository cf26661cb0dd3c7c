set(ROOM_SOURCES
    demo_card.cpp
    demo_card.hpp
    start_page.cpp
    start_page.hpp)
