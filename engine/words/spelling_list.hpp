// The shape of the spelling tables (spellings_motor.hpp, spellings_part.hpp, spellings_job.hpp): spellings
// beside each value's own word, and the words that are questions. Data only; kinds.cpp looks them up. Letter
// case, blanks, dots, dashes and slashes do not tell spellings apart.
#pragma once
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace endbell::inline words {

struct OpenSpelling {
    std::string_view text;
    std::string question;
    std::vector<std::string> readings;
};

template <class E>
using SpellingList = std::vector<std::pair<std::string_view, E>>;

template <class E>
inline SpellingList<E> spellings() {
    return {};
}
template <class E>
inline const std::vector<OpenSpelling>& open_spellings() {
    static const std::vector<OpenSpelling> none;
    return none;
}

}  // namespace endbell::inline words
