// Rows that were set aside, in files that look like those they came from: same head, same bytes. Mended
// there, they import again (ImportMode::rows). Why each was set aside stands in reasons.txt beside them. What
// an earlier import left in the folder is kept once as *.before: somebody may have begun to mend it.
#pragma once
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "engine/base/file_writer.hpp"
#include "engine/base/problem.hpp"

namespace endbell::inline import {

class SetAside {
  public:
    /// An empty folder name keeps nothing. Throws BadData when the folder is one that an input file is in:
    /// mended rows would be overwritten.
    SetAside(std::filesystem::path folder, const std::vector<std::filesystem::path>& inputs);

    /// Rows that follow come from `input`, which begins with `head_bytes`.
    void begin_file(const std::filesystem::path& input, std::string head_bytes);
    void add(std::string_view row_bytes, const std::vector<Problem>& problems);
    /// The file that the present input's rows went to; empty when there is none.
    std::string file() const { return rows_ ? file_.string() : std::string(); }
    /// The files of an import that breaks off before are not there.
    void keep();

  private:
    std::filesystem::path folder_;
    std::filesystem::path input_;
    std::filesystem::path file_;
    std::string head_;
    std::optional<FileWriter> rows_;
    std::optional<FileWriter> reasons_;
};

}  // namespace endbell::inline import
