// The memory that one answer takes, asked for at once and in large pages: see engine/base/pages.hpp.
#pragma once
#include <cstddef>
#include <cstdlib>

namespace endbell::cli {

/// While it lives, what this thread asks for in small pieces comes out of memory that was brought in together.
/// Changes nothing but time.
class ExpectedMemory {
  public:
    /// So many bytes are about to be asked for, and seldom more than `at_most`.
    ExpectedMemory(std::size_t bytes, std::size_t at_most);
    ExpectedMemory(const ExpectedMemory&) = delete;
    ExpectedMemory& operator=(const ExpectedMemory&) = delete;
    ~ExpectedMemory() { std::free(before_); }

  private:
    void* before_ = nullptr;  // what lies before the first large page: taken, so that it is not given out
};

}  // namespace endbell::cli
