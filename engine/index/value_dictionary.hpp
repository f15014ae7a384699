// A dictionary of the values of one field, as bytes: each stands for a code from 0 up, while an index is made.
#pragma once
#include <cstdint>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

namespace endbell::inline index {

using Code = std::uint32_t;

/// Codes are given in the order in which values come; `ranks` gives their places among all values, sorted.
class ValueDictionary {
  public:
    Code code_of(const std::string& text) {
        if (last_ != nullptr && last_->first == text) return last_->second;  // neighbours are often alike
        last_ = &*codes_.try_emplace(text, static_cast<Code>(codes_.size())).first;
        return last_->second;
    }
    /// Ours for each code of the other one.
    std::vector<Code> codes_of(const ValueDictionary& other);
    std::vector<std::string> in_order() const;
    std::vector<Code> ranks() const;

  private:
    std::unordered_map<std::string, Code> codes_;
    /// The value that came last; null before the first.
    const std::pair<const std::string, Code>* last_ = nullptr;
};

}  // namespace endbell::inline index
