// The repository as text, for gates on it. A gate is a function from text to complaints: empty is good, and
// each gate has a test that feeds it a bad snippet, so that it is known to be able to fail.
#pragma once
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <string>
#include <string_view>
#include <vector>

namespace house {

using Complaints = std::vector<std::string>;

struct File {
    std::string path;  // from the root, with "/"
    std::string text;
};

inline std::filesystem::path root() {
    return ENDBELL_ROOT;
}

inline bool exists_here(const std::string& path) {
    return std::filesystem::exists(root() / path);
}

inline std::string read(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// What a clone does not hold: build folders and caches, as .gitignore lists them.
inline bool is_outside_the_clone(const std::string& name) {
    return name == ".git" || name == "build" || name.rfind("build-", 0) == 0 || name == ".cache" ||
           name == "node_modules" || name == "__pycache__";
}

/// Files below `folder` ("" is the root) whose extension is one of `extensions` (none: all), by path.
inline std::vector<File> files(const std::string& folder, const std::vector<std::string>& extensions = {}) {
    std::vector<File> found;
    namespace fs = std::filesystem;
    for (auto it = fs::recursive_directory_iterator(root() / folder);
         it != fs::recursive_directory_iterator(); ++it) {
        const fs::path path = it->path();
        if (it->is_directory() && is_outside_the_clone(path.filename().string()))
            it.disable_recursion_pending();
        if (!it->is_regular_file()) continue;
        const bool wanted = extensions.empty() || std::find(extensions.begin(), extensions.end(),
                                                            path.extension().string()) != extensions.end();
        if (wanted) found.push_back({fs::relative(path, root()).generic_string(), read(path)});
    }
    std::sort(found.begin(), found.end(), [](const File& a, const File& b) { return a.path < b.path; });
    return found;
}

inline std::vector<File> sources() {
    std::vector<File> all = files("engine", {".hpp", ".cpp"});
    for (File& file : files("cli", {".hpp", ".cpp"})) all.push_back(std::move(file));
    return all;
}

/// Every match of the pattern's first group, in order.
inline std::vector<std::string> captures(const std::string& text, const std::string& pattern) {
    const std::regex regex(pattern);
    std::vector<std::string> found;
    for (auto it = std::sregex_iterator(text.begin(), text.end(), regex); it != std::sregex_iterator();
         ++it) {
        found.push_back((*it)[1].str());
    }
    return found;
}

inline bool contains(const std::vector<std::string>& list, const std::string& word) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

/// One failure that lists every complaint.
inline std::string listed(const Complaints& complaints) {
    std::string text;
    for (const std::string& complaint : complaints) text += "\n  " + complaint;
    return text;
}

}  // namespace house

#define CHECK_NO_COMPLAINTS(complaints)                                            \
    do {                                                                           \
        const house::Complaints found_ = (complaints);                             \
        BOOST_CHECK_MESSAGE(found_.empty(), #complaints << house::listed(found_)); \
    } while (false)
