// engine/csv: the bytes of a file cut into rows and cells, whatever program wrote it. Here: a CSV file as spreadsheets
// write it, row by row. Each row keeps the bytes it had in the file, so that a row that is set aside can be mended
// where it stood. Memory is bounded by the longest row allowed, never by the file.
#pragma once
#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>

#include "engine/csv/csv_row.hpp"
#include "engine/model/word.hpp"

namespace endbell::inline csv {

enum class Encoding { utf8, utf16_le, utf16_be, windows_1252 };
constexpr auto words_of(Encoding) {
    return std::array{Word<Encoding>{Encoding::utf8, "UTF-8"}, Word<Encoding>{Encoding::utf16_le, "UTF-16LE"},
                      Word<Encoding>{Encoding::utf16_be, "UTF-16BE"},
                      Word<Encoding>{Encoding::windows_1252, "Windows-1252"}};
}

/// What a person or a column map knows of the file; the rest is found out.
struct CsvHints {
    std::optional<Encoding> encoding;
    std::optional<char> delimiter;
};

class CsvFile {
  public:
    /// Finds the encoding (byte order mark, then zero bytes, then whether all of it is UTF-8, see Decoder), an optional
    /// "sep=" line, the delimiter and the header. Throws BadData when the file cannot be read or holds no
    /// header.
    explicit CsvFile(const std::filesystem::path& path, const CsvHints& hints = {});
    ~CsvFile();
    CsvFile(CsvFile&&) noexcept;
    CsvFile& operator=(CsvFile&&) noexcept;

    /// By the rows that were read: of ASCII, UTF-8.
    Encoding encoding() const;
    char delimiter() const;
    const CsvRow& header() const;
    /// Everything before the first row, as it stands in the file: byte order mark, "sep=" line, header.
    const std::string& head_bytes() const;

    /// The next row that is not blank; false at the end. A quote that is never closed costs one line, not the
    /// rest of the file: the line is handed out as damaged and reading goes on behind it.
    bool next(CsvRow& row);

    std::uint64_t bytes_read() const;
    std::uint64_t size() const;

  private:
    struct State;
    std::unique_ptr<State> state_;
};

/// Longest row and most lines in one row. Longer is a quote that was never closed, or not a table.
inline constexpr std::size_t longest_row = std::size_t{64} * 1024;
inline constexpr std::size_t most_row_lines = 200;

}  // namespace endbell::inline csv
