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

# fluewright_library(NAME SOURCES... ): a static library that includes from the top of the tree.
function(fluewright_library name)
  add_library(${name} STATIC ${ARGN})
  target_include_directories(${name} PUBLIC ${PROJECT_SOURCE_DIR})
  target_link_libraries(${name} PRIVATE fluewright_warnings)
endfunction()

# fluewright_test(NAME LIBRARIES... SOURCES ...): one GoogleTest program, its cases known to CTest.
function(fluewright_test name)
  cmake_parse_arguments(ARG "" "" "LIBRARIES;SOURCES" ${ARGN})
  add_executable(${name} ${ARG_SOURCES})
  target_link_libraries(${name} PRIVATE fluewright_warnings ${ARG_LIBRARIES} GTest::gtest_main)
  gtest_discover_tests(${name} DISCOVERY_TIMEOUT 60)
endfunction()
