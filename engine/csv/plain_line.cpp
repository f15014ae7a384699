#include "engine/csv/plain_line.hpp"

#include <bit>
#include <cstring>

namespace endbell::inline csv {

namespace {

using Eight = std::uint64_t;  // bytes of a line at once, the first one lowest

constexpr Eight each = 0x0101010101010101;
constexpr Eight tops = each << 7U;

Eight first_lowest(Eight bytes) {
    return std::endian::native == std::endian::big ? __builtin_bswap64(bytes) : bytes;
}

constexpr Eight all(char c) {
    return each * static_cast<unsigned char>(c);
}

/// The top bit of each byte that is zero.
constexpr Eight zeros(Eight bytes) {
    return ~(((bytes & ~tops) + ~tops) | bytes | ~tops);
}

/// Not null where a byte is zero, a quote or no ASCII.
constexpr Eight not_plain(Eight bytes) {
    const Eight quotes = bytes ^ all('"');
    return (bytes | ((bytes - each) & ~bytes) | ((quotes - each) & ~quotes)) & tops;
}

/// Takes a line eight bytes at a time.
class Cutter {
  public:
    Cutter(std::string_view line, char delimiter, std::vector<CellPlace>& cells)
        : text_(line.data()), delimiter_(delimiter), cells_(cells) {}

    void take(Eight bytes) {
        refused_ |= not_plain(bytes);
        for (Eight ends = zeros(bytes ^ all(delimiter_)); ends != 0; ends &= ends - 1) {
            const std::size_t end = at_ + static_cast<std::size_t>(std::countr_zero(ends)) / 8;
            add(end);
            start_ = end + 1;
        }
        at_ += sizeof bytes;
    }
    void add(std::size_t end) {
        std::size_t start = start_;
        while (start < end && is_blank(text_[start])) ++start;
        while (end > start && is_blank(text_[end - 1])) --end;
        cells_.push_back({static_cast<std::uint32_t>(start), static_cast<std::uint32_t>(end - start)});
    }
    bool refused() const { return refused_ != 0; }

  private:
    bool is_blank(char c) const { return c <= ' ' && (c == ' ' || c == '\t') && c != delimiter_; }

    const char* text_;
    char delimiter_;
    std::vector<CellPlace>& cells_;
    std::size_t at_ = 0;
    std::size_t start_ = 0;  // of the cell
    Eight refused_ = 0;
};

}  // namespace

bool cut_plain_line(std::string_view line, char delimiter, std::vector<CellPlace>& cells) {
    cells.clear();
    Cutter cutter(line, delimiter, cells);
    Eight bytes = 0;
    std::size_t at = 0;
    for (; at + sizeof bytes <= line.size(); at += sizeof bytes) {
        std::memcpy(&bytes, line.data() + at, sizeof bytes);
        cutter.take(first_lowest(bytes));
    }
    bytes = each;  // nothing to look at behind the end
    std::memcpy(&bytes, line.data() + at, line.size() - at);
    cutter.take(first_lowest(bytes));
    cutter.add(line.size());
    const bool says_something = line.find_first_not_of(" \t") != std::string_view::npos;
    if (!cutter.refused() && says_something) return true;
    cells.clear();
    return false;
}

bool CsvRow::cut(char delimiter) {
    apart_ = false;
    const std::string_view text(bytes.data(), bytes.find_last_not_of("\r\n") + 1);
    return cut_plain_line(text, delimiter, places_);
}

}  // namespace endbell::inline csv
