#include "engine/sheet/escape.hpp"

#include "engine/base/text.hpp"

namespace endbell::inline sheet {

std::string escape_html(std::string_view text) {
    std::string out;
    for (char c : visible(shortened(text, longest_text))) {
        switch (c) {
            case '&':
                out += "&amp;";
                break;
            case '<':
                out += "&lt;";
                break;
            case '>':
                out += "&gt;";
                break;
            case '"':
                out += "&quot;";
                break;
            case '\'':
                out += "&#39;";
                break;
            default:
                out += c;
        }
    }
    return out;
}

}  // namespace endbell::inline sheet
