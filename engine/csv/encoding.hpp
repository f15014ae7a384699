// Bytes of a file to UTF-8.
#pragma once
#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include "engine/csv/csv_file.hpp"

namespace endbell::inline csv {

bool is_utf8(std::string_view bytes);

/// Finds out what a file is written in, no sooner than that matters. A mark at its start says so, and many zero bytes there
/// make it UTF-16. Of the others ASCII is read as it is; at the first piece that is more, the whole file is looked at once:
/// UTF-8 that is whole, or whose accents outnumber its broken bytes, makes it UTF-8 (broken rows are set aside then); the
/// rest is Windows-1252.
class Decoder {
  public:
    Decoder(std::filesystem::path file, std::optional<Encoding> given);
    ~Decoder();
    Decoder(const Decoder&) = delete;
    Decoder& operator=(const Decoder&) = delete;

    /// By what was read: of a file of ASCII, UTF-8.
    Encoding encoding() const { return known_.value_or(Encoding::utf8); }
    /// Two bytes a unit. ASCII stands in all others as it is.
    bool is_wide() const { return encoding() == Encoding::utf16_le || encoding() == Encoding::utf16_be; }
    /// Of a piece that ends where a line ends. Nothing when the bytes are no text in that encoding.
    std::optional<std::string> to_utf8(std::string_view bytes);

  private:
    void settle(Encoding encoding);

    std::filesystem::path file_;
    std::optional<Encoding> known_;
    void* iconv_ = nullptr;
};

}  // namespace endbell::inline csv
