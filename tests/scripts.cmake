# Scripts that ask the built program. Each ends with "N passed, N failed", and tests/sum.py adds them up.
function(test_script path label)
  add_test(NAME ${path} COMMAND python3 ${CMAKE_CURRENT_SOURCE_DIR}/${path} ${PROJECT_BINARY_DIR}
                                $<$<BOOL:${ENDBELL_FULL_TESTS}>:--full> COMMAND_EXPAND_LISTS)
  endbell_test(${path} ${label})
endfunction()

# Layout and lint: nothing of a build, so once.
if(NOT ENDBELL_SANITIZE)
  foreach(what format tidy)
    add_test(NAME lint/${what} COMMAND python3 ${CMAKE_CURRENT_SOURCE_DIR}/lint.py ${what}
                                       $<$<BOOL:${ENDBELL_FULL_TESTS}>:--all> COMMAND_EXPAND_LISTS)
    endbell_test(lint/${what} lint)
  endforeach()
  if(ENDBELL_FULL_TESTS)
    add_test(NAME lint/headers COMMAND python3 ${CMAKE_CURRENT_SOURCE_DIR}/lint.py headers)
    endbell_test(lint/headers lint)
  endif()
  set_tests_properties(lint/tidy PROPERTIES COST 1000)  # begun first: it takes longest
endif()

foreach(path cli/run.py scenarios/diagnose/run.py scenarios/compare/run.py scenarios/wire/run.py)
  test_script(${path} script)
endforeach()

# What starts the program some hundred times is run on the release build alone: under the sanitizers it takes minutes.
# So are dialogues, signals at many moments, and checks against other programs and published tables.
if(NOT ENDBELL_SANITIZE)
  foreach(path scenarios/run.py scenarios/air_sweep.py scenarios/contradictions.py scenarios/commissioning.py docs/run.py)
    test_script(${path} script)
  endforeach()
  foreach(name ask batch configuration examples interrupt session shell side_files start_up)
    test_script(cli/${name}.py script)
  endforeach()
  foreach(name full_disk kill_sweep million_rows)
    test_script(catalog/${name}.py script)
  endforeach()
  file(GLOB outside RELATIVE ${CMAKE_CURRENT_SOURCE_DIR} CONFIGURE_DEPENDS outside/*.py)
  if(NOT CMAKE_BUILD_TYPE STREQUAL Release)  # what is packaged is the release: others carry what a debugger reads
    list(REMOVE_ITEM outside outside/package.py)
  endif()
  foreach(path ${outside})
    test_script(${path} outside)
  endforeach()
  # Both fetch the same packages for a browser.
  set_tests_properties(outside/sheets.py outside/hostile_catalog.py PROPERTIES RESOURCE_LOCK browser)
endif()
