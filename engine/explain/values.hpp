// A typed value in the words of the trade.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "engine/model/finding.hpp"

namespace endbell::inline explain {

/// "1/2 hp", "208-230 V", "CW from the shaft end (CWSE)", "0.5 in". An unknown value is "not known".
std::string say(const Value& value);
std::string say(const Datum& fact);
std::string_view say(Origin origin);

/// "12.5": at most `decimals` digits behind the point, trailing zeros dropped, never a locale's comma.
std::string say_number(double number, int decimals);

/// Their words: "efficiency, warranty".
template <class E>
std::string listed(const std::vector<E>& values) {
    std::string out;
    for (const E value : values) out.append(out.empty() ? "" : ", ").append(word(value));
    return out;
}

}  // namespace endbell::inline explain
