#include "engine/base/file_writer.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <string>
#include <utility>

#include "engine/base/ensure.hpp"

namespace endbell::inline base {

namespace fs = std::filesystem;

FileWriter::FileWriter(fs::path target, Problem complaint)
    : target_(std::move(target)), complaint_(std::move(complaint)) {
    std::error_code none;
    if (fs::is_symlink(target_, none)) target_ = fs::weakly_canonical(target_, none);
    const fs::file_status there = fs::status(target_, none);
    in_place_ = fs::exists(there) && !fs::is_regular_file(there);
    written_ = in_place_ ? target_ : fs::path(target_.string() + "." + std::to_string(::getpid()) + ".part");
    if (!in_place_) fs::remove(written_, none);  // left by one that was killed and had the same number
    const int handle =
        ::open(written_.c_str(), O_WRONLY | O_CLOEXEC | (in_place_ ? 0 : O_CREAT | O_EXCL), 0666);
    if (handle < 0) fail();
    if (fs::is_regular_file(there)) ::fchmod(handle, static_cast<mode_t>(there.permissions()));
    file_ = ::fdopen(handle, "wb");
    if (file_ == nullptr) {
        ::close(handle);
        fail();
    }
}

FileWriter::~FileWriter() {
    if (!taken_) drop();
}

void FileWriter::write(std::string_view bytes) {
    if (bytes.empty()) return;  // an empty view may point nowhere, which fwrite does not take
    if (std::fwrite(bytes.data(), 1, bytes.size(), file_) != bytes.size()) fail();
}

void FileWriter::write_at(std::uint64_t offset, std::string_view bytes) {
    if (::fseeko(file_, static_cast<off_t>(offset), SEEK_SET) != 0) fail();
    write(bytes);
}

void FileWriter::finish() {
    const bool flushed = std::fflush(file_) == 0 && (in_place_ || ::fsync(::fileno(file_)) == 0);
    const bool closed = std::fclose(std::exchange(file_, nullptr)) == 0;
    if (!flushed || !closed) fail();
}

void FileWriter::take_place() {
    ensure(file_ == nullptr, "a file is finished before it takes its place");
    if (!in_place_ && replace_file(written_, target_)) fail();
    taken_ = true;
}

void FileWriter::fail() {
    drop();
    throw BadData(complaint_);
}

void FileWriter::drop() {
    if (file_ != nullptr) std::fclose(std::exchange(file_, nullptr));
    std::error_code none;
    if (!in_place_) fs::remove(written_, none);
}

std::error_code to_disk(const fs::path& path) {
    const auto last = [] { return std::error_code(errno, std::generic_category()); };
    const int handle = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (handle < 0) return last();
    const std::error_code result = ::fsync(handle) == 0 ? std::error_code() : last();
    ::close(handle);
    return result;
}

std::error_code replace_file(const fs::path& file, const fs::path& target) {
    std::error_code error;
    fs::rename(file, target, error);
    if (error) return error;
    const std::error_code folder = to_disk(target.has_parent_path() ? target.parent_path() : fs::path("."));
    return folder.value() == EINVAL ? std::error_code() : folder;  // a file system whose folders need none
}

}  // namespace endbell::inline base
