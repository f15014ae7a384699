// Hashes of bytes: XXH3 of 64 bits. They find accidents and put equals together; they are no seal against somebody who
// looks for two texts with one hash.
#pragma once
#include <cstdint>
#include <string>
#include <string_view>

namespace endbell::inline base {

std::uint64_t hash_of(std::string_view bytes);

/// As 16 hexadecimal digits.
std::string in_hexadecimal(std::uint64_t hash);

/// `hash_of`, in hexadecimal.
std::string fingerprint(std::string_view bytes);

}  // namespace endbell::inline base
