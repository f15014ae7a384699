#include "engine/index/pages.hpp"

#include <sys/mman.h>
#include <unistd.h>

#include <cstdint>

namespace endbell {

void bring_in([[maybe_unused]] const void* start, [[maybe_unused]] std::size_t bytes) {
#if defined(MADV_POPULATE_READ)
    if (bytes == 0) return;
    static const auto page = static_cast<std::uintptr_t>(sysconf(_SC_PAGESIZE));
    const std::uintptr_t first = reinterpret_cast<std::uintptr_t>(start) / page * page;
    const std::uintptr_t end = (reinterpret_cast<std::uintptr_t>(start) + bytes + page - 1) / page * page;
    madvise(reinterpret_cast<void*>(first), end - first, MADV_POPULATE_READ);
#endif
}

}  // namespace endbell
