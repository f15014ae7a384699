// The English of a stage's values: one table a kind of value.
#pragma once
#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/ensure.hpp"

namespace endbell::inline explain {

/// The English of one value.
template <class Key>
struct English {
    Key key;
    std::string_view text;
};

/// REQUIRES: the list has the key. A gate holds that each has.
template <class List, class Key>
std::string english_of(const List& list, const Key& key) {
    const auto found = std::find_if(list.begin(), list.end(), [&](const auto& e) { return e.key == key; });
    ensure(found != list.end(), "every word of a stage has its English");
    return std::string(found->text);
}

}  // namespace endbell::inline explain
