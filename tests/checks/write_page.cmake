# Runs the test programs so that each check leaves its row, and joins the rows to a page.
#   cmake "-DPROGRAMS=<file>|<file>" -DROWS=<folder> -DPAGE=<file.md> -P write_page.cmake
string(REPLACE "|" ";" PROGRAMS "${PROGRAMS}")
file(REMOVE_RECURSE "${ROWS}")
set(ENV{FLUEWRIGHT_CHECKS_OUT} "${ROWS}")
set(ENV{RC_PARAMS} "seed=1 max_success=1")
foreach(program IN LISTS PROGRAMS)
  execute_process(COMMAND "${program}" --gtest_brief=1 RESULT_VARIABLE failed OUTPUT_VARIABLE said ERROR_VARIABLE said)
  if(failed)
    message(FATAL_ERROR "${program} failed:\n${said}")
  endif()
endforeach()
include("${CMAKE_CURRENT_LIST_DIR}/join_rows.cmake")
