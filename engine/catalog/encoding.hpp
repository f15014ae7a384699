// Bytes of a file to UTF-8.
#pragma once
#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include "engine/catalog/csv_file.hpp"

namespace endbell {

bool is_utf8(std::string_view bytes);

/// Looks at the whole file once, in blocks. Without a mark: many zero bytes make it UTF-16; UTF-8 that is
/// whole, or whose accents outnumber its broken bytes, makes it UTF-8 (broken rows are set aside then); the
/// rest is Windows-1252.
Encoding encoding_of(const std::filesystem::path& path);

/// Converts a piece that ends where a line ends. Nothing when the bytes are no text in that encoding.
class Decoder {
  public:
    explicit Decoder(Encoding encoding);
    ~Decoder();
    Decoder(const Decoder&) = delete;
    Decoder& operator=(const Decoder&) = delete;
    std::optional<std::string> to_utf8(std::string_view bytes);

  private:
    Encoding encoding_;
    void* iconv_ = nullptr;
};

}  // namespace endbell
