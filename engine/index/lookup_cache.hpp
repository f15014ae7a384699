// A cache of what was looked up by name: bounded, it forgets the older half at a time.
#pragma once
#include <cstddef>
#include <functional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>

namespace endbell::inline index {

template <class Value>
class LookupCache {
  public:
    /// Holds between `most` and twice as many.
    explicit LookupCache(std::size_t most) : most_(most) {}

    /// The value of `name`; `find()` gives it where it is not remembered. Stays until the next call.
    template <class Find>
    const Value& of(std::string_view name, Find find) {
        std::string key(name);
        if (const auto known = newer_.find(key); known != newer_.end()) return known->second;
        if (newer_.size() >= most_) {
            older_ = std::move(newer_);
            newer_.clear();
        }
        if (auto known = older_.extract(key)) return newer_.insert(std::move(known)).position->second;
        return newer_.emplace(std::move(key), find()).first->second;
    }

  private:
    std::size_t most_;
    std::unordered_map<std::string, Value> newer_, older_;
};

}  // namespace endbell::inline index
