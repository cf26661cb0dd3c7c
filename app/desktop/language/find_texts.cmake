# Finds every text that people read and brings the given .ts files up to date with lupdate.
#   LUPDATE TOP TEXTS_OF_DATA FOLDER TRANSLATIONS
# lupdate files a text under the class that asks for it; here all texts share one context, so that the same English is
# translated once. Therefore it reads copies, in which every way to say something names that context.
file(REMOVE_RECURSE ${FOLDER})
file(MAKE_DIRECTORY ${FOLDER})
file(GLOB_RECURSE sources RELATIVE ${TOP} ${TOP}/app/*.cpp ${TOP}/app/*.hpp)
foreach(source ${sources})
  file(READ ${TOP}/${source} code)
  # Of said() the text alone: lupdate takes the values after it for something else.
  string(REGEX REPLACE "([^A-Za-z0-9_])(said|to_say)\\(([ \n]*(\"([^\"\\]|\\.)*\"[ \n]*)+)"
                       "\\1(QCoreApplication::translate(\"Words\", \\3))" code "${code}")
  # A count is put as a plain number, which lupdate knows for one.
  string(REGEX REPLACE "([^A-Za-z0-9_])tr\\(([ \n]*(\"([^\"\\]|\\.)*\"[ \n]*)+), nullptr, "
                       "\\1QCoreApplication::translate(\"Words\", \\2, nullptr, 1), (" code "${code}")
  string(REGEX REPLACE "([^A-Za-z0-9_])(tr|QT_TR_NOOP)\\(([ \n]*\")" "\\1QCoreApplication::translate(\"Words\", \\3" code "${code}")
  if(code MATCHES "translate\\(\"Words\"")
    file(WRITE ${FOLDER}/${source} "${code}")
  endif()
endforeach()
execute_process(COMMAND ${TEXTS_OF_DATA} OUTPUT_FILE ${FOLDER}/data.cpp COMMAND_ERROR_IS_FATAL ANY)
execute_process(
  COMMAND ${LUPDATE} -silent -locations none -no-ui-lines -no-obsolete -disable-heuristic number ${FOLDER} -ts ${TRANSLATIONS}
  COMMAND_ERROR_IS_FATAL ANY)
