set(ROOM_SOURCES
    board.cpp camera.cpp desk_strip.cpp desk_view.cpp desk_view_entry.cpp desk_widget.cpp drawing.cpp drop_tool.cpp
    grow_tool.cpp growth.cpp hit.cpp joint_tool.cpp key_growth.cpp legend.cpp mark_painter.cpp motifs.cpp
    path_measure.cpp piece_painter.cpp pointer_tool.cpp sheet_painter.cpp tint.cpp)
