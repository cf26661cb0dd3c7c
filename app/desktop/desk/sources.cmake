set(ROOM_SOURCES
    house_dialog.cpp house_painter.cpp pipe_drawing.cpp ruler_painter.cpp unrolled.cpp board.cpp camera.cpp clearance.cpp desk_menu.cpp desk_strip.cpp desk_verbs.cpp desk_view.cpp desk_view_entry.cpp desk_widget.cpp drawing.cpp drop_tool.cpp
    grow_tool.cpp growth.cpp hit.cpp joint_tool.cpp key_growth.cpp landmarks.cpp legend.cpp mark_painter.cpp motifs.cpp
    path_measure.cpp piece_painter.cpp pointer_tool.cpp set_tools.cpp sheet_painter.cpp winding_dialog.cpp tint.cpp)
