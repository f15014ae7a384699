// One function a verb. Each prints to stdout and returns the exit code; errors are thrown.
#pragma once
#include "cli/arguments.hpp"

namespace endbell::cli {

int run_match(const Arguments& typed);
int run_why(const Arguments& typed);
int run_ask(const Arguments& typed);
int run_diagnose(const Arguments& typed);
int run_wire(const Arguments& typed);
int run_compare(const Arguments& typed);
int run_sheet(const Arguments& typed);
int run_start_up(const Arguments& typed);
int run_batch(const Arguments& typed);
int run_find(const Arguments& typed);
int run_rules(const Arguments& typed);
int run_catalog_import(const Arguments& typed);
int run_catalog_check(const Arguments& typed);
int run_catalog_show(const Arguments& typed);
int run_catalog_changes(const Arguments& typed);
int run_catalog_generations(const Arguments& typed);
int run_catalog_restore(const Arguments& typed);

}  // namespace endbell::cli
