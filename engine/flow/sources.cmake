set(ROOM_SOURCES friction.cpp section.cpp loss_table.cpp local_loss.cpp openings.cpp mouth.cpp bends.cpp tees.cpp junction.cpp fan.cpp)
