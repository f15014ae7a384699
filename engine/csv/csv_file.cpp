#include "engine/csv/csv_file.hpp"

#include <csv.h>

#include <deque>
#include <fstream>

#include "engine/base/problem.hpp"
#include "engine/base/text.hpp"
#include "engine/csv/encoding.hpp"

namespace endbell::inline csv {

namespace {

struct Line {
    int number = 0;
    std::string bytes;
    bool ended = true;  // by a line end or by the end of the file; false: cut off at the longest row
};

/// Cuts a file at LF, CR or CR LF, in units of one or two bytes.
class LineReader {
  public:
    /// Of units of two bytes, UTF-16LE or UTF-16BE; anything else has single bytes.
    LineReader(const std::filesystem::path& path, Encoding encoding)
        : in_(path, std::ios::binary), block_(64 * 1024, '\0'), encoding_(encoding) {}

    bool next(Line& line) {
        line.bytes.clear();
        line.ended = true;
        line.number = ++number_;
        take_plain(line.bytes);
        bool after_cr = false;
        for (int unit = take(line.bytes); unit >= 0; unit = take(line.bytes)) {
            if (after_cr && unit != '\n') {
                give_back(line.bytes);
                return true;
            }
            if (unit == '\n') return true;
            after_cr = unit == '\r';
            if (!after_cr && line.bytes.size() >= longest_row) {
                line.ended = false;
                --number_;  // what follows is still this line
                return true;
            }
        }
        return !line.bytes.empty();
    }
    std::uint64_t bytes_read() const { return bytes_read_; }

  private:
    std::size_t unit_size() const {
        return encoding_ == Encoding::utf16_le || encoding_ == Encoding::utf16_be ? 2U : 1U;
    }
    bool fill() {
        if (at_ < end_) return true;
        if (!in_) return false;
        in_.read(block_.data(), static_cast<std::streamsize>(block_.size()));
        at_ = 0;
        end_ = static_cast<std::size_t>(in_.gcount());
        return end_ > 0;
    }
    /// Of a line of single bytes, moves all that is at hand before its end.
    void take_plain(std::string& out) {
        if (unit_size() != 1 || !fill()) return;
        const std::string_view at_hand(block_.data() + at_, std::min(end_ - at_, longest_row));
        const std::size_t size = std::min(at_hand.find('\n'), at_hand.size());
        const std::size_t plain = std::min(at_hand.substr(0, size).find('\r'), size);
        if (plain == longest_row) return;
        out.append(at_hand.substr(0, plain));
        at_ += plain;
        bytes_read_ += plain;
    }
    /// Moves one unit to `out` and returns its code; -1 at the end of the file. Blocks have an even size, so
    /// that a unit never lies across two.
    int take(std::string& out) {
        if (!fill()) return -1;
        const std::size_t size = std::min(unit_size(), end_ - at_);
        const auto first = static_cast<unsigned>(static_cast<unsigned char>(block_[at_]));
        const auto second =
            size == 2 ? static_cast<unsigned>(static_cast<unsigned char>(block_[at_ + 1])) : 0U;
        out.append(block_, at_, size);
        at_ += size;
        bytes_read_ += size;
        if (unit_size() == 1) return static_cast<int>(first);
        return static_cast<int>(encoding_ == Encoding::utf16_le ? first | (second << 8U)
                                                                : (first << 8U) | second);
    }
    void give_back(std::string& out) {
        out.resize(out.size() - unit_size());
        at_ -= unit_size();
        bytes_read_ -= unit_size();
    }

    std::ifstream in_;
    std::string block_;
    Encoding encoding_;
    std::size_t at_ = 0;
    std::size_t end_ = 0;
    std::uint64_t bytes_read_ = 0;
    int number_ = 0;
};

/// libcsv for one row at a time.
class RowParser {
  public:
    explicit RowParser(char delimiter) : delimiter_(delimiter) { start(); }
    ~RowParser() { csv_free(&parser_); }
    RowParser(const RowParser&) = delete;
    RowParser& operator=(const RowParser&) = delete;

    void restart() {
        csv_free(&parser_);
        start();
    }
    void feed(std::string_view text) { csv_parse(&parser_, text.data(), text.size(), on_cell, on_row, this); }
    bool row_is_whole() const { return whole_; }
    /// libcsv's state 0: nothing but white space since the last row.
    bool nothing_begun() const { return parser_.pstate == 0; }
    /// Adds cells to `row` until the next row is begun.
    void begin(CsvRow& row) {
        whole_ = false;
        row_ = &row;
    }

  private:
    void start() {
        csv_init(&parser_, 0);
        csv_set_delim(&parser_, static_cast<unsigned char>(delimiter_));
        whole_ = false;
    }
    static void on_cell(void* text, std::size_t length, void* self) {
        const std::string_view cell(static_cast<const char*>(text), text == nullptr ? 0 : length);
        static_cast<RowParser*>(self)->row_->add(cell);
    }
    static void on_row(int, void* self) { static_cast<RowParser*>(self)->whole_ = true; }

    csv_parser parser_{};
    char delimiter_;
    CsvRow* row_ = nullptr;
    bool whole_ = false;
};

std::string_view without_mark(std::string_view text) {
    if (text.substr(0, 3) == "\xef\xbb\xbf") text.remove_prefix(3);
    return text;
}

/// The delimiter that a first line such as `sep=;` names.
std::optional<char> named_delimiter(std::string_view line) {
    line = trimmed(without_mark(line).substr(0, line.find_last_not_of("\r\n") + 1));
    if (line.size() > 1 && line.front() == '"' && line.back() == '"') line = line.substr(1, line.size() - 2);
    if (line.size() == 5 && lower(line.substr(0, 4)) == "sep=") return line[4];
    if (lower(line) == "sep=") return '\t';  // trimmed away
    return std::nullopt;
}

/// The commonest of comma, semicolon and tab outside quotes.
char likely_delimiter(std::string_view header) {
    std::size_t best = 0;
    char delimiter = ',';
    for (const char candidate : {',', ';', '\t'}) {
        std::size_t count = 0;
        bool quoted = false;
        for (const char c : header) {
            if (c == '"') quoted = !quoted;
            if (c == candidate && !quoted) ++count;
        }
        if (count > best) {
            best = count;
            delimiter = candidate;
        }
    }
    return delimiter;
}

bool is_blank(const CsvRow& row) {
    for (std::size_t i = 0; i < row.size(); ++i) {
        if (!trimmed(row[i]).empty()) return false;
    }
    return true;
}

Problem unreadable(const std::filesystem::path& path, std::string expected, std::string todo) {
    return {{path.string(), 0, 0}, "file", "", std::move(expected), std::move(todo)};
}

}  // namespace

struct CsvFile::State {
    State(const std::filesystem::path& file, const CsvHints& hints)
        : decoder(file, hints.encoding),
          size(std::filesystem::file_size(file)),
          lines(file, decoder.encoding()) {}

    bool next_line(Line& line) {
        if (pending.empty()) return lines.next(line);
        line = std::move(pending.front());
        pending.pop_front();
        return true;
    }

    /// UTF-8 with exactly one line end, so that the parser always comes to the end of the row.
    std::optional<std::string> decoded(const Line& line) {
        std::optional<std::string> text = decoder.to_utf8(line.bytes);
        if (!text) return std::nullopt;
        std::string_view plain = without_mark(*text);
        const bool had_end = !plain.empty() && (plain.back() == '\n' || plain.back() == '\r');
        text->erase(0, text->size() - plain.size());
        if (!had_end) *text += '\n';
        return text;
    }

    bool damaged(CsvRow& row, std::vector<Line>& read, std::string why) {
        parser->restart();
        row.line = read.front().number;
        row.begin();
        row.bytes = std::move(read.front().bytes);
        row.damage = std::move(why);
        for (std::size_t i = read.size(); i > 1; --i) pending.push_front(std::move(read[i - 1]));
        return true;
    }

    /// A row as nearly all are: one line of ASCII without quotes. False: the parser is to look at what comes next.
    bool plain_row(CsvRow& row) {
        if (decoder.is_wide() || !pending.empty() || !parser->nothing_begun()) return false;
        Line line;
        line.bytes.swap(row.bytes);  // its memory is used again
        if (!lines.next(line)) return false;
        row.bytes.swap(line.bytes);
        if (!line.ended || !row.cut(delimiter)) {
            row.bytes.swap(line.bytes);
            pending.push_front(std::move(line));
            return false;
        }
        row.line = line.number;
        row.damage.clear();
        return true;
    }

    bool next_row(CsvRow& row) {
        if (plain_row(row)) return true;
        row.begin();
        parser->begin(row);
        std::vector<Line> read;
        std::size_t length = 0;
        Line line;
        while (next_line(line)) {
            length += line.bytes.size();
            read.push_back(std::move(line));
            const Line& last = read.back();
            if (!last.ended) return damaged(row, read, "a line of at most 64 KiB");
            const std::optional<std::string> text = decoded(last);
            if (!text) return damaged(row, read, std::string(word(decoder.encoding())) + " text");
            if (text->find('\0') != std::string::npos) return damaged(row, read, "text without zero bytes");
            parser->feed(*text);
            if (!parser->row_is_whole()) {
                if (parser->nothing_begun()) {
                    read.clear();
                    length = 0;
                    continue;
                }
                if (read.size() >= most_row_lines || length >= longest_row) break;
                continue;
            }
            row.line = read.front().number;
            row.damage.clear();
            row.bytes = std::move(read.front().bytes);
            for (std::size_t i = 1; i < read.size(); ++i) row.bytes += read[i].bytes;
            return true;
        }
        if (read.empty()) return false;
        return damaged(row, read, "a closing quote");
    }

    Decoder decoder;
    std::uint64_t size;
    LineReader lines;
    std::unique_ptr<RowParser> parser;
    std::deque<Line> pending;
    char delimiter = ',';
    CsvRow header;
    std::string head_bytes;
};

CsvFile::CsvFile(const std::filesystem::path& path, const CsvHints& hints) {
    std::error_code failed;
    if (!std::filesystem::is_regular_file(path, failed)) {
        throw BadData(unreadable(path, "a CSV file", "check the path"));
    }
    if (!std::ifstream(path))
        throw BadData(unreadable(path, "a file that may be read", "check its permissions"));
    state_ = std::make_unique<State>(path, hints);
    State& state = *state_;

    Line line;
    std::optional<std::string> text;
    std::optional<char> delimiter = hints.delimiter;
    bool first = true;
    while (state.lines.next(line)) {
        text = state.decoded(line);
        if (!text)
            throw BadData(unreadable(path,
                                     std::string(word(state.decoder.encoding())) + " text in the header",
                                     "save the file again"));
        const bool blank = trimmed(*text).empty();
        const std::optional<char> named = first ? named_delimiter(*text) : std::nullopt;
        first = false;
        if (!blank && !named) break;
        if (named && !delimiter) delimiter = named;
        state.head_bytes += line.bytes;
        text.reset();
    }
    if (!text || trimmed(*text).empty()) {
        throw BadData(unreadable(path, "a header line with column names", "export the table again"));
    }
    state.delimiter = delimiter ? *delimiter : likely_delimiter(*text);
    state.parser = std::make_unique<RowParser>(state.delimiter);
    state.pending.push_front(std::move(line));
    state.next_row(state.header);
    if (!state.header.damage.empty()) {
        throw BadData(Problem{{path.string(), state.header.line, 0},
                              "header",
                              "",
                              state.header.damage,
                              "mend the header line"});
    }
    state.head_bytes += state.header.bytes;
}

CsvFile::~CsvFile() = default;
CsvFile::CsvFile(CsvFile&&) noexcept = default;
CsvFile& CsvFile::operator=(CsvFile&&) noexcept = default;

Encoding CsvFile::encoding() const {
    return state_->decoder.encoding();
}
char CsvFile::delimiter() const {
    return state_->delimiter;
}
const CsvRow& CsvFile::header() const {
    return state_->header;
}
const std::string& CsvFile::head_bytes() const {
    return state_->head_bytes;
}
std::uint64_t CsvFile::bytes_read() const {
    return state_->lines.bytes_read();
}
std::uint64_t CsvFile::size() const {
    return state_->size;
}

bool CsvFile::next(CsvRow& row) {
    while (state_->next_row(row)) {
        if (!row.damage.empty() || !is_blank(row)) return true;
    }
    return false;
}

}  // namespace endbell::inline csv
