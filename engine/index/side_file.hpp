// A file beside the catalog that holds what can be worked out from it again: may be deleted at any time.
// Written whole under another name and then renamed; read by mapping it.
#pragma once
#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace endbell::inline index {

/// Sections of bytes, each beginning at a multiple of 64.
class SideFile {
  public:
    /// Empty where there is no such file, where it is not one of ours, where it was made for another `stamp`, or where
    /// it is cut short: then it is to be made again.
    static std::optional<SideFile> open(const std::filesystem::path& path, std::string_view stamp);

    std::size_t sections() const { return sections_.size(); }
    std::span<const std::byte> section(std::size_t number) const { return sections_.at(number); }

    /// The section as whole numbers of one size; what does not fill one is left out.
    template <class T>
    std::span<const T> numbers(std::size_t number) const {
        const std::span<const std::byte> bytes = section(number);
        return {reinterpret_cast<const T*>(bytes.data()), bytes.size() / sizeof(T)};
    }

    /// Copies bytes of a section, from `offset` on, without mapping them. False where the file does not give them.
    bool copy(std::size_t section, std::size_t offset, std::span<std::byte> to) const;

  private:
    struct Mapping;
    std::shared_ptr<const Mapping> mapping_;
    std::vector<std::span<const std::byte>> sections_;
};

/// Numbers and texts of one section, one after the other. Throws OurBug rather than read beyond its end.
class SideReader {
  public:
    explicit SideReader(std::span<const std::byte> section) : bytes_(section) {}

    bool at_end() const { return at_ == bytes_.size(); }
    std::uint32_t number();
    std::string_view text();

  private:
    const std::byte* take(std::size_t size);

    std::span<const std::byte> bytes_;
    std::size_t at_ = 0;
};

/// Writes a side file section by section; nothing is at `path` before `put_in_place`, and what never comes there is removed.
/// All throw BadData when the file cannot be written.
class SideFileWriter {
  public:
    SideFileWriter(const std::filesystem::path& path, std::string_view stamp, std::size_t sections);
    ~SideFileWriter();
    SideFileWriter(SideFileWriter&&) noexcept;
    SideFileWriter& operator=(SideFileWriter&&) = delete;

    void begin();  // the next section
    void append(const void* bytes, std::size_t size);
    /// All sections are written: brings them to the disk, so that no power cut leaves a whole head over a torn rest.
    void finish();
    void put_in_place();

    template <class T>
    void section(const std::vector<T>& numbers) {
        begin();
        append(numbers.data(), numbers.size() * sizeof(T));
    }

  private:
    struct State;
    std::unique_ptr<State> state_;
};

}  // namespace endbell::inline index
