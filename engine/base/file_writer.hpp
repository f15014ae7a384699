// The one writer of files: what it writes is there whole or not at all.
#pragma once
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <string_view>
#include <system_error>

#include "engine/base/problem.hpp"

namespace endbell::inline base {

/// Writes beside the target, and takes its place by a rename. Until then the target is as it was; what never takes its
/// place is removed, and a program that is killed leaves nothing but a file "TARGET.PROCESS.part". A file that exists
/// keeps its permissions and a symbolic link stays a link. A device or a pipe is written as it is, which nothing takes back.
/// Anything that fails throws `complaint` as BadData, and removes what was written.
class FileWriter {
  public:
    FileWriter(std::filesystem::path target, Problem complaint);
    ~FileWriter();
    FileWriter(const FileWriter&) = delete;
    FileWriter& operator=(const FileWriter&) = delete;

    void write(std::string_view bytes);
    /// Over what was written there. REQUIRES: the target is no device and no pipe.
    void write_at(std::uint64_t offset, std::string_view bytes);

    /// All is written: brings it to the disk, so that no power cut leaves a torn file under the target's name.
    void finish();
    /// REQUIRES: finish() was called. Who writes several files finishes all before the first takes its place.
    void take_place();

  private:
    [[noreturn]] void fail();
    void drop();

    std::filesystem::path target_;
    std::filesystem::path written_;
    Problem complaint_;
    std::FILE* file_ = nullptr;
    bool in_place_ = false;
    bool taken_ = false;
};

/// Brings a file, or the names in a folder, to the disk.
std::error_code to_disk(const std::filesystem::path& path);

/// `file`, which is on the disk, under the name of `target` in the same folder, and the name on the disk.
std::error_code replace_file(const std::filesystem::path& file, const std::filesystem::path& target);

}  // namespace endbell::inline base
