// A folder of its own for each test, and the small catalog of tests/catalog/fixtures in it.
#pragma once
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

#include "engine/import/import.hpp"

namespace endbell::testing {

namespace fs = std::filesystem;

inline fs::path fixtures() {
    return fs::path(ENDBELL_ROOT) / "tests/catalog/fixtures";
}

inline std::string read_file(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

inline void write_file(const fs::path& file, const std::string& bytes) {
    fs::create_directories(file.parent_path());
    std::ofstream(file, std::ios::binary) << bytes;
}

struct Folder {
    Folder() {
        std::string name = (fs::temp_directory_path() / "endbell-XXXXXX").string();
        path = mkdtemp(name.data());
    }
    ~Folder() { fs::remove_all(path); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    /// A table of this test's own, in `tables/`.
    void table(const std::string& name, const std::string& bytes) const {
        write_file(tables() / (name + ".csv"), bytes);
    }
    fs::path tables() const { return path / "tables"; }
    fs::path catalog() const { return path / "shop.db"; }
    ImportReport import(const ImportOptions& options = {}) const {
        return import_catalog({tables()}, catalog(), options);
    }

    fs::path path;
};

/// With the small catalog's tables in `tables/`.
struct SmallFolder : Folder {
    SmallFolder() { fs::copy(fixtures() / "small", tables()); }
};

}  // namespace endbell::testing
