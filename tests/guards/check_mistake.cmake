# SPDX-FileCopyrightText: The Fluewright developers
# SPDX-License-Identifier: GPL-3.0-or-later
# Compiles SOURCE twice: as it is, which must work, and with the mistake, which must be refused on the line of the
# mistake and nowhere else in that file. COMPILER is a list: the compiler and its options.
#   cmake -DSOURCE=... -DCOMPILER=... -P check_mistake.cmake
execute_process(COMMAND ${COMPILER} -fsyntax-only ${SOURCE} RESULT_VARIABLE result ERROR_VARIABLE words)
if(NOT result EQUAL 0)
  message(FATAL_ERROR "the right twin does not compile:\n${words}")
endif()

set(number 0)
set(mistaken)
# Not file(STRINGS): it drops empty lines, and the numbers would be wrong. Brackets and semicolons would glue list items.
file(READ ${SOURCE} text)
string(REPLACE ";" "," text "${text}")
string(REPLACE "[" "(" text "${text}")
string(REPLACE "]" ")" text "${text}")
string(REPLACE "\n" ";" lines "${text}")
foreach(line IN LISTS lines)
  math(EXPR number "${number} + 1")
  if(line MATCHES "TWIN\\(")
    list(APPEND mistaken ${number})
  endif()
endforeach()
list(LENGTH mistaken count)
if(NOT count EQUAL 1)
  message(FATAL_ERROR "${SOURCE} holds ${count} lines with a twin, one is wanted")
endif()

execute_process(COMMAND ${COMPILER} -fsyntax-only -DFLUEWRIGHT_MISTAKE ${SOURCE} RESULT_VARIABLE result
                ERROR_VARIABLE words)
if(result EQUAL 0)
  message(FATAL_ERROR "the mistake compiles: line ${mistaken} of ${SOURCE}")
endif()
get_filename_component(name ${SOURCE} NAME)
string(REGEX MATCHALL "${name}:[0-9]+:[0-9]+: (fatal )?error" errors "${words}")
if(NOT errors)
  message(FATAL_ERROR "refused, but not in ${name} itself:\n${words}")
endif()
foreach(error IN LISTS errors)
  if(NOT error MATCHES "${name}:${mistaken}:")
    message(FATAL_ERROR "refused on another line than ${mistaken}: ${error}\n${words}")
  endif()
endforeach()
