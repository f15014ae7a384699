// Writing into a job file that a person keeps: one key changes, every other character stays.
#pragma once
#include <string>
#include <string_view>

#include "engine/job/job.hpp"

namespace endbell::inline job {

/// A text as a basic string of TOML: read back, it is the same text.
std::string in_quotes(std::string_view raw);

/// The text with `key` saying `raw`: where it stands, at the end of its group, or in a group of its own at the
/// end. Comments, order and line ends stay. Throws BadData when the text is not TOML, or its group is not
/// written as [group] on a line of its own.
std::string with_key(std::string_view toml, const std::string& filename, const JobKey& key,
                     std::string_view raw);

}  // namespace endbell::inline job
