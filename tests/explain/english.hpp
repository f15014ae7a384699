// The gate on English: each value that a stage can give has it, once, and nothing has it that no stage gives.
#pragma once
#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <string>
#include <vector>

#include "engine/explain/english.hpp"
#include "engine/model/word.hpp"

namespace english {

using Complaints = std::vector<std::string>;

/// A value by its word; a test's outcome by both of its words.
template <class Key>
std::string named(const Key& key) {
    if constexpr (requires { key.test; }) {
        return std::string(endbell::word(key.test)) + ": " + std::string(endbell::word(key.reason));
    } else {
        return std::string(endbell::word(key));
    }
}

template <class E>
std::vector<E> values_of() {
    std::vector<E> values;
    for (const endbell::Word<E>& each : endbell::Words<E>::table) values.push_back(each.value);
    return values;
}

template <class Key>
Complaints unsaid(const std::vector<Key>& wanted, const std::vector<endbell::English<Key>>& english) {
    Complaints complaints;
    for (const Key& key : wanted) {
        const auto count =
            std::count_if(english.begin(), english.end(), [&](const auto& each) { return each.key == key; });
        if (count == 0) complaints.push_back(named(key) + " has no English");
        if (count > 1) complaints.push_back(named(key) + " has English twice");
    }
    for (const endbell::English<Key>& each : english) {
        if (each.text.empty()) complaints.push_back(named(each.key) + " has an empty text");
        if (std::find(wanted.begin(), wanted.end(), each.key) == wanted.end())
            complaints.push_back(named(each.key) + " is never said");
    }
    return complaints;
}

inline void check_none(const Complaints& complaints) {
    for (const std::string& complaint : complaints) BOOST_ERROR(complaint);
}

}  // namespace english
