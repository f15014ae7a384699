#include "engine/index/bits.hpp"

// Every x86-64 processor of the last fifteen years counts the bits of a word by one instruction, but the oldest do
// not have it: asked once, and never assumed.
#if defined(__x86_64__)
#define ENDBELL_COUNTS __attribute__((target("popcnt")))
#else
#define ENDBELL_COUNTS
#endif

namespace endbell::inline index {

namespace {

std::int64_t plainly(const Word64* set, std::size_t words) {
    std::int64_t count = 0;
    for (std::size_t i = 0; i < words; ++i) count += std::popcount(set[i]);
    return count;
}

ENDBELL_COUNTS std::int64_t by_instruction(const Word64* set, std::size_t words) {
    std::int64_t count = 0;
    for (std::size_t i = 0; i < words; ++i) count += __builtin_popcountll(set[i]);
    return count;
}

bool has_instruction() {
#if defined(__x86_64__)
    return __builtin_cpu_supports("popcnt") != 0;
#else
    return true;
#endif
}

}  // namespace

std::int64_t count_bits(const Word64* set, std::size_t words) {
    static const auto count = has_instruction() ? by_instruction : plainly;
    return count(set, words);
}

}  // namespace endbell::inline index
