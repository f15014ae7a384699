#include "engine/catalog/replacement.hpp"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <vector>

#include "engine/base/file_writer.hpp"
#include "engine/base/problem.hpp"
#include "engine/catalog/generations.hpp"

namespace endbell::inline catalog {

namespace fs = std::filesystem;

namespace {

BadData failed(const fs::path& file, std::string expected, std::string todo) {
    return BadData(Problem{{file.string(), 0, 0}, "catalog", "", std::move(expected), std::move(todo)});
}

BadData failed_write(const fs::path& file, int error) {
    if (error == ENOSPC || error == EDQUOT) {
        return failed(file, "room on the disk", "free some space and import again; the old catalog is whole");
    }
    return failed(file, "a place that may be written",
                  "check the folder's permissions; the old catalog is whole");
}

fs::path folder_of(const fs::path& file) {
    return file.has_parent_path() ? file.parent_path() : fs::path(".");
}

void remove_with_journals(const fs::path& file) {
    std::error_code ignored;
    fs::remove(file, ignored);
    fs::remove(file.string() + "-journal", ignored);
    fs::remove(file.string() + "-wal", ignored);
}

}  // namespace

fs::path kept_file(const fs::path& catalog, int number) {
    return catalog.string() + "-generation-" + std::to_string(number);
}

std::vector<int> kept_numbers(const fs::path& catalog) {
    const std::string prefix = catalog.filename().string() + "-generation-";
    std::vector<int> numbers;
    std::error_code none;
    for (const fs::directory_entry& entry : fs::directory_iterator(folder_of(catalog), none)) {
        const std::string name = entry.path().filename().string();
        if (name.size() <= prefix.size() || name.size() > prefix.size() + 8 ||
            name.compare(0, prefix.size(), prefix) != 0)
            continue;
        const std::string digits = name.substr(prefix.size());
        if (digits.find_first_not_of("0123456789") == std::string::npos) numbers.push_back(std::stoi(digits));
    }
    std::sort(numbers.rbegin(), numbers.rend());
    return numbers;
}

Replacement::Replacement(fs::path catalog, WritePoint at_write_point)
    : catalog_(std::move(catalog)),
      file_(catalog_.string() + "-importing"),
      at_write_point_(std::move(at_write_point)) {
    folder_ = open(folder_of(catalog_).c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (folder_ < 0) throw failed(folder_of(catalog_), "a folder", "make the folder first");
    if (flock(folder_, LOCK_EX | LOCK_NB) != 0) {
        close(folder_);
        throw failed(catalog_, "one import at a time",
                     "another import into this folder is running: wait for it");
    }
    remove_with_journals(file_);
}

Replacement::~Replacement() {
    remove_with_journals(file_);
    close(folder_);  // also unlocks
}

void Replacement::copy_from(const fs::path& original) {
    std::error_code error;
    fs::copy_file(original, file_, error);
    if (error) throw failed_write(file_, error.value());
    fs::permissions(file_, fs::perms::owner_write, fs::perm_options::add, error);
}

void Replacement::swap_in(int current) {
    reached("file closed");
    if (const std::error_code error = to_disk(file_)) throw failed_write(file_, error.value());
    reached("on disk");
    if (current > 0) {
        const fs::path kept = kept_file(catalog_, current);
        std::error_code error;
        fs::remove(kept, error);
        fs::create_hard_link(catalog_, kept, error);
        if (error) fs::copy_file(catalog_, kept, error);  // a file system without links
        if (error) throw failed_write(kept, error.value());
    }
    reached("old kept");
    if (const std::error_code error = replace_file(file_, catalog_))
        throw failed_write(catalog_, error.value());
    reached("swapped");
    const std::vector<int> kept = kept_numbers(catalog_);
    std::error_code error;
    for (std::size_t i = generations_kept; i < kept.size(); ++i)
        fs::remove(kept_file(catalog_, kept[i]), error);
}

}  // namespace endbell::inline catalog
