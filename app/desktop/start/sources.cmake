set(ROOM_SOURCES
    demo_card.cpp
    demo_card.hpp
    design_thumbnail.cpp
    design_thumbnail.hpp
    start_page.cpp
    start_page.hpp)
