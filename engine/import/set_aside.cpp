#include "engine/import/set_aside.hpp"

#include "engine/base/text.hpp"

namespace endbell::inline import {

namespace fs = std::filesystem;

namespace {

Problem cannot_write(const fs::path& file) {
    return {
        {file.string(), 0, 0}, "set-aside rows", "", "room and permission to write", "choose another folder"};
}

void put_in_place(std::optional<FileWriter>& file) {
    if (!file) return;
    file->finish();
    file->take_place();
    file.reset();
}

/// offers.csv -> offers.set-aside.csv; offers.set-aside-2.csv when that name is taken by this import.
fs::path name_in(const fs::path& folder, const fs::path& input, int count) {
    const std::string name = input.filename().string();
    const std::string stem = name.substr(0, name.find('.'));
    return folder / (stem + ".set-aside" + (count == 1 ? "" : "-" + std::to_string(count)) + ".csv");
}

}  // namespace

SetAside::SetAside(fs::path folder, const std::vector<fs::path>& inputs) : folder_(std::move(folder)) {
    if (folder_.empty()) return;
    std::error_code error;
    fs::create_directories(folder_, error);
    for (const fs::path& input : inputs) {
        const fs::path home = fs::is_directory(input, error) ? input
                              : input.has_parent_path()      ? input.parent_path()
                                                             : fs::path(".");
        if (!fs::equivalent(home, folder_, error)) continue;
        throw BadData(Problem{{folder_.string(), 0, 0},
                              "set-aside folder",
                              "",
                              "a folder without input files",
                              "choose another folder"});
    }
    std::vector<fs::path> earlier;
    for (const fs::directory_entry& entry : fs::directory_iterator(folder_, error)) {
        const std::string name = entry.path().filename().string();
        const bool ours = name == "reasons.txt" || (name.find(".set-aside") != std::string::npos &&
                                                    entry.path().extension() == ".csv");
        if (ours) earlier.push_back(entry.path());
    }
    for (const fs::path& file : earlier) fs::rename(file, file.string() + ".before", error);
}

void SetAside::begin_file(const fs::path& input, std::string head_bytes) {
    put_in_place(rows_);
    input_ = input;
    head_ = std::move(head_bytes);
    int count = 1;
    while (!folder_.empty() && fs::exists(name_in(folder_, input, count))) ++count;
    file_ = name_in(folder_, input, count);
}

void SetAside::add(std::string_view row_bytes, const std::vector<Problem>& problems) {
    if (folder_.empty()) return;
    if (!reasons_) {
        const fs::path file = folder_ / "reasons.txt";
        reasons_.emplace(file, cannot_write(file));
    }
    if (!rows_) {
        rows_.emplace(file_, cannot_write(file_));
        rows_->write(head_);
    }
    rows_->write(row_bytes);
    for (const Problem& problem : problems) reasons_->write(to_text(problem) + "\n");
}

void SetAside::keep() {
    put_in_place(rows_);
    put_in_place(reasons_);
}

}  // namespace endbell::inline import
