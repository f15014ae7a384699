#include "engine/base/pages.hpp"

#include <sys/mman.h>
#include <unistd.h>

#include <cstdint>

namespace endbell::inline base {

#if defined(MADV_POPULATE_READ) && defined(MADV_POPULATE_WRITE)

namespace {

/// Whole pages, those at the ends too. Older systems refuse, and nothing is lost.
void ask_for(const void* start, std::size_t bytes, int advice) {
    if (bytes == 0) return;
    static const auto page = static_cast<std::uintptr_t>(sysconf(_SC_PAGESIZE));
    const std::uintptr_t first = reinterpret_cast<std::uintptr_t>(start) / page * page;
    const std::uintptr_t end = (reinterpret_cast<std::uintptr_t>(start) + bytes + page - 1) / page * page;
    madvise(reinterpret_cast<void*>(first), end - first, advice);
}

}  // namespace

void bring_in(const void* start, std::size_t bytes) {
    ask_for(start, bytes, MADV_POPULATE_READ);
}
void bring_in_to_write(void* start, std::size_t bytes) {
    ask_for(start, bytes, MADV_POPULATE_WRITE);
}

#else

void bring_in(const void*, std::size_t) {}
void bring_in_to_write(void*, std::size_t) {}

#endif

void prefer_large_pages([[maybe_unused]] void* start, [[maybe_unused]] std::size_t bytes) {
#if defined(MADV_HUGEPAGE)
    const auto begin = (reinterpret_cast<std::uintptr_t>(start) + large_page - 1) / large_page * large_page;
    const auto end = (reinterpret_cast<std::uintptr_t>(start) + bytes) / large_page * large_page;
    if (begin < end) madvise(reinterpret_cast<void*>(begin), end - begin, MADV_HUGEPAGE);
#endif
}

}  // namespace endbell::inline base
