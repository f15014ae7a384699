# Debian packages: `cpack -G DEB` in the build folder makes endbell and libendbell-dev.
set(debian_version ${PROJECT_VERSION}-1)

# docs/CHANGELOG.md in the form that Debian wants. Its headings are "## VERSION, YYYY-MM-DD".
set(changelog ${CMAKE_CURRENT_BINARY_DIR}/changelog)
set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/docs/CHANGELOG.md)
include(debian_changelog.cmake)
debian_changelog(${PROJECT_SOURCE_DIR}/docs/CHANGELOG.md ${changelog})
find_program(GZIP gzip REQUIRED)
add_custom_command(OUTPUT ${changelog}.gz COMMAND ${GZIP} -9nkf ${changelog} DEPENDS ${changelog} VERBATIM)
add_custom_target(debian_changelog ALL DEPENDS ${changelog}.gz)
foreach(package IN ITEMS endbell:program libendbell-dev:library)
  string(REPLACE ":" ";" package ${package})
  list(GET package 0 name)
  list(GET package 1 component)
  install(FILES ${changelog}.gz DESTINATION ${package_docs}/${name} RENAME changelog.Debian.gz COMPONENT ${component})
  set(overrides ${CMAKE_CURRENT_BINARY_DIR}/overrides-${name})
  file(WRITE ${overrides} "# Not made for Debian's archive: there is no bug to close.\n"
                          "${name}: initial-upload-closes-no-bugs\n")
  install(FILES ${overrides} DESTINATION ${CMAKE_INSTALL_DATADIR}/lintian/overrides RENAME ${name}
          COMPONENT ${component})
  install(FILES copyright DESTINATION ${package_docs}/${name} COMPONENT ${component})
endforeach()

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME endbell)
set(CPACK_PACKAGE_CONTACT "The authors of Endbell <authors@endbell.invalid>")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_VERBATIM_VARIABLES ON)
set(CPACK_COMPONENTS_ALL program library)
set(CPACK_DEB_COMPONENT_INSTALL ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_RELEASE 1)

set(CPACK_DEBIAN_PROGRAM_PACKAGE_NAME endbell)
set(CPACK_DEBIAN_PROGRAM_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PROGRAM_PACKAGE_SHLIBDEPS ON)
set(CPACK_COMPONENT_PROGRAM_DESCRIPTION "picks what replaces a failed HVAC motor or its module
Endbell reads the plate of a failed blower, condenser or inducer motor in the
words of the trade, and the readings taken at the unit. From the user's own
parts catalog it answers what failed and why, every part that fits with what
must be added, which tap gives each call its air, a proven wiring, and what
each way out costs.
.
Where a field is unknown it says what to measure next. It never guesses what
is dangerous.")

set(CPACK_DEBIAN_LIBRARY_PACKAGE_NAME libendbell-dev)
set(CPACK_DEBIAN_LIBRARY_PACKAGE_SECTION libdevel)
set(CPACK_DEBIAN_LIBRARY_PACKAGE_DEPENDS "libfmt-dev, libsqlitecpp-dev, libcsv-dev, libtomlplusplus-dev")
set(CPACK_COMPONENT_LIBRARY_DESCRIPTION "engine that picks a replacement HVAC motor (static library)
The stages of Endbell as a C++20 library: diagnosis, rules, airflow, wiring
with its proof, kits, costs, and the documents made of them.
.
This package holds the headers, the static library and the CMake package:
find_package(endbell) gives the target endbell::endbell.")
include(CPack)
