// What each stage returned, as JSON values. Inside sheet/ only: it brings the JSON library with it.
#pragma once
#include <cmath>
#include <vector>

#include <nlohmann/json.hpp>

#include "engine/select/select.hpp"

namespace endbell::inline sheet::json {

using Json = nlohmann::ordered_json;

/// JSON has no infinity (an open circuit) and no "not a number": both are null beside their text.
inline Json number(double value) {
    return std::isfinite(value) ? Json(value) : Json(nullptr);
}

template <class T, class F>
Json list(const std::vector<T>& items, F to_json) {
    Json out = Json::array();
    for (const T& item : items) out.push_back(to_json(item));
    return out;
}

Json candidate(const Candidate& c);
Json diagnosis(const Diagnosis& d);
Json kit(const KitChoice& k);
Json ledger(const Ledger& l);
Json option(const Option& o);

}  // namespace endbell::inline sheet::json
