#include "engine/csv/encoding.hpp"

#include <iconv.h>

#include <array>
#include <cstring>
#include <fstream>
#include <utility>

#include "engine/base/ensure.hpp"
#include "engine/base/text.hpp"

namespace endbell::inline csv {

namespace {

/// Counts whole and broken UTF-8 sequences across block borders. Overlong forms, surrogates and code points
/// above U+10FFFF are broken (RFC 3629).
class Utf8Scan {
  public:
    void add(std::string_view bytes) {
        for (std::size_t i = 0; i < bytes.size(); ++i) {
            // Eight plain ASCII bytes at once: nearly all of nearly every file.
            std::uint64_t eight = 0;
            while (wanted_ == 0 && i + sizeof eight <= bytes.size()) {
                std::memcpy(&eight, bytes.data() + i, sizeof eight);
                if ((eight & 0x8080808080808080ULL) != 0) break;
                i += sizeof eight;
            }
            if (i < bytes.size()) step(static_cast<unsigned char>(bytes[i]));
        }
    }
    void finish() {
        if (wanted_ > 0) ++broken;
        wanted_ = 0;
    }
    std::uint64_t accents = 0;
    std::uint64_t broken = 0;

  private:
    void step(unsigned char byte) {
        if (wanted_ > 0) {
            if (byte >= low_ && byte <= high_) {
                low_ = 0x80;
                high_ = 0xbf;
                if (--wanted_ == 0) ++accents;
                return;
            }
            ++broken;
            wanted_ = 0;
        }
        if (byte < 0x80) return;
        start(byte);
    }
    void start(unsigned char byte) {
        low_ = 0x80;
        high_ = 0xbf;
        if (byte >= 0xc2 && byte <= 0xdf) {
            wanted_ = 1;
        } else if (byte >= 0xe0 && byte <= 0xef) {
            wanted_ = 2;
            if (byte == 0xe0) low_ = 0xa0;
            if (byte == 0xed) high_ = 0x9f;
        } else if (byte >= 0xf0 && byte <= 0xf4) {
            wanted_ = 3;
            if (byte == 0xf0) low_ = 0x90;
            if (byte == 0xf4) high_ = 0x8f;
        } else {
            ++broken;
        }
    }
    int wanted_ = 0;
    unsigned char low_ = 0x80;
    unsigned char high_ = 0xbf;
};

std::optional<Encoding> marked(std::string_view start) {
    if (start.substr(0, 3) == "\xef\xbb\xbf") return Encoding::utf8;
    if (start.substr(0, 2) == "\xff\xfe") return Encoding::utf16_le;
    if (start.substr(0, 2) == "\xfe\xff") return Encoding::utf16_be;
    return std::nullopt;
}

/// UTF-16 without a mark: ASCII text has a zero byte in nearly every pair.
std::optional<Encoding> by_zero_bytes(std::string_view start) {
    std::array<std::size_t, 2> zeros{};
    for (std::size_t i = 0; i < start.size(); ++i) {
        if (start[i] == '\0') ++zeros[i % 2];
    }
    if (zeros[1] > start.size() / 4 && zeros[0] == 0) return Encoding::utf16_le;
    if (zeros[0] > start.size() / 4 && zeros[1] == 0) return Encoding::utf16_be;
    return std::nullopt;
}

std::optional<Encoding> by_start(const std::filesystem::path& file) {
    std::string start(4096, '\0');
    std::ifstream in(file, std::ios::binary);
    in.read(start.data(), static_cast<std::streamsize>(start.size()));
    start.resize(static_cast<std::size_t>(in.gcount()));
    if (const auto mark = marked(start)) return mark;
    return by_zero_bytes(start);
}

/// Of a file of single bytes, by all of them.
Encoding by_accents(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    std::string block(64 * 1024, '\0');
    Utf8Scan scan;
    while (in) {
        in.read(block.data(), static_cast<std::streamsize>(block.size()));
        scan.add({block.data(), static_cast<std::size_t>(in.gcount())});
    }
    scan.finish();
    return scan.broken == 0 || scan.accents > scan.broken ? Encoding::utf8 : Encoding::windows_1252;
}

}  // namespace

bool is_utf8(std::string_view bytes) {
    Utf8Scan scan;
    scan.add(bytes);
    scan.finish();
    return scan.broken == 0;
}

Decoder::Decoder(std::filesystem::path file, std::optional<Encoding> given) : file_(std::move(file)) {
    if (!given) given = by_start(file_);
    if (given) settle(*given);
}

Decoder::~Decoder() {
    if (iconv_ != nullptr) iconv_close(iconv_);
}

void Decoder::settle(Encoding encoding) {
    known_ = encoding;
    if (encoding == Encoding::utf8) return;
    iconv_t opened = iconv_open("UTF-8", std::string(word(encoding)).c_str());
    // NOLINTNEXTLINE(performance-no-int-to-ptr): POSIX has no other name for its failure
    ensure(opened != reinterpret_cast<iconv_t>(-1), "iconv knows UTF-16 and Windows-1252");
    iconv_ = opened;
}

std::optional<std::string> Decoder::to_utf8(std::string_view bytes) {
    if (!known_) {
        if (is_ascii(bytes)) return std::string(bytes);
        settle(by_accents(file_));
    }
    if (known_ == Encoding::utf8) {
        if (!is_utf8(bytes)) return std::nullopt;
        return std::string(bytes);
    }
    iconv(iconv_, nullptr, nullptr, nullptr, nullptr);
    std::string out(bytes.size() * 3 + 4,
                    '\0');  // a Windows-1252 byte or a UTF-16 unit is at most 3 bytes of UTF-8
    std::string in(bytes);
    char* from = in.data();
    std::size_t from_left = in.size();
    char* to = out.data();
    std::size_t to_left = out.size();
    if (iconv(iconv_, &from, &from_left, &to, &to_left) == static_cast<std::size_t>(-1) || from_left > 0) {
        return std::nullopt;
    }
    out.resize(out.size() - to_left);
    return out;
}

}  // namespace endbell::inline csv
