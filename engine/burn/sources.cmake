set(ROOM_SOURCES aids.cpp burn_cells.cpp burn_equations.cpp burn_exchange.cpp burn_nodes.cpp burn_recorder.cpp burn_run.cpp burn_stepper.cpp burning_flue.cpp cut_watch.cpp
                 fan_dependence.cpp fan_fitting.cpp fan_watch.cpp film_tables.cpp gas_pair.cpp
                 implicit_border.cpp implicit_step.cpp path_balance.cpp plan_check.cpp plan_presets.cpp power_cut.cpp
                 start_class.cpp start_map.cpp start_margins.cpp start_trial.cpp timeline.cpp
                 wall_nodes.cpp)
