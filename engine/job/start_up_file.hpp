// The file that keeps what was read when a unit was started: written as a form, filled in by hand, read back.
//     [record]
//     equipment_serial = "0612345"
//     [cool]
//     static_total = "0.52; 0.53"  # expected 0.50 in. w.c.
#pragma once
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "engine/model/failed_unit.hpp"

namespace endbell::inline job {

/// A line to be filled in.
struct StartUpLine {
    std::optional<Call> call;
    StartUpQuantity what = StartUpQuantity::amps;
    int leg = 0;
    std::string expected;
};

/// `head` without readings: what the file is about.
std::string write_start_up(const StartUpRecord& head, const std::vector<StartUpLine>& lines);

/// Throws BadData with every problem of the text.
StartUpRecord read_start_up(std::string_view text, const std::string& filename);

/// Reads the file that the job names, if it names one: beside the job's own file, unless its path is absolute. Throws
/// BadData where it cannot be read, says nothing, or is of another unit.
void attach_start_up(FailedUnit& job, const std::filesystem::path& folder);

}  // namespace endbell::inline job
