// The memory that one answer takes, asked for at once: see engine/index/pages.hpp.
#pragma once
#include <cstddef>

namespace endbell::cli {

/// So much is about to be asked for in small pieces by this thread. Changes nothing but time.
void expect_memory(std::size_t bytes);

}  // namespace endbell::cli
