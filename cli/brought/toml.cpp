// toml++'s own code, for the program that brings its libraries with it.
#define TOML_HEADER_ONLY 0
#define TOML_IMPLEMENTATION
#include <toml++/toml.h>
