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
    // What this thread's part of the allocator is given back, it keeps, and large pieces come out of it like others.
    mallopt(M_MMAP_THRESHOLD, 32 * 1024 * 1024);
    mallopt(M_TRIM_THRESHOLD, 256 * 1024 * 1024);
    void* volatile room = std::malloc(bytes);  // volatile: else the compiler leaves both out
    if (room == nullptr) return;
    static const auto page = static_cast<std::uintptr_t>(sysconf(_SC_PAGESIZE));
    const std::uintptr_t first = (reinterpret_cast<std::uintptr_t>(room) + page - 1) / page * page;
    const std::uintptr_t end = (reinterpret_cast<std::uintptr_t>(room) + bytes) / page * page;
    if (first < end) madvise(reinterpret_cast<void*>(first), end - first, MADV_POPULATE_WRITE);
    std::free(room);
#endif
}

}  // namespace endbell::cli
