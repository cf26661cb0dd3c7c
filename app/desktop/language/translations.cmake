# The languages beside English: language/fluewright_<code>.ts, made into tables inside the program.
#   cmake --build build/dev --target update_translations    puts new texts into the .ts files and takes old ones out
find_package(Qt6 6.4 REQUIRED COMPONENTS LinguistTools)

set(language_folder ${CMAKE_CURRENT_SOURCE_DIR}/language)
set(FLUEWRIGHT_TRANSLATIONS ${language_folder}/fluewright_de.ts ${language_folder}/fluewright_es.ts)
set_source_files_properties(${FLUEWRIGHT_TRANSLATIONS} PROPERTIES OUTPUT_LOCATION ${CMAKE_CURRENT_BINARY_DIR}/language)
qt_add_lrelease(fluewright_desk TS_FILES ${FLUEWRIGHT_TRANSLATIONS} QM_FILES_OUTPUT_VARIABLE tables OPTIONS -nounfinished -silent)
qt_add_resources(fluewright_desk language PREFIX /language BASE ${CMAKE_CURRENT_BINARY_DIR}/language FILES ${tables})

# Names, labels and help stand in data: this program writes them down where lupdate reads them.
add_executable(texts_of_data EXCLUDE_FROM_ALL language/texts_of_data.cpp)
target_link_libraries(texts_of_data PRIVATE fluewright_warnings fluewright_shared)

set(FLUEWRIGHT_FIND_TEXTS
    ${CMAKE_COMMAND} -DLUPDATE=$<TARGET_FILE:Qt6::lupdate> -DTOP=${PROJECT_SOURCE_DIR}
    -DTEXTS_OF_DATA=$<TARGET_FILE:texts_of_data> -DFOLDER=${CMAKE_CURRENT_BINARY_DIR}/texts)
add_custom_target(
  update_translations
  COMMAND ${FLUEWRIGHT_FIND_TEXTS} "-DTRANSLATIONS=${FLUEWRIGHT_TRANSLATIONS}" -P ${language_folder}/find_texts.cmake
  VERBATIM)
add_dependencies(update_translations texts_of_data)
