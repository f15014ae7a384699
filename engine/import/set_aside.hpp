// Rows that were set aside, in files that look like those they came from: same head, same bytes. Mended
// there, they import again (ImportMode::rows). Why each was set aside stands in reasons.txt beside them. What
// an earlier import left in the folder is kept once as *.before: somebody may have begun to mend it.
#pragma once
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

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
    std::string file() const { return rows_.is_open() ? file_.string() : std::string(); }

  private:
    std::filesystem::path folder_;
    std::filesystem::path input_;
    std::filesystem::path file_;
    std::string head_;
    std::ofstream rows_;
    std::ofstream reasons_;
};

}  // namespace endbell::inline import
