#include "engine/base/hash.hpp"

#define XXH_INLINE_ALL  // the header is all of it: nothing to link
#include <xxhash.h>

#include <cstdio>

namespace endbell::inline base {

std::uint64_t hash_of(std::string_view bytes) {
    return XXH3_64bits(bytes.data(), bytes.size());
}

std::string in_hexadecimal(std::uint64_t hash) {
    char text[17];
    std::snprintf(text, sizeof text, "%016llx", static_cast<unsigned long long>(hash));
    return text;
}

std::string fingerprint(std::string_view bytes) {
    return in_hexadecimal(hash_of(bytes));
}

}  // namespace endbell::inline base
