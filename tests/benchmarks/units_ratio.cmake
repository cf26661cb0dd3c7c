# The engine's sources up to the march are compiled once as they are and once stripped of their units, both optimised
# whatever the preset says; the ratio is measured in one program.
set(CMAKE_AUTOMOC OFF)
find_package(Boost 1.74 REQUIRED) # known to the engine's folder only
file(GLOB_RECURSE headers RELATIVE ${PROJECT_SOURCE_DIR} CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/engine/*.hpp)
get_target_property(engine_sources fluewright_engine SOURCES)
list(TRANSFORM engine_sources PREPEND engine/)
list(FILTER engine_sources INCLUDE REGEX "engine/(gas|fuel|site|flow|heat|moisture|library)/|solve/(burning|march|passed_fan|slice_heat|sliced_path|surround)\\.cpp")
# A table of entries of every kind has nothing to tell kinds apart by without units, and no part in the march.
list(FILTER engine_sources EXCLUDE REGEX "library/fan_fields")
set(kernel_sources ${engine_sources} tests/benchmarks/slice_kernel.cpp)
set(stripped ${headers} ${kernel_sources} tests/benchmarks/slice_kernel.hpp)

set(bare ${CMAKE_CURRENT_BINARY_DIR}/bare)
list(TRANSFORM kernel_sources PREPEND ${bare}/ OUTPUT_VARIABLE bare_sources)
list(TRANSFORM kernel_sources PREPEND ${PROJECT_SOURCE_DIR}/ OUTPUT_VARIABLE typed_sources)
list(TRANSFORM stripped PREPEND ${PROJECT_SOURCE_DIR}/ OUTPUT_VARIABLE originals)
add_custom_command(
  OUTPUT ${bare_sources}
  COMMAND ${CMAKE_COMMAND} -DFROM=${PROJECT_SOURCE_DIR} -DTO=${bare} "-DFILES=${stripped}" -P
          ${CMAKE_CURRENT_SOURCE_DIR}/strip_units.cmake
  DEPENDS ${originals} strip_units.cmake
  COMMENT "Stripping the units off the engine"
  VERBATIM)

add_library(march_with_units OBJECT ${typed_sources})
target_include_directories(march_with_units PRIVATE ${PROJECT_SOURCE_DIR})
target_compile_definitions(march_with_units PRIVATE SLICE_KERNEL=with_units)
target_link_libraries(march_with_units PRIVATE Boost::headers)

add_library(march_in_bare_doubles OBJECT ${bare_sources})
target_include_directories(march_in_bare_doubles PRIVATE ${bare})
target_compile_definitions(march_in_bare_doubles PRIVATE SLICE_KERNEL=in_bare_doubles fluewright=fluewright_bare)
target_compile_options(march_in_bare_doubles PRIVATE -include ${CMAKE_CURRENT_SOURCE_DIR}/bare_units.hpp)
target_link_libraries(march_in_bare_doubles PRIVATE Boost::headers)

foreach(library march_with_units march_in_bare_doubles)
  target_compile_options(${library} PRIVATE -O2)
  target_compile_definitions(${library} PRIVATE NDEBUG)
  if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
    set_target_properties(${library} PROPERTIES INTERPROCEDURAL_OPTIMIZATION ON) # as in a release, see engine/
  endif()
endforeach()

add_executable(units_ratio units_ratio.cpp)
target_include_directories(units_ratio PRIVATE ${PROJECT_SOURCE_DIR})
target_link_libraries(units_ratio PRIVATE fluewright_warnings march_with_units march_in_bare_doubles)
# Measured 1.004 to 1.015 (1.02 without optimisation across files); the limit leaves room for a busy machine.
add_test(NAME units_cost_nothing COMMAND units_ratio 1.10)
set_tests_properties(units_cost_nothing PROPERTIES RUN_SERIAL ON)
