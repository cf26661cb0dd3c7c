# SPDX-FileCopyrightText: The Fluewright developers
# SPDX-License-Identifier: GPL-3.0-or-later
# Copies the named FILES from FROM to TO without their units: what Boost.Units includes and calls is taken out.
#   cmake -DFROM=... -DTO=... "-DFILES=..." -P strip_units.cmake
foreach(file IN LISTS FILES)
  file(READ ${FROM}/${file} text)
  string(REGEX REPLACE "#include <boost/units/[^\n]*\n" "" text "${text}")
  string(REPLACE ".value()" "" text "${text}")
  file(WRITE ${TO}/${file} "${text}")
endforeach()
