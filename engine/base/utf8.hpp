// Characters of UTF-8 text (RFC 3629), without a locale.
#pragma once
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace endbell::inline base {

/// How many bytes a character takes, and its code point.
struct CodePoint {
    std::size_t bytes = 1;
    std::optional<std::uint32_t> code;
};

/// The first character of `text`; one byte without a code where none starts there: overlong forms and what lies beyond
/// U+10FFFF are none. A surrogate has its code: who cares asks. REQUIRES: `text` is not empty.
CodePoint code_point_at(std::string_view text);

}  // namespace endbell::inline base
