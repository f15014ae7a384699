#include "engine/index/side_file.hpp"

#include <fcntl.h>
#include <sys/mman.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cstring>

#include "engine/base/ensure.hpp"
#include "engine/base/file_writer.hpp"
#include "engine/base/problem.hpp"

namespace endbell::inline index {

namespace {

// Changes with the layout, and with the byte order of the machine.
constexpr std::uint64_t mark = 0x454E44423033;  // "ENDB03"
constexpr std::size_t alignment = 64;
constexpr std::size_t stamp_size = 128;

struct Head {
    std::uint64_t mark = 0;
    std::uint64_t sections = 0;
    char stamp[stamp_size] = {};
};
struct Extent {
    std::uint64_t offset = 0;
    std::uint64_t size = 0;
};

void write_stamp(Head& head, std::string_view stamp) {
    ensure(stamp.size() < stamp_size, "a stamp fits into the head");
    std::memcpy(head.stamp, stamp.data(), stamp.size());
}

}  // namespace

struct SideFile::Mapping {
    int file = -1;
    std::size_t size = 0;
    void* start = MAP_FAILED;

    Mapping() = default;
    Mapping(const Mapping&) = delete;
    Mapping& operator=(const Mapping&) = delete;
    ~Mapping() {
        if (start != MAP_FAILED) ::munmap(start, size);
        if (file >= 0) ::close(file);
    }
};

std::optional<SideFile> SideFile::open(const std::filesystem::path& path, std::string_view stamp) {
    const auto mapping = std::make_shared<Mapping>();
    mapping->file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (mapping->file < 0) return std::nullopt;
    struct stat about {};
    const bool known = ::fstat(mapping->file, &about) == 0 && S_ISREG(about.st_mode);
    const auto size = static_cast<std::size_t>(known ? about.st_size : 0);
    if (size < sizeof(Head)) return std::nullopt;
    mapping->size = size;
    mapping->start = ::mmap(nullptr, size, PROT_READ, MAP_SHARED, mapping->file, 0);
    if (mapping->start == MAP_FAILED) return std::nullopt;

    SideFile side;
    side.mapping_ = mapping;
    const auto* bytes = static_cast<const std::byte*>(mapping->start);
    Head head;
    Head wanted;
    std::memcpy(&head, bytes, sizeof head);
    write_stamp(wanted, stamp);
    if (head.mark != mark || std::memcmp(head.stamp, wanted.stamp, stamp_size) != 0) return std::nullopt;
    if (head.sections > 1000 || sizeof(Head) + head.sections * sizeof(Extent) > size) return std::nullopt;
    for (std::size_t i = 0; i < head.sections; ++i) {
        Extent extent;
        std::memcpy(&extent, bytes + sizeof(Head) + i * sizeof(Extent), sizeof extent);
        if (extent.offset % alignment != 0 || extent.offset > size || extent.size > size - extent.offset)
            return std::nullopt;
        side.sections_.emplace_back(bytes + extent.offset, extent.size);
    }
    return side;
}

bool SideFile::copy(std::size_t section, std::size_t offset, std::span<std::byte> to) const {
    const std::span<const std::byte> whole = sections_.at(section);
    if (offset > whole.size() || to.size() > whole.size() - offset) return false;
    auto at = static_cast<off_t>(whole.data() - static_cast<const std::byte*>(mapping_->start)) +
              static_cast<off_t>(offset);
    while (!to.empty()) {
        const ssize_t got = ::pread(mapping_->file, to.data(), to.size(), at);
        if (got <= 0) return false;
        to = to.subspan(static_cast<std::size_t>(got));
        at += got;
    }
    return true;
}

std::uint32_t SideReader::number() {
    std::uint32_t value = 0;
    std::memcpy(&value, take(sizeof value), sizeof value);
    return value;
}

std::string_view SideReader::text() {
    const std::size_t size = number();
    return {reinterpret_cast<const char*>(take(size)), size};
}

const std::byte* SideReader::take(std::size_t size) {
    ensure(size <= bytes_.size() - at_, "the index is as long as it says");
    at_ += size;
    return bytes_.data() + (at_ - size);
}

namespace {

std::string_view bytes_of(const void* bytes, std::size_t size) {
    return {static_cast<const char*>(bytes), size};
}

}  // namespace

struct SideFileWriter::State {
    explicit State(const std::filesystem::path& path)
        : file(path, Problem{{path.string(), 0, 0},
                             "index",
                             "",
                             "a place to write to",
                             "free some space beside the catalog"}) {}
    FileWriter file;
    Head head;
    std::vector<Extent> extents;
    std::uint64_t at = 0;

    void write(const void* bytes, std::size_t size) {
        file.write(bytes_of(bytes, size));
        at += size;
    }
};

SideFileWriter::SideFileWriter(const std::filesystem::path& path, std::string_view stamp,
                               std::size_t sections)
    : state_(std::make_unique<State>(path)) {
    state_->head.mark = mark;
    state_->head.sections = sections;
    write_stamp(state_->head, stamp);
    const std::vector<Extent> room(sections);
    state_->write(&state_->head, sizeof(Head));
    state_->write(room.data(), sections * sizeof(Extent));
}

SideFileWriter::SideFileWriter(SideFileWriter&&) noexcept = default;
SideFileWriter::~SideFileWriter() = default;

void SideFileWriter::begin() {
    static constexpr char zeros[alignment] = {};
    state_->write(zeros, (alignment - state_->at % alignment) % alignment);
    state_->extents.push_back({state_->at, 0});
}

void SideFileWriter::append(const void* bytes, std::size_t size) {
    state_->write(bytes, size);
    state_->extents.back().size += size;
}

void SideFileWriter::finish() {
    ensure(state_->extents.size() == state_->head.sections, "as many sections as were promised");
    state_->file.write_at(sizeof(Head),
                          bytes_of(state_->extents.data(), state_->extents.size() * sizeof(Extent)));
    state_->file.finish();
}

void SideFileWriter::put_in_place() {
    state_->file.take_place();
}

}  // namespace endbell::inline index
