#include "engine/base/utf8.hpp"

namespace endbell::inline base {

CodePoint code_point_at(std::string_view text) {
    const auto byte = [text](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char first = byte(0);
    if (first < 0x80) return {1, first};
    const std::size_t bytes = first >= 0xf0 ? 4 : first >= 0xe0 ? 3 : 2;
    if (first < 0xc2 || first > 0xf4 || text.size() < bytes) return {};
    std::uint32_t code = first & (0xffU >> (bytes + 1));
    for (std::size_t i = 1; i < bytes; ++i) {
        if ((byte(i) & 0xc0U) != 0x80) return {};
        code = code << 6U | (byte(i) & 0x3fU);
    }
    const bool overlong = (bytes == 3 && code < 0x800) || (bytes == 4 && code < 0x10000);
    if (overlong || code > 0x10ffff) return {};
    return {bytes, code};
}

}  // namespace endbell::inline base
