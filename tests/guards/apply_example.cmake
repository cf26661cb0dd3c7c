# SPDX-FileCopyrightText: The Fluewright developers
# SPDX-License-Identifier: GPL-3.0-or-later
# Does in OUTPUT, on copies, what the worked example of DEVELOPERS.md tells to do in the tree at TOP.
#   cmake -DTOP=... -DOUTPUT=... -P apply_example.cmake
file(READ ${TOP}/DEVELOPERS.md document)

# The text of the block that is fenced as ```LANGUAGE FILE.
function(block_of language file result)
  string(FIND "${document}" "```${language} ${file}\n" start)
  if(start EQUAL -1)
    message(FATAL_ERROR "DEVELOPERS.md has no block for ${file}")
  endif()
  string(LENGTH "```${language} ${file}\n" head)
  math(EXPR start "${start} + ${head}")
  string(SUBSTRING "${document}" ${start} -1 rest)
  string(FIND "${rest}" "\n```" end)
  string(SUBSTRING "${rest}" 0 ${end} text)
  set(${result} "${text}\n" PARENT_SCOPE)
endfunction()

# Replaces the first or only OLD in a file of the tree; it must be there.
function(with_change file old new)
  file(READ ${TOP}/${file} text)
  string(FIND "${text}" "${old}" at)
  if(at EQUAL -1)
    message(FATAL_ERROR "${file} holds no '${old}'")
  endif()
  string(LENGTH "${old}" length)
  math(EXPR after "${at} + ${length}")
  string(SUBSTRING "${text}" 0 ${at} head)
  string(SUBSTRING "${text}" ${after} -1 tail)
  file(WRITE ${OUTPUT}/${file} "${head}${new}${tail}")
endfunction()

block_of(cpp engine/pieces/orifice.cpp shape)
file(WRITE ${OUTPUT}/engine/pieces/orifice.cpp "${shape}")
with_change(engine/pieces/registry.cpp "shape(run)" "shape(run) shape(orifice)")

file(COPY ${TOP}/resources DESTINATION ${OUTPUT})
block_of(json resources/pieces/orifice_plate.json type)
file(WRITE ${OUTPUT}/resources/pieces/orifice_plate.json "${type}")
with_change(resources/pieces/index.json "[" "[\"orifice_plate\", ")
block_of(json resources/materials.json material)
with_change(resources/materials.json "\"materials\": [" "\"materials\": [\n${material},")
