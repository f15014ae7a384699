#include "engine/index/value_dictionary.hpp"

#include <algorithm>

namespace endbell::inline index {

std::vector<Code> ValueDictionary::codes_of(const ValueDictionary& other) {
    std::vector<Code> ours(other.codes_.size());
    for (const auto& [text, code] : other.codes_) ours[code] = code_of(text);
    return ours;
}

std::vector<std::string> ValueDictionary::in_order() const {
    std::vector<std::string> all;
    for (const auto& entry : codes_) all.push_back(entry.first);
    std::sort(all.begin(), all.end());
    return all;
}

std::vector<Code> ValueDictionary::ranks() const {
    const std::vector<std::string> all = in_order();
    std::vector<Code> ranks(all.size());
    for (Code rank = 0; rank < all.size(); ++rank) ranks[codes_.at(all[rank])] = rank;
    return ranks;
}

}  // namespace endbell::inline index
