#include <array>

#include "engine/base/text.hpp"
#include "engine/words/fold.hpp"
#include "engine/words/read.hpp"

namespace endbell::inline words {

bool is_partly_read(const Folded& words) {
    static constexpr std::array damage{"torn",       "worn off",  "illegible",   "unreadable", "cannot read",
                                       "can't read", "cant read", "not legible", "scratched"};
    const std::string& text = words.text();
    const bool something = text.find_first_of("abcdefghijklmnopqrstuvwxyz0123456789") != std::string::npos;
    if (!something) return false;  // nothing was read: the readers say what they make of that
    if (text.find('?') != std::string::npos || text.find("...") != std::string::npos ||
        words.raw().find("\u2026") != std::string_view::npos)
        return true;
    for (const char* word : damage) {
        if (text.find(word) != std::string::npos) return true;
    }
    return false;
}

}  // namespace endbell::inline words
