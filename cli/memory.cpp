#include "cli/memory.hpp"

#include <cstdint>

#if defined(__GLIBC__)
#include <malloc.h>
#endif

#include "engine/base/pages.hpp"

namespace endbell::cli {

ExpectedMemory::ExpectedMemory([[maybe_unused]] std::size_t bytes, [[maybe_unused]] std::size_t at_most) {
#if defined(__GLIBC__)
    // What this thread's part of the allocator is given back, it keeps, and large pieces come out of it like others.
    mallopt(M_MMAP_THRESHOLD, 32 * 1024 * 1024);
    mallopt(M_TRIM_THRESHOLD, 256 * 1024 * 1024);
    void* volatile room = std::malloc(at_most + large_page);  // volatile: else the compiler leaves both out
    if (room == nullptr) return;
    const auto start = reinterpret_cast<std::uintptr_t>(static_cast<void*>(room));
    const std::size_t before = (large_page - start % large_page) % large_page;
    char* const first = static_cast<char*>(room) + before;
    prefer_large_pages(first, at_most);
    bring_in_to_write(first, bytes);
    std::free(room);
    before_ = std::malloc(before);  // the allocator gives the lowest place that is free: where `room` was
#endif
}

}  // namespace endbell::cli
