set(ROOM_SOURCES trial_panel.cpp trial_panel.hpp variant_bar.cpp variant_bar.hpp variants_dialog.cpp variants_dialog.hpp variants_words.cpp
                 variants_words.hpp)
