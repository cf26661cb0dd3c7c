set(ROOM_SOURCES burn_cells.cpp burn_equations.cpp burn_exchange.cpp burn_nodes.cpp burn_recorder.cpp burn_run.cpp burn_stepper.cpp burning_flue.cpp
                 fan_dependence.cpp film_tables.cpp gas_pair.cpp implicit_border.cpp implicit_step.cpp plan_check.cpp plan_presets.cpp start_margins.cpp timeline.cpp
                 wall_nodes.cpp)
