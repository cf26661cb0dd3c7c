# What every target shares: language level, warnings, and how a target is declared.

set(CMAKE_CXX_STANDARD 20)
set(CMAKE_CXX_STANDARD_REQUIRED ON)
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_EXPORT_COMPILE_COMMANDS ON)

find_program(FLUEWRIGHT_MOLD mold)
if(FLUEWRIGHT_MOLD)
  add_link_options(-fuse-ld=mold) # CMAKE_LINKER_TYPE needs CMake 3.29
endif()

add_library(fluewright_warnings INTERFACE)
target_compile_options(
  fluewright_warnings INTERFACE -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wsign-conversion
                                -Wold-style-cast -Wnon-virtual-dtor)

# Sources of a room, which is a folder, are compiled together, as many at a time as given here: headers of units and of Qt
# cost far more than what stands below them. So the names in the unnamed namespaces of one room must differ. 0 compiles
# file by file, which shows whether each includes what it uses.
set(FLUEWRIGHT_TOGETHER 14 CACHE STRING "How many sources of a room are compiled as one; 0 for each alone")

# fluewright_rooms_together(TARGET): one unit a room, not any sources that happen to stand beside one another in a list.
function(fluewright_rooms_together target)
  if(NOT FLUEWRIGHT_TOGETHER)
    return()
  endif()
  get_target_property(sources ${target} SOURCES)
  foreach(source ${sources})
    get_filename_component(room "${source}" DIRECTORY)
    string(MAKE_C_IDENTIFIER "room_${room}" room)
    if(NOT DEFINED ${room}_count)
      set(${room}_count 0)
    endif()
    math(EXPR unit "${${room}_count} / ${FLUEWRIGHT_TOGETHER}")
    math(EXPR ${room}_count "${${room}_count} + 1")
    set_source_files_properties(${source} PROPERTIES UNITY_GROUP "${target}_${room}_${unit}")
  endforeach()
  set_target_properties(${target} PROPERTIES UNITY_BUILD ON UNITY_BUILD_MODE GROUP)
endfunction()

# fluewright_library(NAME SOURCES... ): a static library that includes from the top of the tree.
function(fluewright_library name)
  add_library(${name} STATIC ${ARGN})
  target_include_directories(${name} PUBLIC ${PROJECT_SOURCE_DIR})
  target_link_libraries(${name} PRIVATE fluewright_warnings)
  fluewright_rooms_together(${name})
endfunction()

# fluewright_test(NAME LIBRARIES... SOURCES ...): one GoogleTest program, its cases known to CTest.
function(fluewright_test name)
  cmake_parse_arguments(ARG "" "" "LIBRARIES;SOURCES" ${ARGN})
  add_executable(${name} ${ARG_SOURCES})
  target_link_libraries(${name} PRIVATE fluewright_warnings ${ARG_LIBRARIES} GTest::gtest_main)
  fluewright_rooms_together(${name})
  gtest_discover_tests(${name} DISCOVERY_TIMEOUT 60)
endfunction()
