#include "cli/memory.hpp"

#include <cstdlib>

#if defined(__GLIBC__)
#include <malloc.h>
#endif

#include "engine/index/pages.hpp"

namespace endbell::cli {

void expect_memory([[maybe_unused]] std::size_t bytes) {
#if defined(__GLIBC__)
    // What this thread's part of the allocator is given back, it keeps, and large pieces come out of it like others.
    mallopt(M_MMAP_THRESHOLD, 32 * 1024 * 1024);
    mallopt(M_TRIM_THRESHOLD, 256 * 1024 * 1024);
    void* volatile room = std::malloc(bytes);  // volatile: else the compiler leaves both out
    if (room == nullptr) return;
    bring_in_to_write(room, bytes);
    std::free(room);
#endif
}

}  // namespace endbell::cli
