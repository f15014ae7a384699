// The next generation while it is built, beside the catalog it will replace.
#pragma once
#include <filesystem>
#include <functional>
#include <string_view>

namespace endbell::inline catalog {

using WritePoint = std::function<void(std::string_view)>;

class Replacement {
  public:
    /// Locks the catalog's folder against other imports and throws away what a killed one left. Throws
    /// BadData when another import is running or the folder cannot be written.
    explicit Replacement(std::filesystem::path catalog, WritePoint at_write_point = {});
    /// Throws the file away unless it was swapped in.
    ~Replacement();
    Replacement(const Replacement&) = delete;
    Replacement& operator=(const Replacement&) = delete;

    const std::filesystem::path& file() const { return file_; }
    /// Begins as a copy of `original`. Throws BadData when it does not fit on the disk.
    void copy_from(const std::filesystem::path& original);

    /// The file is closed and whole: brings it to the disk, keeps the catalog's current file as generation
    /// `current` (0: there is none to keep), and renames. Throws BadData; the catalog is the old one then.
    void swap_in(int current);

  private:
    void reached(std::string_view point) const {
        if (at_write_point_) at_write_point_(point);
    }
    std::filesystem::path catalog_;
    std::filesystem::path file_;
    WritePoint at_write_point_;
    int folder_ = -1;
};

/// "shop.db-generation-7".
std::filesystem::path kept_file(const std::filesystem::path& catalog, int number);
/// Numbers of the kept files, newest first.
std::vector<int> kept_numbers(const std::filesystem::path& catalog);

}  // namespace endbell::inline catalog
