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
    const std::uintptr_t before = reinterpret_cast<std::uintptr_t>(start) % page;
    char* const first = static_cast<char*>(const_cast<void*>(start)) - before;
    madvise(first, (before + bytes + page - 1) / page * page, advice);
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
    const std::uintptr_t past = reinterpret_cast<std::uintptr_t>(start) % large_page;
    const std::size_t skipped = past == 0 ? 0 : large_page - past;
    if (bytes < skipped + large_page) return;
    madvise(static_cast<char*>(start) + skipped, (bytes - skipped) / large_page * large_page, MADV_HUGEPAGE);
#endif
}

}  // namespace endbell::inline base
