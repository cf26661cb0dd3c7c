set(ROOM_SOURCES
    line_plot.cpp
    line_plot.hpp
    plot_panel.cpp
    plot_panel.hpp
    plot_picture.cpp
    plot_picture.hpp)
