#include "cli/memory.hpp"

#include <sys/mman.h>
#include <unistd.h>

#include <cstdint>
#include <cstdlib>

#if defined(__GLIBC__)
#include <malloc.h>
#endif

namespace endbell::cli {

void expect_memory([[maybe_unused]] std::size_t bytes) {
#if defined(MADV_POPULATE_WRITE) && defined(__GLIBC__)
    // The allocator takes so much more at a time at the end of what it has, and keeps what it is given back.
    constexpr std::size_t more_than_it_has = 256 * 1024;
    mallopt(M_TOP_PAD, static_cast<int>(bytes));
    mallopt(M_TRIM_THRESHOLD, static_cast<int>(8 * bytes));
    mallopt(M_MMAP_THRESHOLD, static_cast<int>(4 * bytes));
    const auto page = static_cast<std::uintptr_t>(sysconf(_SC_PAGESIZE));
    const std::uintptr_t end = reinterpret_cast<std::uintptr_t>(sbrk(0)) / page * page;
    void* volatile beyond = std::malloc(more_than_it_has);  // volatile: else the compiler leaves both out
    std::free(beyond);
    const auto now = reinterpret_cast<std::uintptr_t>(sbrk(0));
    if (now > end) madvise(reinterpret_cast<void*>(end), now - end, MADV_POPULATE_WRITE);
#endif
}

}  // namespace endbell::cli
